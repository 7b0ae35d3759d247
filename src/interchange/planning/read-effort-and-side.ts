import type { Effort, Side } from '#domain/effort.ts';
import type { Column, Row } from '../layout/sheet-layout.ts';
import { quoted } from '../place.ts';
import { readEffort, readSide } from '../values/read-words.ts';
import { BLANK_VALUE, saysNothing, valued, wrong, type Value } from '../values/value.ts';
import type { CellReader } from './cell-reader.ts';
import { mayStand } from './judge-cell.ts';
import { judgedEffort } from './possible.ts';
import type { Report } from './report.ts';

/** Something that may be missing: `null` inside is missing, `'wrong'` is refused. */
export type Maybe<Kind> = Kind | null | 'wrong';

const effortText =
  (kind: Effort['kind']) =>
  (text: string): Value<Effort> => {
    if (saysNothing(text)) return BLANK_VALUE;
    const effort = readEffort(text, kind);
    return effort === null
      ? wrong(
          `${quoted(text)} is no effort.`,
          'An RPE from 1 to 10 or a number of repetitions in reserve is expected.',
          'Write the number, or leave the cell empty.',
        )
      : valued(effort);
  };

/** The effort of a set: by the first of these columns that has one. */
export const effortIn = (row: Row, columns: readonly Column[], cells: CellReader, report: Report): Maybe<Effort> => {
  for (const column of columns) {
    const kind = column.meaning.is === 'RPE' ? 'RPE' : 'repetitions in reserve';
    const read = cells.text(row, column, effortText(kind));
    if (read.kind === 'blank') continue;
    const effort = report.take(row, column, read);
    return effort && mayStand(judgedEffort(effort.kind, effort.value), row, column, report) ? effort : 'wrong';
  }
  return null;
};

export const sideIn = (row: Row, column: Column | null, cells: CellReader, report: Report): Maybe<Side> => {
  if (!column) return null;
  const read = cells.text(row, column, (text): Value<Side | 'both'> => {
    if (saysNothing(text)) return BLANK_VALUE;
    const side = readSide(text);
    return side === null
      ? wrong(
          `${quoted(text)} is no side.`,
          'Left, right or both is expected.',
          'Write L or R, or leave the cell empty.',
        )
      : valued(side);
  });
  if (read.kind === 'blank') return null;
  const side = report.take(row, column, read);
  return side === null ? 'wrong' : side === 'both' ? null : side;
};
