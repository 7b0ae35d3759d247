import { addDays, weekdayOf, type Day } from '#units/day.ts';
import type { Problem } from '#contract/problem.ts';
import type { CellAsked } from '#contract/requests/requests.ts';
import type { SheetCell, SheetWindow } from '#contract/windows/sheet-window.ts';
import { filledRight, laidOver, rowsIn, type Laid } from '../../parts/block/fill.ts';
import { holds, placesOf, type Block, type Place } from '../../parts/block/selection.ts';
import type { Rows } from '../../parts/block/tab-separated.ts';
import { shortDate } from '../../parts/dates.ts';
import { boundsOf, standingAt } from './grid-places.ts';
import { blockAtRow, blocksOf } from './sheet-blocks.ts';

/** Cells that are to be written together, and what already speaks against some of them. */
export interface Chosen {
  readonly cells: readonly CellAsked[];
  readonly problems: readonly Problem[];
  /** Cells that say already what they would be given. */
  readonly alike: number;
}

export const LEFT_OUT = 'left out';

/** What a copied text means in a cell; null: an empty cell leaves what stands there as it is. */
export const changeOfText = (text: string): CellAsked['change'] | null => {
  const line = text.trim();
  if (line === '') return null;
  return /^(left out|leave out|[-–—])$/i.test(line) ? { kind: 'leave out' } : { kind: 'as written', line };
};

/** A cell as it is copied out: its line, "left out", or what it shows. */
export const textOfCell = (cell: SheetCell | null): string => {
  if (!cell) return '';
  return cell.planned === LEFT_OUT ? LEFT_OUT : (cell.shorthand ?? cell.planned);
};

/** A block of the sheet as rows to copy out; the heads give their date and title. */
export const copiedRows = (sheet: SheetWindow, block: Block): Rows =>
  rowsIn(block, (place) => {
    const standing = standingAt(sheet, place);
    if (!standing) return '';
    return standing.exercise === null
      ? `${shortDate(standing.column.day)}, ${standing.column.title}`
      : textOfCell(standing.cell);
  });

/**
 * Pasted rows over a block: place by place, or, where that would meet sessions without these lifts, into those that hold
 * them, one after the other. Every text is taken, and what cannot be taken is told for each.
 */
export const pastedCells = (sheet: SheetWindow, rows: Rows, over: Block): Chosen => {
  const laid = laidOver(rows, over).filter(({ value }) => value.trim() !== '');
  const skipping = isAllOnCells(sheet, laid) ? laid : withoutGaps(sheet, laid);
  const taken = skipping !== laid && isAllOnCells(sheet, skipping) ? skipping : laid;
  const bounds = boundsOf(sheet, { row: over.top, column: over.left });
  const inside = taken.filter(({ place }) => holds(bounds, place));
  const outside = taken.length - inside.length;
  const chosen = chosenFrom(sheet, inside, ({ value }) => changeOfText(value));
  return outside === 0
    ? chosen
    : { ...chosen, problems: [...chosen.problems, outsideTheBlock(outside, sheet, over.top)] };
};

const isAllOnCells = (sheet: SheetWindow, laid: readonly Laid<string>[]): boolean =>
  laid.every(({ place }) => standingAt(sheet, place)?.cell);

/** The columns of what is laid, moved on to columns in which its rows hold something. */
const withoutGaps = (sheet: SheetWindow, laid: readonly Laid<string>[]): readonly Laid<string>[] => {
  const rows = new Set(laid.map(({ place }) => place.row));
  const from = Math.min(...laid.map(({ place }) => place.column));
  const columns = blockAtRow(sheet, Math.min(...rows))?.columns ?? [];
  const held = columns.flatMap((_, column) =>
    column >= from && [...rows].some((row) => standingAt(sheet, { row, column })?.cell) ? [column] : [],
  );
  return laid.map(({ place: { row, column }, value }) => ({
    place: { row, column: held[column - from] ?? columns.length },
    value,
  }));
};

/** The first cell of each row of a block, into the others of its row. */
export const filledCells = (sheet: SheetWindow, block: Block): Chosen => {
  const laid = filledRight({ ...block, top: firstExercise(sheet, block) }, (place) =>
    textOfCell(standingAt(sheet, place)?.cell ?? null),
  );
  // A session without the lift has nothing to be filled.
  const held = laid.filter(({ place }) => standingAt(sheet, place)?.cell);
  return chosenFrom(sheet, held, ({ value }) => changeOfText(value));
};

/** The heads of the sessions are not filled. */
const firstExercise = (sheet: SheetWindow, { top }: Block): number =>
  blockAtRow(sheet, top)?.top === top ? top + 1 : top;

/** Every cell of a block, given the same change; what does not stand in a session is passed over. */
export const changedCells = (sheet: SheetWindow, block: Block, change: CellAsked['change']): Chosen => {
  const held = placesOf(block).flatMap((place) => (standingAt(sheet, place)?.cell ? [{ place, value: change }] : []));
  return chosenFrom(sheet, held, ({ value }) => value);
};

