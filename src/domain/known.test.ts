import { MACHINE } from '#contract/facts/any-issued-card.setup.ts';
import { isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { expect, test } from 'vitest';
import type { FactBody } from './fact.ts';
import { idOf } from './identity.ts';
import { logOf, upTo, type Line } from './invented-log.setup.ts';
import { bodyMassOn, houseAt, knownAt, ofKind, peopleAt, personOf, settingsFor, type Known } from './known.ts';
import { endOfLog } from './log.ts';
import { DEFAULT_POLICIES } from './policies.ts';

const MARIT = idOf<'person'>('marit-lund');
const TOMAS = idOf<'person'>('tomas-vance');
const SQUAT = idOf<'exercise'>('back-squat');
const SKERRY = idOf<'mission'>('skerry-4');

const introduced = (person = MARIT, name = 'Marit Lund'): FactBody => ({
  kind: 'introduced',
  person,
  name,
  sex: 'female',
  birthDate: isoDay('1991-05-03'),
  trainingAge: entered('6.5', 'years'),
});

const weighing = (on: string, kilograms: string, unit: 'kg' | 'lb' = 'kg', person = MARIT): FactBody => ({
  kind: 'measured',
  person,
  day: isoDay(on),
  what: 'body mass',
  value: entered(kilograms, unit),
});

const dated = (launch: string): FactBody => ({
  kind: 'dated',
  mission: SKERRY,
  name: 'Skerry 4',
  site: idOf<'site'>('skerry-station'),
  launch: isoDay(launch),
  landing: null,
});

const assigned = (role: 'prime' | 'backup'): FactBody => ({
  kind: 'assigned',
  person: MARIT,
  mission: SKERRY,
  role,
  team: 'ours',
  spaceWalks: false,
});

const known = (...lines: readonly Line[]): Known => {
  const log = logOf(...lines);
  const found = knownAt(log, MARIT, endOfLog(log));
  if (!found) throw new Error('She was not introduced.');
  return found;
};

test('nobody is known before the introduction', () => {
  const log = logOf(weighing('2027-02-01', '61'), introduced());
  expect(knownAt(log, MARIT, upTo(1))).toBeNull();
  expect(knownAt(log, MARIT, upTo(2))?.name).toBe('Marit Lund');
  expect(peopleAt(log, upTo(1))).toEqual([]);
});

test('what is known is what stood in the log by then, whatever day it is about', () => {
  const log = logOf(introduced(), weighing('2027-02-20', '61'), weighing('2027-02-10', '63'));
  const daysUpTo = [1, 2, 3].map((place) => knownAt(log, MARIT, upTo(place))?.facts.length);
  expect(daysUpTo).toEqual([1, 2, 3]);
});

test('a person is known by their own facts', () => {
  const log = logOf(introduced(), introduced(TOMAS, 'Tomas Vance'), weighing('2027-02-01', '84', 'kg', TOMAS));
  expect(knownAt(log, MARIT, upTo(3))?.facts).toHaveLength(1);
  expect(knownAt(log, TOMAS, upTo(3))?.facts).toHaveLength(2);
  expect(peopleAt(log, upTo(3))).toEqual([MARIT, TOMAS]);
});

test('name, assignment, mission dates and breathing are the last that were entered', () => {
  const later = known(
    introduced(),
    introduced(MARIT, 'Marit Lund-Berg'),
    dated('2027-02-08'),
    assigned('backup'),
    assigned('prime'),
    dated('2027-02-19'),
    { kind: 'breathing set', person: MARIT, rule: 'no straining at all', toldBy: 'Dr Ferreira' },
  );
  expect(later.name).toBe('Marit Lund-Berg');
  expect(later.assignment?.role).toBe('prime');
  expect(later.mission).toMatchObject({ name: 'Skerry 4', launch: isoDay('2027-02-19') });
  expect(later.breathing).toBe('no straining at all');
  expect(later.trainingAge).toBe(6.5);
});

test('what nobody entered is missing, not guessed', () => {
  const bare = known({ ...introduced(), birthDate: null, trainingAge: null } as FactBody);
  expect(bare).toMatchObject({ mission: null, assignment: null, birthDate: null, trainingAge: null });
  expect(bare.breathing).toBe('exhale through the hard part');
  expect(known(introduced(), assigned('prime')).mission).toBeNull();
});

test('a machine that was changed keeps its place: what a plan takes first stays first', () => {
  const catalogued = (id: string, name: string): FactBody => ({
    kind: 'catalogued',
    entry: { kind: 'machine', machine: { ...MACHINE, id: idOf(id), name } },
  });
  const log = logOf(
    catalogued('bar', 'Bar'),
    catalogued('light-bar', 'Light bar'),
    { corrects: 1, by: catalogued('bar', 'Bar by the window') },
    catalogued('light-bar', 'Light bar, repaired'),
  );
  const namesUpTo = (place: number) => [...houseAt(log, upTo(place)).machines.values()].map(({ name }) => name);
  expect(namesUpTo(2)).toEqual(['Bar', 'Light bar']);
  expect(namesUpTo(3)).toEqual(['Bar by the window', 'Light bar']);
  expect(namesUpTo(4)).toEqual(['Bar by the window', 'Light bar, repaired']);
});

test('a corrected introduction leaves nobody behind', () => {
  const log = logOf(introduced(), { corrects: 1, by: { kind: 'retracted' } });
  expect(knownAt(log, MARIT, upTo(2))).toBeNull();
  expect(peopleAt(log, upTo(2))).toEqual([]);
});

test('body mass on a day is the newest by then; of two on one day the later entered', () => {
  const person = known(
    introduced(),
    weighing('2027-02-20', '61'),
    weighing('2027-02-01', '63'),
    weighing('2027-02-10', '140', 'lb'),
    weighing('2027-02-10', '62'),
  );
  const on = (day: string) => bodyMassOn(person, isoDay(day))?.kilograms;
  expect(on('2027-01-31')).toBeUndefined();
  expect(on('2027-02-01')).toBe(63);
  expect(on('2027-02-10')).toBe(62);
  expect(on('2027-02-19')).toBe(62);
  expect(on('2027-03-01')).toBe(61);
});

test('stature is no body mass, and pounds become kilograms', () => {
  const person = known(introduced(), weighing('2027-02-01', '140', 'lb'), {
    kind: 'measured',
    person: MARIT,
    day: isoDay('2027-02-02'),
    what: 'stature',
    value: entered('171', 'cm'),
  });
  expect(bodyMassOn(person, isoDay('2027-03-01'))?.kilograms).toBeCloseTo(63.5029318, 9); // 140 × 0.45359237
});

test('settings are kept by person, machine and exercise, and the last ones stand whole', () => {
  const setUp = (exercise: typeof SQUAT, value: string): FactBody => ({
    kind: 'set up',
    person: MARIT,
    machine: MACHINE.id,
    exercise,
    settings: [{ field: 'pad', value, side: null }],
  });
  const person = known(introduced(), setUp(SQUAT, '4'), setUp(idOf('curl'), '9'), setUp(SQUAT, '5'));
  expect(settingsFor(person, MACHINE.id, SQUAT)).toEqual([{ field: 'pad', value: '5', side: null }]);
  expect(settingsFor(person, idOf('other'), SQUAT)).toEqual([]);
});

test('the house has the last entry of each thing, at a place in the log', () => {
  const catalogued = (ceiling: string): FactBody => ({
    kind: 'catalogued',
    entry: { kind: 'machine', machine: { ...MACHINE, ceiling } },
  });
  const log = logOf(catalogued('600'), catalogued('580'), dated('2027-02-08'));
  expect(houseAt(log, upTo(1)).machines.get(MACHINE.id)?.ceiling).toBe('600');
  const house = houseAt(log, upTo(3));
  expect(house.machines.size).toBe(1);
  expect(house.machines.get(MACHINE.id)?.ceiling).toBe('580');
  expect(house.missions.get(SKERRY)?.launch).toBe(isoDay('2027-02-08'));
});

test('policies are the shipped ones with what a team has set for itself, the last word on each', () => {
  const set = (policies: Extract<FactBody, { kind: 'policies set' }>['policies']): FactBody => ({
    kind: 'policies set',
    policies,
  });
  expect(houseAt([], upTo(0)).policies).toEqual(DEFAULT_POLICIES);
  const log = logOf(set({ horizonDays: 21, backOff: 0.15 }), set({ horizonDays: 28 }));
  expect(houseAt(log, upTo(2)).policies).toEqual({ ...DEFAULT_POLICIES, horizonDays: 28, backOff: 0.15 });
});

test('a decision is about the person in it; a machine is about nobody', () => {
  const [decided, machine] = logOf(
    {
      kind: 'decided',
      decision: { kind: 're-base', person: MARIT, exercise: SQUAT, from: isoDay('2027-02-01') },
      answers: null,
      basis: upTo(0),
    },
    { kind: 'catalogued', entry: { kind: 'machine', machine: MACHINE } },
  );
  expect(decided && personOf(decided)).toBe(MARIT);
  expect(machine && personOf(machine)).toBeNull();
  expect(ofKind(known(introduced()), 'decided')).toEqual([]);
});
