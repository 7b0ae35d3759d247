import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { GateEvidence, ScoreTest } from './gate-evidence.ts';
import { WORKED_GATE } from './gate-example.ts';
import { GATE_ITEMS, GATES, gateItems, requirementText, type GateItemKey } from './gate-items.table.ts';
import { asksOf, type ItemReading } from './item-reading.ts';
import { lastTestsOverLine, probabilityOfMean } from './probability-over-line.ts';
import { redFlagsOf, stageGate, type GateOptions } from './stage-gate.ts';

type Read = Exclude<ReturnType<typeof stageGate>, { kind: 'refused' }>;

const read = (changes: Partial<GateEvidence> = {}, options: GateOptions = {}): Read => {
  const reading = stageGate({ ...WORKED_GATE, ...changes }, options);
  if (reading.kind === 'refused') throw new Error(reading.reasons.join(' '));
  return reading;
};

const itemOf = (reading: Read, key: GateItemKey): ItemReading | undefined =>
  reading.items.find((item) => item.key === key);

const scores = (key: GateItemKey, ...tests: readonly ScoreTest[]): Partial<GateEvidence> => ({
  scores: { ...WORKED_GATE.scores, [key]: tests },
});

const at = (on: number, score: number): ScoreTest => ({ on, score });

test('the worked gate passes, and every item shows its working', () => {
  const reading = read();
  expect(reading).toMatchObject({ kind: 'passed', blocking: [], cautions: [] });
  expect(reading.items).toHaveLength(GATE_ITEMS.length);
  const agility = itemOf(reading, 'agility');
  expect(agility).toMatchObject({ passes: true, basis: 'probability' });
  expect(agility?.working).toMatchObject({ line: 90, typicalError: 3, tests: [{ on: 17 }, { on: 20 }] });
  expect(agility?.working?.probability).toBeCloseTo(0.62104483, 8);
  expect(agility?.working?.sd).toBeCloseTo(3 / Math.SQRT2, 12);
  expect(agility?.says).toBe(
    'Agility: 90.7 % over the last 2 tests, line 90 %: probability 0.62 of being over it, 0.5 needed.',
  );
});

test('the probability at which an item passes may be asked higher', () => {
  const reading = read({}, { acceptAt: 0.63 });
  expect(reading.kind).toBe('not passed');
  expect(reading.blocking).toEqual([
    'Agility: 90.7 % over the last 2 tests, line 90 %: probability 0.62 of being over it, 0.63 needed.',
  ]);
  for (const acceptAt of [0, 1, Number.NaN]) expect(stageGate(WORKED_GATE, { acceptAt }).kind).toBe('refused');
  for (const acceptAt of [0.01, 0.99]) expect(stageGate(WORKED_GATE, { acceptAt }).kind).not.toBe('refused');
});

test('a mean exactly on the line passes at one half', () => {
  expect(itemOf(read(scores('agility', at(17, 88), at(20, 92))), 'agility')?.passes).toBe(true);
  expect(itemOf(read(scores('agility', at(17, 88), at(20, 91.99))), 'agility')?.passes).toBe(false);
});

test('the last three tests count, in order of their days', () => {
  const reading = read(scores('agility', at(20, 95), at(14, 60), at(18, 92), at(16, 91)));
  expect(itemOf(reading, 'agility')?.working?.tests.map(({ on }) => on)).toEqual([16, 18, 20]);
  expect(itemOf(reading, 'agility')?.working?.mean).toBeCloseTo((91 + 92 + 95) / 3, 12);
});

test('tests more than twice as old as the newest may be do not count', () => {
  const reading = read(scores('agility', at(6.9, 50), at(7, 90), at(20, 91)));
  expect(itemOf(reading, 'agility')?.working?.tests.map(({ on }) => on)).toEqual([7, 20]);
});

test('one test is not enough where two are asked, but holds an item back where it is below', () => {
  expect(itemOf(read(scores('agility', at(20, 99))), 'agility')).toMatchObject({
    passes: false,
    basis: 'missing',
    says: 'Agility: 1 of 2 tests in date.',
  });
  expect(itemOf(read(scores('agility', at(20, 80))), 'agility')).toMatchObject({ passes: false, basis: 'probability' });
});

