import { idOf } from '#domain/identity.ts';
import {
  takeUp,
  type LiftItem,
  type LoadBasis,
  type PhaseName,
  type ProgrammePhase,
  type ProgrammeSession,
} from '#domain/programme.ts';

/* A programme of three days a week on every part of the road, small enough to be counted by hand. */

const FRACTION: LoadBasis = { kind: 'fraction', of: 0.7 };
const EFFORT: LoadBasis = { kind: 'effort', rpe: [6, 7] };

interface Line {
  readonly exercise: string;
  readonly basis: LoadBasis;
}

const FIRST: readonly Line[] = [
  { exercise: 'back-squat', basis: FRACTION },
  { exercise: 'bench-press', basis: EFFORT },
];
const SECOND: readonly Line[] = [
  { exercise: 'deadlift', basis: FRACTION },
  { exercise: 'bent-over-row', basis: EFFORT },
];
const THIRD: readonly Line[] = [
  { exercise: 'back-squat', basis: FRACTION },
  { exercise: 'shoulder-press', basis: EFFORT },
  { exercise: 'heel-raise', basis: EFFORT },
];

const itemOf = (
  name: string,
  { exercise, basis }: Line,
  at: number,
  machineKind: LiftItem['machineKind'],
): LiftItem => ({
  kind: 'lift',
  id: idOf(`${name}-${exercise}`),
  track: idOf(`${name} ${exercise}`),
  exercise: idOf(exercise),
  machineKind,
  condition: 'everyone',
  priority: at + 1,
  shouldFeel: [6, 8],
  source: 'made up for tests',
  leading: true,
  basis,
  warmUps: [],
  sets: [1, 2, 3].map(() => ({ repetitions: 8, rest: 90 })),
  tempo: null,
  superset: null,
  reserve: null,
});

const WEEKDAYS = { ground: [1, 3, 5], aboard: [1, 4, 6] } as const;

const sessionsOf = (phase: string, place: 'ground' | 'aboard'): readonly ProgrammeSession[] =>
  [
    { title: 'First day', lines: FIRST },
    { title: 'Second day', lines: SECOND },
    { title: 'Third day', lines: THIRD },
  ].map(({ title, lines }, day) => ({
    id: idOf(`${phase}-${day}`),
    title,
    weekday: WEEKDAYS[place][day] ?? 7,
    blockMinutes: 60,
    items: lines.map((line, at) =>
      itemOf(`${phase}-${day}`, line, at, place === 'ground' ? 'free bar' : 'resistive machine'),
    ),
  }));

const phaseOf = (name: PhaseName, span: ProgrammePhase['span'], place: 'ground' | 'aboard'): ProgrammePhase => ({
  name,
  span,
  deload: null,
  sessions: sessionsOf(name.replaceAll(' ', '-'), place),
  source: 'made up for tests',
});

const launch = (days: number) => ({ from: 'launch', days }) as const;

export const THREE_DAYS = takeUp({
  programme: idOf('three-days'),
  name: 'Three days',
  number: 1,
  follows: null,
  phases: [
    phaseOf('general preparation', { first: launch(-730), last: launch(-181) }, 'ground'),
    phaseOf('flight-specific preparation', { first: launch(-180), last: launch(-1) }, 'ground'),
    phaseOf('first flight weeks', { first: launch(0), last: launch(13) }, 'aboard'),
    phaseOf('main flight', { first: launch(14), last: null }, 'aboard'),
    phaseOf('first return stage', { first: { from: 'landing', days: 0 }, last: null }, 'ground'),
  ],
});
