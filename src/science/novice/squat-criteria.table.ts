import type { SourcedTable } from '../sourced-table.ts';
import { MYER_2014 } from './sources.ts';

/** What is looked at in a squat without load. A criterion that is not met is a fault. */

export interface SquatCriterion {
  readonly part: 'upper body' | 'lower body' | 'movement';
  readonly criterion: string;
  readonly met: string;
}

export const SQUAT_CRITERIA: SourcedTable<SquatCriterion> = {
  record: {
    id: 'novice/squat-criteria',
    revision: 1,
    title: 'Ten criteria of a squat without load',
    source: MYER_2014,
    doesNotKnow:
      'Whether load brings out another fault. A light stick lies on the back, ten repetitions without a break; pain ends it, and the physician is asked.',
  },
  columns: [
    { name: 'part', unit: '' },
    { name: 'criterion', unit: '' },
    { name: 'met where', unit: '' },
  ],
  rows: [
    { part: 'upper body', criterion: 'head', met: 'the neck stands upright and the eyes look ahead' },
    { part: 'upper body', criterion: 'chest', met: 'the chest is held up and the shoulder blades are drawn back' },
    {
      part: 'upper body',
      criterion: 'trunk',
      met: 'the trunk stays parallel to the shin, the low back slightly hollow',
    },
    { part: 'lower body', criterion: 'hips', met: 'seen from the front, the hips stay level' },
    { part: 'lower body', criterion: 'knees from the front', met: 'neither knee falls inside the ankle' },
    {
      part: 'lower body',
      criterion: 'knees from the side',
      met: 'the knees hardly pass the toes, the shins lie parallel to an upright trunk',
    },
    { part: 'lower body', criterion: 'feet', met: 'the whole foot stays on the ground' },
    { part: 'movement', criterion: 'way down', met: 'begun at the hips, at one controlled speed, the trunk upright' },
    { part: 'movement', criterion: 'depth', met: 'the tops of the thighs are at least level' },
    {
      part: 'movement',
      criterion: 'way up',
      met: 'shoulders and hips rise together at one speed',
    },
  ],
  cells: ({ part, criterion, met }) => [part, criterion, met],
};