test('an old test and no test are missing, each in its own words', () => {
  expect(itemOf(read(scores('agility', at(12, 99), at(13.9, 99))), 'agility')?.says).toBe(
    'Agility: last tested 7 days ago; at most 7 days count.',
  );
  expect(itemOf(read(scores('agility', at(12, 99), at(14, 99))), 'agility')?.passes).toBe(true);
  expect(itemOf(read(scores('agility')), 'agility')?.says).toBe('Agility: not tested yet.');
});

test('a missing laboratory test blocks only where the physician asked for it', () => {
  const without = scores('oxygenUptake');
  const reading = read(without);
  expect(reading.kind).toBe('passed');
  expect(itemOf(reading, 'oxygenUptake')).toMatchObject({ passes: true, basis: 'not required' });
  expect(reading.cautions).toEqual(['Peak oxygen uptake: not tested yet. The physician did not ask for it.']);
  expect(read({ ...without, required: ['oxygenUptake'] })).toMatchObject({
    kind: 'not passed',
    blocking: ['Peak oxygen uptake: not tested yet.'],
  });
  expect(read(scores('agility')).kind).toBe('not passed');
});

test('a laboratory test that was measured below the line blocks, asked for or not', () => {
  expect(read(scores('oxygenUptake', at(20, 70))).kind).toBe('not passed');
  expect(read(scores('balance', at(20, 70))).kind).toBe('not passed');
});

test('an accepted substitute stands for the first choice, and is named', () => {
  const obstacle = [92, 93].map((score, place) => ({ on: 18 + place, score, test: 'Obstacle course' }));
  const reading = read(scores('agility', at(17, 50), ...obstacle));
  expect(itemOf(reading, 'agility')?.says).toMatch(/^Agility: 92\.5 % over the last 2 tests \(Obstacle course\), /);
  const named = obstacle.map((each) => ({ ...each, test: 'Agility course' }));
  expect(itemOf(read(scores('agility', ...named)), 'agility')?.says).toMatch(/over the last 2 tests, /);
  const other = obstacle.map((each) => ({ ...each, test: 'Shuttle run' }));
  expect(itemOf(read(scores('agility', ...other)), 'agility')?.says).toBe(
    'Agility: "Shuttle run" is no accepted test of it.',
  );
});

const judged = (item: GateItemKey, on = 20): Partial<GateEvidence> => ({
  judgements: [{ item, on, by: 'M. Haldane', reason: 'limited by the floor, not by the person' }],
});

test('a signed judgement stands for a scored item, with its reason', () => {
  const low = scores('agility', at(17, 80), at(20, 82));
  const reading = read({ ...low, ...judged('agility') });
  expect(reading.kind).toBe('passed');
  expect(itemOf(reading, 'agility')).toMatchObject({ passes: true, basis: 'judgement', working: { line: 90 } });
  expect(reading.cautions).toEqual([
    'Agility: passed by the judgement of M. Haldane: limited by the floor, not by the person',
  ]);
  expect(read({ ...low, ...judged('agility', 11) }).kind).toBe('not passed');
  expect(read({ ...low, ...judged('jump') }).kind).toBe('not passed');
});

test('the newest judgement of an item is the one that is shown', () => {
  const low = scores('agility', at(17, 80), at(20, 82));
  const judgements = [
    { item: 'agility', on: 20, by: 'A', reason: 'new' },
    { item: 'agility', on: 15, by: 'B', reason: 'old' },
  ] as const;
  expect(itemOf(read({ ...low, judgements }), 'agility')?.says).toMatch(/judgement of A: new/);
});

test('no judgement stands for a stand test, a fall, a report, a red flag or what the physician asked for', () => {
  expect(read({ standTests: [{ on: 20, normal: false }], ...judged('stand') }).kind).toBe('not passed');
  expect(read({ balanceTests: [{ on: 20, fallsIn: [5] }], ...judged('falls') }).kind).toBe('not passed');
  expect(read({ pain: [{ on: 20.5, value: 4 }], ...judged('pain') }).kind).toBe('not passed');
  expect(read({ ...scores('oxygenUptake'), required: ['oxygenUptake'], ...judged('oxygenUptake') }).kind).toBe(
    'not passed',
  );
});

