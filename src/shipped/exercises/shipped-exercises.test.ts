import { stepsNotOver } from '#units/rounding.ts';
import { expect, test } from 'vitest';
import { PATTERNS, type Pattern } from '#domain/catalogue.ts';
import { exerciseFinder } from '#interchange/layout/exercise-names.ts';
import { SHIPPED_EXERCISES } from './shipped-exercises.ts';
import { WITH_SUBSTITUTES } from './substitutes.table.ts';

test('there are at least forty, each with an identity of its own', () => {
  expect(SHIPPED_EXERCISES.length).toBeGreaterThanOrEqual(40);
  expect(new Set(SHIPPED_EXERCISES.map(({ id }) => id)).size).toBe(SHIPPED_EXERCISES.length);
});

test('no spelling stands for two exercises', () => {
  const spellings = SHIPPED_EXERCISES.flatMap(({ name, alsoKnownAs }) => [name, ...alsoKnownAs]).map((spelling) =>
    spelling.toLowerCase(),
  );
  expect(spellings.filter((spelling, place) => spellings.indexOf(spelling) !== place)).toEqual([]);
});

test('neither upright rows nor good mornings ship', () => {
  const spellings = SHIPPED_EXERCISES.flatMap(({ name, alsoKnownAs }) => [name, ...alsoKnownAs]).join(' ');
  expect(spellings).not.toMatch(/upright|good.?morning/i);
});

test('a sheet finds every spelling in any case and order of words, and never two exercises', () => {
  const find = exerciseFinder(SHIPPED_EXERCISES);
  for (const { id, name, alsoKnownAs } of SHIPPED_EXERCISES)
    for (const written of [name, ...alsoKnownAs].flatMap((one) => [
      one,
      one.toUpperCase(),
      one.split(' ').toReversed().join(', '),
    ]))
      expect({ written, is: find(written) }).toEqual({ written, is: id });
});

test('cues, faults and cautions fit a card line, and every exercise has all three', () => {
  for (const { name, cues, faults, cautions } of SHIPPED_EXERCISES)
    for (const lines of [cues, faults, cautions]) {
      expect({ name, lines: lines.length }).not.toEqual({ name, lines: 0 });
      for (const line of lines) expect(line).toMatch(/^[A-Z0-9][\x20-\x7e]{8,58}\.$/);
      expect(new Set(lines).size).toBe(lines.length);
    }
});

test('every exercise says what it can be done on and which sites it loads, each once', () => {
  for (const { machineKinds, loads } of SHIPPED_EXERCISES)
    for (const listed of [machineKinds, loads]) {
      expect(listed.length).toBeGreaterThan(0);
      expect(new Set(listed).size).toBe(listed.length);
    }
});

test('what is carried in the hands loads the hands or what they hang from', () => {
  const arms: readonly string[] = ['hand', 'wrist', 'elbow', 'shoulder'];
  const carried = SHIPPED_EXERCISES.filter(({ carriedAt }) => carriedAt === 'hands');
  expect(carried.filter(({ loads }) => !loads.some((site) => arms.includes(site))).map(({ id }) => id)).toEqual([]);
});

test('every pattern has an exercise, and the families that a long flight asks for are there', () => {
  const patterns = new Set(SHIPPED_EXERCISES.map(({ pattern }) => pattern));
  expect([...patterns].toSorted()).toEqual([...PATTERNS].toSorted());
  const count = (pattern: Pattern): number => SHIPPED_EXERCISES.filter((each) => each.pattern === pattern).length;
  for (const [pattern, least] of [
    ['grip', 6],
    ['shoulder care', 4],
    ['trunk', 4],
    ['jump', 3],
    ['balance', 2],
    ['squat', 8],
    ['hip hinge', 5],
    ['mobility', 5],
  ] as const)
    expect({ pattern, enough: count(pattern) >= least }).toEqual({ pattern, enough: true });
});

