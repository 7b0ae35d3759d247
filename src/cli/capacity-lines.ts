import { capacityReader } from '#assessing/capacity.ts';
import { intervalOf } from '#domain/estimate.ts';
import type { Known } from '#domain/known.ts';
import type { Day } from '#units/day.ts';
import { crossingLifts, crossingOf } from '#planning/crossing-view.ts';

const rounded = (value: number): string => value.toFixed(1);

/** Capacity of every tested lift, as it stands on a day. */
export const capacityLines = (known: Known, today: Day): readonly string[] => {
  const reader = capacityReader(known);
  const bar = [...known.house.machines.values()].find(({ kind }) => kind === 'free bar');
  const lines = [...known.house.exercises.values()].flatMap((exercise) => {
    const reading = bar && reader.on(exercise, bar, today);
    if (reading?.kind !== 'estimate') return [];
    const { estimate } = reading;
    const [low, high] = intervalOf(estimate);
    const what = estimate.of === 1 ? '1RM' : `${estimate.of}RM`;
    return [
      `  ${exercise.name}: ${what} ${rounded(estimate.median)} kg, 95 % ${rounded(low)} to ${rounded(high)}, ${estimate.basis}`,
    ];
  });
  return ['Capacity at the bar in 1 g', ...(lines.length > 0 ? lines : ['  no test yet'])];
};

/** The crossing of every lift that has one: the sum in the open. */
export const crossingLines = (known: Known, today: Day): readonly string[] => [
  'Crossing to weightlessness, first step of both ramps',
  ...crossingLifts(known, today).flatMap(({ exercise, name }) => {
    const detail = crossingOf(known, exercise, today);
    if (!detail) return [`  ${name}: runs on effort`];
    const { bar, added, target, load, trueFraction, share, effort } = detail;
    return [
      `  ${name}: bar ${rounded(bar)} kg (effort × ${effort}) + body weight ${rounded(added)} kg (× ${share}) = ${rounded(target)} kg → ${load?.text ?? 'none'}; ${Math.round(trueFraction * 100)} % of capacity at the bar`,
    ];
  }),
];
