import type { Day } from '#units/day.ts';
import { showCount } from '#domain/asked-sets.ts';
import { isCardLift, type Card, type CardItem, type CardMinutes } from '#domain/card.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { ProgrammeSession } from '#domain/programme.ts';
import { adjustmentsOn } from './adjustments.ts';
import { chooseWithin, type Choice } from './leave-out.ts';
import { leaveOutOrder, sessionMinutes, totalOf } from './minutes.ts';
import { placeItem, type Placed } from './place-item.ts';
import { isMachineOut, type PlanContext } from './plan-context.ts';
import type { Progress } from './progress.ts';
import { painGaps, sessionReMade } from './re-made.ts';
import { sessionOn, type FoundSession } from './session-on.ts';
import { inTurn, together } from './supersets.ts';
import { roomOn } from './time/day-room.ts';

export interface PlannedCard {
  readonly card: Card;
  /** What must be entered or signed before it can be issued. */
  readonly gaps: readonly string[];
}

/** The session of a day in absolute terms, or null where the programme has none. */
export const planCard = (context: PlanContext, progress: Progress, on: Day): PlannedCard | null => {
  const found = foundOn(context, on);
  return found && planSession(context, progress, on, found);
};

/** The session that the programme means for a day, or that somebody made of it for what is there. */
export const foundOn = (context: PlanContext, on: Day): FoundSession | null =>
  sessionReMade(context, sessionOn(context, on), on);

export const planSession = (
  context: PlanContext,
  progress: Progress,
  on: Day,
  found: FoundSession,
): PlannedCard | null => {
  const placed = found.session.items
    .map((item) => placeItem(context, progress, on, found, item))
    .filter((each) => each !== null);
  const isOver = placed.every(({ planned }) => planned.kind === 'left out' && planned.early === true);
  return isOver ? null : cardOf(context, on, found, placed);
};

const cardOf = (context: PlanContext, on: Day, found: FoundSession, placed: readonly Placed[]): PlannedCard => {
  const { known } = context;
  const placeOf = placeFinder(placed);
  const items = placed.flatMap(({ planned }) => (planned.kind === 'item' ? [planned.item] : []));
  const timeOf = (some: readonly CardItem[]): readonly CardMinutes[] => sessionMinutes(some, placeOf);
  const minutesOf = (some: readonly CardItem[]): number => totalOf(timeOf(some));
  const locked = lockedOn(context, on);
  const { kept, left } = choiceWithin(found.session.blockMinutes, minutesOnDay(context, on), {
    items,
    locked,
    minutesOf,
  });
  const numbered = inTurn(together(kept).map((item, index) => ({ ...item, place: index + 1 })));
  const refused = placed.flatMap(({ planned, item, exercise }) =>
    planned.kind === 'left out' ? [{ item: item.id, exerciseName: exercise.name, says: planned.says }] : [],
  );
  const tooLong = left.map((item) => ({
    item: item.item,
    exerciseName: item.exerciseName,
    says: `${noTime(found.session.blockMinutes, minutesOf(items.filter((each) => each === item || kept.includes(each))))}; it costs ${costOf(item)}`,
  }));
  const gaps = placed.flatMap(({ planned, exercise }) =>
    planned.kind === 'left out' && planned.gap ? [`${exercise.name}: ${planned.says}`] : [],
  );
  return {
    gaps: [...painGaps(context, on), ...gaps, ...dayGaps(context, placed, on, numbered)],
    card: {
      person: known.person,
      day: on,
      missionDay: known.mission ? showMissionDay(known.mission, on) : '',
      phase: found.phase.name,
      week: found.week,
      session: found.session.id,
      title: found.session.title,
      deload: found.deload !== null,
      programme: { id: found.programme.id, name: found.programme.name, number: found.programme.number },
      items: numbered,
      leftOut: [...refused, ...tooLong],
      minutes: timeOf(numbered),
      blockMinutes: found.session.blockMinutes,
      shortOfTime: shortOfTime(numbered.filter(({ track }) => !locked.has(track))),
      machineDown: machineDown(found.session, numbered),
      breathing: known.breathing,
    },
  };
};

