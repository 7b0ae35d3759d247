import type { Problem } from '#contract/problem.ts';

export interface Range {
  readonly least: number;
  readonly most: number;
  /** What it may have been instead. */
  readonly perhaps: string;
}

/** "1/min" is read as "a minute". */
const spelled = (unit: string): string => (unit === '1/min' ? 'a minute' : unit);

type Unplaced = Omit<Problem, 'field'>;

const shown = (value: number): string => String(Number(value.toPrecision(4)));

/** What cannot be. */
export const outside = (value: number, unit: string, { least, most, perhaps }: Range): readonly Unplaced[] =>
  value >= least && value <= most
    ? []
    : [
        {
          what: `${shown(value)} ${spelled(unit)} cannot be.`,
          why: `${least} to ${most} ${spelled(unit)} are taken. ${perhaps}`,
          whatToDo: 'Look at the number in the original record.',
        },
      ];

export const unlikely = (what: string, why: string, field: string): Problem => ({
  what,
  why,
  whatToDo: 'Correct it, or say that it is right as typed.',
  field,
  mayStand: true,
});

/** Factors between units that are mistaken for one another, and what is behind each. */
const SLIPS: readonly (readonly [factor: number, says: string])[] = [
  [2.20462, 'pounds and kilograms'],
  [9.80665, 'newtons and kilograms of force'],
  [4.44822, 'newtons and pounds of force'],
  [2.54, 'centimetres and inches'],
  [2, 'one side and both, or one hand and two'],
];
/** Two tests of one body never agree to the digit: within 3 % of a factor the factor is the likelier story. */
const NEAR = 0.03;

/** A value that is off its last one by the factor between two units. */
export const slipOfUnit = (value: number, before: number, unit: string): readonly Problem[] => {
  const ratio = value / before;
  const slip = SLIPS.find(([factor]) => isNear(ratio, factor) || isNear(1 / ratio, factor));
  return slip && before > 0 && value > 0
    ? [
        unlikely(
          `${shown(value)} ${unit} is ${ratio > 1 ? `${shown(ratio)} times` : `one part in ${shown(1 / ratio)} of`} the last value, ${shown(before)} ${unit}.`,
          `That is what mixing up ${slip[1]} gives.`,
          'value',
        ),
      ]
    : [];
};

const isNear = (ratio: number, factor: number): boolean => Math.abs(ratio / factor - 1) <= NEAR;
