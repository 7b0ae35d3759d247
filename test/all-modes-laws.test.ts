import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { raisesOf, totalMinutes, type Card, type CardBouts, type CardItem } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import { lineOfBouts, lineOfDrill } from '#domain/piece-line.ts';
import { DEFAULT_POLICIES } from '#domain/policies.ts';
import { itemAsWritten } from '#planning/as-written.ts';
import { planIssue } from '#planning/issue.ts';
import { planContext } from '#planning/plan-context.ts';
import { isAgainst } from '#planning/recall.ts';
import { LAUNCH, onFlightDay } from './rehearsal/rehearsal.ts';
import { bouts, CYCLE, EXERCISES, GRIP, HOLD, Modes, RIDE, RUN } from './rehearsal/all-modes.ts';
import { anyBouts, anyDrill, anyLife, begin, limitOf, whole, type Life } from './rehearsal/any-modes.ts';

/* Laws of cards that hold lifts, endurance and drills, of people who were tested or not, limited or not. */

/** Every law that a single card breaks, in words. */
const broken = (life: Life, card: Card): readonly string[] => [
  ...(totalMinutes(card) > card.blockMinutes + EPS && card.items.length > 1 ? ['it is longer than its block'] : []),
  ...card.items.flatMap((item) => brokenBy(life, card.day, item).map((says) => `${item.exerciseName}: ${says}`)),
];

const EPS = 1e-6;

const brokenBy = (life: Life, on: Day, item: CardItem): readonly string[] => {
  switch (item.kind) {
    case 'lift':
      return liftBroken(life, on, item);
    case 'bouts':
      return boutsBroken(life, on, item);
    case 'drill':
      return handBroken(
        life,
        item.sets.map(({ force }) => force ?? 0),
      );
  }
};

const handBroken = ({ person }: Life, forces: readonly number[]): readonly string[] =>
  Math.max(...forces) > Number(person.grips ?? 0) ? ['a hand holds more than it ever did'] : [];

const liftBroken = (
  { machines, person }: Life,
  on: Day,
  item: Extract<CardItem, { readonly kind: 'lift' }>,
): readonly string[] => {
  const machine = machines.find(({ id }) => id === item.machine);
  const most = Math.max(...item.sets.map(({ load }) => load.increments)) * Number(item.increment);
  const isOnGround = on < LAUNCH;
  const isBehind = isOnGround && person.squat === undefined;
  return [
    ...(most > Number(machine?.ceiling) + EPS ? ['over the ceiling'] : []),
    ...(isBehind && !person.gates ? ['a bar before the gate'] : []),
    ...(isBehind && most > Math.max(20, Number(person.mass) / 2) + EPS
      ? ['over half of body mass before the bar gate']
      : []),
  ];
};

const boutsBroken = (life: Life, on: Day, item: CardBouts): readonly string[] => {
  const machine = life.machines.find(({ id }) => id === item.machine);
  const highest = (of: (bout: CardBouts['bouts'][number]) => number | null): number =>
    Math.max(0, ...item.bouts.map((bout) => of(bout) ?? 0));
  return [
    ...(highest(({ watts }) => watts) > (machine?.mostWatts ?? 0) ? ['over the watts of the machine'] : []),
    ...(highest(({ speed }) => speed) > (machine?.mostSpeed ?? 0) + EPS ? ['over the speed of the belt'] : []),
    ...(highest(({ heartRate }) => heartRate?.[1] ?? null) > greatestRate(life, on)
      ? ['over the greatest heart rate']
      : []),
    ...(item.bouts.some(({ heartRate }) => heartRate && heartRate[0] > heartRate[1]) ? ['a band upside down'] : []),
    ...(machine?.kind === 'rower' && highest(({ speed }) => speed) > 0 ? ['a rower has no speed'] : []),
    ...(isAllOut(life, item) && (machine?.kind !== 'cycle' || (on >= LAUNCH && on < onFlightDay(22)))
      ? ['all-out where it may not be']
      : []),
    ...(on >= LAUNCH && on < onFlightDay(2) ? ['endurance on the first day'] : []),
    ...harnessBroken(life, on, item, machine),
  ];
};

