import { numberOf } from '#units/entered.ts';
import { kilogramsPer } from '#units/mass.ts';
import type { CardBouts, CardDrill, CardItem, CardLift } from '#domain/card.ts';
import type { Exercise } from '#domain/catalogue.ts';
import { HEAVY_FROM, STEPS_A_MINUTE } from './dose-lines.ts';
import type { ZoneOfBout } from './bout-zone.ts';

/** What one item of a card adds to its week. */
export interface ItemDose {
  readonly exercise: Exercise;
  /** Work sets; of sides one after the other, each side's half. */
  readonly sets: number;
  /** Of these, at 75 % of the maximum or more. */
  readonly heavySets: number;
  /** Kilograms times repetitions, by machine. */
  readonly volume: { readonly machine: string; readonly kilograms: number } | null;
  readonly minutes: { readonly light: number; readonly moderate: number; readonly vigorous: number };
  /** Minutes and steps on the belt under the harness. */
  readonly loadedMinutes: number;
  readonly steps: number;
}

export interface DoseReading {
  readonly zoneOf: ZoneOfBout;
  /** Of the maximum, at the load of the item; null where it is not known. */
  readonly fractionOf: (item: CardLift) => number | null;
}

const SECONDS_PER_MINUTE = 60;
const NO_MINUTES = { light: 0, moderate: 0, vigorous: 0 };

export const itemDose = (item: CardItem, exercise: Exercise, reading: DoseReading): ItemDose => {
  switch (item.kind) {
    case 'lift':
      return liftDose(item, exercise, reading);
    case 'bouts':
      return boutsDose(item, exercise, reading);
    case 'drill':
      return drillDose(item, exercise);
  }
};

const nothing = (exercise: Exercise): ItemDose => ({
  exercise,
  sets: 0,
  heavySets: 0,
  volume: null,
  minutes: NO_MINUTES,
  loadedMinutes: 0,
  steps: 0,
});

const liftDose = (item: CardLift, exercise: Exercise, { fractionOf }: DoseReading): ItemDose => {
  // What may be left out is not planned on; of a range the least is.
  const work = item.sets.filter(({ kind, optional }) => kind === 'work' && !optional);
  const sets = work.length / sidesOf(work);
  const increment = numberOf({ text: item.increment, unit: item.unit }) * kilogramsPer(item.unit);
  const kilograms = work.reduce((sum, set) => sum + set.repetitions * set.load.increments * increment, 0);
  const isHeavy = exercise.bodyPart === 'lower body' && (fractionOf(item) ?? 0) >= HEAVY_FROM;
  return {
    ...nothing(exercise),
    sets,
    heavySets: isHeavy ? sets : 0,
    volume: { machine: item.machineName, kilograms },
  };
};

/** Left and right of one exercise are one set of it. */
const sidesOf = (sets: readonly { readonly side: unknown }[]): number =>
  Math.max(1, new Set(sets.map(({ side }) => side)).size);

const boutsDose = (item: CardBouts, exercise: Exercise, { zoneOf }: DoseReading): ItemDose => {
  const minutes = { ...NO_MINUTES };
  for (const bout of item.bouts) {
    const zone = zoneOf(bout);
    if (zone === 'vigorous' || zone === 'near maximal to maximal')
      minutes.vigorous += bout.seconds / SECONDS_PER_MINUTE;
    else if (zone === 'moderate') minutes.moderate += bout.seconds / SECONDS_PER_MINUTE;
    else minutes.light += bout.seconds / SECONDS_PER_MINUTE;
  }
  // After the last bout comes the cooling down, not the easy time between bouts.
  const easy = item.bouts.slice(0, -1).reduce((seconds, bout) => seconds + bout.easy, 0);
  minutes.light += (item.warmUpSeconds + easy + item.coolDownSeconds) / SECONDS_PER_MINUTE;
  const onBelt = item.harness ? minutes.light + minutes.moderate + minutes.vigorous : 0;
  const stepsAMinute = exercise.pattern === 'running' ? STEPS_A_MINUTE.running : STEPS_A_MINUTE.walking;
  return { ...nothing(exercise), minutes, loadedMinutes: onBelt, steps: onBelt * stepsAMinute };
};

const drillDose = ({ sets }: CardDrill, exercise: Exercise): ItemDose => ({
  ...nothing(exercise),
  sets: sets.length / sidesOf(sets),
});

/** A part of an item, where only a part of it was done. */
export const partOf = (dose: ItemDose, part: number): ItemDose => ({
  ...dose,
  sets: dose.sets * part,
  heavySets: dose.heavySets * part,
  volume: dose.volume && { ...dose.volume, kilograms: dose.volume.kilograms * part },
  minutes: {
    light: dose.minutes.light * part,
    moderate: dose.minutes.moderate * part,
    vigorous: dose.minutes.vigorous * part,
  },
  loadedMinutes: dose.loadedMinutes * part,
  steps: dose.steps * part,
});
