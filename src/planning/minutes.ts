import type { CardBouts, CardDrill, CardItem, CardLift, CardMinutes } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { DrillWork } from '#domain/programme.ts';

const SECONDS_PER_MINUTE = 60;

/** What an item is done with. */
export interface Means {
  readonly exercise: Exercise;
  readonly machine: Machine | null;
}

/**
 * True minutes of a session: set-up and stow of every machine once, every set and bout with its rest, load changes, changes
 * of exercise.
 */
export const sessionMinutes = (
  items: readonly CardItem[],
  meansOf: (item: CardItem) => Means,
): readonly CardMinutes[] => {
  const machines = [...new Set(items.flatMap((item) => meansOf(item).machine ?? []))];
  const label = (what: string, { name }: Machine): string =>
    machines.length === 1 ? what : `${what}, ${name.toLowerCase()}`;
  const before = new Set<Machine>();
  const parts = items.flatMap((item): readonly CardMinutes[] => {
    const { exercise, machine } = meansOf(item);
    const isFirst = machine !== null && !before.has(machine);
    if (machine) before.add(machine);
    const change = machine && !isFirst ? machine.minutes.changeExercise : 0;
    const own = itemMinutes(item, exercise, machine) + change;
    return [
      ...(machine && isFirst
        ? [{ label: label('set up', machine), minutes: machine.minutes.setUp, overhead: true }]
        : []),
      { label: item.exerciseName.toLowerCase(), minutes: own, overhead: false },
    ];
  });
  return [
    ...parts,
    ...machines.map((machine) => ({ label: label('stow', machine), minutes: machine.minutes.stow, overhead: true })),
  ];
};

const itemMinutes = (item: CardItem, exercise: Exercise, machine: Machine | null): number => {
  switch (item.kind) {
    case 'lift':
      return liftMinutes(item, exercise, machine);
    case 'bouts':
      return boutsMinutes(item);
    case 'drill':
      return drillMinutes(item, exercise);
  }
};

const liftMinutes = ({ sets }: CardLift, exercise: Exercise, machine: Machine | null): number => {
  const seconds = sets.reduce((sum, set) => sum + set.repetitions * exercise.secondsPerRepetition + set.rest, 0);
  const changes = sets.filter(
    (set, place) => place === 0 || set.load.increments !== sets[place - 1]?.load.increments,
  ).length;
  return seconds / SECONDS_PER_MINUTE + changes * (machine?.minutes.changeLoad ?? 0);
};

/** After the last bout comes the cooling down, not the easy time between bouts. */
const boutsMinutes = ({ bouts, warmUpSeconds, coolDownSeconds }: CardBouts): number => {
  const work = bouts.reduce((sum, { seconds, easy }) => sum + seconds + easy, 0) - (bouts.at(-1)?.easy ?? 0);
  return (warmUpSeconds + work + coolDownSeconds) / SECONDS_PER_MINUTE;
};

const drillMinutes = ({ sets }: CardDrill, exercise: Exercise): number =>
  sets.reduce((sum, { work, rest }) => sum + secondsOf(work, exercise) + rest, 0) / SECONDS_PER_MINUTE;

const secondsOf = (work: DrillWork, { secondsPerRepetition }: Exercise): number => {
  switch (work.kind) {
    case 'repetitions':
      return work.count * secondsPerRepetition;
    case 'hold':
      return work.seconds;
    case 'pulses':
      return work.count * (work.on + work.off);
  }
};

export const totalOf = (minutes: readonly CardMinutes[]): number =>
  minutes.reduce((sum, part) => sum + part.minutes, 0);

/** Least important first. */
export const leaveOutOrder = (items: readonly CardItem[]): readonly CardItem[] =>
  items
    .map((item, place) => ({ item, place }))
    .toSorted((a, b) => b.item.priority - a.item.priority || b.place - a.place)
    .map(({ item }) => item);
