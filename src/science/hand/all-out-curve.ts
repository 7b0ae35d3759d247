import { bisect } from '../numeric/root.ts';
import { leastWithin } from './golden-section.ts';

/** The exponential fall of an all-out test, and the rates of fatigue and recovery that would make it. */

export interface FittedCurve {
  readonly plateau: number;
  readonly height: number;
  /** Part of the way to the plateau that is left after each contraction. */
  readonly kept: number;
  /** Root of the mean square of what is left over, of the maximum. */
  readonly residual: number;
}

/** Part of the way that may be left after a contraction: below and above, there is no fall to be seen. */
export const [LEAST_KEPT, MOST_KEPT] = [0.5, 0.999] as const;
/** Plateau and height for one ratio: a straight line through the forces over its powers. */
const lineFor = (forces: readonly number[], kept: number): FittedCurve => {
  const powers = forces.map((_, place) => kept ** place);
  const sum = (of: (power: number, y: number) => number): number =>
    forces.reduce((total, y, place) => total + of(powers[place] as number, y), 0);
  const count = forces.length;
  const [x, y] = [sum((power) => power), sum((_, each) => each)];
  const height = (count * sum((power, each) => power * each) - x * y) / (count * sum((power) => power * power) - x * x);
  const plateau = (y - height * x) / count;
  const squares = sum((power, each) => (each - plateau - height * power) ** 2);
  return { plateau, height, kept, residual: Math.sqrt(squares / count) };
};

/**
 * The exponential fall that lies closest to a series of forces. Over the ratio the squares have one valley, as far as tests
 * with noise of a tenth of the maximum show: they are held to a grid.
 */
export const fitFall = (forces: readonly number[]): FittedCurve =>
  lineFor(
    forces,
    leastWithin((kept) => lineFor(forces, kept).residual ** 2, { low: LEAST_KEPT, high: MOST_KEPT, within: 1e-12 }),
  );

interface Cycle {
  readonly on: number;
  readonly off: number;
  /** Recovery at rest over that under load. */
  readonly rest: number;
}

export interface Rates {
  readonly fatigue: number;
  readonly recovery: number;
}

/** Mean force of a contraction at the plateau of an all-out test, of the maximum. */
const plateauOf = (fatigue: number, recovery: number, { on, off, rest }: Cycle): number => {
  const rate = fatigue + recovery;
  const most = fatigue / rate;
  const [keptOn, keptOff] = [Math.exp(-rate * on), Math.exp(-rest * recovery * off)];
  const end = (most * (1 - keptOn)) / (1 - keptOff * keptOn);
  return 1 - (most + ((end * keptOff - most) * (1 - keptOn)) / (rate * on));
};

/** The rates whose all-out test falls as fast and to the same plateau. */
export const ratesOf = ({ plateau, kept }: FittedCurve, cycle: Cycle): Rates | undefined => {
  const decay = -Math.log(kept);
  const { on, off, rest } = cycle;
  const fatigueFor = (recovery: number): number => decay / on - recovery * (1 + (rest * off) / on);
  const most = decay / (on + rest * off);
  const found = bisect((recovery) => plateauOf(fatigueFor(recovery), recovery, cycle) - plateau, {
    low: 1e-9 * most,
    high: (1 - 1e-9) * most,
    within: 1e-16,
  });
  return found.kind === 'converged' ? { fatigue: fatigueFor(found.root), recovery: found.root } : undefined;
};
