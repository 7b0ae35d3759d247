import { scaleLinear, type ScaleLinear } from 'd3-scale';
import type { CapacitySeries } from '#contract/windows/capacity-window.ts';
import { intervalOf } from '#domain/estimate.ts';
import { addDays, isoOfDay, weekdayOf, type Day } from '#units/day.ts';

export const PLOT = { width: 760, height: 260, left: 44, right: 26, top: 12, bottom: 30 };

export interface PlotScales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly days: readonly Day[];
  readonly loads: readonly number[];
}

/** Scales that hold every point, the band and the estimate of today. */
export const plotScales = (series: CapacitySeries, today: Day): PlotScales => {
  const days = [...series.observations.map(({ day }) => day), ...series.smoothed.map(({ day }) => day), today];
  const loads = [
    ...series.observations.flatMap(({ point, range }) => [...(point === null ? [] : [point]), ...(range ?? [])]),
    ...series.smoothed.flatMap(({ low, high }) => [low, high]),
    ...intervalOf(series.estimate),
  ];
  const [first, last] = [Math.min(...days) as Day, Math.max(...days) as Day];
  const x = scaleLinear([first - 2, Math.max(last, first + 7) + 2], [PLOT.left, PLOT.width - PLOT.right]);
  const y = scaleLinear([Math.min(...loads), Math.max(...loads)], [PLOT.height - PLOT.bottom, PLOT.top]).nice(5);
  return { x, y, days: dayTicks(first, last), loads: y.ticks(5) };
};

const LONG = 50;
const MOST_TICKS = 9;

/** Mondays of a short history, firsts of months of a long one; thinned to what can be read. */
export const dayTicks = (first: Day, last: Day): readonly Day[] => {
  const all = Array.from({ length: last - first + 1 }, (_, place) => addDays(first, place));
  const marked = all.filter((day) => (last - first > LONG ? isoOfDay(day).endsWith('-01') : weekdayOf(day) === 0));
  const every = Math.ceil(marked.length / MOST_TICKS);
  return marked.filter((_, place) => place % every === 0);
};
