import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import type { Block } from '../../parts/block/selection.ts';
import {
  changedCells,
  changeOfText,
  copiedRows,
  copiedWeek,
  filledCells,
  pastedCells,
  takenBackCells,
  textOfCell,
  type Chosen,
} from './cells-chosen.ts';
import { firstPlace, nextHeld, placeOfLift } from './grid-places.ts';
import { cellOf, sheetOf, TODAY } from './invented-sheet.setup.ts';

const past = cellOf('heavy', null, { shorthand: '4 × 6 @ 95 kg' });

/* Four Mondays, the first of them past, and a Thursday that trains another lift. */
const sheet = sheetOf([-7, 0, 3, 7, 14], {
  Squat: [past, cellOf('heavy', 'a'), null, cellOf('heavy', 'b'), cellOf('heavy', 'c', { planned: 'left out' })],
  Press: [null, null, cellOf('press', 'p'), null, null],
});

const block = (top: number, left: number, bottom = top, right = left): Block => ({ top, left, bottom, right });
const at = (row: number, column: number): Block => block(row, column);

/** "heavy +7: line". */
const shown = ({ cells }: Chosen): readonly string[] =>
  cells.map(
    ({ track, day, change }) => `${track} +${day - TODAY}: ${change.kind === 'as written' ? change.line : change.kind}`,
  );

test.each([
  { text: ' 4 × 6 @ 80 % ', change: { kind: 'as written', line: '4 × 6 @ 80 %' } },
  { text: 'Left out', change: { kind: 'leave out' } },
  { text: '–', change: { kind: 'leave out' } },
  { text: '-', change: { kind: 'leave out' } },
  { text: '  ', change: null },
])('"$text" in a cell', ({ text, change }) => {
  expect(changeOfText(text)).toEqual(change);
});

test('a cell is copied out as its line, also where it is not to be edited', () => {
  expect(textOfCell(past)).toBe('4 × 6 @ 95 kg');
  expect(textOfCell(cellOf('heavy', 'c', { planned: 'left out' }))).toBe('left out');
  expect(textOfCell(null)).toBe('');
  expect(copiedRows(sheet, block(0, 0, 1, 1))).toEqual([
    ['Mon 26 Feb, Session', 'Mon 5 Mar, Session'],
    ['4 × 6 @ 95 kg', 'a'],
  ]);
});

test('a block is pasted place by place; empty cells leave what stands', () => {
  expect(
    shown(
      pastedCells(
        sheet,
        [
          ['x', '', 'y'],
          ['', 'z', ''],
        ],
        at(1, 1),
      ),
    ),
  ).toEqual(['heavy +0: x', 'heavy +7: y', 'press +3: z']);
});

test('a close-set row goes into the sessions that hold the lift, one after the other', () => {
  const pasted = pastedCells(sheet, [['x', 'y', '-']], at(1, 1));
  expect(shown(pasted)).toEqual(['heavy +0: x', 'heavy +7: y']);
  expect(pasted).toMatchObject({ problems: [], alike: 1 });
});

test('one cell pasted over a range fills it', () => {
  expect(shown(pastedCells(sheet, [['x']], block(1, 1, 1, 4)))).toEqual(['heavy +0: x', 'heavy +7: x', 'heavy +14: x']);
});

test('what cannot be taken is told at once: places without the lift, and what lies outside', () => {
  const { cells, problems } = pastedCells(
    sheet,
    [
      ['x', 'y', 'z', 'u', 'v', 'w'],
      ['', '', '', 'q'],
    ],
    at(1, 1),
  );
  expect(problems.map(({ field }) => field)).toEqual(['place.1:2', 'place.2:4', 'outside']);
  expect(problems.map(({ what }) => what)).toEqual([
    'Squat, Thu 8 Mar, is not in this session.',
    'Press, Mon 19 Mar, is not in this session.',
    '2 cells lie outside the block.',
  ]);
  expect(cells).toHaveLength(3);
});

test('the head of a session is not to be written', () => {
  expect(pastedCells(sheet, [['x']], at(0, 1)).problems.map(({ what }) => what)).toEqual([
    'The head of a session, Mon 5 Mar, is not to be written.',
  ]);
});

test('more cells than one signature covers are refused whole', () => {
  const days = Array.from({ length: 401 }, (_, after) => after);
  const wide = sheetOf(days, { Squat: days.map(() => cellOf('heavy', 'a')) });
  const { cells, problems } = pastedCells(wide, [['x']], block(1, 0, 1, 400));
  expect(cells).toEqual([]);
  expect(problems.map(({ what }) => what)).toEqual(['401 cells are more than can be written at once.']);
});