/** Tested, or 208 − 0.7 · age. */
const greatestRate = ({ person: { greatest, birthDate } }: Life, on: Day): number =>
  greatest !== undefined
    ? Number(greatest)
    : birthDate === null
      ? 0
      : 208 - 0.7 * Math.floor((on - birthDate) / 365.2425 - 0.01);

const isAllOut = ({ items }: Life, { track }: CardBouts): boolean =>
  items.some(
    (item) =>
      item.kind === 'bouts' && item.track === track && item.bouts.some(({ intensity: of }) => of?.kind === 'all-out'),
  );

const harnessBroken = (
  { person }: Life,
  on: Day,
  { harness, machine: id }: CardBouts,
  machine: Machine | undefined,
): readonly string[] => {
  if (on < LAUNCH || machine?.kind !== 'treadmill') return harness ? ['a harness on the ground'] : [];
  if (!harness) return [`no harness on ${id}`];
  const { harnessStart, harnessMost } = DEFAULT_POLICIES;
  const kilograms = harness.increments * Number(harness.increment);
  return [
    ...(kilograms > Number(machine.ceiling) ? ['over the ceiling of the harness'] : []),
    ...(kilograms < Number(machine.least) ? ['under the least of the harness'] : []),
    ...(kilograms > harnessMost * Number(person.mass) + EPS ? ['over the most of body weight'] : []),
    // Nothing was lived, so nothing was earned; half a step is rounding.
    ...(kilograms > harnessStart * Number(person.mass) + 0.5 + EPS ? ['over the first step of the ramp'] : []),
  ];
};

/** Whom an item is for. */
const strangers = ({ items, person }: Life, card: Card): readonly string[] =>
  card.items
    .filter(
      ({ track }) =>
        items.some((item) => item.track === track && item.condition === 'space-walk crew') && !person.spaceWalks,
    )
    .map(({ exerciseName }) => `${exerciseName} is for those who walk in space`);

test('no card breaks a limit of its block, a machine, a gate, a ramp, a physician or the person', () => {
  fc.assert(
    fc.property(anyLife, (life) => {
      const modes = begin(life);
      limitOf(modes, life);
      const context = planContext(modes.known());
      for (const card of modes.road(addDays(LAUNCH, life.today), 12).cards) {
        if (card.state === 'issued') throw new Error('Nothing was issued.');
        expect([...broken(life, card.card), ...strangers(life, card.card)]).toEqual([]);
        for (const { restriction } of context.restrictions)
          expect(
            card.card.items
              .filter((item) => isAgainst(context, restriction, card.card, item))
              .map(({ exercise }) => exercise),
          ).toEqual([]);
      }
    }),
  );
});

test('what a physician forbids is on no card, whatever kind it is of', () => {
  fc.assert(
    fc.property(anyLife, fc.constantFrom(...EXERCISES), (life, { id }) => {
      const modes = begin(life);
      modes.limited({ kind: 'forbidden' }, { kind: 'exercise', exercise: id }, addDays(LAUNCH, life.today));
      const planned = modes
        .road(addDays(LAUNCH, life.today), 8)
        .cards.flatMap((card) => (card.state === 'issued' ? [] : card.card.items.map(({ exercise }) => exercise)));
      expect(planned).not.toContain(id);
    }),
  );
});

test('what is planned inside the horizon is what is issued, with every number’s working', () => {
  fc.assert(
    fc.property(anyLife, (life) => {
      const modes = begin(life);
      limitOf(modes, life);
      const today = addDays(LAUNCH, life.today);
      const road = modes.road(today, 14);
      const planned = road.cards.flatMap((card) => (card.state === 'planned' && card.gaps.length === 0 ? [card] : []));
      for (const { day, card } of planned)
        expect(planIssue(modes.known(), road, [day]).cards.map((each) => each.card)).toEqual([card]);
      const [first] = planned;
      if (!first) return;
      const [document] = modes.issue(
        today,
        [first.day],
        Object.fromEntries(first.card.items.map(({ track }) => [track, 'drawn'])),
      );
      expect(document?.card).toEqual(first.card);
      expect(document?.raises).toEqual(raisesOf(first.card));
      for (const item of first.card.items)
        expect(document?.workings.some((working) => working.item === item.item)).toBe(item.row !== null);
    }),
  );
});

