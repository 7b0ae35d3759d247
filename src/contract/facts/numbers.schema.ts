import { type Day, isoDay } from '#units/day.ts';
import { type Entered, decimalOf } from '#units/entered.ts';
import type { Sequence } from '#domain/fact.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';

const number = (rule: string, holds: (value: number) => boolean) =>
  z.number({ error: rule }).refine(holds, { error: rule });

/** The one place where a number takes on a brand of the domain. */
const branded = <Brand extends number>(schema: z.ZodType<number>): z.ZodType<Brand> =>
  schema as unknown as z.ZodType<Brand>;

export const finite = number('a finite number', Number.isFinite);

export const numberFrom = (least: number, most: number) =>
  number(`a number from ${least} to ${most}`, (value) => value >= least && value <= most);

export const wholeFrom = (least: number, most: number) =>
  number(
    `a whole number from ${least} to ${most}`,
    (value) => Number.isInteger(value) && value >= least && value <= most,
  );

/** Whole increments of a machine: ten thousand of the finest are more than any machine pulls. */
export const increments = wholeFrom(0, 100_000);

const [FIRST_DAY, LAST_DAY] = [isoDay('1900-01-01'), isoDay('2200-12-31')];

export const calendarDay = branded<Day>(
  number(
    'a day from 1900-01-01 to 2200-12-31, counted from 1970-01-01',
    (value) => Number.isInteger(value) && value >= FIRST_DAY && value <= LAST_DAY,
  ),
);

/** A place in the log; 0 is before the first fact. */
export const placeInLog = branded<Sequence>(wholeFrom(0, Number.MAX_SAFE_INTEGER));

const decimal = (rule: string, holds: (value: number) => boolean) =>
  z.string({ error: rule }).refine(
    (text) => {
      const value = decimalOf(text);
      return value !== null && holds(value);
    },
    { error: rule },
  );

export const decimalNotNegative = decimal('a decimal number such as 102.5, 0 or more', (value) => value >= 0);
export const decimalPositive = decimal('a decimal number such as 102.5, above 0', (value) => value > 0);

export const massUnit = z.enum(['kg', 'lb'], { error: '"kg" or "lb"' });

/** A load as typed: an empty machine pulls 0. */
export const enteredLoad = record({ text: decimalNotNegative, unit: massUnit }) satisfies z.ZodType<Entered>;
export const enteredMass = record({ text: decimalPositive, unit: massUnit }) satisfies z.ZodType<Entered>;
