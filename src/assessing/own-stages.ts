import { isoOfDay, type Day } from '#units/day.ts';
import { numberOf } from '#units/entered.ts';
import type { Fact } from '#domain/fact.ts';
import type { FactId } from '#domain/identity.ts';
import type { Test } from '#domain/tested.ts';
import type { Origin } from '#domain/working.ts';
import { lineOfLeastSquares } from '#science/aerobic/line-through-stages.ts';

/** One steady stage: watts or m/min, against uptake or heart rate. */
export interface OwnStage {
  readonly x: number;
  readonly y: number;
  readonly fact: FactId;
}

/** The stages of one day, by rising x. */
export interface OwnStages {
  readonly day: Day;
  readonly stages: readonly OwnStage[];
}

type StageTest = Extract<Test, { readonly what: 'cycle stage' | 'running stage' }>;

/** Stages of the newest test of a kind that have a value to read, or null where none has. */
export const ownStages = (
  tests: readonly Fact<'tested'>[],
  what: StageTest['what'],
  against: 'uptake' | 'heartRate',
): OwnStages | null => {
  const stages = tests.flatMap(({ day, test, id }) => {
    if (test.what !== what) return [];
    const value = test[against];
    return value ? [{ day, stage: { x: xOf(test), y: numberOf(value), fact: id } }] : [];
  });
  if (stages.length === 0) return null;
  const last = Math.max(...stages.map(({ day }) => day)) as Day;
  const ofDay = stages.filter(({ day }) => day === last).map(({ stage }) => stage);
  return { day: last, stages: ofDay.toSorted((a, b) => a.x - b.x) };
};

const xOf = (test: StageTest): number =>
  test.what === 'cycle stage' ? numberOf(test.watts) : metresPerMinuteOf(numberOf(test.speed));

/** Belt speeds are set in km/h and reckoned in m/min. */
const METRES_PER_MINUTE_OF_ONE = 1000 / 60;
const metresPerMinuteOf = (kilometresPerHour: number): number => kilometresPerHour * METRES_PER_MINUTE_OF_ONE;

/** Fewer make no line: two points have no residual to doubt it by. */
const FEWEST_OF_A_LINE = 3;

/** Under this slope a line is flat, or a stage was typed wrongly. */
const LEAST_SLOPE = 1e-4;

export interface OwnLine {
  readonly intercept: number;
  readonly slope: number;
  /** Least and largest x that were tested. */
  readonly from: number;
  readonly to: number;
  readonly origin: Extract<Origin, { readonly kind: 'estimate' }>;
}

/** A rising line through three stages or more, or null where they make none. */
export const ownLine = ({ day, stages }: OwnStages, exercise: string): OwnLine | null => {
  if (stages.length < FEWEST_OF_A_LINE) return null;
  const line = lineOfLeastSquares(stages);
  if (line.kind === 'refused' || line.slope <= LEAST_SLOPE) return null;
  const { intercept, slope, from, to } = line;
  const says = `least squares through ${stages.length} stages of ${isoOfDay(day)}`;
  return {
    intercept,
    slope,
    from,
    to,
    origin: { kind: 'estimate', exercise, facts: stages.map(({ fact }) => fact), says },
  };
};
