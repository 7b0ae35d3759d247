import type { WorksheetCell } from './worksheet-cells.ts';
import { columnLetter } from '../place.ts';
import { escapeXml } from './xml-pieces.ts';

const NUMBER = /^[+-]?\d+(\.\d+)?(e[+-]?\d+)?$/i;
const ISO_MOMENT = /^\d{4}-\d{2}-\d{2}(T[\d:.]+Z?)?$/;

const asText = (text: string): { readonly type: string; readonly inside: string } => ({
  type: 'inlineStr',
  inside: `<is><t xml:space="preserve">${escapeXml(text)}</t></is>`,
});

const asValue = (type: string, text: string): { readonly type: string; readonly inside: string } => ({
  type,
  inside: `<v>${escapeXml(text)}</v>`,
});

/** What a cell holds, in one of the forms that a reader of workbooks accepts; anything else becomes a text. */
const plain = ({ type, value }: WorksheetCell): { readonly type: string; readonly inside: string } => {
  const text = value ?? '';
  if (type === 's' && /^\d{1,7}$/.test(text)) return asValue('s', text);
  if (type === 'n' && NUMBER.test(text.trim())) return asValue('n', text.trim());
  if (type === 'd' && ISO_MOMENT.test(text)) return asValue('d', text);
  if (type === 'b' && /^[01]$/.test(text)) return asValue('b', text);
  return asText(text);
};

const written = (cell: WorksheetCell, styled: boolean): string => {
  const { type, inside } = plain(cell);
  const style = styled && /^\d{1,5}$/.test(cell.style ?? '') ? ` s="${cell.style}"` : '';
  return `<c r="${columnLetter(cell.column)}${cell.row}" t="${type}"${style}>${inside}</c>`;
};

/** A worksheet of these cells and nothing else, in order. A place that is told twice holds what is told last. */
export const plainWorksheet = (cells: readonly WorksheetCell[], styled: boolean): string => {
  const rows = new Map<number, Map<number, WorksheetCell>>();
  for (const cell of cells) {
    const row = rows.get(cell.row) ?? new Map<number, WorksheetCell>();
    rows.set(cell.row, row.set(cell.column, cell));
  }
  const body = [...rows]
    .sort(([one], [other]) => one - other)
    .map(([number, row]) => {
      const inOrder = [...row.values()].sort((one, other) => one.column - other.column);
      return `<row r="${number}">${inOrder.map((cell) => written(cell, styled)).join('')}</row>`;
    });
  return `<worksheet><sheetData>${body.join('')}</sheetData></worksheet>`;
};
