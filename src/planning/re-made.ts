import type { Day } from '#units/day.ts';
import type { Exercise } from '#domain/catalogue.ts';
import type { Decision, Hurting } from '#domain/decision.ts';
import type { Fact } from '#domain/fact.ts';
import type { PlanContext } from './plan-context.ts';
import { painBand, type PainBand } from './pain.ts';
import { deloadOn, type FoundSession } from './session-on.ts';
import type { Means } from './substitutes.ts';
import { roomOn } from './time/day-room.ts';
import { placeOnRoad } from './time/place-on-road.ts';

export type ReMake = Extract<Decision, { readonly kind: 're-make' }>;

/** Sessions made anew for what is there, by their day; the last one of a day stands. */
export const reMadeByDay = (decisions: readonly Fact<'decided'>[]): ReadonlyMap<Day, ReMake> =>
  new Map(decisions.flatMap(({ decision }) => (decision.kind === 're-make' ? [[decision.day, decision]] : [])));

/** The session of a day as it was made anew: another one of the programme, or the same in other minutes. */
export const sessionReMade = (context: PlanContext, found: FoundSession | null, on: Day): FoundSession | null => {
  const made = context.reMade.get(on);
  if (!made || isClosed(context, on)) return found;
  const at = found ?? foundOnDayWithout(context, on);
  const session = at?.programme.phases.flatMap(({ sessions }) => sessions).find(({ id }) => id === made.session);
  return at && session ? { ...at, session: { ...session, blockMinutes: made.minutes } } : found;
};

/** A space walk and a blackout leave no time for a session, whoever asks for one. */
const isClosed = (context: PlanContext, on: Day): boolean => {
  const { minutes, taken } = roomOn(context, on);
  return minutes === 0 && (taken === 'space walk' || taken === 'blackout');
};

/** The place in the programme of a day that has no session of its own: easier weeks and light days hold there too. */
const foundOnDayWithout = (context: PlanContext, on: Day): Omit<FoundSession, 'session'> | null => {
  const place = placeOnRoad(context, on);
  return place && { ...place, deload: deloadOn(context, place, on) };
};

/** Is this there on a day for which somebody said what is there? On every other day nothing is known against it. */
export const isThere = ({ reMade }: PlanContext, means: Means, on: Day): boolean => {
  const here = reMade.get(on)?.here;
  return here === undefined || means === 'no gear' || here.includes(means);
};

/** What was said to be there, or null where nobody said anything. */
export const saidToBeHere = ({ reMade }: PlanContext, on: Day): readonly Means[] | null => {
  const made = reMade.get(on);
  return made ? [...made.here, 'no gear'] : null;
};

/** The worst that was said before a session about what an exercise loads. */
export const hurtingOn = (
  { reMade, known }: PlanContext,
  { loads }: Exercise,
  on: Day,
): { readonly hurting: Hurting; readonly band: PainBand } | null => {
  const [worst] = (reMade.get(on)?.hurts ?? [])
    .filter(({ site }) => loads.includes(site))
    .toSorted((a, b) => b.score - a.score);
  return worst ? { hurting: worst, band: painBand(worst.score, known.house.policies) } : null;
};

/** Does it hurt too much for this exercise? */
export const hurtsTooMuch = (context: PlanContext, exercise: Exercise, on: Day): boolean => {
  const band = hurtingOn(context, exercise, on)?.band;
  return band === 'stop' || band === 'end the session';
};

/** "it hurts at the left knee (6 of 10)". */
export const showHurting = ({ site, side, score }: Hurting): string =>
  `it hurts at the ${side ? `${side} ` : ''}${site} (${score} of 10)`;

/** Discomfort that ends a session begins none. */
export const painGaps = ({ reMade, known }: PlanContext, on: Day): readonly string[] =>
  (reMade.get(on)?.hurts ?? [])
    .filter(({ score }) => painBand(score, known.house.policies) === 'end the session')
    .map((hurting) => `No session: ${showHurting(hurting)}; the physician comes first.`);