test('a judgement without a name or a reason is refused, with everything else that cannot be', () => {
  const found = stageGate({
    ...WORKED_GATE,
    enteredStage: -1,
    scores: { agility: [at(25, 250)] },
    sickness: [{ on: 20, value: 11 }],
    judgements: [{ item: 'jump', on: 20, by: ' ', reason: 'x' }],
  });
  expect(found).toEqual({
    kind: 'refused',
    reasons: [
      'The day of entering the stage must lie between landing and today; it is -1.',
      'The day of a test of agility must lie between landing and today; it is 25.',
      'A score in percent must lie in 0 to 200; it is 250.',
      'A report must lie in 0 to 10; it is 11.',
      'A judgement on jump needs the name of who signs it and a reason.',
    ],
  });
  expect(stageGate({ ...WORKED_GATE, today: Number.NaN }).kind).toBe('refused');
});

test.each([
  ['standTests', { standTests: [{ on: 30, normal: true }] }],
  ['balanceTests', { balanceTests: [{ on: 30, fallsIn: [] }] }],
  ['pain', { pain: [{ on: Number.NaN, value: 1 }] }],
  ['redFlags', { redFlags: [{ on: 30, what: 'a fall' }] }],
  ['judgements', { judgements: [{ item: 'jump', on: 30, by: 'A', reason: 'b' }] }],
  ['reason', { judgements: [{ item: 'jump', on: 20, by: 'A', reason: '' }] }],
  ['pain value', { pain: [{ on: 20, value: -1 }] }],
] as const)('%s that cannot be are refused', (_, changes) => {
  const found = stageGate({ ...WORKED_GATE, ...changes });
  expect(found.kind === 'refused' && found.reasons).toHaveLength(1);
});

test('jumping waits for the stand test and both tandem walks', () => {
  const reading = read(scores('tandemClosed', at(17, 60), at(20, 65)));
  expect(itemOf(reading, 'jump')).toMatchObject({
    passes: false,
    basis: 'waits',
    says: 'Jump height: waits for tandem walk, eyes closed.',
  });
  expect(reading.blocking).toHaveLength(2);
  const faint = read({ standTests: [{ on: 20, normal: false }], ...judged('jump') });
  expect(itemOf(faint, 'jump')?.says).toBe('Jump height: waits for stand test.');
});

test('the stage lasts its days', () => {
  expect(read({ enteredStage: 14 }).kind).toBe('passed');
  expect(read({ enteredStage: 14.5 })).toMatchObject({
    kind: 'not passed',
    blocking: ['6 of at least 7 days in this stage.'],
  });
});

test('red flags shut a gate for 48 hours, pain of 5 with them', () => {
  const flag = (on: number) => ({ redFlags: [{ on, what: 'a fall' }] });
  expect(read(flag(19)).blocking).toEqual(['Red flag on day 19: a fall.']);
  expect(read(flag(18.9)).kind).toBe('passed');
  const pain = [
    { on: 19.5, value: 5 },
    { on: 20.5, value: 1 },
  ];
  expect(read({ pain }).blocking).toEqual(['Red flag on day 19: pain of 5 of 10.']);
  expect(redFlagsOf({ ...WORKED_GATE, pain: [{ on: 20, value: 4 }] })).toEqual([]);
  expect(redFlagsOf({ ...WORKED_GATE, pain: [{ on: 18.9, value: 9 }] })).toEqual([]);
});

test('reports count over their hours, and an unreported day is not a zero', () => {
  const sick = (...days: readonly number[]) => read({ sickness: days.map((on) => ({ on, value: 0 })) });
  expect(itemOf(sick(18, 19, 20), 'sickness')?.passes).toBe(true);
  expect(itemOf(sick(18.5, 20.5), 'sickness')?.says).toBe('Motion sickness: reported on 2 of the last 3 days.');
  expect(itemOf(sick(20.1, 20.2, 20.3), 'sickness')?.says).toBe('Motion sickness: reported on 1 of the last 3 days.');
  expect(itemOf(sick(), 'sickness')?.says).toBe('Motion sickness: reported on 0 of the last 3 days.');
  expect(itemOf(sick(17.9, 19.5, 20.5), 'sickness')?.passes).toBe(false);
  const once = read({ sickness: [18.5, 19.5, 20.5].map((on, place) => ({ on, value: place === 0 ? 1 : 0 })) });
  expect(itemOf(once, 'sickness')?.says).toBe('Motion sickness: up to 1 of 10 in the last 72 h; at most 0.');
  expect(itemOf(read(), 'pain')?.says).toBe('Pain at any site: at most 1 of 10 in the last 24 h.');
  expect(itemOf(read({ pain: [{ on: 20, value: 2 }] }), 'pain')?.passes).toBe(true);
  expect(itemOf(read({ pain: [{ on: 20, value: 2.5 }] }), 'pain')?.passes).toBe(false);
});

