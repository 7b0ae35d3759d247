import { idOf, type FactId, type MissionId, type SiteId } from '#domain/identity.ts';
import type { MissionDates } from '#domain/mission-day.ts';
import { cellAt, columnThatIs, type Column, type Row } from '../layout/sheet-layout.ts';
import { spelling } from '../layout/spelling.ts';
import { passedOver, quoted, refusal } from '../place.ts';
import { saysNothing } from '../values/value.ts';
import type { MissionOnRecord } from './context.ts';
import { datesInWords, missionDatesIn, sameDates } from './mission-dates.ts';
import type { Reading } from './reading.ts';

/** A mission that the file brings or moves. */
export interface MissionReading {
  readonly id: MissionId;
  readonly name: string;
  readonly site: SiteId;
  readonly dates: MissionDates;
  readonly supersedes: FactId | null;
  readonly rows: readonly number[];
}

export interface MissionsFound {
  readonly toRecord: readonly MissionReading[];
  /** The mission that a row's words name; null where they name none that is known. */
  readonly named: (text: string) => { readonly id: MissionId; readonly name: string } | null;
}

const NEW = 'new mission: ';
export const isIdOfNewMission = (id: string): boolean => id.startsWith(NEW);

/** Rows that name one mission. */
interface Named {
  readonly key: string;
  readonly name: string;
  readonly rows: readonly Row[];
}

const missionsNamed = ({ layout, subjects }: Reading, column: Column): readonly Named[] => {
  const groups = new Map<string, { readonly name: string; readonly rows: Row[] }>();
  for (const row of layout.rows) {
    const text = cellAt(row, column)?.text ?? '';
    if (saysNothing(text) || subjects.of(row).kind === 'left out') continue;
    const group = groups.get(spelling(text)) ?? { name: text, rows: [] };
    group.rows.push(row);
    groups.set(spelling(text), group);
  }
  return [...groups]
    .map(([key, group]) => ({ key, ...group }))
    .toSorted((one, other) => (one.key < other.key ? -1 : 1));
};

/** The dates of a mission from all its rows; null where they are unsettled or contradict each other, or where no row tells. */
const datesOf = ({ rows }: Named, column: Column, reading: Reading): MissionDates | 'untold' | 'unsettled' => {
  let found: { readonly dates: MissionDates; readonly row: Row } | null = null;
  let unsettled = false;
  for (const row of rows) {
    const told = missionDatesIn(row, reading);
    if (told === 'unsettled') unsettled = true;
    else if (told.launch !== null) {
      const dates = { launch: told.launch, landing: told.landing };
      found ??= { dates, row };
      if (sameDates(found.dates, dates)) continue;
      unsettled = true;
      const why = `Row ${found.row.number} says ${datesInWords(found.dates)}, this one ${datesInWords(dates)}.`;
      reading.report.say(
        refusal(
          { what: 'The dates of the mission contradict another row.', why, whatToDo: 'Correct one of them.' },
          row.number,
          column.place,
        ),
      );
    }
  }
  if (unsettled) return 'unsettled';
  return found?.dates ?? 'untold';
};

const siteNamed = ({ rows }: Named, { layout, context }: Reading): SiteId | null => {
  const column = columnThatIs(layout.columns, 'site');
  const texts = new Set(rows.flatMap((row) => (column && cellAt(row, column)?.text) ?? []).map(spelling));
  const found = context.sites.filter(({ name, id }) => texts.has(spelling(name)) || texts.has(spelling(id)));
  return found.length === 1 ? (found[0]?.id ?? null) : null;
};

