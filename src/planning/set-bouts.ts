import type { CardBout } from '#domain/card.ts';
import type { ProgrammeBout } from '#domain/programme.ts';
import type { FilledRow } from '#domain/working.ts';
import { capOnDay } from './belt-under-harness.ts';
import type { BoutAt, Reckoned } from './bout-at.ts';
import { setBout } from './bout-target.ts';
import { rowsOfParts } from './filled-reckoning.ts';
import type { PlanContext } from './plan-context.ts';

/** The bouts of an item as they are set, before anything holds them back, with their reckonings. */
export interface SetBouts {
  readonly bouts: readonly Reckoned<CardBout>[];
  readonly rows: readonly FilledRow[];
}

/** Sets the bouts of an item. Between two tests the same item is set the same way, day after day: it is reckoned once. */
export const setBouts = ({ boutsSet }: PlanContext, bouts: readonly ProgrammeBout[], at: BoutAt): SetBouts => {
  const kept = boutsSet.get(at.person) ?? new Map<string, SetBouts>();
  boutsSet.set(at.person, kept);
  const name = nameOf(bouts, at);
  const set = kept.get(name) ?? reckonBouts(bouts, at);
  kept.set(name, set);
  return set;
};

/** Everything that the settings hang on, the tests apart. */
const nameOf = (bouts: readonly ProgrammeBout[], at: BoutAt): string =>
  `${shownOnce(bouts)} ${JSON.stringify([
    at.programme,
    at.exercise.id,
    at.machine.id,
    at.flightDay !== null && capOnDay(at, at.flightDay).factor,
    at.mass,
    at.harness,
    at.backedOff,
    at.rpe,
    at.byEffortOnly,
    at.effortCap,
  ])}`;

const shownOnce = (bouts: readonly ProgrammeBout[]): string => {
  const shown = shownBouts.get(bouts) ?? JSON.stringify(bouts);
  shownBouts.set(bouts, shown);
  return shown;
};

/** A programme's bouts never change. */
const shownBouts = new WeakMap<readonly ProgrammeBout[], string>();

const reckonBouts = (bouts: readonly ProgrammeBout[], at: BoutAt): SetBouts => {
  const alike = new Map<string, Reckoned<CardBout>>();
  const set = bouts.map((bout) => {
    const name = JSON.stringify(bout);
    const one = alike.get(name) ?? setBout(bout, at);
    alike.set(name, one);
    return one;
  });
  return {
    bouts: set,
    rows: rowsOfParts(
      set.map(({ reckonings }) => reckonings),
      namesOfBouts,
    ),
  };
};

const namesOfBouts = (places: readonly number[]): string =>
  `${places.length === 1 ? 'bout' : 'bouts'} ${places.map((place) => place + 1).join(', ')}`;
