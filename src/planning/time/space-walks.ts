import type { Day } from '#units/day.ts';
import type { Exercise, Pattern } from '#domain/catalogue.ts';
import type { Fact } from '#domain/fact.ts';
import { ofKind } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { ProgrammeItem } from '#domain/programme.ts';
import { isInFlight } from '../machine-on.ts';
import type { PlanContext } from '../plan-context.ts';
import type { Progress } from '../progress.ts';

/* Before a space walk hands rest and nothing is new; after it hands and shoulders are looked at (common practice). */

const GRIP: readonly Pattern[] = ['grip', 'carry'];
const PULL: readonly Pattern[] = ['horizontal pull', 'vertical pull'];
const PRESS: readonly Pattern[] = ['horizontal press', 'vertical press'];

/** A day that a slip has left on the ground is no space walk any more. */
const isWalk = ({ known }: PlanContext, { day }: Fact<'space walk'>): boolean => isInFlight(known, day);

export const walkOn = (context: PlanContext, on: Day): Fact<'space walk'> | null =>
  context.calendar.walks.find((walk) => walk.day === on && isWalk(context, walk)) ?? null;

/** The space walk that hands rest for on a day. */
const walkAhead = (context: PlanContext, on: Day): Fact<'space walk'> | null => {
  const { daysHandsRest } = context.known.house.policies;
  return (
    context.calendar.walks.find((walk) => walk.day > on && walk.day - on <= daysHandsRest && isWalk(context, walk)) ??
    null
  );
};

/** The last space walk before a day after which nobody has found hands and shoulders sound yet. */
const walkNotLookedAfter = (context: PlanContext, on: Day): Fact<'space walk'> | null => {
  const walk = context.calendar.walks.findLast((each) => each.day < on && isWalk(context, each));
  if (!walk) return null;
  const look = context.calendar.looks.findLast(({ day }) => day >= walk.day && day <= on);
  return look?.passed === true ? null : walk;
};

/** Why an item stays out around a space walk, or null. */
export const leftOutForWalk = (
  context: PlanContext,
  progress: Progress,
  { on, item, exercise }: { readonly on: Day; readonly item: ProgrammeItem; readonly exercise: Exercise },
): string | null => {
  if (context.calendar.walks.length === 0) return null;
  const ahead = walkAhead(context, on);
  if (ahead && (isGripping(exercise) || isHeavyHinge(item, exercise)))
    return `left out: hands rest before the space walk of ${whenOf(context, ahead)}`;
  if (ahead && isNew(context, progress, exercise, on))
    return `left out: nothing new before the space walk of ${whenOf(context, ahead)}`;
  const behind = isLookExpected(context, on) ? null : walkNotLookedAfter(context, on);
  return behind && [...GRIP, ...PRESS].includes(exercise.pattern)
    ? `left out: hands and shoulders are to be looked at after the space walk of ${whenOf(context, behind)}`
    : null;
};

const whenOf = ({ known }: PlanContext, { day }: Fact<'space walk'>): string =>
  known.mission ? showMissionDay(known.mission, day) : 'this mission';

const isGripping = ({ pattern }: Exercise): boolean => [...GRIP, ...PULL].includes(pattern);

/** Light hinges by effort or of a fixed load go on. */
const isHeavyHinge = (item: ProgrammeItem, { pattern }: Exercise): boolean =>
  pattern === 'hip hinge' &&
  item.kind === 'lift' &&
  (item.basis.kind === 'fraction' || item.basis.kind === 'from last');

/** New is what was never tested and stood on no card before. */
const isNew = ({ known }: PlanContext, { met }: Progress, { id }: Exercise, on: Day): boolean =>
  !met.has(id) && !ofKind(known, 'lifted').some(({ exercise, day }) => exercise === id && day < on);

/** What can be issued waits for the look; cards that are only expected take it that somebody looks. */
const isLookExpected = ({ issuableUntil }: PlanContext, on: Day): boolean =>
  issuableUntil !== null && on > issuableUntil;
