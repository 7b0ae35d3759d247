import type { RoadSpan } from '#contract/windows/road-window.ts';
import { addDays, isoOfDay, type Day } from '#units/day.ts';
import { monthOf } from '../../parts/dates.ts';

/** Where days lie on a drawn road, in hundredths of its width. */
export interface RoadScale {
  /** The beginning of a day. */
  readonly at: (day: Day) => number;
  /** From the beginning of the first day to the end of the last. */
  readonly width: (span: RoadSpan) => number;
}

export const roadScale = ({ first, last }: RoadSpan): RoadScale => {
  const days = last - first + 1;
  return {
    at: (day) => ((day - first) / days) * 100,
    width: (span) => ((span.last - span.first + 1) / days) * 100,
  };
};

export const percent = (hundredths: number): string => `${hundredths.toFixed(3)}%`;

export interface Tick extends RoadSpan {
  readonly says: string;
}

/** Months of a road, the first and the last cut where the road begins and ends. */
export const monthsOf = (road: RoadSpan): readonly Tick[] => runsBy(road, (day) => monthOf(day).slice(0, 3));

export const yearsOf = (road: RoadSpan): readonly Tick[] => runsBy(road, (day) => isoOfDay(day).slice(0, 4));

const runsBy = ({ first, last }: RoadSpan, sayOf: (day: Day) => string): readonly Tick[] => {
  const runs: Tick[] = [];
  for (let day = first; day <= last; day = addDays(day, 1)) {
    const [says, run] = [sayOf(day), runs.at(-1)];
    if (run?.says === says) runs[runs.length - 1] = { ...run, last: day };
    else runs.push({ first: day, last: day, says });
  }
  return runs;
};
