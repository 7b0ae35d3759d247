import fc from 'fast-check';
import type { Exercise } from '../catalogue.ts';
import { idOf } from '../identity.ts';
import type { BoutIntensity, Tempo } from '../prescription.ts';
import {
  ITEM_CONDITIONS,
  type BoutsItem,
  type DrillItem,
  type DrillWork,
  type LiftItem,
  type LoadBasis,
  type ProgrammeItem,
} from '../programme.ts';

/** Items of every kind that a line can say, to be drawn by tests. */
const whole = (min: number, max: number) => fc.integer({ min, max });
const hundredth = (min: number, max: number) => whole(min, max).map((of) => of / 100);
const half = (min: number, max: number) => whole(min * 2, max * 2).map((halves) => halves / 2);
const band = (min: number, max: number): fc.Arbitrary<readonly [number, number]> =>
  fc.tuple(half(min, max), half(min, max)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)]);
const span = (min: number, max: number) => band(min, max).map(([least, most]) => ({ least, most }));
const rest = whole(5, 1800);

const beside = (exercise: Exercise, fallback: ProgrammeItem['machineKind']) => ({
  id: fc.stringMatching(/^[a-z0-9-]{1,12}$/).map((text) => idOf<'item'>(text)),
  track: fc.stringMatching(/^[a-z ]{1,12}$/).map((text) => idOf<'track'>(text)),
  exercise: fc.constant(exercise.id),
  machineKind: fc.constantFrom(...(exercise.machineKinds.length > 0 ? exercise.machineKinds : [fallback])),
  condition: fc.constantFrom(...ITEM_CONDITIONS),
  priority: whole(1, 9),
  shouldFeel: band(1, 10),
  source: fc.constantFrom('', 'common practice'),
});

const rule = fc.constantFrom({ add: { kg: '2.5', lb: '5' } }, { add: { kg: '1', lb: '2.5' } });

const basis: fc.Arbitrary<LoadBasis> = fc.oneof(
  hundredth(5, 120).map((of) => ({ kind: 'fraction' as const, of })),
  fc.record({
    kind: fc.constant('from last' as const),
    start: fc.oneof(hundredth(5, 120), fc.constant('effort' as const)),
    rule,
  }),
  band(1, 10).map((rpe) => ({ kind: 'effort' as const, rpe })),
  fc.record({
    kind: fc.constant('fixed' as const),
    load: fc.record({
      text: half(0, 500).map(String),
      unit: fc.constantFrom('kg' as const, 'lb' as const),
    }),
  }),
);

/** "4 × 6", "3–4 × 6–8", "6+": so many that must be, so many more that may be left out. */
const setGroup = fc.record({
  repetitions: whole(1, 60),
  more: fc.oneof(fc.constant(0), whole(1, 40)),
  orMore: fc.boolean(),
  must: whole(1, 3),
  may: fc.oneof(fc.constant(0), whole(1, 2)),
  by: hundredth(40, 99),
});

const liftSets = fc
  .tuple(fc.array(setGroup, { minLength: 1, maxLength: 4 }), rest, fc.boolean())
  .map(([groups, seconds, heavyFirst]) =>
    groups.flatMap(({ repetitions, more, orMore, must, may, by }, place) =>
      Array.from({ length: must + may }, (_, count) => ({
        repetitions,
        ...(more > 0 ? { most: repetitions + more } : {}),
        ...(orMore ? { orMore: true as const } : {}),
        ...(count < must ? {} : { optional: true as const }),
        rest: seconds,
        ...(heavyFirst && place > 0 ? { loadBy: by } : {}),
      })),
    ),
  );

const tempo: fc.Arbitrary<Tempo | null> = fc.option(fc.tuple(whole(0, 20), whole(0, 20), whole(0, 20)));
const superset = fc.option(fc.stringMatching(/^[A-H][1-9]?$/));

export const anyLift = (exercise: Exercise): fc.Arbitrary<LiftItem> =>
  fc.record({
    ...beside(exercise, 'free bar'),
    kind: fc.constant('lift' as const),
    leading: fc.boolean(),
    basis,
    warmUps: fc.array(fc.record({ of: hundredth(30, 90), repetitions: whole(1, 10) }), { maxLength: 3 }),
    sets: liftSets,
    tempo,
    superset,
    reserve: fc.option(whole(0, 9)),
  });

const boutIntensity: fc.Arbitrary<BoutIntensity | null> = fc.oneof(
  fc.constant(null),
  span(10, 120).map(({ least, most }) => ({
    kind: 'of heart-rate reserve' as const,
    of: { least: least / 100, most: most / 100 },
  })),
  span(10, 1000).map((watts) => ({ kind: 'watts' as const, watts })),
  span(1, 10).map((rating) => ({ kind: 'RPE' as const, rating })),
  fc.constant({ kind: 'all-out' as const }),
);

export const anyBouts = (exercise: Exercise): fc.Arbitrary<BoutsItem> =>
  fc
    .record({
      ...beside(exercise, 'cycle'),
      kind: fc.constant('bouts' as const),
      warmUpSeconds: whole(0, 900),
      coolDownSeconds: whole(0, 900),
      patterns: fc.array(
        fc.record({
          count: whole(1, 6),
          seconds: whole(5, 3600),
          intensity: boutIntensity,
          easy: fc.oneof(fc.constant(0), whole(5, 600)),
        }),
        { minLength: 1, maxLength: 3 },
      ),
    })
    .map(({ patterns, ...item }) => ({
      ...item,
      bouts: patterns.flatMap(({ count, seconds, intensity, easy }) =>
        Array.from({ length: count }, () => ({ seconds, intensity, easy })),
      ),
    }));

const more = fc.oneof(fc.constant(0), whole(1, 40));
const upTo = (least: number, by: number): { readonly most?: number } => (by > 0 ? { most: least + by } : {});

const drillWork: fc.Arbitrary<DrillWork> = fc.oneof(
  fc.tuple(whole(1, 60), more).map(([count, by]) => ({ kind: 'repetitions' as const, count, ...upTo(count, by) })),
  fc.tuple(whole(1, 300), more).map(([seconds, by]) => ({ kind: 'hold' as const, seconds, ...upTo(seconds, by) })),
  fc.record({
    kind: fc.constant('pulses' as const),
    count: whole(1, 30),
    on: whole(1, 60),
    off: whole(0, 60),
  }),
);

export const anyDrill = (exercise: Exercise): fc.Arbitrary<DrillItem> =>
  fc.record({
    ...beside(exercise, 'body weight'),
    kind: fc.constant('drill' as const),
    sets: fc
      .tuple(fc.array(drillWork, { minLength: 1, maxLength: 5 }), rest)
      .map(([works, seconds]) => works.map((work) => ({ work, rest: seconds }))),
    target: fc.option(
      fc.record({
        kind: fc.constantFrom('of critical force' as const, 'of greatest grip' as const),
        of: hundredth(5, 120),
      }),
    ),
  });
