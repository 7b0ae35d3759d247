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
  const letter = LETTER.exec(line)?.[0] ?? '';
  const named = exerciseOfLine(line.slice(letter.length), context.exercises);
  if (!named) return { kind: 'problems', problems: [unknownExercise(line, letter.length, context.exercises)] };
  const { exercise, end } = named;
  const after = letter.length + end;
  const begins = after + (BETWEEN.exec(line.slice(after))?.[0].length ?? 0);
  // The letter of a superset stands before the name, and is read with the sets.
  const rest = `${letter}${line.slice(begins)}`;
  const before = context.before?.exercise === exercise.id ? context.before : null;
  const written = readRest(rest, before?.kind === 'drill');
  if (written.kind === 'problems')
    return { kind: 'problems', problems: written.problems.map((problem) => inLine(problem, letter.length, begins)) };
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

/** Where a problem of the letter and the rest stands in the line that has the name between them. */
const inLine = ({ from, to, says }: LineProblem, letter: number, begins: number): LineProblem => {
  const moved = (place: number): number => (place < letter ? place : place - letter + begins);
  return { from: moved(from), to: moved(to), says };
};

/** "A1:" before the name. */
const LETTER = /^\s*[a-h]\d?\s*:\s*/i;

const unknownExercise = (line: string, begins: number, exercises: readonly Exercise[]): LineProblem => {
  const name = nameOfLine(line.slice(begins));
  const [near] = exercisesFor(name, exercises);
  const what = name === '' ? 'No exercise is named' : `“${name}” is no exercise of the list in Settings`;
  const instead = near ? `${near.name} 4 × 6 @ 80 %` : 'Back squat 4 × 6 @ 80 %';
  return {
    from: begins,
    to: begins + Math.max(name.length, 1),
    says: `${what}: begin the line with one, such as ${instead}.`,
  };
};
