import type { SourcedTable } from '../sourced-table.ts';
import { STAGED_CYCLE_PROTOCOL } from './sources.ts';

/** The cycle test in stages of three minutes: the heart rate at the end of the first sets the second. */

export interface SecondStage {
  /** Heart rate at the end of the first stage: at or above this, below the next row's [1/min]. */
  readonly from: number;
  /** [kg m/min] */
  readonly workRate: number;
}

export const FIRST_STAGE = 150;
/** Added for each stage after the second [kg m/min]. */
export const STAGE_STEP = 150;
/** A stage goes on for another minute if its last two minutes differ by more [1/min]. */
export const PROLONG_ABOVE = 5;

/** A rate of exactly 100 still gets 450: whole beats are what was meant. */
export const SECOND_STAGES: SourcedTable<SecondStage> = {
  record: {
    id: 'submaximal/second-stage',
    revision: 1,
    title: 'Second stage of the cycle test in stages, by the heart rate of the first',
    source: STAGED_CYCLE_PROTOCOL,
    doesNotKnow:
      'A person who is fit and slow of heart, or medicated. The first stage is 150 kg m/min (25 W); after the second each adds 150. A stage whose last two minutes differ by more than 5 beats goes on for another minute.',
  },
  columns: [
    { name: 'heart rate of the first stage from', unit: '1/min' },
    { name: 'second stage', unit: 'kg m/min' },
    { name: 'second stage by the handbook’s factor', unit: 'W' },
  ],
  rows: [
    { from: 25, workRate: 750 },
    { from: 80, workRate: 600 },
    { from: 90, workRate: 450 },
    { from: 101, workRate: 300 },
  ],
  cells: ({ from, workRate }) => [from, workRate, workRate / 6],
};
