import type { ColumnMeaning, Issue } from '#contract/bring-in.ts';
import { columnsThatAre, type Column } from '../layout/sheet-layout.ts';
import { oddity } from '../place.ts';

type Beside = Extract<ColumnMeaning['is'], 'repetitions' | 'RPE' | 'repetitions in reserve' | 'side'>;

/**
 * The column of repetitions, effort or side that belongs to a lift: the one between it and the next lift, else one
 * that stands before all lifts.
 */
export const columnBesideLift = (columns: readonly Column[], lift: Column, is: Beside): Column | null => {
  const lifts = columnsThatAre(columns, 'lift');
  const nextLift = lifts.find(({ index }) => index > lift.index)?.index ?? Infinity;
  const candidates = columnsThatAre(columns, is);
  const beside = candidates.find(({ index }) => index > lift.index && index < nextLift);
  if (beside && !belongsToNone(columns, beside)) return beside;
  const first = lifts[0]?.index ?? 0;
  return candidates.find(({ index }) => index < first) ?? null;
};

const EFFORTS: readonly ColumnMeaning['is'][] = ['RPE', 'repetitions in reserve'];

/** One effort behind several lifts is of the whole session or of nothing in particular. */
const belongsToNone = (columns: readonly Column[], column: Column): boolean => {
  const lifts = columnsThatAre(columns, 'lift');
  const efforts = columns.filter(({ meaning }) => EFFORTS.includes(meaning.is));
  return (
    EFFORTS.includes(column.meaning.is) &&
    efforts.length === 1 &&
    lifts.length > 1 &&
    lifts.every(({ index }) => index < column.index)
  );
};

/** Says that an effort of no lift in particular is left out. */
export const effortOfNoLift = (columns: readonly Column[]): readonly Issue[] =>
  columns
    .filter((column) => belongsToNone(columns, column))
    .map(({ place }) =>
      oddity(
        {
          what: 'The column is left out: it stands behind several lifts.',
          why: 'It does not say whose effort it is, and the effort of a whole session is no effort of a set.',
          whatToDo: 'Nothing, or move it beside its lift.',
        },
        null,
        place,
      ),
    );
