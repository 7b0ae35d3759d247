import type { SourcedTable } from '../sourced-table.ts';
import { OUR_OWN_DESIGN, PETERSEN_2016 } from '../sources.ts';

/** Rules of practice for a harness, as data that a specialist may edit: what comes first, and how far. */

/** From a flight day on, how fast a session may be as a multiple of the same session on the ground. */
export interface SpeedCap {
  readonly fromFlightDay: number;
  readonly factor: number;
  readonly says: string;
}

export const SPEED_CAPS: SourcedTable<SpeedCap> = {
  record: {
    id: 'harness/speed-caps',
    revision: 1,
    title: 'How fast a session under a harness may be',
    source: OUR_OWN_DESIGN,
    restsOn: [PETERSEN_2016],
    doesNotKnow:
      'This person’s shoulders and this harness. Raise the load before the speed. Days and factor are our own, editable.',
  },
  columns: [
    { name: 'from flight day', unit: 'd' },
    { name: 'cap over the ground speed of the session', unit: '1' },
    { name: 'in words', unit: '' },
  ],
  rows: [
    { fromFlightDay: 1, factor: 1, says: 'The first three weeks: never faster than the same session on the ground.' },
    { fromFlightDay: 22, factor: 1.15, says: 'After them: at most 15 % faster, once the load has been raised.' },
  ],
  cells: ({ fromFlightDay, factor, says }) => [fromFlightDay, factor, says],
};

/** The harness load of a stretch of the flight, and how it grows. */
export interface LoadStep {
  readonly from: number;
  readonly to?: number;
  readonly load: readonly [low: number, high: number];
  readonly weeklyStep: readonly [low: number, high: number];
  readonly says: string;
}

export const LOAD_PROGRESSION: SourcedTable<LoadStep> = {
  record: {
    id: 'harness/load-progression',
    revision: 1,
    title: 'How the harness load grows through a flight',
    source: PETERSEN_2016,
    restsOn: [OUR_OWN_DESIGN],
    doesNotKnow:
      'Whether this skin bears it. Seen: about 0.65 is typical, and eight of eight people raised load and speed. The ranges at the start and late are from memory with low confidence, the weekly step is our own. The pain rule of the programme governs: 3 or 4 of 10 holds the load, 5 or more stops it; so does broken skin.',
  },
  columns: [
    { name: 'from week', unit: 'weeks' },
    { name: 'to week', unit: 'weeks' },
    { name: 'load over body weight', unit: '1' },
    { name: 'step each week', unit: '1' },
    { name: 'in words', unit: '' },
  ],
  rows: [
    { from: 1, to: 2, load: [0.6, 0.7], weeklyStep: [0, 0], says: 'Settle in; strap split and skin before load.' },
    { from: 3, to: 8, load: [0.6, 0.9], weeklyStep: [0.02, 0.05], says: 'Raise as it is borne.' },
    { from: 9, load: [0.75, 0.9], weeklyStep: [0, 0.05], says: 'Full body weight in some, with a harness that fits.' },
  ],
  cells: ({ from, to, load, weeklyStep, says }) => [
    from,
    to ?? null,
    `${load[0]} to ${load[1]}`,
    weeklyStep[1] === 0 ? 'none' : `${weeklyStep[0]} to ${weeklyStep[1]}`,
    says,
  ],
};