test('a share model stands only where its movement is the one of the exercise', () => {
  const modelled = SHIPPED_EXERCISES.filter(({ shareModel }) => shareModel !== 'none').map(({ id }) => id as string);
  expect(modelled.toSorted()).toEqual([
    'back-squat',
    'bench-press',
    'bent-over-row',
    'biceps-curl',
    'deadlift',
    'front-raise',
    'heel-raise',
    'incline-press',
    'lateral-raise',
    'romanian-deadlift',
    'shoulder-press',
    'single-leg-heel-raise',
    'single-leg-squat',
    'split-squat',
    'triceps-extension',
  ]);
});

test('squats and hinges without a model of their own are kept off the resistive machine, or run on effort', () => {
  const unmodelled = SHIPPED_EXERCISES.filter(
    ({ pattern, shareModel }) => (pattern === 'squat' || pattern === 'hip hinge') && shareModel === 'none',
  );
  const onTheMachine = unmodelled.filter(({ machineKinds }) => machineKinds.includes('resistive machine'));
  expect(onTheMachine.map(({ id, capacity }) => [id, capacity.kind])).toEqual([
    ['isometric-squat-push', 'none'],
    ['hip-thrust', 'none'],
  ]);
});

test('who has never squatted finds a squat without a bar and one with a light weight, neither with a capacity', () => {
  const first = SHIPPED_EXERCISES.filter(({ id }) => id === 'body-weight-squat' || id === 'goblet-squat');
  expect(first.map(({ pattern, capacity }) => [pattern, capacity.kind])).toEqual([
    ['squat', 'none'],
    ['squat', 'none'],
  ]);
  for (const { machineKinds } of first) expect(machineKinds).not.toContain('free bar');
});

test('jumps and standing ask for weight or a harness, and jumps wait for bone after landing', () => {
  const needing = SHIPPED_EXERCISES.filter(({ pattern }) => pattern === 'jump' || pattern === 'balance');
  for (const { pattern, machineKinds, cautions } of needing) {
    expect(machineKinds.every((kind) => kind === 'body weight' || kind === 'treadmill')).toBe(true);
    if (pattern === 'jump') expect(cautions.join(' ')).toContain('before bone and physician clear them');
  }
});

test('heavy gripping warns of the days before a space walk', () => {
  for (const id of [
    'crush-hold',
    'grip-pulses',
    'finger-hold',
    'pinch-hold',
    'thick-handle-hold',
    'two-hand-carry',
    'deadlift',
    'chin-up',
  ])
    expect(SHIPPED_EXERCISES.find((each) => each.id === id)?.cautions.join(' ')).toMatch(
      /48 to 72 hours before a space walk/,
    );
});

const IDS: readonly string[] = SHIPPED_EXERCISES.map(({ id }) => id);

test('substitutes are other shipped exercises, each named once, and none is listed for what does not ship', () => {
  expect(WITH_SUBSTITUTES.filter((id) => !IDS.includes(id))).toEqual([]);
  for (const { id, substitutes } of SHIPPED_EXERCISES) {
    const named = substitutes.map(({ exercise }) => exercise as string);
    expect({ id, strangers: named.filter((each) => !IDS.includes(each) || each === id) }).toEqual({
      id,
      strangers: [],
    });
    expect(new Set(named).size).toBe(named.length);
  }
});

test('coverage lies in 0 to 1, rates the same qualities in every line of an exercise, and covers something', () => {
  for (const { id, substitutes } of SHIPPED_EXERCISES) {
    const qualities = substitutes.map(({ covers }) => Object.keys(covers).join(', '));
    expect({ id, ways: new Set(qualities).size <= 1 }).toEqual({ id, ways: true });
    for (const { covers } of substitutes) {
      const rated = Object.values(covers);
      for (const each of rated) expect(each).toBeGreaterThanOrEqual(0);
      for (const each of rated) expect(each).toBeLessThanOrEqual(1);
      expect(Math.max(...rated)).toBeGreaterThan(0);
    }
  }
});

