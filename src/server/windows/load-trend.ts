import { liftsOf } from '#domain/card.ts';
import { addDays } from '#units/day.ts';
import { kilogramsOf, numberOf } from '#units/entered.ts';
import { KILOGRAMS_PER_POUND } from '#units/mass.ts';
import type { Exercise, Pattern } from '#domain/catalogue.ts';
import type { House, Known } from '#domain/known.ts';
import type { Road, RoadCard } from '#domain/road.ts';
import type { LoadTrend } from '#contract/windows/desk-window.ts';
import { workSetsWithResults } from './item-result.ts';

const DAYS_BACK = 84;

/** Heaviest work set of each session on the leading track of a lift, as the machine showed it. */
export const loadTrend = (known: Known, road: Road, pattern: Pattern): LoadTrend => {
  const unit = unitAboard(known);
  const points = road.cards
    .filter(({ day }) => day >= addDays(road.today, -DAYS_BACK))
    .flatMap((card) => {
      const load = heaviestDone(known, card, pattern, unit);
      return load === null ? [] : [{ day: card.day, load }];
    });
  return { unit, points, newest: points.at(-1)?.load ?? null };
};

const unitAboard = ({ house }: Known): 'kg' | 'lb' =>
  [...house.machines.values()].find(({ kind, gravity }) => kind === 'resistive machine' && gravity === '0 g')?.unit ??
  'lb';

const heaviestDone = (known: Known, card: RoadCard, pattern: Pattern, unit: 'kg' | 'lb'): number | null => {
  if (card.state !== 'issued') return null;
  const { document, results } = card.record;
  const loads = liftsOf(document.card)
    .filter(({ exercise, leading }) => leading && isMainLift(known, exercise, pattern))
    .flatMap((item) => workSetsWithResults(item, document, results))
    .flatMap(({ result }) => (result ? [result.load] : []))
    .map((load) => (load.unit === unit ? numberOf(load) : inUnit(kilogramsOf(load), unit)));
  return loads.length > 0 ? Math.max(...loads) : null;
};

const inUnit = (kilograms: number, unit: 'kg' | 'lb'): number =>
  unit === 'kg' ? kilograms : kilograms / KILOGRAMS_PER_POUND;

const isMainLift = ({ house }: Known, id: string, pattern: Pattern): boolean =>
  [...house.exercises.values()].some((each) => each.id === id && standsFor(each, pattern));

/** Of a pattern, the lift on both legs that stands for it: one that is tested, not one that teaches it. */
const standsFor = (exercise: Exercise, pattern: Pattern): boolean =>
  exercise.pattern === pattern && !exercise.perSide && exercise.capacity.kind !== 'none';

/** The first lift of a house that stands for a pattern; null where it has none. */
export const mainLift = ({ exercises }: House, pattern: Pattern): Exercise['id'] | null =>
  [...exercises.values()].find((exercise) => standsFor(exercise, pattern))?.id ?? null;
