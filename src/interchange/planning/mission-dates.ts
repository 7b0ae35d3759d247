import type { Day } from '#units/day.ts';
import { isoOfDay } from '#units/day.ts';
import type { MissionDates } from '#domain/mission-day.ts';
import { cellAt, columnThatIs, type Column, type Row } from '../layout/sheet-layout.ts';
import { refusal } from '../place.ts';
import { readDate, readDateRange } from '../values/read-date.ts';
import type { Reading } from './reading.ts';

/** Dates that one row tells of a mission; null inside where the row is silent, 'unsettled' where asked or refused. */
export type RowDates = { readonly launch: Day | null; readonly landing: MissionDates['landing'] } | 'unsettled';

const LONGEST_LOOK_AHEAD = 30 * 366;

const refuse = (row: Row, column: Column, what: string, why: string, { report }: Reading): 'unsettled' => {
  report.say(
    refusal({ what, why, whatToDo: 'Look at the dates and at the order of day and month.' }, row.number, column.place),
  );
  return 'unsettled';
};

type Taken<Kind> = Kind | null | 'unsettled';

const taken = <Kind>(row: Row, column: Column | null, read: (column: Column) => Kind | null): Taken<Kind> => {
  if (!column || cellAt(row, column) === null) return null;
  return read(column) ?? 'unsettled';
};

const landingOf = (
  landing: Taken<{ readonly from: Day; readonly to: Day }>,
  latest: Taken<Day>,
): Taken<NonNullable<MissionDates['landing']>> => {
  if (landing === 'unsettled' || latest === 'unsettled') return 'unsettled';
  if (landing === null) return latest === null ? null : { earliest: latest, latest };
  return { earliest: landing.from, latest: latest ?? landing.to };
};

/** The dates of a row, judged: a launch within a working life of today, a landing after it. */
export const missionDatesIn = (row: Row, reading: Reading): RowDates => {
  const { cells, report, context, layout } = reading;
  const launchColumn = columnThatIs(layout.columns, 'launch');
  const landingColumn = columnThatIs(layout.columns, 'landing');
  const latestColumn = columnThatIs(layout.columns, 'latest landing');
  const date = (column: Column): Day | null => report.take(row, column, cells.date(row, column, readDate));
  const launch = taken(row, launchColumn, date);
  const range = taken(row, landingColumn, (column) => report.take(row, column, cells.date(row, column, readDateRange)));
  const landing = landingOf(range, taken(row, latestColumn, date));
  if (launch === 'unsettled' || landing === 'unsettled') return 'unsettled';
  if (launchColumn && launch !== null && Math.abs(launch - context.today) > LONGEST_LOOK_AHEAD)
    return refuse(
      row,
      launchColumn,
      `A launch on ${isoOfDay(launch)} is not possible.`,
      'It is more than 30 years from today.',
      reading,
    );
  const at = landingColumn ?? latestColumn;
  if (!at || !landing) return { launch, landing };
  if (landing.latest < landing.earliest)
    return refuse(row, at, 'The latest landing is before the earliest.', 'A range runs forward.', reading);
  if (launch !== null && landing.earliest < launch)
    return refuse(row, at, 'The landing is before the launch.', 'A mission runs forward.', reading);
  return { launch, landing };
};

export const sameDates = (one: MissionDates, other: MissionDates): boolean =>
  one.launch === other.launch &&
  one.landing?.earliest === other.landing?.earliest &&
  one.landing?.latest === other.landing?.latest;

/** "launch 2027-04-01, landing 2027-09-28 to 2027-10-20". */
export const datesInWords = ({ launch, landing }: MissionDates): string => {
  if (!landing) return `launch ${isoOfDay(launch)}, landing not told`;
  const { earliest, latest } = landing;
  return `launch ${isoOfDay(launch)}, landing ${isoOfDay(earliest)}${latest === earliest ? '' : ` to ${isoOfDay(latest)}`}`;
};
