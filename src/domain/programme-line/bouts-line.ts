import { isOne, type Prescription } from '../prescription.ts';
import type { BoutsItem, ProgrammeBout } from '../programme.ts';
import { readShorthand } from '../shorthand/read-shorthand.ts';
import { writeShorthand } from '../shorthand/write-shorthand.ts';
import { told, type Told } from './line-problem.ts';
import type { Sets } from './set-groups.ts';

export type Bouts = Extract<Prescription, { readonly kind: 'bouts' }>;

const THEN = ' then ';

/** Bouts in one line: "4 × 4 min @ 90 % HRR, 3 min easy", and "2 min @ 70 % VO2max then 2 min @ 80 % VO2max" where they differ. */
export const writeBouts = ({ bouts }: BoutsItem): string => partsOf(bouts).map(writeShorthand).join(THEN);

/** Neighbours that are alike together. After the last bout comes the cooling down, whether or not its own easy time is named. */
const partsOf = (bouts: readonly ProgrammeBout[]): readonly Bouts[] => {
  const runs: ProgrammeBout[][] = [];
  for (const [place, bout] of bouts.entries()) {
    const run = runs.at(-1);
    const isLast = place === bouts.length - 1;
    if (run?.[0] && isAlike(bout, run[0], isLast && runs.length === 1)) run.push(bout);
    else runs.push([bout]);
  }
  return runs.flatMap(([first, ...others]): readonly Bouts[] =>
    first
      ? [
          {
            kind: 'bouts',
            repeats: { least: others.length + 1, most: others.length + 1 },
            seconds: first.seconds,
            intensity: first.intensity,
            easy: first.easy > 0 ? first.easy : null,
          },
        ]
      : [],
  );
};

const isAlike = (bout: ProgrammeBout, first: ProgrammeBout, mayEndBare: boolean): boolean =>
  bout.seconds === first.seconds &&
  JSON.stringify(bout.intensity) === JSON.stringify(first.intensity) &&
  (bout.easy === first.easy || (mayEndBare && bout.easy === 0));

/** Bouts of several kinds, one after another; null where a part of the line is none. */
export const readBoutsInTurn = (line: string): readonly Bouts[] | null => {
  const parts = line.split(/\s+then\s+/i).map((part) => {
    const reading = readShorthand(part);
    return reading.kind === 'prescription' ? boutsOf(reading.prescription) : null;
  });
  return parts.every((part) => part !== null) ? parts : null;
};

const boutsOf = (prescription: Prescription): Bouts | null =>
  prescription.kind === 'bouts' ? prescription : boutsOfHolds(prescription);

/** Half a minute reads like a hold; on what is run, ridden or rowed it is a bout. */
export const boutsOfHolds = ({ groups, rest, tempo, superset }: Sets): Bouts | null => {
  const [group, ...others] = groups;
  if (!group || others.length > 0 || tempo || superset || group.each.kind !== 'hold' || !isOne(group.each.seconds))
    return null;
  const { intensity, load, perSide, warmUp, top } = group;
  if (load || perSide || warmUp || top || (intensity && intensity.kind !== 'RPE')) return null;
  return { kind: 'bouts', repeats: group.sets, seconds: group.each.seconds.least, intensity, easy: rest };
};

export const boutsAsWritten = (before: BoutsItem, written: readonly Bouts[]): Told<BoutsItem> => {
  if (written.some(({ repeats }) => !isOne(repeats)))
    return told(before, ['A card says one number of bouts: write 4 × 4 min where the line says 3–4 × 4 min.']);
  if (JSON.stringify(partsOf(before.bouts)) === JSON.stringify(written)) return told(before, []);
  const bouts = written.flatMap(({ repeats, seconds, intensity, easy }) =>
    Array.from({ length: repeats.least }, () => ({ seconds, intensity, easy: easy ?? 0 })),
  );
  return told({ ...before, bouts }, []);
};