const early = (changes: Partial<GateEvidence> = {}): Read =>
  read({
    gate: 'first',
    today: 5,
    enteredStage: 0,
    scores: {
      balance: [at(3, 79), at(4.5, 83)],
      tandemOpen: [at(3, 90), at(4.5, 92)],
      tandemClosed: [at(3, 50), at(4.5, 55)],
      sitToStand: [at(3, 72), at(4.5, 75)],
    },
    standTests: [
      { on: 3, normal: false },
      { on: 4, normal: true },
      { on: 5, normal: true },
    ],
    balanceTests: [{ on: 4.5, fallsIn: [5, 6] }],
    sickness: [{ on: 4.5, value: 1 }],
    pain: [{ on: 4.5, value: 3 }],
    ...changes,
  });

test('the first gate asks for less: falls in conditions 5 and 6 are no hindrance, strength is not asked', () => {
  const reading = early();
  expect(reading).toMatchObject({ kind: 'passed' });
  expect(itemOf(reading, 'falls')?.says).toBe('Falls in standing balance: no fall in conditions 1 to 4.');
  expect(itemOf(reading, 'legStrength')).toBeUndefined();
  expect(itemOf(early({ balanceTests: [{ on: 4, fallsIn: [3, 4] }] }), 'falls')?.says).toBe(
    'Falls in standing balance: fell in condition 3 and condition 4.',
  );
});

test('two normal stand tests are on two days, and a test that was not normal starts the count anew', () => {
  const stand = (...tests: readonly (readonly [on: number, normal: boolean])[]) =>
    itemOf(early({ standTests: tests.map(([on, normal]) => ({ on, normal })) }), 'stand');
  expect(stand([4.2, true], [4.8, true])?.says).toBe('Stand test: normal on 1 of 2 days in a row.');
  expect(stand([3, true], [4, false], [5, true])?.passes).toBe(false);
  expect(stand([3, true], [4, true])?.passes).toBe(true);
  expect(stand([4, true], [3, true], [5, false])?.says).toBe('Stand test: the newest test was not normal.');
  expect(stand([1, true], [1.9, true])?.says).toBe('Stand test: last tested 3 days ago; at most 3 days count.');
  expect(stand()?.says).toBe('Stand test: not tested yet.');
});

test('falls are read from the newest test of standing balance, in date', () => {
  const falls = (...tests: readonly (readonly [on: number, fallsIn: readonly number[]])[]) =>
    itemOf(read({ balanceTests: tests.map(([on, fallsIn]) => ({ on, fallsIn })), required: ['falls'] }), 'falls');
  expect(falls([20, []], [18, [5]])?.passes).toBe(true);
  expect(falls([13.5, []])?.says).toBe('Falls in standing balance: last tested 7 days ago; at most 7 days count.');
  expect(falls()?.says).toBe('Falls in standing balance: not tested yet.');
  expect(falls([20.9, [6]])?.passes).toBe(true);
});

test('a test of today is told as of today, of yesterday in the singular', () => {
  const reading = early({ today: 9, standTests: [{ on: 5.5, normal: true }] });
  expect(itemOf(reading, 'stand')?.says).toMatch(/3 days ago/);
  const items = GATE_ITEMS.map((item) =>
    item.key === 'stand'
      ? { ...item, gates: { ...item.gates, second: { kind: 'normal', days: 1, maxAge: 0.5 } as const } }
      : item,
  );
  const stand = (on: number) => itemOf(read({ standTests: [{ on, normal: true }] }, { items }), 'stand')?.says;
  expect(stand(20)).toBe('Stand test: last tested 1 day ago; at most 0.5 days count.');
  expect(stand(20.4)).toBe('Stand test: last tested today; at most 0.5 days count.');
});

