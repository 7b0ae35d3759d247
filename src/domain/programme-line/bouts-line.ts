import { isOne, type Prescription } from '../prescription.ts';
import type { BoutsItem, ProgrammeBout } from '../programme.ts';
import { told, type Told } from './line-problem.ts';

export type Bouts = Extract<Prescription, { readonly kind: 'bouts' }>;

/** Bouts as their line says them, or null where they differ among themselves: those stand beside the line, one by one. */
export const prescriptionOfBouts = ({ bouts }: BoutsItem): Bouts | null => {
  const [first] = bouts;
  if (!first || !bouts.every((bout, place) => isAlike(bout, first, place === bouts.length - 1))) return null;
  return {
    kind: 'bouts',
    repeats: { least: bouts.length, most: bouts.length },
    seconds: first.seconds,
    intensity: first.intensity,
    easy: first.easy > 0 ? first.easy : null,
  };
};

/** After the last bout comes the cooling down, whether or not its own easy time is named. */
const isAlike = (bout: ProgrammeBout, first: ProgrammeBout, isLast: boolean): boolean =>
  bout.seconds === first.seconds &&
  JSON.stringify(bout.intensity) === JSON.stringify(first.intensity) &&
  (bout.easy === first.easy || (isLast && bout.easy === 0));

export const boutsAsWritten = (before: BoutsItem, written: Bouts): Told<BoutsItem> => {
  const { repeats, seconds, intensity, easy } = written;
  if (!isOne(repeats))
    return told(before, ['A card says one number of bouts: write 4 × 4 min where the line says 3–4 × 4 min.']);
  if (JSON.stringify(prescriptionOfBouts(before)) === JSON.stringify(written)) return told(before, []);
  const bouts = Array.from({ length: repeats.least }, () => ({ seconds, intensity, easy: easy ?? 0 }));
  return told({ ...before, bouts }, []);
};

/** Bouts that differ, in words: "2 min @ RPE 6, 1 min @ RPE 8". */
export const wordsOfBouts = ({ bouts }: BoutsItem, write: (bout: Bouts) => string): string =>
  bouts
    .map(({ seconds, intensity, easy }) =>
      write({ kind: 'bouts', repeats: { least: 1, most: 1 }, seconds, intensity, easy: easy > 0 ? easy : null }),
    )
    .join(' then ');
