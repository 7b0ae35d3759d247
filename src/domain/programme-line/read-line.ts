import type { Exercise } from '../catalogue.ts';
import type { ProgrammeItem } from '../programme.ts';
import { readShorthand, type ShorthandReading } from '../shorthand/read-shorthand.ts';
import { readBoutsInTurn, type Bouts } from './bouts-line.ts';
import { exerciseOfLine, exercisesFor, nameOfLine } from './exercise-of-line.ts';
import { itemAsTold } from './item-as-told.ts';
import type { LineProblem } from './line-problem.ts';
import type { PlaceOfItem } from './new-item.ts';
import { readDrill, type DrillReading } from './read-drill.ts';

export type LineReading =
  | { readonly kind: 'item'; readonly item: ProgrammeItem }
  | { readonly kind: 'problems'; readonly problems: readonly LineProblem[] };

export interface LineContext {
  readonly exercises: readonly Exercise[];
  /** The item that stands where the line was typed: what the line does not change stays as it is. */
  readonly before: ProgrammeItem | null;
  readonly place: PlaceOfItem;
}

/** Between name and sets: spaces, a comma, a colon, or a dash with space after it. */
const BETWEEN = /^[\s,:]*([–-]\s+)?/;

/** Reads one cell: "Back squat 4 × 6 @ 80 %, rest 2:30", "Cycle 4 × 4 min @ 90 % HRR, 3 min easy". */
export const readLine = (line: string, context: LineContext): LineReading => {
  const named = exerciseOfLine(line, context.exercises);
  if (!named) return { kind: 'problems', problems: [unknownExercise(line, context.exercises)] };
  const { exercise, end } = named;
  const begins = end + (BETWEEN.exec(line.slice(end))?.[0].length ?? 0);
  const rest = line.slice(begins);
  const before = context.before?.exercise === exercise.id ? context.before : null;
  const written = readRest(rest, before?.kind === 'drill');
  if (written.kind === 'problems')
    return { kind: 'problems', problems: written.problems.map((problem) => movedBy(problem, begins)) };
  const told = itemAsTold(exercise, context, written);
  return told.kind === 'told'
    ? { kind: 'item', item: told.part }
    : { kind: 'problems', problems: told.says.map((says) => ({ from: begins, to: line.length, says })) };
};

/** Bouts of several kinds, one after another. */
interface BoutsReading {
  readonly kind: 'bouts';
  readonly bouts: readonly Bouts[];
}

export type Written = Exclude<ShorthandReading | DrillReading | BoutsReading, { readonly kind: 'problems' }>;

/** Words that only drills have. */
const OF_DRILLS = /\b(on|off|critical|cf|grip|hand)\b/i;

/** Shorthand, or what it has no word for. A drill is read as one first: its own line always reads back. */
const readRest = (rest: string, isDrill: boolean): ShorthandReading | DrillReading | BoutsReading => {
  const asDrill = readDrill(rest);
  if (asDrill.kind === 'drill' && (isDrill || OF_DRILLS.test(rest))) return asDrill;
  const inTurn = / then /i.test(rest) ? readBoutsInTurn(rest) : null;
  if (inTurn) return { kind: 'bouts', bouts: inTurn };
  const asShorthand = readShorthand(rest);
  if (asShorthand.kind === 'prescription') return asShorthand;
  return asDrill.kind === 'drill' || OF_DRILLS.test(rest) ? asDrill : asShorthand;
};

const movedBy = ({ from, to, says }: LineProblem, by: number): LineProblem => ({ from: from + by, to: to + by, says });

/** "A1:" before the name. */
const LETTER = /^\s*[a-h]\d?\s*:\s*/i;

const unknownExercise = (line: string, exercises: readonly Exercise[]): LineProblem => {
  if (exerciseOfLine(line.replace(LETTER, ''), exercises) && LETTER.test(line))
    return { from: 0, to: line.length, says: 'Supersets are not planned yet: leave the letter out.' };
  const name = nameOfLine(line);
  const [near] = exercisesFor(name, exercises);
  const what = name === '' ? 'No exercise is named' : `“${name}” is no exercise of the list in Settings`;
  const instead = near ? `${near.name} 4 × 6 @ 80 %` : 'Back squat 4 × 6 @ 80 %';
  return { from: 0, to: Math.max(name.length, 1), says: `${what}: begin the line with one, such as ${instead}.` };
};
