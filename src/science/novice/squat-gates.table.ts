import { COMMON_PRACTICE } from '../sources.ts';
import type { Cell, SourcedTable } from '../sourced-table.ts';
import { MYER_2014 } from './sources.ts';

/**
 * What somebody shows before a squat is loaded, step by step. No gate is passed by time alone, and none needs a tested
 * maximum. All lines are common practice, and the specialist may edit them.
 */

export const SQUAT_GATES = ['clearance gate', 'first squat gate', 'light load gate', 'bar gate', 'test gate'] as const;
export type SquatGateName = (typeof SQUAT_GATES)[number];

export interface SquatGate {
  readonly name: SquatGateName;
  /** Sessions that must show all of it. */
  readonly sessions: number;
  readonly sets: number;
  readonly repetitions: number;
  /** Of body mass; null where nothing is carried or where it does not matter. */
  readonly load: readonly [least: number, most: number] | null;
  /** Rating of perceived exertion, at most. */
  readonly mostExertion: number | null;
  /** Of the ten criteria, at most. */
  readonly mostFaults: number | null;
  /** Weeks of training behind it, at least; never enough by themselves. */
  readonly weeks: number;
  /** What whoever watches says yes to. */
  readonly confirms: readonly string[];
  readonly opens: string;
}

const NOTHING_COUNTED = {
  sets: 0,
  repetitions: 0,
  load: null,
  mostExertion: null,
  mostFaults: null,
  weeks: 0,
} as const;

const range = ([least, most]: readonly [number, number]): string => `${100 * least} to ${100 * most} %`;
const work = ({ sets, repetitions }: SquatGate): Cell => (sets === 0 ? null : `${sets} × ${repetitions}`);

export const SQUAT_GATE_TABLE: SourcedTable<SquatGate> = {
  record: {
    id: 'novice/squat-gates',
    revision: 1,
    title: 'Gates before a squat is loaded',
    source: COMMON_PRACTICE,
    restsOn: [MYER_2014],
    doesNotKnow:
      'Anything that nobody watched: each session says who saw it and, where it was seen on film, whether the film was enough. The lines have no study behind them.',
  },
  columns: [
    { name: 'gate', unit: '' },
    { name: 'sessions', unit: '' },
    { name: 'work', unit: '' },
    { name: 'load over body mass', unit: '' },
    { name: 'effort at most', unit: 'RPE' },
    { name: 'faults at most', unit: 'of 10' },
    { name: 'weeks of training at least', unit: '' },
    { name: 'whoever watches says yes to', unit: '' },
    { name: 'opens', unit: '' },
  ],
  rows: [
    {
      name: 'clearance gate',
      ...NOTHING_COUNTED,
      sessions: 1,
      confirms: [
        'the physician allows loaded training',
        'no pain in the range without load',
        'ankles and hips allow thighs that are level',
      ],
      opens: 'a squat to a box without load',
    },
    {
      name: 'first squat gate',
      ...NOTHING_COUNTED,
      sessions: 2,
      sets: 1,
      repetitions: 10,
      mostFaults: 2,
      confirms: ['the back keeps its shape', 'the heels stay down', 'the knees follow the toes'],
      opens: 'a light load held in front',
    },
    {
      name: 'light load gate',
      ...NOTHING_COUNTED,
      sessions: 1,
      sets: 3,
      repetitions: 8,
      load: [0.15, 0.25],
      mostExertion: 6,
      confirms: ['no fault grows over the last three repetitions', 'the person braces and breathes'],
      opens: 'the empty bar',
    },
    {
      name: 'bar gate',
      ...NOTHING_COUNTED,
      sessions: 2,
      sets: 3,
      repetitions: 8,
      load: [0.3, 0.5],
      mostExertion: 7,
      confirms: [],
      opens: 'steps of 2 to 10 %',
    },
    {
      name: 'test gate',
      ...NOTHING_COUNTED,
      sessions: 1,
      weeks: 6,
      confirms: ['technique is stable at 80 % of the estimate or more'],
      opens:
        'a test of three to five repetitions; a single only where the specialist approves, and never because a programme needs it',
    },
  ],
  cells: (gate) => [
    gate.name,
    gate.sessions,
    work(gate),
    gate.load && range(gate.load),
    gate.mostExertion,
    gate.mostFaults,
    gate.weeks,
    gate.confirms.join('; '),
    gate.opens,
  ],
};

export const squatGate = (name: SquatGateName): SquatGate => {
  const found = SQUAT_GATE_TABLE.rows.find((gate) => gate.name === name);
  if (!found) throw new RangeError(`No squat gate is called "${name}".`);
  return found;
};
