import type { Day } from '#units/day.ts';
import type { Endurance, Found } from '#assessing/endurance.ts';
import type { HarnessPull } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { BoutIntensity, Span } from '#domain/prescription.ts';
import type { Origin } from '#domain/working.ts';
import type { FilledReckoning } from './filled-reckoning.ts';

/** Whom and what a bout is set for. */
export interface BoutAt {
  readonly day: Day;
  /** Null on the ground. */
  readonly flightDay: number | null;
  readonly exercise: Exercise;
  readonly machine: Machine;
  readonly person: Endurance;
  /** The mass that counts on that day [kg]. */
  readonly mass: Pick<Found, 'value' | 'from'> | null;
  readonly harness: HarnessPull | null;
  /** Has the harness taken a step yet? Only then may a belt run faster than on the ground. */
  readonly isLoadRaised: boolean;
  /** The part that a back-off takes off. */
  readonly backedOff: number | null;
  readonly rpe: readonly [number, number];
  /** Effort alone leads, whatever the programme names: by a physician's limit, or in the first days after landing. */
  readonly byEffortOnly: boolean;
  /** The highest effort that a physician allows. */
  readonly effortCap: number | null;
  readonly programme: Extract<Origin, { readonly kind: 'programme' }>;
}

export type ByShare = Extract<BoutIntensity, { readonly of: Span }>;

/** Something that was reckoned for a bout, the reckonings behind it, and sentences on what is missing or doubtful. */
export interface Reckoned<Value> {
  readonly value: Value;
  readonly reckonings: readonly FilledReckoning[];
  readonly says: readonly string[];
}

export const nothing = <Value>(value: Value, ...says: readonly string[]): Reckoned<Value> => ({
  value,
  reckonings: [],
  says,
});

const OF: Readonly<Record<ByShare['kind'], string>> = {
  'of heart-rate reserve': 'of the heart-rate reserve',
  'of greatest heart rate': 'of the greatest heart rate',
  'of greatest uptake': 'of the greatest oxygen uptake',
};

const percent = (value: number): string => String(Number((value * 100).toFixed(1)));

/** "60 to 70 % of the heart-rate reserve", as the programme has it. */
export const askedBy = ({ programme }: BoutAt, { kind, of: { least, most } }: ByShare, more = ''): Origin => ({
  ...programme,
  says: `${programme.says}: ${least === most ? percent(least) : `${percent(least)} to ${percent(most)}`} % ${OF[kind]}${more}`,
});

export const middleOf = ({ least, most }: Span): number => (least + most) / 2;
