import type { Day } from '#units/day.ts';
import type { DoseAlong, DoseLine, DoseWeek } from './road-dose.ts';

/** Weeks on end that hold too little of something, or too much. */
export interface DoseGap {
  readonly line: DoseLine;
  readonly kind: 'too little' | 'too much';
  readonly first: Day;
  readonly last: Day;
  readonly weeks: number;
  readonly least: number;
  readonly most: number;
  /** The floor that they stay under, or the most that they pass. */
  readonly bound: number;
}

/** Weeks from a day on whose plan stays under a floor or goes over the most, neighbours together, the next first. */
export const doseGaps = ({ lines }: DoseAlong, from: Day): readonly DoseGap[] =>
  lines
    .flatMap((line) => [...runsOf(line, from, tooLittle), ...runsOf(line, from, tooMuch)])
    .toSorted((a, b) => a.first - b.first || b.weeks - a.weeks);

/** Sums of halves and of minutes. */
const ROUNDING = 1e-6;

interface Breach {
  readonly kind: DoseGap['kind'];
  readonly bound: number;
}

const tooLittle = (_: DoseLine, { planned, floor }: DoseWeek): Breach | null =>
  floor !== null && planned < floor - ROUNDING ? { kind: 'too little', bound: floor } : null;

const tooMuch = ({ most }: DoseLine, { planned }: DoseWeek): Breach | null =>
  most !== null && planned > most + ROUNDING ? { kind: 'too much', bound: most } : null;

const runsOf = (
  line: DoseLine,
  from: Day,
  breachOf: (line: DoseLine, week: DoseWeek) => Breach | null,
): readonly DoseGap[] => {
  const runs: DoseGap[] = [];
  let open: DoseGap | null = null;
  for (const week of line.weeks.filter(({ last }) => last >= from)) {
    const breach = breachOf(line, week);
    const goesOn: boolean = open !== null && breach?.bound === open.bound;
    if (open && !goesOn) runs.push(open);
    open = breach && withWeek(goesOn ? open : null, line, week, breach);
  }
  return open ? [...runs, open] : runs;
};

const withWeek = (before: DoseGap | null, line: DoseLine, week: DoseWeek, { kind, bound }: Breach): DoseGap => ({
  line,
  kind,
  bound,
  first: before?.first ?? week.first,
  last: week.last,
  weeks: (before?.weeks ?? 0) + 1,
  least: Math.min(before?.least ?? Infinity, week.planned),
  most: Math.max(before?.most ?? 0, week.planned),
});
