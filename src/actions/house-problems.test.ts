import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import { idOf, type ExerciseId, type FactId } from '#domain/identity.ts';
import { recordFacts } from './record-facts.ts';
import { enter, LAUNCH, PERSON, startedHouse, type StartedHouse } from './started-house.fixture.ts';

const house = await startedHouse();
const { house: entered } = house.snapshot();

const exercise = (id: string): Exercise => {
  const found = entered.exercises.get(idOf<'exercise'>(id));
  if (!found) throw new Error(`There is no ${id}.`);
  return found;
};

const machine = (id: string): Machine => {
  const found = entered.machines.get(idOf<'machine'>(id));
  if (!found) throw new Error(`There is no ${id}.`);
  return found;
};

const asExercise = (change: object, of = 'back-squat'): object => ({
  kind: 'catalogued',
  entry: { kind: 'exercise', exercise: { ...exercise(of), ...change } },
});

const asMachine = (change: object, of = 'resistive-machine'): object => ({
  kind: 'catalogued',
  entry: { kind: 'machine', machine: { ...machine(of), ...change } },
});

const deputy = (change: object): object => ({
  kind: 'signs',
  signer: {
    id: 'a-deputy',
    name: 'Ines Corvo',
    role: 'deputy',
    signsFor: house.signer,
    from: LAUNCH,
    until: addDays(LAUNCH, 9),
    ...change,
  },
});

const record = ({ workplace, signer }: StartedHouse, body: object, supersedes: FactId | null = null) =>
  recordFacts(workplace, signer, [{ body, supersedes, reason: 'as found' }]);

/** The fields at which an entry is refused; none where it was taken. */
const refusedAt = async (at: StartedHouse, body: object, supersedes: FactId | null = null) => {
  const answer = await record(at, body, supersedes);
  return answer.kind === 'refused' ? answer.problems.map(({ field }) => field?.replace('entries.0.', '')) : [];
};

const substitute = (id: string) => ({ exercise: id, covers: { strength: 0.5 } });

test.each([
  { is: 'done on nothing', body: asExercise({ machineKinds: [] }), at: ['entry.exercise.machineKinds'] },
  { is: 'loading nothing', body: asExercise({ loads: [] }), at: ['entry.exercise.loads'] },
  { is: 'named like another', body: asExercise({ name: 'DEADLIFT' }), at: ['entry.exercise.name'] },
  {
    is: 'spelled like another',
    body: asExercise({ alsoKnownAs: ['squat', 'dead-lift'] }),
    at: ['entry.exercise.alsoKnownAs.1'],
  },
  {
    is: 'its own substitute, and one twice',
    body: asExercise({ substitutes: ['back-squat', 'deadlift', 'deadlift'].map(substitute) }),
    at: ['entry.exercise.substitutes.0.exercise', 'entry.exercise.substitutes.2.exercise'],
  },
  {
    is: 'replaced by what is not there',
    body: asExercise({ substitutes: [substitute('hop')] }),
    at: ['entry.exercise.substitutes.0.exercise'],
  },
  {
    is: 'a ratio of a ratio',
    body: asExercise({ capacity: { kind: 'ratio', to: 'romanian-deadlift', ratio: 0.5 } }, 'bench-press'),
    at: ['entry.exercise.capacity.to'],
  },
  {
    is: 'what a ratio rests on, without a capacity',
    body: asExercise({ capacity: { kind: 'none' } }, 'deadlift'),
    at: ['entry.exercise.capacity.kind'],
  },
])('an exercise $is is refused where that was typed', async ({ body, at }) => {
  expect(await refusedAt(house, body)).toEqual(expect.arrayContaining(at));
});

test.each([
  { is: 'at no site', body: asMachine({ site: 'moon' }), at: ['entry.machine.site'] },
  { is: 'of another gravity than its site', body: asMachine({ site: 'ground-gym' }), at: ['entry.machine.site'] },
  { is: 'of another kind than before', body: asMachine({ kind: 'cable column' }), at: ['entry.machine.kind'] },
  { is: 'with more least than most', body: asMachine({ least: '700' }), at: ['entry.machine.ceiling'] },
  {
    is: 'whose least is no whole step',
    body: asMachine({ least: '21' }, 'ground-free-bar'),
    at: ['entry.machine.least'],
  },
  {
    is: 'limited above its ceiling, and twice',
    body: asMachine({
      limits: ['601', '100'].map((most) => ({ exercise: 'deadlift', attachment: 'cable', most })),
    }),
    at: ['entry.machine.limits.0.most', 'entry.machine.limits.1.exercise'],
  },
  {
    is: 'limited for what is not there',
    body: asMachine({ limits: [{ exercise: 'hop', attachment: null, most: '100' }] }),
    at: ['entry.machine.limits.0.exercise'],
  },
  {
    is: 'back before it is out, for no reason',
    body: asMachine({ outOfService: { from: LAUNCH, until: addDays(LAUNCH, -1), reason: ' ' } }),
    at: ['entry.machine.outOfService.until', 'entry.machine.outOfService.reason'],
  },
  {
    is: 'a ground unit of a bar',
    body: asMachine({ groundUnitOf: 'resistive-machine' }, 'ground-free-bar'),
    at: ['entry.machine.groundUnitOf'],
  },
])('a machine $is is refused where that was typed', async ({ body, at }) => {
  expect(await refusedAt(house, body)).toEqual(at);
});

