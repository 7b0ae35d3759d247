import type { Day } from '#units/day.ts';
import { totalMinutes, workIncrements, type Card, type CardItem, type CardLift } from '#domain/card.ts';
import type { ItemId } from '#domain/identity.ts';
import type { RoadCard } from '#domain/road.ts';

/** A card that is planned, not issued. */
export type PlannedRoadCard = Exclude<RoadCard, { readonly state: 'issued' }>;

export interface LineChange {
  readonly item: ItemId;
  readonly exerciseName: string;
  readonly was: CardItem | null;
  readonly is: CardItem | null;
  /** Of the heaviest set, the hardest bout or the hand's force, where both are on the same machine. */
  readonly load: 'raised' | 'lowered' | 'as it was' | 'not to be compared';
  /** Why it is on the card no more, where the card says so: time, a machine, a limit. */
  readonly leftOut: string | null;
}

/** What another version makes of one session of one person. */
export interface SessionChange {
  readonly day: Day;
  readonly kind: 'changed' | 'new' | 'gone';
  readonly was: PlannedRoadCard | null;
  readonly is: PlannedRoadCard | null;
  readonly lines: readonly LineChange[];
  /** The same items in another order. */
  readonly reordered: boolean;
  readonly minutes: { readonly was: number; readonly is: number };
  readonly newGaps: readonly string[];
  readonly goneGaps: readonly string[];
}

/** Sessions that differ, day by day; of two on one day those of one identity are held together, others in their order. */
export const compareSessions = (
  was: readonly PlannedRoadCard[],
  is: readonly PlannedRoadCard[],
): readonly SessionChange[] => {
  const days = [...new Set([...was, ...is].map(({ day }) => day))].toSorted((a, b) => a - b);
  return days.flatMap((day) => {
    const ofDay = (cards: readonly PlannedRoadCard[]) => cards.filter((card) => card.day === day);
    return pairsOf(ofDay(was), ofDay(is)).flatMap(([old, next]) => changeOf(day, old, next) ?? []);
  });
};

type Pair = readonly [PlannedRoadCard | null, PlannedRoadCard | null];

const pairsOf = (before: readonly PlannedRoadCard[], after: readonly PlannedRoadCard[]): readonly Pair[] => {
  const isSame = (a: PlannedRoadCard) => (b: PlannedRoadCard) => a.card.session === b.card.session;
  const same = before.flatMap((old): readonly Pair[] => {
    const next = after.find(isSame(old));
    return next ? [[old, next]] : [];
  });
  const [oldLeft, newLeft] = [
    before.filter((old) => !after.some(isSame(old))),
    after.filter((next) => !before.some(isSame(next))),
  ];
  const rest = Array.from({ length: Math.max(oldLeft.length, newLeft.length) }, (_, place): Pair => [
    oldLeft[place] ?? null,
    newLeft[place] ?? null,
  ]);
  return [...same, ...rest];
};

const changeOf = (day: Day, was: PlannedRoadCard | null, is: PlannedRoadCard | null): SessionChange | null => {
  const lines = lineChanges(was?.card ?? null, is?.card ?? null);
  const reordered = lines.length === 0 && orderOf(was) !== orderOf(is);
  const newGaps = (is?.gaps ?? []).filter((says) => !was?.gaps.includes(says));
  const goneGaps = (was?.gaps ?? []).filter((says) => !is?.gaps.includes(says));
  const frame = was && is && (was.card.title !== is.card.title || was.card.blockMinutes !== is.card.blockMinutes);
  if (was && is && !frame && lines.length + newGaps.length + goneGaps.length === 0 && !reordered) return null;
  return {
    day,
    kind: was ? (is ? 'changed' : 'gone') : 'new',
    was,
    is,
    lines,
    reordered,
    minutes: { was: was ? totalMinutes(was.card) : 0, is: is ? totalMinutes(is.card) : 0 },
    newGaps,
    goneGaps,
  };
};

const orderOf = (card: PlannedRoadCard | null): string => (card?.card.items ?? []).map(({ item }) => item).join('|');

/** Items of one identity, else of one track, are the same line of the plan. */
const lineChanges = (was: Card | null, is: Card | null): readonly LineChange[] => {
  const before = was?.items ?? [];
  const after = is?.items ?? [];
  const counterpart = (item: CardItem, among: readonly CardItem[]): CardItem | null =>
    among.find((each) => each.item === item.item) ?? among.find((each) => each.track === item.track) ?? null;
  const gone = before.filter((item) => counterpart(item, after) === null);
  return [
    ...after.flatMap((item) => {
      const old = counterpart(item, before);
      return old && isSameAsked(old, item) ? [] : [lineChange(old, item, null)];
    }),
    ...gone.map((item) => lineChange(item, null, is?.leftOut.find((left) => left.item === item.item)?.says ?? null)),
  ];
};

const lineChange = (was: CardItem | null, is: CardItem | null, leftOut: string | null): LineChange => {
  const shown = (is ?? was) as CardItem;
  return { item: shown.item, exerciseName: shown.exerciseName, was, is, load: loadChange(was, is), leftOut };
};

/** Both are made by the same code, field by field in the same order: their texts tell. */
const isSameAsked = (a: CardItem, b: CardItem): boolean => JSON.stringify(askedOf(a)) === JSON.stringify(askedOf(b));

/** What a card asks of the person: what it is reckoned from, and where it stands on the card, is none of it. */
const askedOf = (item: CardItem): object => {
  const { exercise, shouldFeel } = item;
  switch (item.kind) {
    case 'lift': {
      const { machine, sets, tempo, superset, reserve } = item;
      return { exercise, shouldFeel, machine, sets, tempo, superset, reserve };
    }
    case 'bouts': {
      const { machine, warmUpSeconds, bouts, coolDownSeconds, harness } = item;
      return { exercise, shouldFeel, machine, warmUpSeconds, bouts, coolDownSeconds, harness };
    }
    case 'drill':
      return { exercise, shouldFeel, means: item.means, sets: item.sets };
  }
};

const loadChange = (was: CardItem | null, is: CardItem | null): LineChange['load'] => {
  const [before, after] = [was && hardest(was), is && hardest(is)];
  if (!before || !after || before.of !== after.of) return 'not to be compared';
  if (Math.abs(after.value - before.value) < SAME) return 'as it was';
  return after.value > before.value ? 'raised' : 'lowered';
};

/** Loads are whole increments, watts and speeds have few decimals. */
const SAME = 1e-6;

interface Hardest {
  readonly of: string;
  readonly value: number;
}

/** The one number by which two lines can be told heavier or lighter, with what it is a number of. */
const hardest = (item: CardItem): Hardest | null => {
  switch (item.kind) {
    case 'lift':
      return heaviest(item);
    case 'bouts':
      return (
        mostOf(
          `${item.machine} W`,
          item.bouts.map(({ watts }) => watts),
        ) ??
        mostOf(
          `${item.machine} km/h`,
          item.bouts.map(({ speed }) => speed),
        )
      );
    case 'drill':
      return mostOf(
        'N',
        item.sets.map(({ force }) => force),
      );
  }
};

/** A load to start at and a load to set are not the same promise. */
const heaviest = (item: CardLift): Hardest | null => {
  const value = workIncrements(item);
  const kind = item.sets.find((set) => set.kind === 'work')?.load.kind ?? '';
  return value === null ? null : { of: `${item.machine} ${kind}`, value };
};

const mostOf = (of: string, values: readonly (number | null)[]): Hardest | null => {
  const known = values.filter((value) => value !== null);
  return known.length > 0 ? { of, value: Math.max(...known) } : null;
};
