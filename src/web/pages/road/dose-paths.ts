import type { RoadDoseLine } from '#contract/windows/road-window.ts';

/* Bars and floors of one thing as paths, one unit wide a week and a hundred high. */

/** Above the highest line, so that it is seen whole. */
const HEADROOM = 1.1;
/** A week that holds nothing of what it should hold is seen all the same. */
const LEAST_HEIGHT = 4;
const [LEFT, RIGHT] = [0.14, 0.86];

export const floorIn = ({ floors }: RoadDoseLine, week: number): number | null =>
  floors.find(([first, last]) => week >= first && week <= last)?.[2] ?? null;

export const isShort = (line: RoadDoseLine, week: number): boolean => {
  const floor = floorIn(line, week);
  return floor !== null && (line.planned[week] ?? 0) < floor;
};

const most = ({ planned, done, floors }: RoadDoseLine): number =>
  HEADROOM * Math.max(1, ...planned, ...done.map(([, amount]) => amount), ...floors.map(([, , floor]) => floor));

/** Amounts of the weeks that are drawn; null for a week that is not. */
export const barPath = (line: RoadDoseLine, amounts: readonly (number | null)[]): string => {
  const top = most(line);
  return amounts
    .flatMap((amount, week) => {
      if (amount === null) return [];
      const height = Math.max(LEAST_HEIGHT, (amount / top) * 100);
      return [`M${week + LEFT} 100V${(100 - height).toFixed(1)}H${week + RIGHT}V100Z`];
    })
    .join('');
};

export const floorPath = (line: RoadDoseLine): string => {
  const top = most(line);
  return line.floors
    .map(([first, last, floor]) => `M${first} ${(100 - (floor / top) * 100).toFixed(1)}H${last + 1}`)
    .join('');
};

/** "Squat 5.5 of 8 sets, done 4; …": one week in words. */
export const doseInWords = (lines: readonly RoadDoseLine[], week: number): string =>
  lines
    .flatMap((line) => {
      const [planned, floor] = [line.planned[week] ?? 0, floorIn(line, week)];
      const done = line.done.find(([place]) => place === week)?.[1];
      if (planned === 0 && floor === null && done === undefined) return [];
      const of = floor === null ? '' : ` of at least ${floor}`;
      return [`${line.label.toLowerCase()} ${planned}${of} ${line.unit}${done === undefined ? '' : `, done ${done}`}`];
    })
    .join('; ');
