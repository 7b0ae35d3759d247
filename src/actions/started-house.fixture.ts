import { addDays, isoDay, type Day } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import type { FactBody } from '#domain/fact.ts';
import { idOf, instant, type PersonId, type SignerId } from '#domain/identity.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { openLogStore } from '#storage/open-log-store.ts';
import { followProgramme } from './follow-programme.ts';
import { recordFacts } from './record-facts.ts';
import { snapshotOf, type Snapshot } from './snapshot.ts';
import { startEmpty } from './start-log.ts';
import type { Workplace } from './workplace.ts';

export const LAUNCH = isoDay('2031-05-05');
export const PERSON: PersonId = idOf('birte-okonkwo');
export const OTHER: PersonId = idOf('sami-lindgren');

export interface StartedHouse {
  readonly workplace: Workplace;
  readonly signer: SignerId;
  readonly snapshot: () => Snapshot;
  readonly setToday: (day: Day) => void;
}

const MISSION = idOf<'mission'>('tern-4');

/** A house of their own with two people, one of them tested and on the shipped programme, two days before launch. */
export const startedHouse = async (): Promise<StartedHouse> => {
  let today = addDays(LAUNCH, -2);
  let ids = 0;
  const clock = () => instant('2031-05-03T09:00:00.000Z');
  const opened = await openLogStore({ file: 'memory', clock, about: 'own' });
  if (opened.kind !== 'opened') throw new Error(opened.problem.what);
  const workplace: Workplace = {
    store: opened.store,
    today: () => today,
    newId: () => `id-${(ids += 1)}`,
    program: 'Ballast, in a test',
  };
  const started = await startEmpty(workplace, 'Hanne Visser');
  if (started.kind !== 'done') throw new Error('The log could not be started.');
  const signer = started.result.signer.id;
  await enter(workplace, signer, firstFacts());
  const followed = await followProgramme(workplace, {
    person: PERSON,
    signer,
    programme: SET_PROGRAMME.id,
    from: LAUNCH,
  });
  if (followed.kind !== 'done') throw new Error(followed.problems.map(({ what }) => what).join(' '));
  return {
    workplace,
    signer,
    snapshot: () => snapshotOf(opened.store.facts(), today),
    setToday: (day) => {
      today = day;
    },
  };
};

export const enter = async (workplace: Workplace, signer: SignerId, bodies: readonly FactBody[]): Promise<void> => {
  const entries = bodies.map((body) => ({ body, supersedes: null, reason: null }));
  const answer = await recordFacts(workplace, signer, entries);
  if (answer.kind !== 'done') throw new Error(answer.problems.map(({ what, field }) => `${field}: ${what}`).join(' '));
};

const firstFacts = (): readonly FactBody[] => [
  {
    kind: 'dated',
    mission: MISSION,
    name: 'Tern 4',
    site: idOf('aboard'),
    launch: LAUNCH,
    landing: { earliest: addDays(LAUNCH, 170), latest: addDays(LAUNCH, 170) },
  },
  ...[
    { person: PERSON, name: 'Birte Okonkwo', sex: 'female' as const },
    { person: OTHER, name: 'Sami Lindgren', sex: 'male' as const },
  ].flatMap(({ person, name, sex }): readonly FactBody[] => [
    { kind: 'introduced', person, name, sex, birthDate: isoDay('1994-02-11'), trainingAge: entered('6', 'years') },
    { kind: 'assigned', person, mission: MISSION, role: 'prime', team: 'ours', spaceWalks: false },
    { kind: 'measured', person, day: addDays(LAUNCH, -20), what: 'body mass', value: entered('71.5', 'kg') },
  ]),
  ...TESTS.map(([exercise, load, repetitions]): FactBody => ({
    kind: 'lifted',
    person: PERSON,
    day: addDays(LAUNCH, -20),
    exercise: idOf(exercise),
    machine: idOf('ground-free-bar'),
    load: entered(load, 'kg'),
    repetitions,
    effort: { kind: 'repetitions in reserve', value: 0 },
    side: null,
  })),
];

const TESTS: readonly (readonly [string, string, number])[] = [
  ['back-squat', '95', 5],
  ['deadlift', '115', 5],
  ['heel-raise', '100', 12],
  ['bench-press', '55', 5],
];
