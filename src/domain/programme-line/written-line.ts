import type { ShorthandProblem } from '../shorthand/problem.ts';
import { readShorthand } from '../shorthand/read-shorthand.ts';
import { readBoutsInTurn } from './bouts-line.ts';
import { readDrill } from './read-drill.ts';

/**
 * Why a line that is written for a day cannot be read, whatever kind of item it is for: sets, bouts one after another,
 * pulses and the hand's own force. None where it can; whether the item takes it, planning says.
 */
export const problemsOfLine = (line: string): readonly ShorthandProblem[] => {
  const reading = readShorthand(line);
  if (reading.kind === 'prescription') return [];
  return readDrill(line).kind === 'drill' || readBoutsInTurn(line) ? [] : reading.problems;
};
