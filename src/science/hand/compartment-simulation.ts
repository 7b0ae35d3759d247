import { seconds, type Fraction, type Seconds } from '#units/quantity.ts';
import { method } from '../method.ts';
import type { FatigueConstants } from './fatigue-constants.table.ts';
import { fatigueRate, recoveryRate, restMultiplier, target, time } from './inputs.ts';
import { LOOFT_2018, XIA_FREY_LAW_2008 } from './sources.ts';
import { impossibleConstant } from './work-phases.ts';

/** The full equations of the three compartments, step by step: what the closed forms are held to. */

/** How fast the controller brings muscle into work and out of it [1/s], Xia and Frey Law. */
const DRIVE = 10;
const STEP = 0.02;
const MOST_STEPS = 2_000_000;

export interface CompartmentState {
  readonly resting: number;
  readonly active: number;
  readonly tired: number;
}

export interface CompartmentPhase {
  /** Of the maximum; 0 is rest. */
  readonly target: Fraction;
  readonly seconds: Seconds;
}

export type CompartmentSimulation =
  | {
      readonly kind: 'estimate';
      /** At the end of each phase. */
      readonly ends: readonly CompartmentState[];
      /** When what is not tired first fell below the force asked for; null where it never did. */
      readonly failedAt: Seconds | null;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

type Three = [resting: number, active: number, tired: number];

const slopes = (
  [resting, active, tired]: Three,
  load: number,
  { fatigue, recovery, restMultiplier: rest }: FatigueConstants,
): Three => {
  // Nothing resting holds the controller back where it lets go: there, what is short is below 0.
  const drive = DRIVE * Math.min(load - active, resting);
  const back = (load === 0 ? rest * recovery : recovery) * tired;
  return [back - drive, drive - fatigue * active, fatigue * active - back];
};

const moved = (from: Three, by: Three, step: number): Three => [
  from[0] + step * by[0],
  from[1] + step * by[1],
  from[2] + step * by[2],
];

/** One step of the classical fourth order. */
const stepped = (state: Three, step: number, slope: (of: Three) => Three): Three => {
  const first = slope(state);
  const second = slope(moved(state, first, step / 2));
  const third = slope(moved(state, second, step / 2));
  const fourth = slope(moved(state, third, step));
  const mean = first.map(
    (each, place) =>
      (each + 2 * (second[place] as number) + 2 * (third[place] as number) + (fourth[place] as number)) / 6,
  ) as Three; // three stay three
  return moved(state, mean, step);
};

interface Run {
  readonly end: Three;
  readonly failedAfter: number | null;
}

const runPhase = (
  start: Three,
  { target: load, seconds: lasts }: CompartmentPhase,
  constants: FatigueConstants,
  widest: number,
): Run => {
  const steps = Math.ceil(lasts / widest);
  const step = lasts / steps;
  const slope = (of: Three): Three => slopes(of, load, constants);
  let state = start;
  let failedAfter: number | null = 1 - start[2] < load ? 0 : null;
  for (let done = 0; done < steps; done += 1) {
    const before = 1 - state[2] - load;
    state = stepped(state, step, slope);
    const after = 1 - state[2] - load;
    if (failedAfter === null && after < 0) failedAfter = step * (done + before / (before - after));
  }
  return { end: state, failedAfter };
};

const problem = (phases: readonly CompartmentPhase[], step: number): string | undefined => {
  if (phases.length === 0) return 'There is no phase to run.';
  const off = phases.findIndex(({ target: load, seconds: lasts }) => !(load >= 0 && load <= 1 && lasts > 0));
  if (off >= 0) return `Phase ${off + 1} must have a force of 0 to 1 and last longer than 0 s.`;
  if (!(step >= 0.001 && step <= 0.1)) return `A step must lie in 0.001 to 0.1 s; it is ${step}.`;
  const whole = phases.reduce((sum, { seconds: lasts }) => sum + lasts, 0);
  return whole / step > MOST_STEPS ? `More than ${MOST_STEPS} steps: take longer ones or fewer phases.` : undefined;
};

/** The three compartments with their controller, step by step. */
export const simulateCompartments = method(
  {
    id: 'three-compartments/full-equations',
    revision: 1,
    title: 'The three compartments with their controller, step by step',
    equations: [
      'dM_R / dt = −C + R_r M_F',
      'dM_A / dt = C − F M_A',
      'dM_F / dt = F M_A − R_r M_F',
      'C = 10 · min(I − M_A, M_R)',
      'R_r = r R if I = 0, else R',
    ],
    inputs: [target, time('length of a phase', 't'), fatigueRate, recoveryRate, restMultiplier],
    outputs: [
      { name: 'resting share', symbol: 'M_R', unit: '1' },
      { name: 'active share', symbol: 'M_A', unit: '1' },
      { name: 'tired share', symbol: 'M_F', unit: '1' },
    ],
    refuses: [
      'No phase; a force outside 0 to 1; a phase that does not last.',
      'Steps outside 0.001 to 0.1 s, or more than two million.',
    ],
    source: XIA_FREY_LAW_2008,
    restsOn: [LOOFT_2018],
    doesNotKnow:
      'Slow fatigue, and what the controller does to a force that changes within a tenth of a second. Fourth-order steps lose two orders where the controller changes its rule.',
  },
  (
    phases: readonly CompartmentPhase[],
    constants: FatigueConstants,
    step: number = STEP,
    start: CompartmentState = { resting: 1, active: 0, tired: 0 },
  ): CompartmentSimulation => {
    const reason = impossibleConstant(constants) ?? problem(phases, step);
    if (reason !== undefined) return { kind: 'refused', reason };
    const ends: CompartmentState[] = [];
    let state: Three = [start.resting, start.active, start.tired];
    let failedAt: Seconds | null = null;
    let clock = 0;
    for (const phase of phases) {
      const { end, failedAfter } = runPhase(state, phase, constants, step);
      if (failedAt === null && failedAfter !== null) failedAt = seconds(clock + failedAfter);
      state = end;
      clock += phase.seconds;
      ends.push({ resting: end[0], active: end[1], tired: end[2] });
    }
    return { kind: 'estimate', ends, failedAt, cautions: failedAt === null ? [] : ['The force is lost on the way.'] };
  },
);
