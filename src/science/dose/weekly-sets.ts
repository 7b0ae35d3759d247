import { formula, type FormulaInput } from '../formula.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { PELLAND_2024, SCHOENFELD_2017 } from './sources.ts';

/** How sets are counted, and what sets more may do to size. */

/** A set that trains a muscle on the way counts half. */
const OF_INDIRECT = 0.5;
/** For strength, a set under this share of the maximum counts half; our own. */
export const HEAVY_ENOUGH = 0.6;
const OF_LIGHT = 0.5;
const RAISE = 1.2;

const sets = (name: string, symbol: string): FormulaInput => ({
  name,
  symbol,
  unit: 'sets/week',
  possible: [0, 200],
  valid: [0, 40],
});

/** Weekly sets of a muscle, direct ones whole and indirect ones half. */
export const fractionalSets = formula(
  {
    id: 'dose/fractional-sets',
    revision: 1,
    title: 'Weekly sets of a muscle, direct ones whole and indirect ones half',
    equation: 'n_direct + 0.5 · n_indirect',
    inputs: [sets('direct sets', 'n_direct'), sets('indirect sets', 'n_indirect')],
    output: { name: 'weekly sets', symbol: 'n', unit: 'sets/week' },
    source: PELLAND_2024,
    doesNotKnow: 'Which muscle a lift trains on the way: whoever writes the exercise says so.',
  },
  (direct: number, indirect: number): number => direct + OF_INDIRECT * indirect,
);

/** Weekly sets that count for strength, heavy ones whole and light ones half. */
export const setsForStrength = formula(
  {
    id: 'dose/sets-for-strength',
    revision: 1,
    title: 'Weekly sets that count for strength, heavy ones whole and light ones half',
    equation: 'n_heavy + 0.5 · n_light',
    inputs: [sets('sets at 60 % of the maximum or more', 'n_heavy'), sets('lighter sets', 'n_light')],
    output: { name: 'weekly sets', symbol: 'n', unit: 'sets/week' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'How close to failure a set went. The half and the 60 % are our own and editable.',
  },
  (heavy: number, light: number): number => heavy + OF_LIGHT * light,
);

/** Difference in gain of muscle size between two weekly volumes [percentage points]. */
export const sizeDifference = formula(
  {
    id: 'dose/size-difference',
    revision: 1,
    title: 'Difference in gain of muscle size between two weekly volumes [percentage points]',
    equation: '0.37 · (n − n_ref)',
    inputs: [
      { ...sets('weekly sets', 'n'), possible: [1, 20], valid: [1, 20] },
      { ...sets('weekly sets compared with', 'n_ref'), possible: [1, 20], valid: [1, 20] },
    ],
    output: { name: 'difference in gain', symbol: 'Δsize', unit: '%' },
    source: SCHOENFELD_2017,
    doesNotKnow:
      'Where more stops helping: the line is never drawn outside 1 to 20 sets. It is a mean over studies of some weeks, of people on the ground.',
  },
  (now: number, compared: number): number => 0.37 * (now - compared),
);

/** Most sets of the week after. */
export const mostSetsNextWeek = formula(
  {
    id: 'dose/most-next-week',
    revision: 1,
    title: 'Most sets of the week after',
    equation: '1.2 · n',
    inputs: [sets('weekly sets', 'n')],
    output: { name: 'most sets of the week after', symbol: 'n_next', unit: 'sets/week' },
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'This person. A fifth more is our own limit and editable; a week after a pause or a deload is compared with the week before it.',
  },
  (now: number): number => RAISE * now,
);
