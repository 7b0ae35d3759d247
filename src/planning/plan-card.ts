import { flightDay, type Day } from '#units/day.ts';
import type { Card, CardItem, CardMinutes } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import { isDeloadWeek, placeInProgramme, type ProgrammeItem, type ProgrammeSession } from '#domain/programme.ts';
import { adjustmentsOn } from './adjustments.ts';
import { itemAsWritten } from './as-written.ts';
import { chooseWithin } from './leave-out.ts';
import { leaveOutOrder, sessionMinutes, totalOf } from './minutes.ts';
import { isInFlight, machineOn } from './machine-on.ts';
import { isMachineOut, programmeOn, type PlanContext } from './plan-context.ts';
import { planItem, type PlannedItem } from './plan-item.ts';
import type { Progress } from './progress.ts';
import { insteadHere } from './substitute-here.ts';

export interface PlannedCard {
  readonly card: Card;
  /** What must be entered or signed before it can be issued. */
  readonly gaps: readonly string[];
}

interface Placed {
  readonly item: ProgrammeItem;
  readonly exercise: Exercise;
  readonly machine: Machine | null;
  readonly planned: PlannedItem;
}

/** The session of a day in absolute terms, or null where the programme has none. */
export const planCard = (context: PlanContext, progress: Progress, on: Day): PlannedCard | null => {
  const found = sessionOn(context, on);
  if (!found) return null;
  const placed = found.session.items
    .map((item) => place(context, progress, on, found, item))
    .filter((each) => each !== null);
  const [first] = placed.flatMap(({ machine }) => machine ?? []);
  return placed.length > 0 ? cardOf(context, on, found, first ?? null, placed) : null;
};

type Found = NonNullable<ReturnType<typeof sessionOn>>;

const sessionOn = (context: PlanContext, on: Day) => {
  const { mission, house } = context.known;
  const programme = programmeOn(context, on);
  if (!mission || !programme) return null;
  if (isInFlight(context.known, on) && flightDay(mission.launch, on) < house.policies.firstResistiveFlightDay)
    return null;
  const at = placeInProgramme(programme, mission, on);
  const session = at?.phase.sessions.find((each) => each.weekday === at.weekday);
  if (!at || !session) return null;
  return { programme, ...at, session, deload: isDeloadWeek(at.phase, at.week) ? at.phase.deload : null };
};

/** An exercise on a machine that it is not made for would be loaded by the wrong share. What an old log does not say stands. */
const isMadeFor = ({ machineKinds }: Exercise, kind: ProgrammeItem['machineKind']): boolean =>
  machineKinds.length === 0 || machineKinds.includes(kind);

const place = (context: PlanContext, progress: Progress, on: Day, found: Found, item: ProgrammeItem): Placed | null => {
  const exercise = context.known.house.exercises.get(item.exercise);
  if (!exercise) return null;
  const machine = machineOn(context.known, item.machineKind, on);
  if (!isMadeFor(exercise, item.machineKind)) {
    const says = `left out: ${exercise.name.toLowerCase()} is not done on a ${item.machineKind}; the programme is to be changed`;
    return { item, exercise, machine, planned: { kind: 'left out', says, gap: true } };
  }
  if (!machine) {
    const says = `left out: there is no ${item.machineKind} here${insteadHere(context, exercise, on)}`;
    return { item, exercise, machine, planned: { kind: 'left out', says, gap: false } };
  }
  const adjustments = adjustmentsOn(context, on).filter((each) => each.track === item.track);
  const line = adjustments.flatMap(({ change }) => (change.kind === 'as written' ? [change.line] : [])).at(-1) ?? null;
  const asWritten = line === null ? null : itemAsWritten(item, { exercise, machine }, line);
  if (asWritten?.kind === 'refused')
    return { item, exercise, machine, planned: { kind: 'left out', says: asWritten.says.join(' '), gap: true } };
  const planned = planItem(context, progress, {
    day: on,
    item: asWritten?.item ?? item,
    exercise,
    machine,
    // What somebody wrote for a day is what they mean for it, in an easier week too.
    deload: line === null ? found.deload : null,
    adjustments,
    asWritten: line,
  });
  return { item, exercise, machine, planned };
};

const cardOf = (
  context: PlanContext,
  on: Day,
  found: Found,
  /** Null where nothing of the session can be done: then what to do instead is all that the card says. */
  machine: Machine | null,
  placed: readonly Placed[],
): PlannedCard => {
  const { known } = context;
  const exerciseOf = (item: CardItem): Exercise =>
    placed.find((each) => each.item.id === item.item)?.exercise as Exercise;
  const items = placed.flatMap(({ planned }) => (planned.kind === 'item' ? [planned.item] : []));
  const timeOf = (some: readonly CardItem[]): readonly CardMinutes[] =>
    machine ? sessionMinutes(some, machine, exerciseOf) : [];
  const minutesOf = (some: readonly CardItem[]): number => totalOf(timeOf(some));
  const { kept, left } = chooseWithin(items, found.session.blockMinutes, minutesOf);
  const numbered = kept.map((item, index) => ({ ...item, place: index + 1 }));
  const refused = placed.flatMap(({ planned, item, exercise }) =>
    planned.kind === 'left out' ? [{ item: item.id, exerciseName: exercise.name, says: planned.says }] : [],
  );
  const tooLong = left.map((item) => ({
    item: item.item,
    exerciseName: item.exerciseName,
    says: noTime(found.session.blockMinutes, minutesOf(items.filter((each) => each === item || kept.includes(each)))),
  }));
  const gaps = placed.flatMap(({ planned, exercise }) =>
    planned.kind === 'left out' && planned.gap ? [`${exercise.name}: ${planned.says}`] : [],
  );
  return {
    gaps: [...gaps, ...dayGaps(context, machine, on, numbered)],
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
      shortOfTime: shortOfTime(numbered),
      machineDown: machineDown(found.session),
      breathing: known.breathing,
    },
  };
};

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

const machineDown = (session: ProgrammeSession): string =>
  `no resistive work today: note it, use the time on the cycle or treadmill as usual, do not make up this ${session.title.toLowerCase()} by doubling the next.`;

const dayGaps = (
  context: PlanContext,
  machine: Machine | null,
  on: Day,
  items: readonly CardItem[],
): readonly string[] => [
  ...(machine && isMachineOut(machine, on)
    ? [`${machine.name} is out of service: ${machine.outOfService?.reason ?? ''}`]
    : []),
  ...(items.length === 0 ? ['Nothing is left of this session.'] : []),
  ...(context.known.assignment?.team === 'another team' ? ['This person is looked after by another team.'] : []),
];