test('everything but balance and mobility has a substitute; none of the qualities is what those two train', () => {
  for (const { id, pattern, substitutes } of SHIPPED_EXERCISES)
    expect({ id, none: substitutes.length === 0 }).toEqual({
      id,
      none: pattern === 'balance' || pattern === 'mobility',
    });
});

test('endurance is rated for what it trains: on the cycle nothing is left of the impact of running', () => {
  const rated = (id: string) => SHIPPED_EXERCISES.find((each) => each.id === id)?.substitutes ?? [];
  for (const id of ['treadmill-run', 'treadmill-walk', 'overground-walk', 'cycling', 'rowing'])
    for (const { covers } of rated(id)) expect(Object.keys(covers)).toContain('aerobic');
  expect(rated('treadmill-run')[0]).toEqual({ exercise: 'cycling', covers: { aerobic: 1, impact: 0 } });
});

test('mobility asks for nothing that is not always there, in flight too', () => {
  const mobility = SHIPPED_EXERCISES.filter(({ pattern }) => pattern === 'mobility');
  expect(new Set(mobility.flatMap(({ machineKinds }) => machineKinds))).toEqual(new Set(['no gear']));
  const sites = new Set(mobility.flatMap(({ loads }) => loads));
  for (const site of ['ankle', 'hip', 'upper back', 'shoulder', 'wrist'] as const) expect(sites).toContain(site);
});

test('what hangs on a harness loads shoulders, hips and skin, so that a limit of each reaches it', () => {
  for (const { loads } of SHIPPED_EXERCISES.filter(({ machineKinds }) => machineKinds.join() === 'treadmill'))
    expect(loads).toEqual(expect.arrayContaining(['shoulder', 'hip', 'skin']));
});

test('ratios rest on a shipped exercise with a tested maximum, and are those of common practice', () => {
  const ratios = SHIPPED_EXERCISES.flatMap(({ id, capacity }) =>
    capacity.kind === 'ratio' ? [{ id, ...capacity }] : [],
  );
  expect(ratios.map(({ id, to, ratio }) => [id, to, ratio])).toEqual([
    ['romanian-deadlift', 'deadlift', 0.75],
    ['single-leg-squat', 'back-squat', 0.37],
    ['shoulder-press', 'bench-press', 0.65],
  ]);
  for (const { to } of ratios)
    expect(SHIPPED_EXERCISES.find(({ id }) => id === to)?.capacity.kind).toBe('one-repetition maximum');
});

test('squat, deadlift and bench press are tested for one repetition, heel raises for twelve', () => {
  const capacities = Object.fromEntries(SHIPPED_EXERCISES.map(({ id, capacity }) => [id, capacity]));
  for (const id of ['back-squat', 'deadlift', 'bench-press'])
    expect(capacities[id]).toEqual({ kind: 'one-repetition maximum' });
  expect(capacities['heel-raise']).toEqual({ kind: 'repetition maximum', of: 12 });
});

test('whatever is carried on the shoulders loads shoulder and neck, so that a restriction of either reaches it', () => {
  const carried = SHIPPED_EXERCISES.filter(({ carriedAt }) => carriedAt === 'shoulders');
  expect(carried.map(({ id }) => id)).toContain('back-squat');
  for (const { loads } of carried) expect(loads).toEqual(expect.arrayContaining(['shoulder', 'neck']));
});

test('every rounding step holds at least one increment of a machine in steps of 1 lb or 0.5 kg', () => {
  for (const { roundTo } of SHIPPED_EXERCISES) {
    expect(stepsNotOver(Number(roundTo.lb), 1)).toBeGreaterThanOrEqual(1);
    expect(stepsNotOver(Number(roundTo.kg), 0.5)).toBeGreaterThanOrEqual(1);
  }
});

test('every exercise says what its capacity and its share rest on', () => {
  for (const { source } of SHIPPED_EXERCISES) {
    expect(source).toMatch(/^Capacity: /);
    expect(source).toMatch(/(Share|share) of body weight/);
  }
});
