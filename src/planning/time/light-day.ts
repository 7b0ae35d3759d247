import { addDays, type Day } from '#units/day.ts';
import type { CardBout, CardBouts, CardItem, CardLift, CardSet } from '#domain/card.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { Deload, ProgrammeItem } from '#domain/programme.ts';
import { capped } from '../effort-cap.ts';
import type { PlanContext } from '../plan-context.ts';
import type { PlannedItem } from '../plan-item.ts';
import { holdsDay } from './calendar.ts';
import { walkOn } from './space-walks.ts';

/** A light day: one set less, a fifth off the load, nothing harder than RPE 6. Our own design. */
const LIGHT: Deload = { everyWeeks: 1, fewerSets: 1, loadBy: 0.8 };
const LIGHT_RPE = 6;

/** Nobody is tested the day after heavy work: two days before one that is set aside for tests (common practice). */
export const LIGHT_DAYS_BEFORE_TESTS = 2;

/** Why a day is a light one, or null. */
export const whyLight = (context: PlanContext, on: Day): string | null => {
  if (walkOn(context, addDays(on, 1))) return 'light: a space walk tomorrow';
  const test = context.calendar.setAside.find(
    (each) =>
      each.what === 'test' &&
      each.from > on &&
      each.from - on <= LIGHT_DAYS_BEFORE_TESTS &&
      !context.calendar.setAside.some((other) => other.what === 'test' && holdsDay(other, on)),
  );
  if (!test) return null;
  const { mission } = context.known;
  return `light: tests on ${mission ? showMissionDay(mission, test.from) : 'a day set aside'}`;
};

/** What an easier week takes off already is not taken off twice. */
export const withLight = (easier: Deload | null): Deload =>
  easier === null
    ? LIGHT
    : {
        ...easier,
        fewerSets: Math.max(easier.fewerSets, LIGHT.fewerSets),
        loadBy: Math.min(easier.loadBy, LIGHT.loadBy),
      };

/** An item of a light day: what is all-out stays out, the rest is held to an easy effort and says so. */
export const onLightDay = (planned: PlannedItem, item: ProgrammeItem, why: string | null): PlannedItem => {
  if (why === null || planned.kind === 'left out') return planned;
  if (item.kind === 'bouts' && item.bouts.some(({ intensity }) => intensity?.kind === 'all-out'))
    return { kind: 'left out', says: `left out: nothing all-out, ${why}`, gap: false };
  return { kind: 'item', item: lightened(planned.item, why) };
};

const lightened = (item: CardItem, why: string): CardItem => {
  const common = { shouldFeel: capped(item.shouldFeel, LIGHT_RPE), says: [...item.says, why] };
  switch (item.kind) {
    case 'lift':
      return { ...item, ...common, sets: item.sets.map(lighterSet) } satisfies CardLift;
    case 'bouts':
      return {
        ...item,
        ...common,
        bouts: item.bouts.map(lighterBout),
        // Watts and speed are not set on such a day: none of them goes up.
        raises: item.raises.filter(({ unit }) => unit !== 'W' && unit !== 'km/h'),
      } satisfies CardBouts;
    case 'drill':
      return { ...item, ...common };
  }
};

const lighterSet = (set: CardSet): CardSet =>
  set.load.kind === 'start at' ? { ...set, load: { ...set.load, rpe: capped(set.load.rpe, LIGHT_RPE) } } : set;

/** Effort leads where the programme means more than an easy one. */
const lighterBout = (bout: CardBout): CardBout =>
  bout.rpe[1] <= LIGHT_RPE
    ? bout
    : { ...bout, rpe: capped(bout.rpe, LIGHT_RPE), heartRate: null, watts: null, speed: null };
