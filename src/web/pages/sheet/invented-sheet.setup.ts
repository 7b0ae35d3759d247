import { addDays, isoDay, type Day } from '#units/day.ts';
import { idOf } from '#domain/identity.ts';
import type { SheetCell, SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';

/** A Monday: today of the invented sheet. */
export const TODAY = isoDay('2029-03-05');

export const cellOf = (track: string, line: string | null, more: Partial<SheetCell> = {}): SheetCell => ({
  item: idOf(`item of ${track}`),
  track: idOf(track),
  kind: 'lift',
  planned: '4×6 100',
  short: { planned: '4×6 100', done: null },
  line,
  shorthand: line,
  isWritten: false,
  done: null,
  differs: false,
  hurt: null,
  note: null,
  raise: null,
  limits: [],
  says: [],
  trueFraction: null,
  shoulderExcess: null,
  ceilingLeft: null,
  unit: 'kg',
  increment: '2.5',
  sets: [],
  piece: null,
  hasWorking: false,
  ...more,
});

const columnOf = (day: Day): SheetColumn => ({
  day,
  missionDay: `day ${day - TODAY}`,
  title: 'Session',
  state: day < TODAY ? 'issued' : 'planned',
  past: day < TODAY,
  card: null,
  code: null,
  delivery: null,
  outcome: null,
  calledOff: null,
  minutes: 60,
  blockMinutes: 90,
  deload: false,
  gaps: [],
});

/** Rows of cells under columns on these days after today; a row is named for the exercise it trains. */
export const sheetOf = (
  days: readonly number[],
  rows: Readonly<Record<string, readonly (SheetCell | null)[]>>,
): SheetWindow => ({
  person: {
    id: idOf('birte-okonkwo'),
    name: 'Birte Okonkwo',
    sex: 'female',
    age: 40,
    mission: null,
    dayLabel: 'no mission',
    reported: { of: 0, done: 0, calledOff: 0, notHeard: 0 },
    bodyMass: null,
    stature: null,
    next: null,
    place: 1,
    ofPeople: 1,
    programme: null,
  },
  today: TODAY,
  upTo: 1,
  columns: days.map((after) => columnOf(addDays(TODAY, after))),
  strips: [],
  groups: [
    {
      label: 'Session',
      rows: Object.entries(rows).map(([name, cells]) => ({
        exercise: idOf(name),
        name,
        cells,
        lastHere: null,
        estimate: null,
        rule: null,
      })),
      leftOut: [],
    },
  ],
  canIssue: [],
  unit: 'kg',
  empty: null,
});
