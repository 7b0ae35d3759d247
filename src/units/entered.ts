import { kilogramsPer, type MassUnit } from './mass.ts';

/** A value as a person typed it: the digits are kept for ever, SI is computed. A decimal comma is stored as a point. */
export interface Entered<Unit extends string = MassUnit> {
  readonly text: string;
  readonly unit: Unit;
}

const DECIMAL = /^[+-]?\d{1,12}(\.\d{1,9})?$/;

/** The number a decimal text stands for, or null where it is none: "1e9", "NaN", "", "0x10" and "1 000" are none. */
export const decimalOf = (text: string): number | null => (DECIMAL.test(text) ? Number(text) : null);

export const entered = <Unit extends string>(text: string, unit: Unit): Entered<Unit> => {
  if (decimalOf(text) === null) throw new RangeError(`"${text}" is not a decimal number such as 102.5.`);
  return { text, unit };
};

/** The number as typed, in its own unit. */
export const numberOf = (value: Entered<string>): number => {
  const number = decimalOf(value.text);
  if (number === null) throw new RangeError(`"${value.text}" is not a decimal number such as 102.5.`);
  return number;
};

/** An entered mass in kilograms, unrounded. */
export const kilogramsOf = (value: Entered): number => numberOf(value) * kilogramsPer(value.unit);

export const showEntered = (value: Entered<string>): string => `${value.text} ${value.unit}`;
