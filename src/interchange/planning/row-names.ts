import { oddity, passedOver, quoted, refusal, type Said } from '../place.ts';
import { cellAt, columnThatIs, type Column, type Row, type SheetLayout } from '../layout/sheet-layout.ts';
import { saysNothing } from '../values/value.ts';
import { plainName } from './names.ts';
import type { Report } from './report.ts';

/** The name that each row gives, by row number; null where a row names nobody. */
export type RowNames = ReadonlyMap<number, string | null>;

const LONGEST_NAME = 120;
const ROWS_SHOWN = 8;

const nameColumns = ({ columns }: SheetLayout): readonly Column[] => {
  const whole = columnThatIs(columns, 'name');
  if (whole) return [whole];
  return [columnThatIs(columns, 'given name'), columnThatIs(columns, 'family name')].flatMap((column) => column ?? []);
};

const writtenName = (row: Row, columns: readonly Column[]): string => {
  const texts = columns.flatMap((column) => cellAt(row, column)?.text ?? []).filter((text) => !saysNothing(text));
  return plainName(texts.join(' '));
};

/** Says what is wrong or strange with a name as such; null where it cannot be one. */
const judged = (name: string, row: Row, column: Column, report: Report): string | null => {
  if (!/\p{L}/u.test(name) || name.length > LONGEST_NAME) {
    const why = name.length > LONGEST_NAME ? `It has ${name.length} characters.` : 'It holds no letter.';
    report.say(
      refusal(
        { what: `${quoted(name)} is no name.`, why, whatToDo: 'Write the name of the person, or delete the row.' },
        row.number,
        column.place,
      ),
    );
    return null;
  }
  if (/^[=+@-]|[<>]/.test(name))
    report.say(
      oddity(
        {
          what: `The name ${quoted(name)} looks like a formula or markup.`,
          why: 'It is kept as text and never run.',
          whatToDo: 'Look whether it is the name of a person.',
        },
        row.number,
        column.place,
      ),
    );
  return name;
};

const holdsMore = (row: Row, { columns }: SheetLayout): boolean =>
  columns.some((column) => column.meaning.is !== 'left out' && cellAt(row, column) !== null);

const isAboutMission = (row: Row, { columns }: SheetLayout): boolean => {
  const mission = columnThatIs(columns, 'mission');
  const launch = columnThatIs(columns, 'launch');
  return mission !== null && launch !== null && cellAt(row, mission) !== null && cellAt(row, launch) !== null;
};

/** Rows that name nobody and still hold values: the person above, or nobody's? */
const askAboutNameless = (rows: readonly Row[], report: Report): string | null => {
  const shown = rows.slice(0, ROWS_SHOWN).map(({ number }) => number);
  return report.ask({
    id: 'rows without a name',
    about: 'rows without a name',
    asks: 'Whose are the rows without a name?',
    because: 'They hold values, and the name is often written once above several rows.',
    examples: [`rows ${shown.join(', ')}${rows.length > shown.length ? ' and more' : ''}`],
    choices: [
      { answer: 'as above', says: 'of the person named above' },
      { answer: 'leave out', says: 'nobody’s: leave these rows out' },
    ],
  });
};

const NOBODYS: Said = {
  what: 'The row is left out: it names nobody.',
  why: 'You chose to leave out rows without a name.',
  whatToDo: 'Nothing, or answer otherwise.',
};

/** The name of every row. Rows whose person is not settled are missing. */
export const rowNames = (layout: SheetLayout, report: Report): RowNames => {
  const columns = nameColumns(layout);
  const [first] = columns;
  const names = new Map<number, string | null>();
  const written = layout.rows.map((row) => ({ row, name: first ? writtenName(row, columns) : '' }));
  const nameless = written.filter(
    ({ row, name }) => name === '' && !isAboutMission(row, layout) && holdsMore(row, layout),
  );
  const answer =
    first && nameless.length > 0
      ? askAboutNameless(
          nameless.map(({ row }) => row),
          report,
        )
      : 'leave out';
  let above: string | null = null;
  for (const { row, name } of written) {
    if (name !== '' && first) {
      above = judged(name, row, first, report);
      if (above !== null) names.set(row.number, above);
    } else if (isAboutMission(row, layout)) names.set(row.number, null);
    else if (answer === 'as above' && above !== null) names.set(row.number, above);
    else if (answer !== null) names.set(row.number, null);
  }
  if (first && answer === 'leave out') for (const { row } of nameless) report.say(passedOver(NOBODYS, row.number));
  return names;
};
