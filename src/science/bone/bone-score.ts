import type { Sex } from '../body/segments.ts';
import { method } from '../method.ts';
import { densityInput, precisionInput } from './density-input.ts';
import { figure } from './figures.ts';
import { impossible, refused, type Refused } from './impossible.ts';
import { LOOKER_1998, MICHALSKI_2019 } from './sources.ts';
import { referenceMean, referenceSd, scoreSd, standardScore } from './standard-score.ts';
import { YOUNG_ADULT_REFERENCE, type HipRegion } from './young-adult-reference.table.ts';
import { boneDensity, type BoneDensity } from '#units/quantity.ts';

/** T and Z scores that always say what they were counted from: the reference is part of the score and is kept with it. */

/** Standards for crews take the young of the person’s own sex; densitometry societies take young women for everybody. */
export type YoungReference = 'sex-matched' | 'young female';

export interface BoneReference {
  readonly kind: YoungReference | 'age-matched';
  /** "men of 20 to 29 years": what a reader is told. */
  readonly people: string;
  readonly mean: BoneDensity;
  readonly sd: BoneDensity;
  /** The survey, or the report on which it stood. */
  readonly from: string;
}

const PEOPLE: Readonly<Record<Sex, string>> = { male: 'men of 20 to 29 years', female: 'women of 20 to 29 years' };

/** The young adults of the survey, for a region of the hip. */
export const youngReference = (region: HipRegion, sex: Sex, kind: YoungReference): BoneReference => {
  const of: Sex = kind === 'young female' ? 'female' : sex;
  const row = YOUNG_ADULT_REFERENCE.rows.find((each) => each.region === region && each.sex === of);
  if (!row) throw new RangeError(`No young adults of ${of} sex stand in the reference for the ${region}.`);
  return { kind, people: PEOPLE[of], mean: boneDensity(row.mean), sd: boneDensity(row.sd), from: LOOKER_1998.text };
};

export type BoneScore =
  | {
      readonly kind: 'estimate';
      readonly score: 'T' | 'Z';
      readonly value: number;
      /** Where the precision of the scan is known. */
      readonly sd?: number;
      readonly reference: BoneReference;
      readonly says: string;
      readonly cautions: readonly string[];
    }
  | Refused;

const density = densityInput('density', 'BMD');

/** T or Z score of a density, with the reference it was counted from. */
export const boneScore = method(
  {
    id: 'bone/score',
    revision: 1,
    title: 'T or Z score of a density, with the reference it was counted from',
    equations: [
      'T = (BMD − mean) / SD of young adults',
      'Z = (BMD − mean) / SD of people of the same age',
      'σ_T = RMS_SD / SD',
    ],
    inputs: [density, referenceMean, referenceSd, precisionInput],
    outputs: [
      { name: 'T or Z score', symbol: 'T', unit: '1' },
      { name: 'standard deviation of the score', symbol: 'σ_T', unit: '1' },
    ],
    refuses: ['A density, a reference or a precision that cannot be.'],
    source: LOOKER_1998,
    restsOn: [MICHALSKI_2019],
    doesNotKnow:
      'Which reference a standard means: it is chosen by a person and said with the score. It diagnoses nothing.',
  },
  (measured: BoneDensity, reference: BoneReference, precision?: BoneDensity): BoneScore => {
    const reasons = impossible([
      [density, measured],
      [referenceMean, reference.mean],
      [referenceSd, reference.sd],
      ...(precision === undefined ? [] : [[precisionInput, precision] as const]),
    ]);
    if (reasons.length > 0) return refused(reasons);
    const score = reference.kind === 'age-matched' ? 'Z' : 'T';
    const value = standardScore(measured, reference.mean, reference.sd);
    return {
      kind: 'estimate',
      score,
      value,
      ...(precision === undefined ? {} : { sd: scoreSd(precision, reference.sd) }),
      reference,
      says: `${score} ${figure(value, 2)} against ${reference.people} (${reference.kind})`,
      cautions:
        precision === undefined
          ? ['The precision of the scan is not known: how sure this score is cannot be said.']
          : [],
    };
  },
);
