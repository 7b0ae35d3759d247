import type { Exercise } from '#domain/catalogue.ts';
import type { BoutsItem, DrillItem } from '#domain/programme.ts';
import { boutsAsWritten as boutsOfLine, readBoutsInTurn } from '#domain/programme-line/bouts-line.ts';
import {
  drillAsWritten as drillOfLine,
  drillOfLongHolds,
  drillOfSets,
  type WrittenDrill,
} from '#domain/programme-line/drill-line.ts';
import type { Told } from '#domain/programme-line/line-problem.ts';
import { readDrill } from '#domain/programme-line/read-drill.ts';
import { readShorthand } from '#domain/shorthand/read-shorthand.ts';
import type { ItemAsWritten } from './as-written.ts';

/** Bouts by a line, of several kinds one after another too; warming up and cooling down stay as the programme has them. */
export const boutsAsWritten = (item: BoutsItem, line: string): ItemAsWritten => {
  const bouts = readBoutsInTurn(line);
  if (bouts) return asItem(boutsOfLine(item, bouts));
  const reading = readShorthand(line);
  return {
    kind: 'refused',
    says:
      reading.kind === 'problems'
        ? reading.problems.map(({ says }) => says)
        : ['Sets are not planned on this line: write bouts, such as 4 × 4 min @ 90 % HRR.'],
  };
};

/** A drill by a line: sets, holds or pulses, a target of the hand or how it should feel. */
export const drillAsWritten = (item: DrillItem, exercise: Exercise, line: string): ItemAsWritten => {
  const told = readWritten(exercise, line);
  if (told.kind === 'refused') return told;
  const written = told.part;
  // A target that the line does not name stays, unless the line says how it should feel instead.
  const target = written.target ?? (written.rpe === null ? item.target : null);
  return { kind: 'item', item: drillOfLine(item, { ...written, target }) };
};

const readWritten = (exercise: Exercise, line: string): Told<WrittenDrill> => {
  const asDrill = readDrill(line);
  if (asDrill.kind === 'drill') {
    return asDrill.perSide && !exercise.perSide
      ? { kind: 'refused', says: [`${exercise.name} has no sides: leave /side out.`] }
      : { kind: 'told', part: asDrill.drill };
  }
  const reading = readShorthand(line);
  if (reading.kind === 'problems') {
    const { problems } = OF_DRILLS.test(line) ? asDrill : reading;
    return { kind: 'refused', says: problems.map(({ says }) => says) };
  }
  return reading.prescription.kind === 'bouts'
    ? drillOfLongHolds(reading.prescription)
    : drillOfSets(reading.prescription, exercise);
};

/** Words that only drills have. */
const OF_DRILLS = /\b(on|off|critical|cf|grip|hand)\b/i;

const asItem = (told: Told<BoutsItem>): ItemAsWritten =>
  told.kind === 'told' ? { kind: 'item', item: told.part } : told;
