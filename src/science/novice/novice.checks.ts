import { printedResults, type Check } from '../check.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { gateAfterPause, type AfterSquatPause } from './gate-after-pause.ts';
import { judgeSquatGate, type GateSession } from './judge-squat-gate.ts';
import { SQUAT_CRITERIA } from './squat-criteria.table.ts';
import { squatGate } from './squat-gates.table.ts';
import { MYER_2014 } from './sources.ts';

/** A session without load as clean as can be, seen by an invented coach. */
const CLEAN: GateSession = {
  sets: 1,
  repetitions: 10,
  loadOverBodyMass: 0,
  exertion: 4,
  faults: 0,
  pain: 0,
  confirmed: squatGate('first squat gate').confirms,
  watched: { how: 'in person', by: 'M. Okafor' },
};

const missing = (...sessions: readonly GateSession[]): number => {
  const judged = judgeSquatGate('first squat gate', { weeksOfTraining: 0, sessions });
  return judged.kind === 'passed' ? 0 : judged.reasons.length;
};

/** The first day from which something is asked. */
const firstDay = (kind: AfterSquatPause['kind']): number =>
  Array.from({ length: 100 }, (_, day) => day).findIndex(
    (daysOff) => gateAfterPause({ daysOff, because: 'days off' }).kind === kind,
  );

const IN_WORDS = 'practice says so in words; days and counts are whole numbers';

export const gateChecks: readonly Check[] = [
  ...printedResults(judgeSquatGate, COMMON_PRACTICE, 0, IN_WORDS, [
    ['missing at the first squat gate after two clean sessions', () => missing(CLEAN, CLEAN), 0],
    ['missing after one clean session: a second one', () => missing(CLEAN), 1],
    ['missing after two faults in each session', () => missing({ ...CLEAN, faults: 2 }, { ...CLEAN, faults: 2 }), 0],
    [
      'missing after three faults in one of two: one session, and why',
      () => missing({ ...CLEAN, faults: 3 }, CLEAN),
      2,
    ],
  ]),
  ...printedResults(gateAfterPause, COMMON_PRACTICE, 0, IN_WORDS, [
    ['days off from which a check session is asked for', () => firstDay('check session'), 14],
    ['days off from which the specialist chooses', () => firstDay('specialist chooses'), 42],
    ['days off from which the first gates come again', () => firstDay('back to gates'), 56],
  ]),
  {
    kind: 'series',
    title: 'Number of criteria',
    compute: () => SQUAT_CRITERIA.rows.length,
    printed: 10,
    within: 0,
    because: 'the paper numbers them',
    source: MYER_2014,
  },
];