/** Of items with one name the first counts. */
const placeFinder = (placed: readonly Placed[]): ((item: CardItem) => Placed) => {
  const byItem = new Map(placed.toReversed().map((each) => [each.item.id, each] as const));
  return ({ item }) => byItem.get(item) as Placed;
};

interface Choosing {
  readonly items: readonly CardItem[];
  readonly locked: ReadonlySet<CardItem['track']>;
  readonly minutesOf: (some: readonly CardItem[]) => number;
}

/** Tracks that are kept whatever the time, by signature. */
const lockedOn = (context: PlanContext, on: Day): ReadonlySet<CardItem['track']> =>
  new Set(adjustmentsOn(context, on).flatMap(({ change, track }) => (change.kind === 'keep' ? [track] : [])));

/** What leaving an item out costs: "4 sets of back squat", "30 minutes of running". */
const costOf = (item: CardItem): string => {
  const name = item.exerciseName.toLowerCase();
  if (item.kind === 'bouts') {
    const seconds = item.bouts.reduce((sum, bout) => sum + bout.seconds, 0);
    return `${Math.round(seconds / SECONDS_PER_MINUTE)} minutes of ${name}`;
  }
  const sets =
    item.kind === 'lift' ? showCount(item.sets.filter(({ kind }) => kind === 'work')) : `${item.sets.length}`;
  return `${sets} ${sets === '1' ? 'set' : 'sets'} of ${name}`;
};

const SECONDS_PER_MINUTE = 60;

/** A block keeps its most important item even where it is too short for it; a day that has no more time keeps none. */
const choiceWithin = (
  block: number,
  ofDay: number | null,
  { items, locked, minutesOf }: Choosing,
): Choice<CardItem> => {
  // What is locked comes before every priority of the programme.
  const claims = items.map((item) => ({ item, priority: locked.has(item.track) ? 0 : item.priority }));
  const chosen = chooseWithin(claims, block, (some) => minutesOf(some.map(({ item }) => item)));
  const choice = { kept: chosen.kept.map(({ item }) => item), left: chosen.left.map(({ item }) => item) };
  return ofDay === null || minutesOf(choice.kept) <= ofDay + ROUNDING ? choice : { kept: [], left: items };
};

/** Minutes are sums of binary fractions. */
const ROUNDING = 1e-9;

/** Who makes a session anew on its day says what time there is. */
const minutesOnDay = (context: PlanContext, on: Day): number | null =>
  context.reMade.get(on)?.minutes ?? roomOn(context, on).minutes;

/** "left out: the block has 90 minutes, with it the session takes 97". */
const noTime = (block: number, needed: number): string =>
  `left out: the block has ${block} minutes, with it the session takes ${Math.ceil(needed)}`;

/** The two least important items may go when time is short; the first item never does. */
const MAY_GO = 2;

const shortOfTime = (items: readonly CardItem[]): readonly number[] =>
  leaveOutOrder(items)
    .map((item) => item.place)
    .filter((place) => place > 1)
    .slice(0, MAY_GO);

const machineDown = ({ title }: ProgrammeSession, items: readonly CardItem[]): string =>
  items.some(isCardLift)
    ? `no resistive work today: note it, use the time on the cycle or treadmill as usual, do not make up this ${title.toLowerCase()} by doubling the next.`
    : 'treadmill, cycle and rower stand in for one another by heart rate and effort; note what you did.';

const dayGaps = (
  context: PlanContext,
  placed: readonly Placed[],
  on: Day,
  items: readonly CardItem[],
): readonly string[] => [
  ...machinesOut(placed, items, on),
  ...(items.length === 0 ? ['Nothing is left of this session.'] : []),
  ...(context.known.assignment?.team === 'another team' ? ['This person is looked after by another team.'] : []),
];

/** Machines of the session that are out of service. */
const machinesOut = (placed: readonly Placed[], items: readonly CardItem[], on: Day): readonly string[] => {
  const used = new Set(items.map(({ item }) => item));
  const out = placed.flatMap(({ item, machine }) =>
    machine && used.has(item.id) && isMachineOut(machine, on) ? [machine] : [],
  );
  return [...new Set(out)].map(({ name, outOfService }) => `${name} is out of service: ${outOfService?.reason ?? ''}`);
};
