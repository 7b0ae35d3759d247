import { barLoad, exertion, repetitions, type Repetitions } from '#units/quantity.ts';
import type { Effort } from '#domain/effort.ts';
import { effectiveRepetitions, reserveOfExertion } from '#science/strength/effort.ts';
import { logSdOfMaximum, noviceReserveSd, reserveSd, UNKNOWN_RESERVE_SD } from '#science/strength/estimate-spread.ts';
import { repetitionMaximum } from '#science/strength/repetition-maximum.ts';
import { intervalOfFormulas, rangeOfRepetitions } from '#science/strength/set-estimate.ts';

/** Less than half a year of training: reserves are judged worse. */
const NOVICE_YEARS = 0.5;

/** How many repetitions were left, as far as anybody can say. */
export type ReserveReading =
  | { readonly kind: 'reported'; readonly reserve: Repetitions }
  | { readonly kind: 'at least'; readonly reserve: Repetitions }
  | { readonly kind: 'prescribed'; readonly reserve: Repetitions }
  | { readonly kind: 'unknown' };

export type SetReading =
  | {
      readonly kind: 'read';
      /** Maximum of `of` repetitions [kg at the bar]. */
      readonly maximum: number;
      readonly range: readonly [number, number] | null;
      readonly logSd: number;
      readonly lowerBound: boolean;
      readonly confidence: 'usual' | 'low';
      readonly why: string | null;
    }
  | { readonly kind: 'unused'; readonly why: string };

/** The reserve that an effort stands for; an effort too low to read leaves only "at least". */
export const reserveOf = (effort: Effort | null): ReserveReading => {
  if (!effort) return { kind: 'unknown' };
  if (effort.kind === 'repetitions in reserve') return reported(repetitions(effort.value));
  const reserve = reserveOfExertion(exertion(effort.value));
  return reserve.kind === 'reserve' ? reported(reserve.repetitions) : { kind: 'unknown' };
};

/** Five in reserve is the end of what can be told apart: it says "five or more", so only "at least this much". */
const MOST_TOLD_APART = 5;

const reported = (reserve: Repetitions): ReserveReading =>
  reserve >= MOST_TOLD_APART
    ? { kind: 'at least', reserve: repetitions(MOST_TOLD_APART) }
    : { kind: 'reported', reserve };

/** Reads one set as a maximum of `of` repetitions. */
export const readSet = (
  bar: number,
  completed: number,
  reserve: ReserveReading,
  of: number,
  trainingAge: number | null,
): SetReading => {
  const left = reserve.kind === 'unknown' ? repetitions(0) : reserve.reserve;
  const effective = effectiveRepetitions(repetitions(completed), left);
  const range = rangeOfRepetitions(effective);
  if (range.kind === 'none') return { kind: 'unused', why: range.reason };
  const { low, high } = intervalOfFormulas(barLoad(bar), effective, repetitions(of));
  return {
    kind: 'read',
    maximum: repetitionMaximum(barLoad(bar), effective, repetitions(of)),
    range: of === 1 && effective > 1 ? [low, high] : null,
    logSd: logSdOf(effective, reserve, of, trainingAge),
    lowerBound: reserve.kind === 'unknown' || reserve.kind === 'at least',
    confidence: range.kind === 'low confidence' && of === 1 ? 'low' : 'usual',
    why: whyOf(reserve, range.kind === 'low confidence' && of === 1 ? range.reason : null),
  };
};

/** The further a set lies from the repetitions it is read as, the wider: the formula's error grows with the distance. */
const logSdOf = (effective: Repetitions, reserve: ReserveReading, of: number, trainingAge: number | null): number => {
  const sd = reserveSdOf(reserve);
  const judged = trainingAge !== null && trainingAge < NOVICE_YEARS ? noviceReserveSd(sd) : sd;
  return logSdOfMaximum(effective, repetitions(of), judged);
};

const reserveSdOf = (reserve: ReserveReading): Repetitions => {
  if (reserve.kind === 'prescribed') return UNKNOWN_RESERVE_SD;
  return reserve.kind === 'unknown' ? repetitions(0) : reserveSd(reserve.reserve);
};

const whyOf = (reserve: ReserveReading, range: string | null): string | null => {
  if (reserve.kind === 'unknown') return 'Effort not recorded, or too low to be read: at least this much.';
  if (reserve.kind === 'at least') return `${reserve.reserve} or more in reserve: at least this much.`;
  if (reserve.kind === 'prescribed')
    return `Effort not recorded: read at the prescribed reserve of ${reserve.reserve} ± ${UNKNOWN_RESERVE_SD}.`;
  return range;
};
