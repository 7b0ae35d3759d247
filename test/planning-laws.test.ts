import fc from 'fast-check';
import { expect, test } from 'vitest';
import { entered, kilogramsOf } from '#units/entered.ts';
import { addDays } from '#units/day.ts';
import { KILOGRAMS_PER_POUND } from '#units/mass.ts';
import { idOf } from '#domain/identity.ts';
import { DEFAULT_POLICIES } from '#domain/policies.ts';
import { liftsOf, type CardLift } from '#domain/card.ts';
import type { FactBody } from '#domain/fact.ts';
import type { RestrictionLimit } from '#domain/restriction.ts';
import { crossingOf } from '#planning/crossing-view.ts';
import { LAUNCH, onFlightDay, PERSON, Rehearsal, type BodySketch } from './rehearsal/rehearsal.ts';

/** Full derivations are slow beside formulas: fewer runs, many loads in each. */
const RUNS = { numRuns: 12 };

const kilogramText = (from: number, to: number) =>
  fc.integer({ min: from * 10, max: to * 10 }).map((tenths) => String(tenths / 10));
const anyBody: fc.Arbitrary<BodySketch> = fc.record({
  sex: fc.constantFrom('female' as const, 'male' as const),
  mass: kilogramText(45, 110),
  squat: kilogramText(40, 260),
  deadlift: kilogramText(50, 300),
  heaviestBar: kilogramText(30, 220),
});

const itemsOf = (
  rehearsal: Rehearsal,
  today: number,
  days: number,
): readonly { readonly day: number; readonly item: CardLift }[] =>
  rehearsal
    .road(onFlightDay(today), days)
    .cards.flatMap((card) =>
      card.state === 'issued' ? [] : liftsOf(card.card).map((item) => ({ day: card.day, item })),
    );

test('no planned or expected load is over the ceiling, and none over the shoulder rule in the first fortnight', () => {
  fc.assert(
    fc.property(anyBody, (body) => {
      for (const { day, item } of itemsOf(new Rehearsal(body), 1, 60)) {
        const most = Math.max(...item.sets.map((set) => set.load.increments));
        expect(most).toBeLessThanOrEqual(600);
        if (item.carriedAtShoulders && day < addDays(LAUNCH, DEFAULT_POLICIES.shoulderRuleFlightDays))
          expect(most * KILOGRAMS_PER_POUND).toBeLessThanOrEqual(
            Math.max(Number(body.heaviestBar), 20 * KILOGRAMS_PER_POUND) + 1e-6,
          );
      }
    }),
    RUNS,
  );
});

test('the bar part is the same fraction of capacity for any two people at every step', () => {
  fc.assert(
    fc.property(anyBody, anyBody, (one, other) => {
      const [a, b] = [one, other].map((body) => crossingOf(new Rehearsal(body).known(), idOf('back-squat'), LAUNCH));
      a?.road.forEach((rung, place) => {
        const theirs = b?.road[place];
        expect(rung.bar / Number(one.squat)).toBeCloseTo((theirs?.bar ?? NaN) / Number(other.squat), 10);
      });
      // At the top of the share ramp the work-matched bar-equivalent before rounding and limits is the bar part itself.
      const top = a?.road.at(-1);
      expect((top?.target ?? NaN) - (a?.workShare ?? NaN) * Number(one.mass)).toBeCloseTo(top?.bar ?? NaN, 9);
    }),
    RUNS,
  );
});

test('below the top the printed true fraction is (L − s·W) / R', () => {
  fc.assert(
    fc.property(anyBody, (body) => {
      const detail = crossingOf(new Rehearsal(body).known(), idOf('back-squat'), LAUNCH);
      if (!detail?.load) return;
      const expected = (detail.load.kilograms - detail.workShare * Number(body.mass)) / Number(body.squat);
      expect(detail.trueFraction).toBeCloseTo(expected, 9);
    }),
    RUNS,
  );
});

const anyLimit: fc.Arbitrary<RestrictionLimit> = fc.oneof(
  fc.constant({ kind: 'forbidden' as const }),
  fc
    .integer({ min: 20, max: 400 })
    .map((load) => ({ kind: 'load at most' as const, load: entered(String(load), 'lb') })),
  fc.integer({ min: 1, max: 9 }).map((tenths) => ({ kind: 'fraction at most' as const, of: tenths / 10 })),
);

