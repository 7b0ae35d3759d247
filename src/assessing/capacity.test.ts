import { expect, test } from 'vitest';
import { addDays, isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { idOf, instant, type ExerciseId, type MachineId } from '#domain/identity.ts';
import type { Fact, FactBody, Sequence } from '#domain/fact.ts';
import { knownAt, type Known } from '#domain/known.ts';
import { endOfLog, enterInLog } from '#domain/log.ts';
import { shippedFacts } from '#shipped/shipped-house.ts';
import { capacityReader } from './capacity.ts';

const LAUNCH = isoDay('2027-03-01');
const ANY_PERSON = idOf<'person'>('p');

const knownWith = (bodies: readonly FactBody[]): Known => {
  const all: readonly FactBody[] = [
    ...shippedFacts(),
    { kind: 'introduced', person: ANY_PERSON, name: 'P', sex: 'male', birthDate: null, trainingAge: null },
    { kind: 'dated', mission: idOf('m'), name: 'M', site: idOf('aboard'), launch: LAUNCH, landing: null },
    { kind: 'assigned', person: ANY_PERSON, mission: idOf('m'), role: 'prime', team: 'ours', spaceWalks: false },
    ...bodies,
  ];
  const log = all.reduce<readonly Fact[]>((before, body, place) => {
    const draft = {
      id: idOf<'fact'>(`f${place}`),
      body,
      recordedBy: idOf<'signer'>('s'),
      supersedes: null,
      reason: null,
    };
    return [...before, enterInLog(draft, (place + 1) as Sequence, instant('2027-01-01T00:00:00.000Z'))];
  }, []);
  const known = knownAt(log, ANY_PERSON, endOfLog(log));
  if (!known) throw new Error('Nobody is known.');
  return known;
};

const lifted = (
  exercise: string,
  load: string,
  repetitions: number,
  reserve: number | null,
  daysBefore: number,
): FactBody => ({
  kind: 'lifted',
  person: ANY_PERSON,
  day: addDays(LAUNCH, -daysBefore),
  exercise: idOf(exercise),
  machine: idOf('ground-free-bar'),
  load: entered(load, 'kg'),
  repetitions,
  effort: reserve === null ? null : { kind: 'repetitions in reserve', value: reserve },
  side: null,
});

const read = (known: Known, exercise: string, machine: string, on = LAUNCH) => {
  const lift = known.house.exercises.get(exercise as ExerciseId);
  const on_ = known.house.machines.get(machine as MachineId);
  if (!lift || !on_) throw new Error('Not in the house.');
  const reading = capacityReader(known).on(lift, on_, on);
  return reading.kind === 'estimate' ? reading.estimate : reading.says;
};

test('the first observation is the level with its variance: no prior', () => {
  // 100 kg × 5 with 2 in reserve: Wathan at seven repetitions, 124.030 kg; spread 0.08045 (printed values).
  const estimate = read(
    knownWith([lifted('back-squat', '100', 5, 2, 10)]),
    'back-squat',
    'ground-free-bar',
    addDays(LAUNCH, -10),
  );
  expect(estimate).toMatchObject({ observations: 1, of: 1, basis: 'known' });
  if (typeof estimate === 'string') return;
  expect(Math.abs(estimate.median - 124.03)).toBeLessThanOrEqual(0.0005);
  expect(Math.abs(estimate.logSd - 0.08045)).toBeLessThanOrEqual(0.000005);
});

test('ahead of the last observation the level is held and the interval grows', () => {
  const known = knownWith([lifted('back-squat', '100', 1, 0, 60)]);
  const [then, later] = [
    read(known, 'back-squat', 'ground-free-bar', addDays(LAUNCH, -60)),
    read(known, 'back-squat', 'ground-free-bar', addDays(LAUNCH, -10)),
  ];
  if (typeof then === 'string' || typeof later === 'string') throw new Error('No estimate.');
  expect(later.median).toBe(then.median);
  // 50 days of drift at 1.6e-5 a day on top of 0.03².
  expect(later.logSd).toBeCloseTo(Math.sqrt(0.03 ** 2 + 50 * 1.6e-5), 12);
});

test('a flight key starts from the ground: same level, variance grown to launch and 0.10² once', () => {
  const estimate = read(knownWith([lifted('back-squat', '120', 1, 0, 30)]), 'back-squat', 'resistive-machine');
  if (typeof estimate === 'string') throw new Error(estimate);
  expect(estimate.basis).toBe('carried over from 1 g');
  expect(estimate.median).toBeCloseTo(120, 12);
  expect(estimate.logSd).toBeCloseTo(Math.sqrt(0.03 ** 2 + 30 * 1.6e-5 + 0.01), 12);
});

test('a ratio carries its own spread', () => {
  const estimate = read(
    knownWith([lifted('bench-press', '100', 1, 0, 1)]),
    'shoulder-press',
    'ground-free-bar',
    addDays(LAUNCH, -1),
  );
  if (typeof estimate === 'string') throw new Error(estimate);
  expect(estimate).toMatchObject({ basis: 'by ratio' });
  expect(estimate.median).toBeCloseTo(65, 12);
  expect(estimate.logSd).toBeCloseTo(Math.hypot(0.03, 0.15), 12);
});

test('a lift without effort is a lower bound: it raises an estimate, never lowers it, and starts none', () => {
  expect(read(knownWith([lifted('back-squat', '100', 5, null, 9)]), 'back-squat', 'ground-free-bar')).toContain(
    'no test',
  );
  const before = [lifted('back-squat', '100', 1, 0, 9)];
  const [alone, lower, higher] = [
    before,
    [...before, lifted('back-squat', '60', 3, null, 5)],
    [...before, lifted('back-squat', '110', 3, null, 5)],
  ].map((facts) => read(knownWith(facts), 'back-squat', 'ground-free-bar', addDays(LAUNCH, -5)));
  if (typeof alone !== 'object' || typeof lower !== 'object' || typeof higher !== 'object')
    throw new Error('No estimate.');
  expect(lower.median).toBe(alone.median);
  expect(higher.median).toBeGreaterThan(alone.median);
});

test('where no maximum makes sense there is none, and the item runs on effort', () => {
  expect(read(knownWith([lifted('bent-over-row', '60', 8, 2, 9)]), 'bent-over-row', 'ground-free-bar')).toBe(
    'none: runs on effort',
  );
});

test('a heel raise is read as the maximum of twelve repetitions', () => {
  const estimate = read(
    knownWith([lifted('heel-raise', '100', 12, 0, 2)]),
    'heel-raise',
    'ground-free-bar',
    addDays(LAUNCH, -2),
  );
  if (typeof estimate === 'string') throw new Error(estimate);
  expect(estimate).toMatchObject({ of: 12 });
  expect(estimate.median).toBeCloseTo(100, 12);
});
