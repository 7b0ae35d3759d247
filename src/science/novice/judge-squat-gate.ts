import type { FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { MYER_2014 } from './sources.ts';
import { squatGate, type SquatGate, type SquatGateName } from './squat-gates.table.ts';

/** Whether somebody has shown what a gate asks for, and if not, all that is missing. */

/** Who saw it, and how. */
export type Watched =
  | { readonly how: 'in person'; readonly by: string }
  | { readonly how: 'on film'; readonly by: string; readonly enough: boolean };

/** What one session showed. */
export interface GateSession {
  readonly sets: number;
  /** Fewest of any of its sets. */
  readonly repetitions: number;
  readonly loadOverBodyMass: number;
  readonly exertion: number | null;
  readonly faults: number | null;
  /** Highest of the session, 0 to 10. */
  readonly pain: number;
  readonly confirmed: readonly string[];
  readonly watched: Watched;
}

export interface GateEvidence {
  readonly weeksOfTraining: number;
  readonly sessions: readonly GateSession[];
}

export type GateJudgement =
  | { readonly kind: 'passed'; readonly watchedBy: readonly string[] }
  | { readonly kind: 'not yet'; readonly reasons: readonly string[] };

/** Up to this, pain lets training go on. */
const PAIN_GOES_ON = 2;

/** Every reason why a session does not count, as endings of a sentence. */
const missingIn = (gate: SquatGate, session: GateSession): readonly string[] => {
  const { load, mostExertion, mostFaults } = gate;
  const { watched } = session;
  return [
    ...(watched.by.trim() === '' ? ['nobody is named who watched'] : []),
    ...(watched.how === 'on film' && !watched.enough ? ['the film was not enough to judge'] : []),
    ...(session.pain <= PAIN_GOES_ON ? [] : [`pain was ${session.pain}; it may be ${PAIN_GOES_ON} at most`]),
    ...(session.sets >= gate.sets ? [] : [`${session.sets} sets of ${gate.sets}`]),
    ...(session.repetitions >= gate.repetitions ? [] : [`${session.repetitions} repetitions of ${gate.repetitions}`]),
    ...(load === null ? [] : missingLoad(load, session.loadOverBodyMass)),
    ...missingValue('effort', mostExertion, session.exertion),
    ...missingValue('number of faults', mostFaults, session.faults),
    ...gate.confirms.filter((each) => !session.confirmed.includes(each)).map((each) => `not confirmed: ${each}`),
  ];
};

const missingLoad = ([least, most]: readonly [number, number], load: number): readonly string[] =>
  load >= least && load <= most
    ? []
    : [`the load was ${(100 * load).toFixed(0)} % of body mass; the gate asks for ${100 * least} to ${100 * most} %`];

const missingValue = (name: string, most: number | null, value: number | null): readonly string[] => {
  if (most === null) return [];
  if (value === null) return [`the ${name} was not recorded`];
  return value <= most ? [] : [`the ${name} was ${value}; it may be ${most} at most`];
};

const input = (name: string, symbol: string, unit: string, most: number): FormulaInput => ({
  name,
  symbol,
  unit,
  possible: [0, most],
  valid: [0, most],
});

const judge = (gate: SquatGate, { weeksOfTraining, sessions }: GateEvidence): GateJudgement => {
  const judged = sessions.map((session, place) => ({ session, place, missing: missingIn(gate, session) }));
  const counting = judged.filter(({ missing }) => missing.length === 0);
  const reasons = [
    ...(weeksOfTraining >= gate.weeks
      ? []
      : [`${weeksOfTraining} weeks of training; the gate asks for ${gate.weeks}.`]),
    ...(counting.length >= gate.sessions
      ? []
      : [
          `${counting.length} of ${gate.sessions} sessions show all of it.`,
          ...judged.flatMap(({ place, missing }) => missing.map((each) => `Session ${place + 1}: ${each}.`)),
        ]),
  ];
  return reasons.length > 0
    ? { kind: 'not yet', reasons }
    : { kind: 'passed', watchedBy: [...new Set(counting.map(({ session }) => session.watched.by))] };
};

/** Whether a squat gate is passed, or everything that is missing. */
export const judgeSquatGate = method(
  {
    id: 'novice/judge-squat-gate',
    revision: 1,
    title: 'Whether a squat gate is passed',
    equations: [
      'a session counts where sets, repetitions, load, effort, faults and pain lie within the lines of the gate, all is confirmed, and somebody saw it in person or on a film that was enough',
      'passed where the sessions that count ≥ sessions asked for and weeks of training ≥ weeks asked for',
    ],
    inputs: [
      input('sets', 'sets', '1', 20),
      input('fewest repetitions of a set', 'n', 'repetitions', 100),
      input('load over body mass', 'L / W', '1', 3),
      input('rating of perceived exertion', 'RPE', 'RPE', 10),
      input('faults', 'faults', 'of 10', 10),
      input('highest pain', 'pain', '0 to 10', 10),
      input('weeks of training', 'weeks', 'weeks', 5000),
    ],
    outputs: [{ name: 'passed, or everything that is missing', symbol: 'judgement', unit: 'words' }],
    refuses: ['Nothing: what is missing is told, session by session.'],
    source: COMMON_PRACTICE,
    restsOn: [MYER_2014],
    doesNotKnow:
      'What was not watched. The lines have no study behind them, and the physician’s word goes before all of them.',
  },
  (name: SquatGateName, evidence: GateEvidence): GateJudgement => judge(squatGate(name), evidence),
);