test('fill right takes the first cell of the row, past or ahead, over sessions that hold the lift', () => {
  expect(shown(filledCells(sheet, block(1, 0, 1, 3)))).toEqual(['heavy +0: 4 × 6 @ 95 kg', 'heavy +7: 4 × 6 @ 95 kg']);
  expect(filledCells(sheet, block(2, 0, 2, 4)).cells).toEqual([]);
});

test('cells that say so already are counted, not written', () => {
  expect(
    filledCells(sheetOf([0, 7], { Squat: [cellOf('heavy', 'a'), cellOf('heavy', 'a')] }), block(1, 0, 1, 1)),
  ).toEqual({ cells: [], problems: [], alike: 1 });
});

test('a range is left out, and given back to the programme where something was written', () => {
  expect(shown(changedCells(sheet, block(1, 1, 2, 4), { kind: 'leave out' }))).toEqual([
    'heavy +0: leave out',
    'heavy +7: leave out',
    'press +3: leave out',
  ]);
  const written = sheetOf([0, 7], { Squat: [cellOf('heavy', 'a'), cellOf('heavy', 'b', { isWritten: true })] });
  expect(shown(takenBackCells(written, block(1, 0, 1, 1)))).toEqual(['heavy +7: as programmed']);
});

test('a week goes into the next: the same item first, else the same track, each session once', () => {
  const item = (line: string, id: string) => cellOf('heavy', line, { item: id as ReturnType<typeof cellOf>['item'] });
  const weeks = sheetOf([0, 3, 7, 9, 11], {
    Squat: [item('a', 'one'), item('b', 'two'), item('x', 'two'), item('y', 'three'), item('z', 'three')],
    Press: [cellOf('press', 'p', { planned: 'left out' }), null, cellOf('press', 'q'), null, null],
  });
  expect(shown(copiedWeek(weeks, TODAY))).toEqual(['heavy +7: b', 'heavy +9: a']);
  expect(shown(copiedWeek(weeks, addDays(TODAY, 3)))).toEqual(['heavy +7: b', 'heavy +9: a']);
  expect(copiedWeek(weeks, addDays(TODAY, 99))).toEqual({ cells: [], problems: [], alike: 0 });
});

test('what somebody left out of a week is left out of the next', () => {
  const weeks = sheetOf([0, 7], {
    Press: [cellOf('press', '', { planned: 'left out', isWritten: true }), cellOf('press', 'q')],
  });
  expect(shown(copiedWeek(weeks, TODAY))).toEqual(['press +7: leave out']);
});

test('the place of a lift is its next session; the first row where none lies ahead', () => {
  expect(placeOfLift(sheet, 'Press')).toEqual({ row: 2, column: 2 });
  expect(placeOfLift(sheet, 'Squat')).toEqual({ row: 1, column: 1 });
  expect(placeOfLift(sheetOf([-7], { Squat: [past] }), 'Squat')).toEqual({ row: 1, column: 0 });
  expect(placeOfLift(sheet, 'Row')).toBeNull();
  expect(addDays(TODAY, 3)).toBe(sheet.columns[2]?.day);
});

test('the keyboard begins at the first exercise of the next session, whatever row that is', () => {
  expect(firstPlace(sheet)).toEqual({ row: 1, column: 1 });
  expect(firstPlace(sheetOf([0], { Squat: [null], Press: [cellOf('press', 'p')] }))).toEqual({ row: 2, column: 0 });
  expect(firstPlace(sheetOf([-7], { Squat: [past] }))).toEqual({ row: 1, column: 0 });
});

test.each([
  { key: 'ArrowRight', from: { row: 1, column: 1 }, to: { row: 1, column: 3 } },
  { key: 'ArrowLeft', from: { row: 1, column: 3 }, to: { row: 1, column: 1 } },
  { key: 'ArrowDown', from: { row: 0, column: 2 }, to: { row: 2, column: 2 } },
  { key: 'ArrowUp', from: { row: 2, column: 1 }, to: { row: 1, column: 1 } },
  { key: 'ArrowRight', from: { row: 2, column: 2 }, to: null },
  { key: 'Home', from: { row: 1, column: 1 }, to: null },
])('with Control $key goes from $from to the next cell of a session', ({ key, from, to }) => {
  expect(nextHeld(sheet, from, key)).toEqual(to);
});