test.each([
  { set: { horizonDays: 29 }, at: ['policies.horizonDays'] },
  { set: { raiseAtMost: 0.3 }, at: ['policies.raiseAtMost'] },
  { set: { effortSteps: [0.05, 1.5] }, at: ['policies.effortSteps', 'policies.effortSteps'] },
  { set: { discomfortEndsSession: 8 }, at: ['policies.discomfortEndsSession'] },
  { set: { discomfortStops: 2 }, at: ['policies.discomfortStops'] },
  { set: {}, at: ['policies'] },
])('policies $set are refused at their own fields', async ({ set, at }) => {
  expect(await refusedAt(house, { kind: 'policies set', policies: set })).toEqual(at);
});

test.each([
  { body: deputy({ signsFor: 'nobody' }), at: ['signer.signsFor'] },
  { body: deputy({ from: null, until: null }), at: ['signer.from', 'signer.until'] },
  { body: deputy({ until: addDays(LAUNCH, -1) }), at: ['signer.until'] },
  { body: deputy({ name: 'hanne visser' }), at: ['signer.name'] },
])('a deputy is refused at $at', async ({ body, at }) => {
  expect(await refusedAt(house, body)).toEqual(at);
});

test('the last specialist cannot end, nor become something else', async () => {
  const signer = { id: house.signer, name: 'Hanne Visser', signsFor: null, from: null, until: addDays(LAUNCH, -9) };
  expect(await refusedAt(house, { kind: 'signs', signer: { ...signer, role: 'specialist' } })).toEqual([
    'signer.until',
  ]);
  expect(await refusedAt(house, { kind: 'signs', signer: { ...signer, role: 'physician', until: null } })).toEqual([
    'signer.role',
  ]);
});

test('a site keeps to its gravity and has a name of its own', async () => {
  const site = (change: object) => ({ kind: 'catalogued', entry: { kind: 'site', site: change } });
  expect(await refusedAt(house, site({ id: 'ground-gym', name: 'aboard', place: 'aboard' }))).toEqual([
    'entry.site.name',
    'entry.site.place',
  ]);
});

test('a calibration that halves is a mistake in the numbers', async () => {
  const calibrated = { kind: 'calibrated', machine: 'resistive-machine', day: LAUNCH, factor: '0.4' };
  expect(await refusedAt(house, calibrated)).toEqual(['factor']);
});

const factOf = (at: StartedHouse, id: ExerciseId): FactId => {
  const fact = at.workplace.store.facts().findLast((each) => {
    if (each.kind !== 'catalogued') return false;
    return each.entry.kind === 'exercise' ? each.entry.exercise.id === id : false;
  });
  return fact?.id ?? idOf('none');
};

test('one thing does not take the place of another', async () => {
  const at = await startedHouse();
  const squat = factOf(at, idOf('back-squat'));
  expect(await refusedAt(at, asExercise({ name: 'Front squat, light' }, 'deadlift'), squat)).toEqual(['supersedes']);
  expect(at.snapshot().house.exercises.has(idOf('back-squat'))).toBe(true);
});

test('an exercise that changes supersedes the entry before, which stays in the log with the reason', async () => {
  const at = await startedHouse();
  const before = factOf(at, idOf('back-squat'));
  const answer = await record(at, asExercise({ cues: ['Heels down.'] }), before);
  expect(answer.kind === 'done' && answer.facts[0]).toMatchObject({ supersedes: before, reason: 'as found' });
  expect(at.snapshot().house.exercises.get(idOf('back-squat'))?.cues).toEqual(['Heels down.']);
  expect(at.workplace.store.facts().some(({ id }) => id === before)).toBe(true);
  expect(await refusedAt(at, asExercise({ cues: ['Heels up.'] }), before)).toEqual(['supersedes']);
});

test("an exercise does not leave a physician's limit by being described otherwise, until it is lifted", async () => {
  const at = await startedHouse();
  const restriction = {
    scope: { kind: 'site' as const, site: 'knee' as const, side: null },
    limit: { kind: 'forbidden' as const },
    toldBy: 'Dr Ferreira',
    toldOn: addDays(LAUNCH, -2),
    confirmed: true,
    from: addDays(LAUNCH, -2),
    reviewOn: null,
  };
  const { workplace, signer } = at;
  await enter(workplace, signer, [{ kind: 'restricted', person: PERSON, restriction, medicalReason: null }]);
  const withoutKnee = asExercise({ loads: exercise('back-squat').loads.filter((site) => site !== 'knee') });
  expect(await refusedAt(at, withoutKnee)).toEqual(['entry.exercise.loads']);
  const fact = workplace.store.facts().findLast(({ kind }) => kind === 'restricted')?.id ?? idOf<'fact'>('none');
  const lifted = { kind: 'restriction lifted' as const, person: PERSON, restriction: fact };
  await enter(workplace, signer, [{ ...lifted, toldBy: 'Dr Ferreira', on: addDays(LAUNCH, -2) }]);
  expect(await refusedAt(at, withoutKnee)).toEqual([]);
});

test('a policy that is set first keeps its reason too', async () => {
  const at = await startedHouse();
  const answer = await record(at, { kind: 'policies set', policies: { horizonDays: 10 } });
  expect(answer.kind === 'done' && answer.facts[0]?.reason).toBe('as found');
  expect(at.snapshot().house.policies.horizonDays).toBe(10);
});

test('a machine kind that a programme needs is lost only by somebody who says that it is meant', async () => {
  const at = await startedHouse();
  const body = asExercise({ machineKinds: ['free bar'] });
  expect(await refusedAt(at, body)).toEqual(['entry.exercise.machineKinds']);
  const { workplace, signer } = at;
  const answer = await recordFacts(workplace, signer, [{ body, supersedes: null, reason: null, sure: true }]);
  expect(answer.kind).toBe('done');
});
