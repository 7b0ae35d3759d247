import type { Merge } from '#contract/bring-in.ts';
import { columnIndex } from '../place.ts';
import type { Limits } from './limits.ts';
import { attribute, unescapeXml, xmlPieces } from './xml-pieces.ts';

/** A cell of a worksheet before its value is looked up: rows as in the file, columns from 0. */
export interface WorksheetCell {
  readonly row: number;
  readonly column: number;
  readonly type: string;
  readonly style: string | null;
  readonly formula: boolean;
  readonly value: string | null;
}

export type WorksheetCells =
  | { readonly kind: 'read'; readonly cells: readonly WorksheetCell[]; readonly merged: readonly Merge[] }
  | { readonly kind: 'outside'; readonly row: number; readonly column: number }
  | { readonly kind: 'too many' };

const reference = attribute('r');
const typeOf = attribute('t');
const styleOf = attribute('s');
const range = attribute('ref');

const ADDRESS = /^([A-Z]{1,3})(\d{1,7})$/;
const RANGE = /^([A-Z]{1,3})(\d{1,7}):([A-Z]{1,3})(\d{1,7})$/;

/** A cell under construction. */
interface OpenCell {
  readonly row: number;
  readonly column: number;
  readonly type: string;
  readonly style: string | null;
  formula: boolean;
  value: string | null;
}

/** Where the walk through a worksheet stands. */
interface Walk {
  row: number;
  column: number;
  cell: OpenCell | null;
  /** The element whose text counts: the value, or a text that stands in the cell itself. */
  inside: 'v' | 't' | null;
  phonetic: boolean;
}

const openCell = (walk: Walk, attributes: string): OpenCell => {
  const address = ADDRESS.exec(reference(attributes) ?? '');
  walk.column = address ? columnIndex(address[1] ?? 'A') : walk.column + 1;
  walk.row = address ? Number(address[2]) : walk.row;
  return {
    row: walk.row,
    column: walk.column,
    type: typeOf(attributes) ?? 'n',
    style: styleOf(attributes),
    formula: false,
    value: null,
  };
};

const openRow = (walk: Walk, attributes: string): void => {
  const told = reference(attributes);
  walk.row = told !== null && /^\d{1,7}$/.test(told) ? Number(told) : walk.row + 1;
  walk.column = -1;
};

const mergeOf = (attributes: string): Merge | null => {
  const found = RANGE.exec(range(attributes) ?? '');
  if (!found) return null;
  const [, left = 'A', top = '1', right = 'A', bottom = '1'] = found;
  return { top: Number(top), bottom: Number(bottom), left: columnIndex(left), right: columnIndex(right) };
};

const opens = (walk: Walk, name: string, attributes: string): void => {
  if (name === 'row') openRow(walk, attributes);
  else if (name === 'c') walk.cell = openCell(walk, attributes);
  else if (!walk.cell) return;
  else if (name === 'f') walk.cell.formula = true;
  else if (name === 'rPh') walk.phonetic = true;
  else if (name === 'v' || (name === 't' && !walk.phonetic)) {
    walk.inside = name;
    walk.cell.value ??= '';
  }
};

const closes = (walk: Walk, name: string): OpenCell | null => {
  if (name === 'rPh') walk.phonetic = false;
  if (name === walk.inside) walk.inside = null;
  if (name !== 'c') return null;
  const { cell } = walk;
  walk.cell = null;
  return cell;
};

const reads = (walk: Walk, escaped: string): void => {
  if (walk.inside && walk.cell) walk.cell.value = (walk.cell.value ?? '') + unescapeXml(escaped);
};

/** Every cell of a worksheet that holds something, wherever it says it stands; cells outside the limits end the reading. */
export const worksheetCells = (xml: string, limits: Limits): WorksheetCells => {
  const cells: WorksheetCell[] = [];
  const merged: Merge[] = [];
  const walk: Walk = { row: 0, column: -1, cell: null, inside: null, phonetic: false };
  const keep = (cell: OpenCell | null): boolean => {
    if (!cell || (cell.value === null && !cell.formula)) return true;
    cells.push(cell);
    return cell.row >= 1 && cell.row <= limits.rows && cell.column < limits.columns;
  };
  for (const piece of xmlPieces(xml)) {
    if (cells.length > limits.cells) return { kind: 'too many' };
    if (piece.kind === 'text') reads(walk, piece.escaped);
    else if (piece.kind === 'closes') {
      const cell = closes(walk, piece.name);
      if (!keep(cell) && cell) return { kind: 'outside', row: cell.row, column: cell.column };
    } else if (piece.name === 'mergeCell') merged.push(...[mergeOf(piece.attributes)].flatMap((merge) => merge ?? []));
    else {
      opens(walk, piece.name, piece.attributes);
      if (piece.closed) closes(walk, piece.name);
    }
  }
  return { kind: 'read', cells, merged };
};