test('an edited table is followed, and an item without an error is refused in words', () => {
  const items = GATE_ITEMS.map((item) => (item.key === 'agility' ? { ...item, typicalError: null } : item));
  expect(itemOf(read({}, { items }), 'agility')?.says).toBe(
    'Agility: The typical error must lie in 0.1 to 50 %; it is NaN.',
  );
});

test('what an item asks is told before any test', () => {
  const [stand, sickness, , falls, , , , agility] = GATE_ITEMS;
  const asked = [stand, sickness, falls, agility].flatMap((item) =>
    item ? GATES.map((gate) => asksOf(item, gate)) : [],
  );
  expect(asked).toEqual([
    'Stand test: normal on 2 days, newest at most 3 days old.',
    'Stand test: normal on 1 day, newest at most 7 days old.',
    'Stand test: normal on 1 day, newest at most 14 days old.',
    'Motion sickness: at most 1 of 10 for 24 h.',
    'Motion sickness: at most 0 of 10 for 72 h.',
    'Motion sickness: at most 0 of 10 for 24 h.',
    'Falls in standing balance: no fall in conditions 1 to 4, at most 3 days ago.',
    'Falls in standing balance: no fall in conditions 1 to 5, at most 7 days ago.',
    'Falls in standing balance: no fall in conditions 1 to 5, at most 14 days ago.',
    'Agility: not asked.',
    'Agility: over 90 %, newest test at most 7 days old.',
    'Agility: over 95 %, newest test at most 14 days old.',
  ]);
  expect(requirementText(null)).toBe('not asked');
});

test('the lines rise from gate to gate, or stay', () => {
  const falling = GATE_ITEMS.filter(({ gates: { first, second, last } }) => {
    const lines = [first, second, last].flatMap((each) => (each?.kind === 'over' ? each.line : []));
    return lines.some((line, place) => line < (lines[place - 1] ?? 0));
  });
  expect(falling.map(({ name }) => name)).toEqual([]);
  expect(gateItems.shown).toHaveLength(GATE_ITEMS.length);
});

const score = fc.double({ min: 50, max: 130, noNaN: true });
const error = fc.double({ min: 0.5, max: 15, noNaN: true });

test('the probability rises with the scores, falls with the line, and is one half on it', () => {
  fc.assert(
    fc.property(fc.array(score, { minLength: 1, maxLength: 3 }), error, score, (all, typicalError, line) => {
      const p = (of: readonly number[], over: number): number => {
        const found = lastTestsOverLine(of, typicalError, over);
        return found.kind === 'estimate' ? found.probability : Number.NaN;
      };
      expect(
        p(
          all.map((each) => each + 1),
          line,
        ),
      ).toBeGreaterThanOrEqual(p(all, line));
      expect(p(all, line + 1)).toBeLessThanOrEqual(p(all, line));
      expect(probabilityOfMean(line, all.length, typicalError, line)).toBe(0.5);
    }),
  );
});

test('a single test is used with a caution, none gives none, and what cannot be is refused', () => {
  expect(lastTestsOverLine([92], 3, 90)).toMatchObject({
    testsUsed: 1,
    cautions: ['One test only: another may well fall on the other side.'],
  });
  expect(lastTestsOverLine([91, 92], 3, 90)).toMatchObject({ testsUsed: 2, cautions: [] });
  expect(lastTestsOverLine([], 3, 90)).toEqual({ kind: 'none', reason: 'There is no test.' });
  expect(lastTestsOverLine([92], 0, 90)).toMatchObject({ kind: 'refused' });
  expect(lastTestsOverLine([92], 51, 90)).toMatchObject({ kind: 'refused' });
  expect(lastTestsOverLine([92], 3, -1)).toEqual({
    kind: 'refused',
    reason: 'The line must lie in 0 to 200 %; it is -1.',
  });
  expect(lastTestsOverLine([92], 3, 201)).toMatchObject({ kind: 'refused' });
  expect(lastTestsOverLine([92, 201], 3, 90)).toEqual({
    kind: 'refused',
    reason: 'A score must lie in 0 to 200 %; one is 201.',
  });
  expect(lastTestsOverLine([-1], 3, 90)).toMatchObject({ kind: 'refused' });
  for (const edge of [0, 200]) expect(lastTestsOverLine([edge], 0.1, edge)).toMatchObject({ probability: 0.5 });
  expect(lastTestsOverLine([90], 50, 90)).toMatchObject({ probability: 0.5 });
});