/** What was written in a block for its days alone ends there. */
export const takenBackCells = (sheet: SheetWindow, block: Block): Chosen => {
  const { cells, ...rest } = changedCells(sheet, block, { kind: 'as programmed' });
  const written = cells.filter(({ track, day }) =>
    placesOf(block).some((place) => {
      const standing = standingAt(sheet, place);
      return standing?.column.day === day && standing.cell?.track === track && standing.cell.isWritten;
    }),
  );
  return { ...rest, cells: written };
};

const DAYS_OF_A_WEEK = 7;

/** The Monday of a day's week. */
const weekOf = (day: Day): Day => addDays(day, -weekdayOf(day));

interface OfWeek {
  readonly day: Day;
  readonly place: Place;
  readonly cell: SheetCell;
}

const cellsOfWeek = (sheet: SheetWindow, from: Day): readonly OfWeek[] =>
  blocksOf(sheet)
    .flatMap(({ top, rows, columns }) =>
      columns.flatMap(({ day }, column) =>
        day >= from && day < addDays(from, DAYS_OF_A_WEEK)
          ? rows.flatMap(({ cells }, at) => {
              const cell = cells[column];
              return cell ? [{ day, place: { row: top + at + 1, column }, cell }] : [];
            })
          : [],
      ),
    )
    .toSorted((a, b) => a.day - b.day);

/**
 * The lines of one week into the sessions of the next that match: the same item of the programme, else the same track,
 * each session once and in order.
 */
export const copiedWeek = (sheet: SheetWindow, day: Day): Chosen => {
  const from = weekOf(day);
  const into = [...cellsOfWeek(sheet, addDays(from, DAYS_OF_A_WEEK))];
  const laid: Laid<string>[] = [];
  const lay = (cells: readonly OfWeek[], isMatch: (one: SheetCell, other: SheetCell) => boolean): readonly OfWeek[] =>
    cells.filter(({ cell }) => {
      const at = into.findIndex((each) => isMatch(cell, each.cell));
      const [found] = at < 0 ? [] : into.splice(at, 1);
      if (found && isCopied(cell)) laid.push({ place: found.place, value: textOfCell(cell) });
      return !found;
    });
  const left = lay(cellsOfWeek(sheet, from), (one, other) => one.item === other.item && one.track === other.track);
  lay(left, (one, other) => one.track === other.track);
  return chosenFrom(sheet, laid, ({ value }) => changeOfText(value));
};

/** Left out for want of time or by a limit is not a choice that is carried on. */
const isCopied = (cell: SheetCell): boolean => cell.planned !== LEFT_OUT || cell.isWritten;

const chosenFrom = <Value>(
  sheet: SheetWindow,
  laid: readonly Laid<Value>[],
  changeOf: (each: Laid<Value>) => CellAsked['change'] | null,
): Chosen => {
  const cells: CellAsked[] = [];
  const problems: Problem[] = [];
  let alike = 0;
  for (const each of laid) {
    const [standing, change] = [standingAt(sheet, each.place), changeOf(each)];
    if (!standing || change === null) continue;
    if (!standing.cell) problems.push(noCellHere(sheet, each.place));
    else if (saysSo(standing.cell, change)) alike += 1;
    else cells.push({ track: standing.cell.track, day: standing.column.day, change });
  }
  return cells.length > MOST
    ? { cells: [], problems: [...problems, tooMany(cells.length)], alike }
    : { cells, problems, alike };
};

const saysSo = (cell: SheetCell, change: CellAsked['change']): boolean => {
  if (change.kind === 'leave out') return cell.planned === LEFT_OUT;
  return change.kind === 'as written' && cell.line === change.line;
};

/** More than any sheet has to be written at once. */
const MOST = 400;

const noCellHere = (sheet: SheetWindow, place: Place): Problem => {
  const standing = standingAt(sheet, place);
  const on = standing ? `, ${shortDate(standing.column.day)}` : '';
  const field = `place.${place.row}:${place.column}`;
  return standing?.exercise
    ? {
        what: `${standing.exercise.name}${on}, is not in this session.`,
        why: 'That session does not hold this lift.',
        whatToDo: 'Leave this cell of the block empty.',
        field,
      }
    : {
        what: `The head of a session${on}, is not to be written.`,
        why: 'Dates come from the programme.',
        whatToDo: 'Begin on a cell under it.',
        field,
      };
};

const outsideTheBlock = (count: number, sheet: SheetWindow, row: number): Problem => {
  const block = blockAtRow(sheet, row);
  const last = block?.columns.at(-1);
  return {
    what: count === 1 ? 'One cell lies outside the block.' : `${count} cells lie outside the block.`,
    why: `“${block?.label ?? ''}” has ${block?.rows.length ?? 0} rows and ends on ${last ? shortDate(last.day) : 'no day'}.`,
    whatToDo: 'Begin further up or to the left, or copy a smaller block.',
    field: 'outside',
  };
};

const tooMany = (count: number): Problem => ({
  what: `${count} cells are more than can be written at once.`,
  why: `One signature covers ${MOST} cells at most.`,
  whatToDo: 'Copy a smaller block.',
  field: 'outside',
});
