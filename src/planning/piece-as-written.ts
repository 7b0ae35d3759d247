import type { Exercise } from '#domain/catalogue.ts';
import { isOne, type Prescription } from '#domain/prescription.ts';
import type { BoutsItem, DrillItem, DrillWork } from '#domain/programme.ts';
import type { ItemAsWritten } from './as-written.ts';

type Sets = Extract<Prescription, { readonly kind: 'sets' }>;

/** Bouts by a line; warming up and cooling down stay as the programme has them. */
export const boutsAsWritten = (item: BoutsItem, prescription: Prescription): ItemAsWritten => {
  if (prescription.kind !== 'bouts')
    return { kind: 'refused', says: ['Sets are not planned on this line: write bouts, such as 4 × 4 min @ 90 % HRR.'] };
  const { repeats, seconds, intensity, easy } = prescription;
  if (!isOne(repeats))
    return { kind: 'refused', says: ['A card says one number: write 4 × 4 min where the line says 3–4 × 4 min.'] };
  const bout = { seconds, intensity, easy: easy ?? 0 };
  return { kind: 'item', item: { ...item, bouts: Array.from({ length: repeats.least }, () => bout) } };
};

/** A drill by a line: sets of repetitions or holds; a target of the hand stays as the programme has it. */
export const drillAsWritten = (item: DrillItem, exercise: Exercise, { groups, rest, tempo }: Sets): ItemAsWritten => {
  const says = [
    ...(tempo ? ['A tempo is not printed on cards yet: leave it out, and write a note.'] : []),
    ...groups.flatMap((group) => {
      const count = group.each.kind === 'hold' ? group.each.seconds : group.each.count;
      return [
        ...(isOne(group.sets) && isOne(count)
          ? []
          : ['A card says one number: write 3 × 8 where the line says 2–3 × 6–8.']),
        ...(group.load || group.intensity
          ? ['No machine loads this: write sets and repetitions only, such as 3 × 8.']
          : []),
        ...(group.perSide && !exercise.perSide ? [`${exercise.name} has no sides: leave /side out.`] : []),
      ];
    }),
  ];
  if (says.length > 0) return { kind: 'refused', says: [...new Set(says)] };
  const sets = groups.flatMap(({ sets: { least }, each }) => {
    const work: DrillWork =
      each.kind === 'hold'
        ? { kind: 'hold', seconds: each.seconds.least }
        : { kind: 'repetitions', count: each.count.least };
    return Array.from({ length: least }, () => ({ work, rest: rest ?? item.sets[0]?.rest ?? 0 }));
  });
  return { kind: 'item', item: { ...item, sets } };
};
