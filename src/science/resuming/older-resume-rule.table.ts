import { strengthUnloaded } from '../adaptation/pause.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { CATERISANO_2019 } from './sources.ts';
import { daySpan } from '#units/quantity.ts';

/** A rule by steps of days, kept to compare with. No load is made from it. */

export interface OlderResume {
  readonly days: readonly [number, number | null];
  /** Part of the load on the ground. */
  readonly groundLoad: number;
  /** Part of the sets, on the ground as in flight; null where none is said. */
  readonly sets: number | null;
  readonly ground: string;
  /** Part of the load in flight, or of the strength left where `ofStrengthLeft`. */
  readonly flightLoad: number;
  readonly ofStrengthLeft: boolean;
  readonly flight: string;
}

export const OLDER_RESUME_RULE: SourcedTable<OlderResume> = {
  record: {
    id: 'resuming/older-rule',
    revision: 1,
    title: 'An older rule by steps of days, to compare with',
    source: OUR_OWN_DESIGN,
    restsOn: [CATERISANO_2019],
    doesNotKnow:
      'Why a session was missed, and what was done meanwhile. Its steps make a load drop from one day to the next. It is shown to compare with, and no load is made from it; the cuts of volume in the fourth line are those of the consensus.',
  },
  columns: [
    { name: 'days missed from', unit: 'd' },
    { name: 'to', unit: 'd' },
    { name: 'sets', unit: '1' },
    { name: 'on the ground', unit: '' },
    { name: 'load', unit: '1' },
    { name: 'in flight', unit: '' },
    { name: 'load, from 15 days on of the strength left', unit: '1' },
  ],
  rows: [
    {
      days: [0, 3],
      groundLoad: 1,
      sets: 1,
      ground: 'as planned',
      flightLoad: 1,
      ofStrengthLeft: false,
      flight: 'as planned',
    },
    {
      days: [4, 7],
      groundLoad: 1,
      sets: 0.8,
      ground: 'fewer sets',
      flightLoad: 0.95,
      ofStrengthLeft: false,
      flight: 'lighter, fewer sets',
    },
    {
      days: [8, 14],
      groundLoad: 0.95,
      sets: 0.7,
      ground: 'then a tenth more of the sets each session',
      flightLoad: 0.9,
      ofStrengthLeft: false,
      flight: 'lighter, fewer sets',
    },
    {
      days: [15, 28],
      groundLoad: 0.9,
      sets: 0.5,
      ground: 'volume down by 50, 30, 20 and 10 % in four weeks',
      flightLoad: 0.95,
      ofStrengthLeft: true,
      flight: 'test again in the second week',
    },
    {
      days: [29, null],
      groundLoad: 0.7,
      sets: null,
      ground: 'test again at RPE 7 or less; begin at 70 to 80 %',
      flightLoad: 0.9,
      ofStrengthLeft: true,
      flight: 'physician and specialist look first',
    },
  ],
  cells: ({ days, sets, ground, groundLoad, flight, flightLoad }) => [
    ...days,
    sets,
    ground,
    groundLoad,
    flight,
    flightLoad,
  ],
};

const rowOf = (days: number): OlderResume => {
  const row = OLDER_RESUME_RULE.rows.findLast((each) => days >= each.days[0]);
  if (!row) throw new RangeError('Days missed begin at 0.');
  return row;
};

/** Part of the load by the older rule, for whole days. */
export const olderLoad = (days: number, where: 'ground' | 'flight'): number => {
  const row = rowOf(days);
  if (where === 'ground') return row.groundLoad;
  return row.ofStrengthLeft ? row.flightLoad * strengthUnloaded(daySpan(days)) : row.flightLoad;
};

/** Sets by the older rule, up to a whole one; null where it says none. */
export const olderSets = (days: number, sets: number): number | null => {
  const { sets: part } = rowOf(days);
  // 0.7 of 10 is 7, not the 8 that 7.000000000000001 would give.
  return part === null ? null : Math.ceil(part * sets - 1e-9);
};
