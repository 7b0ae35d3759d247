import fc from 'fast-check';
import { addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { idOf } from '#domain/identity.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { BoutIntensity } from '#domain/prescription.ts';
import type { BoutsItem, DrillItem, DrillWork, LiftItem, ProgrammeBout, ProgrammeItem } from '#domain/programme.ts';
import type { RestrictionLimit, RestrictionScope } from '#domain/restriction.ts';
import { LAUNCH, PERSON } from './rehearsal.ts';
import {
  A_BIRTHDAY,
  BAR,
  bouts,
  drill,
  EXERCISES,
  GRIP,
  HOLD,
  MACHINES,
  Modes,
  RIDE,
  ROW,
  RUN,
  SQUAT,
  WALK,
} from './all-modes.ts';

/* Programmes of all three kinds, people, machines and limits, to be drawn by tests. */

export const whole = (min: number, max: number) => fc.integer({ min, max });
const span = (min: number, max: number, by: number) =>
  fc
    .tuple(whole(min, max), whole(min, max))
    .map(([a, b]) => ({ least: Math.min(a, b) / by, most: Math.max(a, b) / by }));

/** Weighed towards what is reckoned, and towards the ends where limits bind. */
const intensity: fc.Arbitrary<BoutIntensity | null> = fc.oneof(
  fc.constant(null),
  {
    weight: 6,
    arbitrary: fc.record({
      kind: fc.constantFrom('of heart-rate reserve' as const, 'of greatest heart rate', 'of greatest uptake'),
      of: fc.oneof(span(30, 110, 100), span(90, 100, 100)),
    }),
  },
  span(10, 700, 1).map((watts) => ({ kind: 'watts' as const, watts })),
  span(2, 20, 2).map((rating) => ({ kind: 'RPE' as const, rating })),
  fc.constant({ kind: 'all-out' as const }),
);

const programmeBout: fc.Arbitrary<ProgrammeBout> = fc.record({
  seconds: whole(5, 2400),
  intensity,
  easy: fc.oneof(fc.constant(0), whole(5, 300)),
});

const beside = fc.record({
  priority: whole(1, 4),
  shouldFeel: fc.tuple(whole(2, 10), whole(2, 10)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const),
  condition: fc.constantFrom('everyone' as const, 'everyone', 'everyone', 'space-walk crew', 'before the squat gates'),
});

export const anyBouts = (of: Exercise): fc.Arbitrary<BoutsItem> =>
  fc
    .record({
      beside,
      alike: fc.boolean(),
      parts: fc.array(programmeBout, { minLength: 1, maxLength: 6 }),
      warmUpSeconds: whole(0, 600),
      coolDownSeconds: whole(0, 600),
    })
    .map(({ beside: more, alike, parts, ...times }) =>
      bouts(of, alike ? parts.map(() => parts[0] as ProgrammeBout) : parts, { ...more, ...times }),
    );

const work: fc.Arbitrary<DrillWork> = fc.oneof(
  whole(1, 60).map((count) => ({ kind: 'repetitions' as const, count })),
  whole(1, 60).map((count) => ({ kind: 'repetitions' as const, count, most: count + 4 })),
  whole(1, 60).map((seconds) => ({ kind: 'hold' as const, seconds, most: 2 * seconds })),
  whole(1, 300).map((seconds) => ({ kind: 'hold' as const, seconds })),
  fc.record({ kind: fc.constant('pulses' as const), count: whole(1, 20), on: whole(1, 30), off: whole(1, 30) }),
);

export const anyDrill = (of: Exercise): fc.Arbitrary<DrillItem> =>
  fc
    .record({
      beside,
      works: fc.array(work, { minLength: 1, maxLength: 5 }),
      rest: whole(5, 300),
      target: fc.option(
        fc.record({
          kind: fc.constantFrom('of critical force' as const, 'of greatest grip'),
          of: fc.oneof(whole(10, 120), whole(95, 120)).map((of) => of / 100),
        }),
      ),
    })
    .map(({ beside: more, works, rest, target }) =>
      drill(of, { ...more, sets: works.map((each) => ({ work: each, rest })), target }),
    );

/** "4 × 6", "3–4 × 6–8", "2 × 6+", after a heavier first one perhaps. */
const liftSets = fc
  .record({
    repetitions: whole(1, 12),
    more: fc.option(whole(1, 6)),
    orMore: fc.boolean(),
    must: whole(1, 4),
    may: whole(0, 2),
    rest: whole(30, 180),
    loadBy: fc.option(whole(60, 95)),
  })
  .map(({ repetitions, more, orMore, must, may, rest, loadBy }): LiftItem['sets'] =>
    Array.from({ length: must + may }, (_, place) => ({
      repetitions,
      rest,
      ...(more === null ? {} : { most: repetitions + more }),
      ...(orMore ? { orMore } : {}),
      ...(place < must ? {} : { optional: true }),
      ...(loadBy === null || place === 0 ? {} : { loadBy: loadBy / 100 }),
    })),
  );

/** The same lift may stand twice in a session: on tracks of its own, in turn where the letters agree. */
const anyLift = (name: string): fc.Arbitrary<LiftItem> =>
  fc
    .record({
      beside,
      of: whole(40, 100),
      sets: liftSets,
      tempo: fc.option(fc.tuple(whole(0, 5), whole(0, 3), whole(0, 5))),
      superset: fc.option(fc.constantFrom('A', 'A1', 'B')),
      machineKind: fc.constantFrom('free bar' as const, 'resistive machine'),
    })
    .map(({ beside: more, of, machineKind, ...work }) => ({
      ...drill(SQUAT),
      ...more,
      id: idOf<'item'>(name),
      track: idOf<'track'>(name),
      kind: 'lift',
      machineKind,
      leading: name === 'squat',
      basis: { kind: 'fraction', of: of / 100 },
      warmUps: [{ of: 0.5, repetitions: 5 }],
      ...work,
      reserve: 2,
    }));

const anyItems: fc.Arbitrary<readonly ProgrammeItem[]> = fc
  .tuple(
    anyBouts(RUN),
    anyBouts(RIDE),
    anyBouts(ROW),
    anyBouts(WALK),
    anyDrill(GRIP),
    anyDrill(HOLD),
    anyLift('squat'),
    anyLift('squat again'),
  )
  .chain((items) => fc.subarray(items as readonly ProgrammeItem[] as ProgrammeItem[], { minLength: 1 }));

const text = (min: number, max: number) => fc.option(whole(min, max).map(String), { nil: undefined, freq: 4 });

const anyPerson = fc.record({
  mass: whole(45, 110).map(String),
  birthDate: fc.option(fc.constant(A_BIRTHDAY)),
  spaceWalks: fc.boolean(),
  uptake: text(20, 75),
  rest: text(40, 75),
  greatest: text(150, 205),
  squat: text(40, 240),
  grips: text(150, 700),
  gates: fc.boolean(),
});

const anyLimit: fc.Arbitrary<RestrictionLimit> = fc.oneof(
  fc.constant({ kind: 'forbidden' as const }),
  fc.constant({ kind: 'no straining' as const }),
  whole(3, 9).map((rpe) => ({ kind: 'RPE at most' as const, rpe })),
  whole(15, 90).map((load) => ({ kind: 'load at most' as const, load: entered(String(load), 'kg') })),
  whole(2, 9).map((tenths) => ({ kind: 'fraction at most' as const, of: tenths / 10 })),
);
const anyScope: fc.Arbitrary<RestrictionScope> = fc.oneof(
  fc.constant({ kind: 'all' as const }),
  fc.constantFrom(...EXERCISES).map(({ id }) => ({ kind: 'exercise' as const, exercise: id })),
  fc
    .constantFrom('running' as const, 'cycling', 'grip', 'squat')
    .map((pattern) => ({ kind: 'pattern' as const, pattern })),
  fc.constantFrom('knee' as const, 'shoulder', 'hand').map((site) => ({ kind: 'site' as const, site, side: null })),
);

/** Machines of a house, with what they take drawn anew; some are not there. */
const anyMachines = fc
  .record({
    watts: whole(60, 300),
    speed: whole(60, 220).map((tenths) => tenths / 10),
    ceiling: whole(30, 120),
    there: fc.subarray([...MACHINES], { minLength: 3 }),
  })
  .map(({ watts, speed, ceiling, there }) =>
    there.map((machine): Machine => {
      if (machine.kind === 'cycle') return { ...machine, mostWatts: watts };
      if (machine.kind !== 'treadmill') return machine;
      return machine.gravity === '0 g'
        ? { ...machine, mostSpeed: speed, ceiling: String(ceiling) }
        : { ...machine, mostSpeed: speed };
    }),
  );

export const anyLife = fc.record({
  items: anyItems,
  person: anyPerson,
  machines: anyMachines,
  blockMinutes: whole(20, 180),
  deload: fc.option(fc.constant({ everyWeeks: 2, fewerSets: 1, loadBy: 0.9 })),
  limit: fc.option(fc.record({ limit: anyLimit, scope: anyScope })),
  today: fc.oneof(whole(-60, -10), whole(1, 60)),
});
export type Life = typeof anyLife extends fc.Arbitrary<infer Drawn> ? Drawn : never;

export const begin = ({ items, person, machines, blockMinutes, deload }: Life): Modes => {
  const { mass, birthDate, spaceWalks, squat, grips, gates } = person;
  const modes = new Modes({ items, mass, birthDate, spaceWalks, machines, blockMinutes, deload });
  modes.endures({
    ...(person.uptake === undefined ? {} : { uptake: person.uptake }),
    ...(person.rest === undefined ? {} : { rest: person.rest }),
    ...(person.greatest === undefined ? {} : { greatest: person.greatest }),
  });
  if (grips !== undefined)
    for (const side of ['left', 'right'] as const) {
      modes.tested({ what: 'greatest grip', side, value: entered(grips, 'N') });
      modes.tested({ what: 'critical force', side, value: entered(String(Math.round(Number(grips) * 0.4)), 'N') });
    }
  if (squat !== undefined) testSquat(modes, squat);
  if (gates) passGates(modes);
  return modes;
};

const testSquat = (modes: Modes, kilograms: string): void => {
  modes.add({
    kind: 'lifted',
    person: PERSON,
    day: addDays(LAUNCH, -90),
    exercise: SQUAT.id,
    machine: BAR.id,
    load: entered(kilograms, 'kg'),
    repetitions: 1,
    effort: { kind: 'repetitions in reserve', value: 0 },
    side: null,
  });
  modes.add({ kind: 'carried', person: PERSON, day: addDays(LAUNCH, -20), load: entered(kilograms, 'kg') });
};

/** Seen as far as a light bar. */
const passGates = (modes: Modes): void => {
  for (const gate of ['clearance gate', 'first squat gate', 'light load gate'] as const)
    modes.add({
      kind: 'judged',
      person: PERSON,
      day: addDays(LAUNCH, -200),
      gate,
      passed: true,
      observedBy: 'M. Arkwright',
      watched: 'in person',
    });
};

export const limitOf = (modes: Modes, { limit, today }: Life): void => {
  if (limit) modes.limited(limit.limit, limit.scope, addDays(LAUNCH, today));
};
