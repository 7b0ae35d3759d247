import type { CardItem, CardMinutes } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';

const SECONDS_PER_MINUTE = 60;

/** True minutes of a session: set-up, every set with its rest, load changes, changes of exercise, stow. */
export const sessionMinutes = (
  items: readonly CardItem[],
  machine: Machine,
  exerciseOf: (item: CardItem) => Exercise,
): readonly CardMinutes[] => [
  { label: 'set up', minutes: machine.minutes.setUp, overhead: true },
  ...items.map((item, place) => ({
    label: item.exerciseName.toLowerCase(),
    minutes: itemMinutes(item, machine, exerciseOf(item)) + (place > 0 ? machine.minutes.changeExercise : 0),
    overhead: false,
  })),
  { label: 'stow', minutes: machine.minutes.stow, overhead: true },
];

const itemMinutes = (item: CardItem, machine: Machine, exercise: Exercise): number => {
  const seconds = item.sets.reduce((sum, set) => sum + set.repetitions * exercise.secondsPerRepetition + set.rest, 0);
  const changes = item.sets.filter(
    (set, place) => place === 0 || set.load.increments !== item.sets[place - 1]?.load.increments,
  ).length;
  return seconds / SECONDS_PER_MINUTE + changes * machine.minutes.changeLoad;
};

export const totalOf = (minutes: readonly CardMinutes[]): number =>
  minutes.reduce((sum, part) => sum + part.minutes, 0);

/** Least important first. */
export const leaveOutOrder = (items: readonly CardItem[]): readonly CardItem[] =>
  items
    .map((item, place) => ({ item, place }))
    .toSorted((a, b) => b.item.priority - a.item.priority || b.place - a.place)
    .map(({ item }) => item);