/** Where a mission flies: what the file says, the only site aboard, or what is answered. Null: open. */
const siteOf = (named: Named, reading: Reading): SiteId | null => {
  const aboard = reading.context.sites.filter(({ place }) => place === 'aboard');
  const told = siteNamed(named, reading) ?? (aboard.length === 1 ? (aboard[0]?.id ?? null) : null);
  if (told !== null) return told;
  const answer = reading.report.ask({
    id: `site, ${named.key}`,
    about: 'site',
    asks: `Where does ${quoted(named.name)} fly?`,
    because: 'The file does not name one site of the catalogue, and the machines aboard depend on it.',
    row: named.rows[0]?.number ?? null,
    choices: aboard.map(({ id, name }) => ({ answer: id as string, says: name })),
  });
  return aboard.find(({ id }) => id === answer)?.id ?? null;
};

const brandNew = (named: Named, dates: MissionDates, reading: Reading): MissionReading | null => {
  const site = siteOf(named, reading);
  const { key, name, rows } = named;
  return (
    site && {
      id: idOf<'mission'>(`${NEW}${key}`),
      name,
      site,
      dates,
      supersedes: null,
      rows: rows.map(({ number }) => number),
    }
  );
};

/** Dates that differ from the record move a mission only where a person says so. */
const moved = (
  named: Named,
  recorded: MissionOnRecord,
  dates: MissionDates,
  column: Column,
  { report }: Reading,
): MissionReading | null => {
  const rows = named.rows.map(({ number }) => number);
  const first = rows[0] ?? 0;
  if (sameDates(recorded, dates)) {
    report.say(
      passedOver(
        { what: `The dates of ${recorded.name} are recorded already.`, why: 'They are equal.', whatToDo: 'Nothing.' },
        first,
        column.place,
      ),
    );
    return null;
  }
  const answer = report.ask({
    id: `dates, ${named.key}`,
    about: 'mission dates',
    asks: `Has ${recorded.name} moved?`,
    because: `Recorded: ${datesInWords(recorded)}. The file: ${datesInWords(dates)}.`,
    row: first,
    column,
    choices: [
      { answer: 'file', says: 'yes: take the dates of the file; everything anchored to them moves' },
      { answer: 'record', says: 'no: keep what is recorded' },
    ],
  });
  if (answer === 'record')
    report.say(
      passedOver(
        {
          what: `The dates of ${recorded.name} were passed over.`,
          why: 'You chose to keep what is recorded.',
          whatToDo: 'Nothing.',
        },
        first,
        column.place,
      ),
    );
  const { id, name, site, fact } = recorded;
  return answer === 'file' ? { id, name, site, dates, supersedes: fact, rows } : null;
};

const tellUnknown = ({ name, rows }: Named, column: Column, { context, report }: Reading): void => {
  const known = context.missions.map((mission) => mission.name);
  report.say(
    refusal(
      {
        what: `The mission ${quoted(name)} is not known.`,
        why:
          known.length === 0
            ? 'No mission is recorded yet, and the file does not tell its launch.'
            : `Recorded are ${known.join(', ')}; the file does not tell its launch.`,
        whatToDo: 'Correct the name, or add a column with its launch.',
      },
      rows[0]?.number ?? null,
      column.place,
    ),
  );
};

/** Missions of the table: those to record, and what the names of missions in it stand for. */
export const readMissions = (reading: Reading): MissionsFound => {
  const column = columnThatIs(reading.layout.columns, 'mission');
  const known = new Map<string, { readonly id: MissionId; readonly name: string }>(
    reading.context.missions.map(({ id, name }) => [spelling(name), { id, name }]),
  );
  const toRecord: MissionReading[] = [];
  for (const named of column ? missionsNamed(reading, column) : []) {
    if (!column) break;
    const recorded = reading.context.missions.find(({ name }) => spelling(name) === named.key);
    const dates = datesOf(named, column, reading);
    if (dates === 'unsettled') continue;
    if (dates === 'untold') {
      if (!recorded) tellUnknown(named, column, reading);
      continue;
    }
    const mission = recorded ? moved(named, recorded, dates, column, reading) : brandNew(named, dates, reading);
    if (!mission) continue;
    toRecord.push(mission);
    known.set(named.key, { id: mission.id, name: mission.name });
  }
  return { toRecord, named: (text) => known.get(spelling(text)) ?? null };
};
