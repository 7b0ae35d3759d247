import { percentChange } from '../adaptation/change.ts';
import { method } from '../method.ts';
import { densityInput, precisionInput } from './density-input.ts';
import { leastSignificantChange } from './dxa-precision.ts';
import { figure, signed } from './figures.ts';
import { impossible, refused, type Refused } from './impossible.ts';
import { WORST_ACCEPTABLE_PRECISION, type Region } from './precision.table.ts';
import { ISCD_POSITIONS, NELSON_2010 } from './sources.ts';
import { boneDensity, type BoneDensity } from '#units/quantity.ts';

/** Two scans of one person: whether what lies between them is more than noise. */

export interface TwoScans {
  readonly before: BoneDensity;
  readonly after: BoneDensity;
  /** Of the technologist, the machine and the region at hand. */
  readonly precision: BoneDensity;
  readonly machines: 'same' | 'cross-calibrated' | 'different';
}

export type ScanChange =
  | {
      readonly kind: 'counts' | 'within the noise';
      readonly change: BoneDensity;
      readonly percent: number;
      readonly leastSignificantChange: BoneDensity;
      readonly says: string;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'none'; readonly reason: string }
  | Refused;

/** Scans are printed to a thousandth: a difference this small is a binary fraction. */
const ROUNDING = 1e-9;

const before = densityInput('density before', 'before');
const after = densityInput('density after', 'after');

const DIFFERENT_MACHINES =
  'Two machines that were not cross-calibrated read differently: no change can be taken between them. Scan both times on one machine, or have them cross-calibrated.';

/** Whether a change between two scans counts. */
export const scanChange = method(
  {
    id: 'bone/scan-change',
    revision: 1,
    title: 'Whether a change between two scans counts',
    equations: ['d = after − before', 'it counts where |d| ≥ LSC, LSC = 2.77 · RMS_SD'],
    inputs: [before, after, precisionInput],
    outputs: [
      { name: 'change', symbol: 'd', unit: 'g/cm²' },
      { name: 'change', symbol: 'Δ', unit: '%' },
    ],
    refuses: [
      'A density or a precision that cannot be.',
      'Two machines that were not cross-calibrated: no change is given.',
    ],
    source: ISCD_POSITIONS,
    restsOn: [NELSON_2010],
    doesNotKnow:
      'A change within the noise is not the absence of a change; and density is not strength. One unchanged person in twenty counts by chance.',
  },
  (scans: TwoScans): ScanChange => {
    const reasons = impossible([
      [before, scans.before],
      [after, scans.after],
      [precisionInput, scans.precision],
    ]);
    if (reasons.length > 0) return refused(reasons);
    if (scans.machines === 'different') return { kind: 'none', reason: DIFFERENT_MACHINES };
    const change = boneDensity(scans.after - scans.before);
    const least = leastSignificantChange(scans.precision);
    const kind = Math.abs(change) >= least - ROUNDING ? 'counts' : 'within the noise';
    const percent = percentChange(scans.before, scans.after);
    return {
      kind,
      change,
      percent,
      leastSignificantChange: least,
      says: `${signed(change, 3)} g/cm² (${signed(percent, 1)} %) against a least significant change of ${figure(least, 3)}: ${kind === 'counts' ? 'it counts.' : 'within the noise of the scans.'}`,
      cautions: cautionsOf(scans),
    };
  },
);

const cautionsOf = ({ precision, machines }: TwoScans): readonly string[] => [
  ...(machines === 'cross-calibrated' ? ['Cross-calibration adds an error that is not in the precision.'] : []),
  ...(precision === 0 ? ['No technologist repeats without error: enter the measured precision.'] : []),
];

export type PrecisionVerdict =
  | {
      readonly kind: 'acceptable' | 'too coarse';
      readonly percent: number;
      readonly worst: number;
      readonly says: string;
    }
  | { readonly kind: 'none'; readonly reason: string }
  | Refused;

const mean = densityInput('mean density of the people scanned', 'mean');

/** Whether a technologist’s precision is one that the society accepts. */
export const acceptablePrecision = method(
  {
    id: 'bone/acceptable-precision',
    revision: 1,
    title: 'Whether a precision is one that the society accepts',
    equations: ['CV = 100 · RMS_SD / mean', 'acceptable where CV is at most the worst of the table'],
    inputs: [precisionInput, mean],
    outputs: [{ name: 'coefficient of variation', symbol: 'CV', unit: '%' }],
    refuses: ['A precision or a density that cannot be.', 'A region without a printed limit: no verdict.'],
    source: ISCD_POSITIONS,
    equationFromMemory: true,
    doesNotKnow:
      'Whether acceptable is enough: at the worst acceptable precision a change under 5 to 7 % cannot be seen.',
  },
  (region: Region, precision: BoneDensity, meanDensity: BoneDensity): PrecisionVerdict => {
    const reasons = impossible([
      [precisionInput, precision],
      [mean, meanDensity],
    ]);
    if (reasons.length > 0) return refused(reasons);
    const row = WORST_ACCEPTABLE_PRECISION.rows.find((each) => each.region === region);
    if (!row) return { kind: 'none', reason: `No worst acceptable precision is printed for the ${region}.` };
    const percent = (100 * precision) / meanDensity;
    const kind = percent <= row.precision + ROUNDING ? 'acceptable' : 'too coarse';
    return {
      kind,
      percent,
      worst: row.precision,
      says: `Precision at the ${region} ${figure(percent, 1)} %, at worst ${figure(row.precision, 1)} %: ${kind}.`,
    };
  },
);
