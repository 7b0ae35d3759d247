import { method } from '../method.ts';
import { GELMAN_2013, OUR_OWN_DESIGN } from '../sources.ts';
import { spaced, type Curve } from '../plot.ts';
import type { Refused } from './adherence.ts';
import { boneChange, boneChangeSd, rateStandardError } from './bone-change.ts';
import { boneRateAtDose, boneRateSdAtDose } from './dose.ts';
import { FEMORAL_NECK, type BoneQuantity } from './quantities.table.ts';
import { logDensity } from '../estimation/observation.ts';

/** The rate at which one person loses bone: what other people lose, drawn towards what this one lost before. */

export interface BoneRate {
  /** Below zero is a loss [%/month]. */
  readonly mean: number;
  readonly sd: number;
}

/** What an earlier mission of the same person showed. */
export interface EarlierMission {
  /** Change between two scans [%]. */
  readonly change: number;
  readonly months: number;
  /** Precision of one scan [%]. */
  readonly scanSd: number;
}

export type BoneRateResult =
  | {
      readonly kind: 'estimate';
      readonly mean: number;
      readonly sd: number;
      readonly ownMeasurements: number;
      readonly logLikelihood: number;
    }
  | Refused;

/** What other people's rate is at a dose of training. */
export const boneRatePrior = (of: BoneQuantity, dose: number): BoneRate => ({
  mean: boneRateAtDose(dose, of.rateAtFullDose, of.rateAtNoDose),
  sd: boneRateSdAtDose(dose, of.rateAtFullDose, of.rateAtNoDose, of.sdAtFullDose, of.sdAtNoDose, of.doseSd),
});

const faultOfMission = ({ change, months, scanSd }: EarlierMission): string | null => {
  if (!(change > -100 && change < 100)) return `A change lies between −100 and 100 %; it is ${change}.`;
  if (!(months >= 0.1 && months <= 120)) return `A mission lasts 0.1 to 120 months; it is ${months}.`;
  return scanSd > 0 && scanSd <= 20 ? null : `The precision of a scan lies above 0 and up to 20 %; it is ${scanSd}.`;
};

const PLOTTED_MONTHS = 6;
const PLOTTED_DRIFT = FEMORAL_NECK.driftPerMonth;
/** Standard deviations on either side that hold nine tenths. */
const NINE_TENTHS = 1.6448536269514722;

const bandOf = (label: string, { mean, sd }: BoneRate): Curve => {
  const points = spaced(0, PLOTTED_MONTHS, 31).map((months) => [months, boneChange(mean, months)] as const);
  const band = points.map(([months, change]) => {
    const half = NINE_TENTHS * boneChangeSd(months, sd, PLOTTED_DRIFT);
    return [change - half, change + half] as const;
  });
  return { label, points, band };
};

/** The rate of one person, from other people and from earlier missions. */
export const boneRatePosterior = method(
  {
    id: 'projection/bone-rate-posterior',
    revision: 1,
    title: 'Rate of bone loss of one person, from other people and earlier missions',
    equations: [
      'rate_i = change_i / months_i, SE_i = √(2) · SD_scan / months_i',
      'v_i = SE_i^2 + SD_transfer^2',
      'precision = 1 / SD_prior^2 + sum_i 1 / v_i',
      'b = (b_prior / SD_prior^2 + sum_i rate_i / v_i) / precision',
      'SD_b = √(1 / precision)',
    ],
    inputs: [
      { name: 'rate of other people', symbol: 'b_prior', unit: '%/month', possible: [-10, 10], valid: [-3, 1] },
      { name: 'its spread', symbol: 'SD_prior', unit: '%/month', possible: [1e-6, 10], valid: [0.05, 2] },
      { name: 'change over a mission', symbol: 'change_i', unit: '%', possible: [-100, 100], valid: [-20, 10] },
      { name: 'months of a mission', symbol: 'months_i', unit: 'months', possible: [0.1, 120], valid: [1, 15] },
      { name: 'precision of one scan', symbol: 'SD_scan', unit: '%', possible: [1e-6, 20], valid: [0.5, 3] },
      { name: 'spread between missions', symbol: 'SD_transfer', unit: '%/month', possible: [0, 10], valid: [0.05, 1] },
    ],
    outputs: [
      { name: 'rate', symbol: 'b', unit: '%/month' },
      { name: 'standard deviation', symbol: 'SD_b', unit: '%/month' },
    ],
    refuses: ['A change, a length of mission or a precision that cannot be.', 'A prior without a spread.'],
    source: GELMAN_2013,
    restsOn: [OUR_OWN_DESIGN],
    doesNotKnow:
      'What was trained on the earlier mission: another dose or another machine hides in the spread between missions, which is our own figure.',
    plot: {
      says: 'A fall of 4 % on an earlier mission of six months pulls the forecast down and narrows it. The bands hold nine tenths.',
      x: { name: 'months of flight', unit: 'months' },
      y: { name: 'change of the femoral neck', unit: '%' },
      curves: (): readonly Curve[] => {
        const prior = boneRatePrior(FEMORAL_NECK, 0.8);
        const posterior = boneRatePosterior(prior, [{ change: -4, months: 6, scanSd: 1.8 }], FEMORAL_NECK.transferSd);
        return [
          bandOf('other people', prior),
          ...(posterior.kind === 'estimate' ? [bandOf('with the earlier mission', posterior)] : []),
        ];
      },
    },
  },
  (prior: BoneRate, missions: readonly EarlierMission[], transferSd: number): BoneRateResult => {
    const [fault] = missions.flatMap((mission) => faultOfMission(mission) ?? []);
    if (fault !== undefined) return { kind: 'refused', reason: fault };
    if (!(Number.isFinite(prior.mean) && prior.sd > 0 && Number.isFinite(prior.sd) && transferSd >= 0))
      return { kind: 'refused', reason: 'The rate of other people needs a mean and a spread above zero.' };
    let { mean, sd } = prior;
    let logLikelihood = 0;
    for (const { change, months, scanSd } of missions) {
      const variance = rateStandardError(scanSd, months) ** 2 + transferSd ** 2;
      const surprise = change / months - mean;
      const total = sd * sd + variance;
      logLikelihood += logDensity(surprise, total);
      mean += (sd * sd * surprise) / total;
      sd = Math.sqrt((sd * sd * variance) / total);
    }
    return { kind: 'estimate', mean, sd, ownMeasurements: missions.length, logLikelihood };
  },
);
