import { BONE_SATURATION } from '../bone/saturating-loss.ts';
import { formula, type FormulaInput, type FormulaRecord } from '../formula.ts';
import { curveOf, type Curve } from '../plot.ts';
import { AXPE_2020, ENGLISH_2020, LEBLANC_2000, MOORE_2014, MOORE_2015, OUR_OWN_DESIGN } from '../sources.ts';
import { LONGEST_FLIGHT } from './quantities.table.ts';

/** Courses: how a loss runs through a flight, whatever its size. The size is the amplitude, and each person has their own. */

/** Mean length of a month of the calendar [d]: published rates are per month. */
export const DAYS_PER_MONTH = 365.25 / 12;

/** Ten years: beyond that nobody asks. */
const LONGEST_ASKED = 3650;

const flightDay = (longest: number): FormulaInput => ({
  name: 'days after launch',
  symbol: 't',
  unit: 'd',
  possible: [0, LONGEST_ASKED],
  valid: [0, longest],
});

type Written = Pick<FormulaRecord, 'title' | 'equation' | 'inputs' | 'doesNotKnow'> & Partial<FormulaRecord>;

const record = (id: string, written: Written): FormulaRecord => ({
  id: `projection/${id}`,
  revision: 1,
  output: { name: 'course', symbol: 'g', unit: '1' },
  source: OUR_OWN_DESIGN,
  ...written,
});

/** Part of an exponential approach after a number of time constants, exact also in the first seconds. */
const reached = (constants: number): number => -Math.expm1(-constants);

const [FALL_DAYS, REGAIN_DAYS, REGAINED] = [7, 120, 0.5] as const;

/** Course of the loss of maximal oxygen uptake in flight. */
export const oxygenUptakeCourse = formula(
  record('oxygen-uptake-course', {
    title: 'Course of the loss of maximal oxygen uptake in flight',
    equation: 'g = (1 − exp(−t / 7)) − 0.5 · (1 − exp(−t / 120))',
    inputs: [flightDay(LONGEST_FLIGHT.oxygenUptake)],
    restsOn: [MOORE_2014, MOORE_2015],
    doesNotKnow:
      'Its three constants are our own and were not fitted day by day: the papers print a fall by flight day 15 and a slow, partial regain. That the regain is the same share in everybody.',
    plot: {
      says: 'A fast fall in the first weeks, then a slow and partial regain. The points are published means (−17 % and −15 %) over one amplitude: the first fixes it, the second tests the course.',
      x: { name: 'days after launch', unit: 'd' },
      y: { name: 'loss as a part of its amplitude', unit: '1' },
      curves: (): readonly Curve[] => {
        const amplitude = -Math.log(0.83) / oxygenUptakeCourse(15);
        return [
          curveOf('course', oxygenUptakeCourse, [0, 365], (day) => [day]),
          {
            label: 'means of Moore 2014: flight day 15 and, drawn at day 165, the day after landing',
            scattered: true,
            points: [
              [15, -Math.log(0.83) / amplitude],
              [165, -Math.log(0.85) / amplitude],
            ],
          },
        ];
      },
    },
  }),
  (day: number): number => reached(day / FALL_DAYS) - REGAINED * reached(day / REGAIN_DAYS),
);

const STRENGTH_DAYS = 60;

/** Course of the loss of strength in flight. */
export const strengthCourse = formula(
  record('strength-course', {
    title: 'Course of the loss of strength in flight',
    equation: 'g = 1 − exp(−t / 60)',
    inputs: [flightDay(LONGEST_FLIGHT.strength)],
    restsOn: [ENGLISH_2020],
    doesNotKnow:
      'Its constant is our own: strength was printed before and after flights, hardly ever during them. Which muscle, and what is trained.',
    plot: {
      says: 'Half of the loss is there after six weeks, nearly all of it after six months.',
      x: { name: 'days after launch', unit: 'd' },
      y: { name: 'loss as a part of its amplitude', unit: '1' },
      curves: (): readonly Curve[] => [curveOf('course', strengthCourse, [0, 365], (day) => [day])],
    },
  }),
  (day: number): number => reached(day / STRENGTH_DAYS),
);

const MONTHS = { name: 'months of loss', symbol: 'g', unit: 'months' };

/** Course of the loss of bone mineral in flight, at a steady rate [months]. */
export const boneCourse = formula(
  record('bone-course', {
    title: 'Course of the loss of bone mineral in flight, at a steady rate [months]',
    equation: 'g = t / 30.4375',
    inputs: [flightDay(213)],
    output: MONTHS,
    restsOn: [LEBLANC_2000],
    doesNotKnow:
      'Beyond about seven months a steady rate overstates the loss: look at the saturating course beside it.',
  }),
  (day: number): number => day / DAYS_PER_MONTH,
);

/** Course of the loss of bone mineral in flight, saturating [months]. */
export const boneCourseSaturating = formula(
  record('bone-course-saturating', {
    title: 'Course of the loss of bone mineral in flight, saturating [months]',
    equation: 'g = (1 − exp(−k · t)) / (30.4375 · k) with k = 0.0006371 each day',
    inputs: [flightDay(LONGEST_FLIGHT.femoralNeck)],
    output: MONTHS,
    source: AXPE_2020,
    doesNotKnow:
      'The constant was fitted to the femoral necks of 69 people after flights of 132 to 228 days, most of them as the means of two groups; that it begins with the rate of the steady course is our own choice. bone/saturating-loss has the same constant, with a plateau in percent.',
    plot: {
      says: 'Both begin alike; after a year the saturating course has lost eleven parts in a hundred less.',
      x: { name: 'days after launch', unit: 'd' },
      y: { name: 'months of loss', unit: 'months' },
      curves: (): readonly Curve[] => [
        curveOf('steady', boneCourse, [0, 730], (day) => [day]),
        curveOf('saturating', boneCourseSaturating, [0, 730], (day) => [day]),
      ],
    },
  }),
  (day: number): number => reached(BONE_SATURATION * day) / (BONE_SATURATION * DAYS_PER_MONTH),
);
