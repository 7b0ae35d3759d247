import type { Source } from '../formula.ts';
import { COMMON_PRACTICE, OUR_OWN_DESIGN } from '../sources.ts';
import type { SourcedTable } from '../sourced-table.ts';

/** What can stand in where a machine is out, how much of each quality it covers, and in which order it is tried. */

export const QUALITIES = ['strength', 'power', 'aerobic', 'impact', 'grip'] as const;
export type Quality = (typeof QUALITIES)[number];

export type SubstituteId =
  | 'elastic cords'
  | 'isometric pushes'
  | 'treadmill under more harness load'
  | 'cycle sprints'
  | 'cycle intervals'
  | 'heel drops and jumps in the harness'
  | 'isometric heel raises'
  | 'treadmill'
  | 'rowing'
  | 'partner and self resistance'
  | 'elastic circuits';

export interface Substitute {
  readonly id: SubstituteId;
  readonly insteadOf: string;
  /** 0 nothing to 1 all; a quality that is not named is not rated, and counts as not covered. */
  readonly covers: Readonly<Partial<Record<Quality, number>>>;
  readonly says: string;
}

export const SUBSTITUTES = {
  record: {
    id: 'resuming/substitutes',
    revision: 1,
    title: 'What a substitute covers',
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'How well any of it keeps strength or bone in flight: nobody has measured it. The numbers are our own practice defaults and editable; where none stands nothing is covered.',
  },
  columns: [
    { name: 'substitute', unit: '' },
    { name: 'instead of', unit: '' },
    ...QUALITIES.map((name) => ({ name, unit: '1' })),
    { name: 'says', unit: '' },
  ],
  rows: [
    {
      id: 'elastic cords',
      insteadOf: 'a bar or a resistive machine',
      covers: { strength: 0.6, grip: 0.2 },
      says: 'Load grows along the way; tag it as a machine of its own.',
    },
    {
      id: 'isometric pushes',
      insteadOf: 'a bar or a resistive machine',
      covers: { strength: 0.7 },
      says: 'Strength comes at the angles pushed at: five times five seconds at 90 % of effort or more, at three angles. Breathing as the physician set it.',
    },
    {
      id: 'treadmill under more harness load',
      insteadOf: 'a resistive machine, for calf and hip',
      covers: {},
      says: 'Load before speed; the harness load has its own steps.',
    },
    {
      id: 'cycle sprints',
      insteadOf: 'a resistive machine, for legs',
      covers: {},
      says: 'Only on the cycle, and not before about the fourth week of flight.',
    },
    {
      id: 'cycle intervals',
      insteadOf: 'the treadmill',
      covers: { aerobic: 1, impact: 0 },
      says: 'All of the aerobic work, none of the impact: say so where bone is watched.',
    },
    {
      id: 'heel drops and jumps in the harness',
      insteadOf: 'the treadmill',
      covers: {},
      says: 'Some impact; not rated.',
    },
    { id: 'isometric heel raises', insteadOf: 'the treadmill', covers: {}, says: 'For the calf; not rated.' },
    { id: 'treadmill', insteadOf: 'the cycle', covers: {}, says: 'At the same heart rate.' },
    { id: 'rowing', insteadOf: 'the cycle', covers: {}, says: 'At the same heart rate.' },
    {
      id: 'partner and self resistance',
      insteadOf: 'everything',
      covers: {},
      says: 'Isometric, breathing as the physician set it.',
    },
    {
      id: 'elastic circuits',
      insteadOf: 'everything',
      covers: {},
      says: 'Three times ten minutes at RPE 7 or more, within the effort that the person is allowed.',
    },
  ],
  cells: ({ id, insteadOf, covers, says }) => [
    id,
    insteadOf,
    ...QUALITIES.map((quality) => covers[quality] ?? null),
    says,
  ],
} as const satisfies SourcedTable<Substitute>;

export const substitute = (id: SubstituteId): Substitute => {
  const found: Substitute | undefined = SUBSTITUTES.rows.find((row) => row.id === id);
  if (!found) throw new RangeError(`There is no substitute "${id}".`);
  return found;
};

export type Machine = 'resistive machine' | 'treadmill' | 'cycle';

export interface Fallback {
  readonly out: Machine | 'everything';
  /** In the order in which they are tried. */
  readonly use: SubstituteId;
  /** A machine that it needs itself. */
  readonly needs: Machine | null;
  readonly source: Source;
}

const fallback = (out: Fallback['out'], use: SubstituteId, needs: Machine | null = null): Fallback => ({
  out,
  use,
  needs,
  source: COMMON_PRACTICE,
});

export const FALLBACKS: SourcedTable<Fallback> = {
  record: {
    id: 'resuming/fallbacks',
    revision: 1,
    title: 'What to use when a machine is out, in order',
    source: COMMON_PRACTICE,
    doesNotKnow: 'What is on board. A physician’s limits hold for a substitute as for what it replaces.',
  },
  columns: [
    { name: 'out', unit: '' },
    { name: 'use', unit: '' },
    { name: 'needs', unit: '' },
  ],
  rows: [
    fallback('resistive machine', 'elastic cords'),
    fallback('resistive machine', 'isometric pushes'),
    fallback('resistive machine', 'treadmill under more harness load', 'treadmill'),
    fallback('resistive machine', 'cycle sprints', 'cycle'),
    fallback('treadmill', 'cycle intervals', 'cycle'),
    fallback('treadmill', 'heel drops and jumps in the harness'),
    fallback('treadmill', 'isometric heel raises'),
    fallback('cycle', 'treadmill', 'treadmill'),
    fallback('cycle', 'rowing'),
    fallback('everything', 'partner and self resistance'),
    fallback('everything', 'elastic circuits'),
  ],
  cells: ({ out, use, needs }) => [out, use, needs],
};

const ALL_MACHINES: readonly Machine[] = ['resistive machine', 'treadmill', 'cycle'];

/** What can be used where these machines are out, in order, without what needs one of them. */
export const fallbacksFor = (wanted: Machine, out: readonly Machine[]): readonly SubstituteId[] => {
  const everything = ALL_MACHINES.every((machine) => machine === wanted || out.includes(machine));
  return FALLBACKS.rows.flatMap(({ out: of, use, needs }) =>
    (of === wanted || (of === 'everything' && everything)) && (needs === null || !out.includes(needs)) ? [use] : [],
  );
};

export interface WeekPriority {
  readonly rank: number;
  readonly session: string;
}

export const WEEK_PRIORITIES: SourcedTable<WeekPriority> = {
  record: {
    id: 'resuming/priorities',
    revision: 1,
    title: 'What is recovered first within the week',
    source: COMMON_PRACTICE,
    doesNotKnow:
      'This person’s weakest quality. A single session that was missed is never made up by doubling the next.',
  },
  columns: [
    { name: 'rank', unit: '' },
    { name: 'session', unit: '' },
  ],
  rows: [
    { rank: 1, session: 'resistive, lower body' },
    { rank: 2, session: 'aerobic intervals' },
    { rank: 3, session: 'resistive, other' },
    { rank: 4, session: 'steady aerobic' },
  ],
  cells: ({ rank, session }) => [rank, session],
};
