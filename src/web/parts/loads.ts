import { decimalOf } from '#units/entered.ts';
import { STANDARD_GRAVITY } from '#units/gravity.ts';

const decimalsOf = (increment: string): number => increment.split('.')[1]?.length ?? 0;

/** Whole increments as the machine displays them: 270 of "1" is "270", 41 of "2.5" is "102.5". */
export const showIncrements = (increments: number, increment: string): string =>
  (increments * (decimalOf(increment) ?? 0)).toFixed(decimalsOf(increment));

/** What a dynamometer in kilograms of force shows for a force [N]. */
export const kilogramsOfForce = (force: number): string => (force / STANDARD_GRAVITY).toFixed(1);

/** A number as typed: a decimal comma is a point, spaces around it do not matter. */
export const asTyped = (text: string): string => text.trim().replace(',', '.');

/** "+4.8 %", "−2 %". */
export const showChange = (relative: number): string => {
  const percent = relative * 100;
  const sign = percent > 0 ? '+' : percent < 0 ? '−' : '±';
  return `${sign}${Math.abs(percent).toFixed(1)}\u00a0%`;
};

/** "0.74". */
export const showFraction = (value: number): string => value.toFixed(2).replace('-', '−');
