import type { Machine } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { takeUp, type ProgrammeItem, type ProgrammePhase } from '#domain/programme.ts';

/* A week that can be counted by hand, on the ground and aboard. */

/** A cycle where the free bar stands. */
export const GROUND_CYCLE: Machine = {
  id: idOf('ground-cycle-of-a-test'),
  name: 'Ground cycle',
  site: idOf('ground-gym'),
  kind: 'cycle',
  gravity: '1 g',
  groundUnitOf: null,
  unit: 'kg',
  increment: '1',
  least: '0',
  ceiling: '1',
  mostWatts: 400,
  mostSpeed: null,
  limits: [],
  minutes: { setUp: 1, stow: 1, changeExercise: 1, changeLoad: 0 },
  outOfService: null,
};

const any = (name: string, exercise: string, machineKind: ProgrammeItem['machineKind']) =>
  ({
    id: idOf<'item'>(name),
    track: idOf<'track'>(name),
    exercise: idOf<'exercise'>(exercise),
    machineKind,
    condition: 'everyone',
    priority: 1,
    source: 'made up for tests',
  }) as const;

const lift = (
  exercise: string,
  sets: number,
  of: number | null,
  place: 'free bar' | 'resistive machine',
): ProgrammeItem => ({
  ...any(`${place} ${exercise}`, exercise, place),
  kind: 'lift',
  shouldFeel: [6, 8],
  leading: true,
  basis: of === null ? { kind: 'effort', rpe: [6, 7] } : { kind: 'fraction', of },
  warmUps: [],
  sets: Array.from({ length: sets }, () => ({ repetitions: 6, rest: 60 })),
  tempo: null,
  superset: null,
  reserve: null,
});

const bouts = (
  name: string,
  times: number,
  minutes: number,
  easy: number,
  feel: readonly [number, number],
): ProgrammeItem => ({
  ...any(name, 'cycling', 'cycle'),
  kind: 'bouts',
  shouldFeel: feel,
  warmUpSeconds: 300,
  bouts: Array.from({ length: times }, () => ({ seconds: 60 * minutes, intensity: null, easy: 60 * easy })),
  coolDownSeconds: 300,
});

const squeezing: ProgrammeItem = {
  ...any('squeezing', 'crush-hold', 'hand gear'),
  kind: 'drill',
  shouldFeel: [6, 8],
  sets: [1, 2].map(() => ({ work: { kind: 'hold', seconds: 30 }, rest: 60 })),
  target: null,
};

const phase = (
  name: ProgrammePhase['name'],
  span: ProgrammePhase['span'],
  place: 'free bar' | 'resistive machine',
) => ({
  name,
  span,
  deload: null,
  source: 'made up for tests',
  sessions: [
    {
      id: idOf<'session'>(`${name} lifts`),
      title: 'Lifts',
      weekday: 1,
      blockMinutes: 240,
      items: [
        lift('back-squat', 4, 0.78, place),
        lift('deadlift', 3, 0.7, place),
        lift('single-leg-heel-raise', 2, null, place),
        lift('bent-over-row', 3, null, place),
        squeezing,
      ],
    },
    {
      id: idOf<'session'>(`${name} bouts`),
      title: 'Bouts',
      weekday: 3,
      blockMinutes: 240,
      items: [bouts(`${name} hard`, 4, 4, 3, [7, 9]), bouts(`${name} steady`, 1, 30, 0, [5, 6])],
    },
  ],
});

export const COUNTED = takeUp({
  programme: idOf('counted'),
  name: 'Counted',
  number: 1,
  follows: null,
  phases: [
    phase(
      'general preparation',
      { first: { from: 'launch', days: -730 }, last: { from: 'launch', days: -1 } },
      'free bar',
    ),
    phase('main flight', { first: { from: 'launch', days: 0 }, last: null }, 'resistive machine'),
  ],
});

/** The same week without its endurance. */
export const LIFTS_ONLY = takeUp({
  ...COUNTED,
  programme: idOf('lifts-only'),
  name: 'Lifts only',
  phases: COUNTED.phases.map((each) => ({ ...each, sessions: each.sessions.slice(0, 1) })),
});