test('from the day of a restriction no standing card without a result goes against it, and no planned one', () => {
  fc.assert(
    fc.property(anyBody, anyLimit, fc.integer({ min: 1, max: 12 }), (body, limit, from) => {
      const rehearsal = new Rehearsal(body);
      const today = onFlightDay(1);
      const days = rehearsal
        .road(today)
        .cards.filter((card) => card.state === 'planned')
        .map((card) => card.day);
      rehearsal.issue(today, days);
      const restricted: Extract<FactBody, { readonly kind: 'restricted' }> = {
        kind: 'restricted',
        person: PERSON,
        medicalReason: null,
        restriction: {
          scope: { kind: 'exercise', exercise: idOf('back-squat') },
          limit,
          toldBy: 'the physician',
          toldOn: today,
          confirmed: true,
          from: onFlightDay(from),
          reviewOn: null,
        },
      };
      rehearsal.restrict(restricted);
      for (const card of rehearsal.road(today).cards) {
        if (card.day < onFlightDay(from)) continue;
        const shown =
          card.state === 'issued'
            ? card.record.delivery === 'recalled'
              ? null
              : card.record.document.card
            : card.card;
        const squat = shown && liftsOf(shown).find((item) => item.exercise === 'back-squat');
        if (!squat) continue;
        expect(limit.kind).not.toBe('forbidden');
        const most = Math.max(...squat.sets.map((set) => set.load.increments)) * KILOGRAMS_PER_POUND;
        if (limit.kind === 'load at most') expect(most).toBeLessThanOrEqual(kilogramsOf(limit.load) + 1e-6);
      }
    }),
    RUNS,
  );
});

/** Planned loads over the one in use that are not marked as a raise for somebody to sign. */
const unmarkedRaises = (rehearsal: Rehearsal): readonly string[] => {
  const inUse = new Map<string, number>();
  const heaviest = (item: CardLift): number => Math.max(...item.sets.map((set) => set.load.increments));
  return rehearsal.road(onFlightDay(31), 14).cards.flatMap((card) => {
    if (card.state === 'issued') {
      const { document } = card.record;
      if (!document.card.deload) for (const item of liftsOf(document.card)) inUse.set(item.track, heaviest(item));
      return [];
    }
    return liftsOf(card.card)
      .filter((item) => item.basis !== 'effort' && heaviest(item) > (inUse.get(item.track) ?? 0) && item.raise === null)
      .map((item) => `${item.track} ${heaviest(item)}`);
  });
};

test('nothing raises a load without a signature: a planned load over the one in use is marked as a raise', () => {
  fc.assert(
    fc.property(anyBody, fc.integer({ min: 4, max: 7 }), (body, rpe) => {
      const rehearsal = new Rehearsal(body);
      rehearsal.live(1, 30, { rpe });
      expect(unmarkedRaises(rehearsal)).toEqual([]);
    }),
    { numRuns: 6 },
  );
});

test('discomfort of five or more takes both ramps back at once, twice three to four as well, once does not', () => {
  const lived = new Rehearsal({ sex: 'male', mass: '80', squat: '150', deadlift: '180', heaviestBar: '140' });
  lived.live(1, 18);
  const stepAfter = (scores: readonly number[]): number | undefined => {
    const rehearsal = lived.fork();
    let today = 19;
    for (const score of scores) {
      const card = rehearsal
        .road(onFlightDay(today))
        .cards.find((each) => each.state === 'planned' && liftsOf(each.card).length > 0);
      const [document] = rehearsal.issue(onFlightDay(today), [card?.day ?? LAUNCH]);
      if (document) rehearsal.train(document, { hurts: [{ site: 'shoulder', score }] });
      today = (card?.day ?? LAUNCH) - LAUNCH + 2;
    }
    return rehearsal.road(onFlightDay(today)).lifts.find((lift) => lift.exercise === 'back-squat')?.effortStep;
  };
  const before = stepAfter([]) ?? NaN;
  expect(before).toBeGreaterThan(0);
  expect(stepAfter([3])).toBe(before);
  expect(stepAfter([5])).toBe(before - 1);
  expect(stepAfter([3, 4])).toBe(before - 1);
});