test('nothing is set for the first time that is not listed for a signature', () => {
  fc.assert(
    fc.property(anyLife, (life) => {
      for (const card of begin(life).road(addDays(LAUNCH, life.today), 8).cards) {
        if (card.state === 'issued') continue;
        for (const item of card.card.items) {
          if (item.kind === 'lift') continue;
          const units = item.raises.map(({ unit }) => unit);
          expect(new Set(units).size).toBeLessThanOrEqual(2);
          if (item.kind === 'bouts' && item.harness) expect(units).toContain('kg');
          if (item.kind === 'bouts' && item.bouts.some(({ watts }) => watts !== null)) expect(units).toContain('W');
          if (item.kind === 'bouts' && item.bouts.some(({ speed }) => speed !== null)) expect(units).toContain('km/h');
          if (item.kind === 'drill' && item.sets.some(({ force }) => force !== null)) expect(units).toContain('N');
        }
      }
    }),
  );
});

const anyDay = fc.record({
  rpe: fc.option(whole(4, 10)),
  whole: fc.boolean(),
  site: fc.constantFrom('shoulder' as const, 'hip', 'skin', 'knee'),
  score: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, whole(1, 8)),
});

test('however it is lived, a harness goes up by a listed step, a week apart, and down when it hurts', () => {
  const { harnessStep, harnessStart, daysBetweenRaises } = DEFAULT_POLICIES;
  fc.assert(
    fc.property(whole(50, 110), fc.array(anyDay, { minLength: 8, maxLength: 14 }), (mass, days) => {
      const modes = new Modes({
        mass: String(mass),
        items: [bouts(RUN, [{ seconds: 600, intensity: null, easy: 0 }])],
      });
      let [inUse, lastUp, hurt] = [Infinity, -Infinity, false];
      for (const [place, lived] of days.entries()) {
        // Two days apart: three weeks and more in a dozen sessions.
        const day = 9 + 2 * place;
        const [document] = modes.issue(onFlightDay(day), [onFlightDay(day)], { 'harness of treadmill 0 g': 'drawn' });
        const item = document?.card.items[0];
        if (!document || item?.kind !== 'bouts' || !item.harness) throw new Error('There is no run.');
        const { increments } = item.harness;
        if (increments > inUse) {
          expect(item.raises).toMatchObject([{ from: inUse, to: increments, unit: 'kg' }]);
          expect(increments - inUse).toBeLessThanOrEqual(Math.ceil(harnessStep * mass));
          expect(day - lastUp).toBeGreaterThanOrEqual(daysBetweenRaises);
          expect(hurt).toBe(false);
        } else expect(item.raises.filter(({ from }) => from !== null)).toEqual([]);
        if (inUse === Infinity) expect(Math.abs(increments - harnessStart * mass)).toBeLessThanOrEqual(0.5);
        if (increments > inUse) lastUp = day;
        inUse = increments;
        hurt = lived.score >= 3;
        modes.trainPieces(document, {
          rpe: lived.rpe,
          hurts: lived.score > 0 ? [{ site: lived.site, score: lived.score }] : [],
          piece: (result) => ({ ...result, done: lived.whole ? result.done : 0 }),
        });
        if (lived.score >= 5) expect(modes.bouts(onFlightDay(day + 1)).harness?.increments).toBeLessThan(inUse);
      }
    }),
    // Each draw lives through a dozen sessions.
    { numRuns: 40 },
  );
});

test('the line of bouts, and that of a drill, read back to the item that they were written from', () => {
  const means = (exercise: Exercise) => ({ exercise, machine: CYCLE });
  fc.assert(
    fc.property(anyBouts(RIDE), anyDrill(GRIP), anyDrill(HOLD), (ride, grip, hold) => {
      expect(itemAsWritten(ride, means(RIDE), lineOfBouts(ride))).toEqual({ kind: 'item', item: ride });
      expect(itemAsWritten(grip, means(GRIP), lineOfDrill(grip, true))).toEqual({ kind: 'item', item: grip });
      expect(itemAsWritten(hold, means(HOLD), lineOfDrill(hold, false))).toEqual({ kind: 'item', item: hold });
    }),
  );
});
