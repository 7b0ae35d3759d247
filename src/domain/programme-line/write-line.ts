import type { Exercise } from '../catalogue.ts';
import type { ProgrammeItem } from '../programme.ts';
import { writeShorthand } from '../shorthand/write-shorthand.ts';
import { writeBouts } from './bouts-line.ts';
import { writtenDrillOf } from './drill-line.ts';
import { prescriptionOfLift } from './lift-line.ts';
import { writeDrill } from './write-drill.ts';

/** An item as its cell shows it: "Back squat 4 × 6 @ 78 %, rest 2:30", "A: Back squat 4 × 6". An exercise that is not known stands by its identity. */
export const writeLine = (item: ProgrammeItem, exercise: Exercise | undefined): string => {
  const letter = item.kind === 'lift' && item.superset ? `${item.superset}: ` : '';
  return `${letter}${exercise?.name ?? item.exercise} ${writeItem(item, exercise).slice(letter.length)}`;
};

/** The same without the name. */
export const writeItem = (item: ProgrammeItem, exercise: Exercise | undefined): string => {
  const perSide = exercise?.perSide ?? false;
  switch (item.kind) {
    case 'lift':
      return writeShorthand(prescriptionOfLift(item, { perSide }));
    case 'bouts':
      return writeBouts(item);
    case 'drill':
      return writeDrill(writtenDrillOf(item), perSide);
  }
};
