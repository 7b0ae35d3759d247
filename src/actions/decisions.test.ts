import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { idOf, type ProgrammeVersionId } from '#domain/identity.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { adjustTrack } from './adjust-track.ts';
import { followProgramme } from './follow-programme.ts';
import { setPolicy } from './set-policy.ts';
import { startEmpty } from './start-log.ts';
import { enter, LAUNCH, OTHER, PERSON, startedHouse } from './started-house.fixture.ts';

test('what is followed is anchored to launch, so that it moves when launch moves', async () => {
  const { workplace, signer, snapshot } = await startedHouse();
  const answer = await followProgramme(workplace, {
    person: OTHER,
    signer,
    programme: SET_PROGRAMME.id,
    from: addDays(LAUNCH, 2),
  });
  expect(answer.kind).toBe('done');
  const decision = snapshot()
    .known(OTHER)
    ?.facts.flatMap((fact) => (fact.kind === 'decided' ? [fact.decision] : []))
    .at(-1);
  expect(decision).toMatchObject({ kind: 'follow', from: { from: 'launch', days: 2 } });
});

test('a programme that is not there, and a day by which nothing is left of it, are refused', async () => {
  const { workplace, signer } = await startedHouse();
  const fieldsOf = async (programme: ProgrammeVersionId, from: number) => {
    const asked = { person: OTHER, signer, programme, from: addDays(LAUNCH, from) };
    const answer = await followProgramme(workplace, asked);
    return answer.kind === 'refused' && answer.problems.map(({ field }) => field);
  };
  expect(await fieldsOf(idOf('none'), 0)).toEqual(['programme']);
  expect(await fieldsOf(SET_PROGRAMME.id, 900)).toEqual(['from']);
});

test('a physician limits and never loads; a deputy signs between two days', async () => {
  const { workplace, signer, setToday } = await startedHouse();
  const person = { signsFor: null, from: null, until: null };
  await enter(workplace, signer, [
    { kind: 'signs', signer: { ...person, id: idOf('doctor'), name: 'Iris Baptiste', role: 'physician' } },
    {
      kind: 'signs',
      signer: {
        id: idOf('deputy'),
        name: 'Jon Achterberg',
        role: 'deputy',
        signsFor: signer,
        from: LAUNCH,
        until: addDays(LAUNCH, 6),
      },
    },
  ]);
  const policyBy = (who: string) =>
    setPolicy(workplace, {
      person: PERSON,
      signer: idOf(who),
      exercise: idOf('back-squat'),
      policy: 'joint-matched',
      reason: 'knees',
    });
  expect((await policyBy('doctor')).kind).toBe('refused');
  expect((await policyBy('deputy')).kind).toBe('refused');
  setToday(LAUNCH);
  expect((await policyBy('deputy')).kind).toBe('done');
  setToday(addDays(LAUNCH, 7));
  expect((await policyBy('deputy')).kind).toBe('refused');
});

test('a track is held from today on, not in the past, and only one that the person has', async () => {
  const { workplace, signer } = await startedHouse();
  const hold = (track: string, from = LAUNCH, until: typeof LAUNCH | null = null) =>
    adjustTrack(workplace, {
      person: PERSON,
      signer,
      change: { kind: 'hold' },
      track: idOf(track),
      from,
      until,
      reason: 'tired',
    });
  const fields = async (answer: ReturnType<typeof hold>) => {
    const settled = await answer;
    return settled.kind === 'refused' ? settled.problems.map(({ field }) => field) : 'done';
  };
  expect(await fields(hold('squat heavy', addDays(LAUNCH, -30), addDays(LAUNCH, -40)))).toEqual(['from', 'until']);
  expect(await fields(hold('juggling'))).toEqual(['track']);
  expect(await fields(hold('squat heavy'))).toBe('done');
});

test('a log is started once', async () => {
  const { workplace } = await startedHouse();
  expect((await startEmpty(workplace, 'Somebody Else')).kind).toBe('refused');
});
