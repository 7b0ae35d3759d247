import { mostOf, secondsOfTempo } from '#domain/asked-sets.ts';
import type { CardBouts, CardDrill, CardItem, CardLift, CardMinutes, CardSet } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { DrillWork } from '#domain/programme.ts';
import { turnsOf } from './supersets.ts';

const SECONDS_PER_MINUTE = 60;

/** What an item is done with. */
export interface Means {
  readonly exercise: Exercise;
  readonly machine: Machine | null;
}

/**
 * True minutes of a session: set-up and stow of every machine once, every set and bout with its rest, load changes, changes
 * of exercise. Of a range the most; the rest of a superset once.
 */
export const sessionMinutes = (
  items: readonly CardItem[],
  meansOf: (item: CardItem) => Means,
): readonly CardMinutes[] => {
  const machines = [...new Set(items.flatMap((item) => meansOf(item).machine ?? []))];
  const label = (what: string, { name }: Machine): string =>
    machines.length === 1 ? what : `${what}, ${name.toLowerCase()}`;
  const before = new Set<Machine>();
  const own = minutesByItem(items, meansOf);
  const parts = items.flatMap((item): readonly CardMinutes[] => {
    const { machine } = meansOf(item);
    const isFirst = machine !== null && !before.has(machine);
    if (machine) before.add(machine);
    return [
      ...(machine && isFirst
        ? [{ label: label('set up', machine), minutes: machine.minutes.setUp, overhead: true }]
        : []),
      { label: item.exerciseName.toLowerCase(), minutes: own.get(item) ?? 0, overhead: false },
    ];
  });
  return [
    ...parts,
    ...machines.map((machine) => ({ label: label('stow', machine), minutes: machine.minutes.stow, overhead: true })),
  ];
};

/** What a machine was last used for, and under which load. */
interface Standing {
  readonly item: CardItem;
  readonly increments: number | null;
}

/** Turn by turn: who comes back to a machine that another exercise stands on changes it, and its load, each time. */
const minutesByItem = (
  items: readonly CardItem[],
  meansOf: (item: CardItem) => Means,
): ReadonlyMap<CardItem, number> => {
  const minutes = new Map<CardItem, number>();
  const standing = new Map<Machine, Standing>();
  for (const { item, sets } of turnsOf(items)) {
    const { exercise, machine } = meansOf(item);
    const before = machine ? standing.get(machine) : undefined;
    const own = before?.item === item ? before : null;
    const change = machine && before && !own ? machine.minutes.changeExercise : 0;
    const changes = machine ? loadChanges(sets, own?.increments ?? null) * machine.minutes.changeLoad : 0;
    minutes.set(item, (minutes.get(item) ?? 0) + turnMinutes(item, sets, exercise) + change + changes);
    if (machine) standing.set(machine, { item, increments: sets.at(-1)?.load.increments ?? null });
  }
  return minutes;
};

const loadChanges = (sets: readonly CardSet[], before: number | null): number =>
  sets.filter(({ load }, place) => load.increments !== (sets[place - 1]?.load.increments ?? before)).length;

const turnMinutes = (item: CardItem, sets: readonly CardSet[], exercise: Exercise): number => {
  switch (item.kind) {
    case 'lift':
      return sets.reduce((sum, set) => sum + secondsOfSet(set, item, exercise), 0) / SECONDS_PER_MINUTE;
    case 'bouts':
      return boutsMinutes(item);
    case 'drill':
      return drillMinutes(item, exercise);
  }
};

/** A set that goes on as it goes well is given so many repetitions more: of what people leave they tell five apart at most. */
const MORE_REPETITIONS = 5;

/** The most that a set may take; a set that may be left out has its time too. */
const secondsOfSet = (set: CardSet, { tempo }: CardLift, { secondsPerRepetition }: Exercise): number => {
  const most = mostOf(set) + (set.orMore ? MORE_REPETITIONS : 0);
  return most * (tempo ? secondsOfTempo(tempo) : secondsPerRepetition) + set.rest;
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
      return (work.most ?? work.count) * secondsPerRepetition;
    case 'hold':
      return work.most ?? work.seconds;
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
