import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { refused, type Estimate, type Refused } from './estimate.ts';
import { MEASURED_FRACTION } from './estimator-spread.table.ts';

/** One maximal uptake to work with, of several ways it was found: what was measured stands before what was computed. */

export interface FoundMaximum {
  /** "Cycle test in stages", "gas exchange". */
  readonly way: string;
  /** True only for gas exchange at a test that the person took to the limit. */
  readonly measured: boolean;
  /** [mL/(kg min)] */
  readonly value: number;
  /** [mL/(kg min)]; a measurement without one gets 3 % of its value. */
  readonly sd?: number;
}

export interface KnownMaximum extends Estimate {
  readonly way: string;
  readonly measured: boolean;
  /** The others, with how far each lies from the one taken, in standard deviations of both. */
  readonly setAside: readonly { readonly way: string; readonly value: number; readonly apart: number }[];
}

const APART = 2;
const POSSIBLE = [7, 100] as const;

const sdOf = ({ measured, value, sd }: FoundMaximum): number | undefined =>
  sd ?? (measured ? MEASURED_FRACTION * value : undefined);

/** The maximal uptake to work with. */
export const knownMaximum = method(
  {
    id: 'submaximal/known-maximum',
    revision: 1,
    title: 'The maximal oxygen uptake to work with, measured before computed',
    equations: [
      'measured before computed; of several, the smallest SD; of equals, the last given',
      'SD of a measurement without one = 0.03 · VO2_max',
      'apart = |VO2_a − VO2_b| / √(SD_a^2 + SD_b^2)',
    ],
    inputs: [
      { name: 'maximal oxygen uptake', symbol: 'VO2_max', unit: 'mL/(kg min)', possible: POSSIBLE, valid: [15, 90] },
      { name: 'its standard deviation', symbol: 'SD', unit: 'mL/(kg min)', possible: [0.1, 30], valid: [0.5, 10] },
    ],
    outputs: [
      { name: 'maximal oxygen uptake', symbol: 'VO2_max', unit: 'mL/(kg min)' },
      { name: 'its standard deviation', symbol: 'SD', unit: 'mL/(kg min)' },
    ],
    refuses: [
      'Nothing to choose from.',
      'A value that is not possible.',
      'A computed value without a standard deviation.',
    ],
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'How old each value is, and that a cycle reads 10 to 20 % below a treadmill: give it those of one machine.',
  },
  (found: readonly FoundMaximum[]): KnownMaximum | Refused => {
    const reasons = found.flatMap(faultsOf);
    if (reasons.length > 0) return refused(reasons.join(' '));
    const sure = found.map((each) => ({ ...each, sd: sdOf(each) ?? 0 })).toReversed();
    const [taken, ...others] = sure.toSorted((a, b) => Number(b.measured) - Number(a.measured) || a.sd - b.sd);
    if (!taken) return refused('Give at least one maximal uptake, measured or computed.');
    const setAside = others.map(({ way, value, sd }) => ({
      way,
      value,
      apart: Math.abs(value - taken.value) / Math.hypot(sd, taken.sd),
    }));
    const cautions = setAside
      .filter(({ apart }) => apart > APART)
      .map(({ way, apart }) => `${way} lies ${apart.toFixed(1)} standard deviations away: one of the two is wrong.`);
    return { kind: 'estimate', ...taken, cautions, setAside };
  },
);

const faultsOf = (found: FoundMaximum): string[] => {
  const sd = sdOf(found);
  const [low, high] = POSSIBLE;
  return [
    ...(found.value >= low && found.value <= high
      ? []
      : [`${found.way}: a maximal uptake must lie in ${low} to ${high} mL/(kg min); it is ${found.value}.`]),
    ...(sd === undefined
      ? [`${found.way}: a computed value needs its standard deviation.`]
      : sd >= 0.1 && sd <= 30
        ? []
        : [`${found.way}: a standard deviation must lie in 0.1 to 30; it is ${sd}.`]),
  ];
};
