import { flightDay, type Day } from '#units/day.ts';
import type { Exercise, LooseKind, Machine, MachineKind } from '#domain/catalogue.ts';
import { LOOSE_KINDS } from '#domain/catalogue.ts';
import type { ItemCondition, LiftItem, ProgrammeItem } from '#domain/programme.ts';
import { adjustmentsOn, type StandingAdjustment } from './adjustments.ts';
import { itemAsWritten } from './as-written.ts';
import { isInFlight, machineOn } from './machine-on.ts';
import { planBouts } from './plan-bouts.ts';
import { isMachineOut, type PlanContext } from './plan-context.ts';
import { planDrill } from './plan-drill.ts';
import { planItem, type PlannedItem } from './plan-item.ts';
import type { Progress } from './progress.ts';
import { hurtingOn, hurtsTooMuch, isThere, showHurting } from './re-made.ts';
import type { FoundSession } from './session-on.ts';
import { isBehindBar } from './squat-gates.ts';
import { withSetsBy } from './sets-by.ts';
import { standInFor } from './stand-in.ts';
import { onLightDay, whyLight } from './time/light-day.ts';
import { leftOutForWalk } from './time/space-walks.ts';
import { insteadHere } from './substitute-here.ts';

/** An item of a session where a person trains on a day, planned or left out with a reason. */
export interface Placed {
  readonly item: ProgrammeItem;
  readonly exercise: Exercise;
  readonly machine: Machine | null;
  readonly planned: PlannedItem;
}

/** Null where the item is not for this person, or where its exercise is not known here. */
export const placeItem = (
  context: PlanContext,
  progress: Progress,
  on: Day,
  found: FoundSession,
  item: ProgrammeItem,
): Placed | null => {
  const exercise = context.known.house.exercises.get(item.exercise);
  if (!exercise || !isFor(context, item.condition, on)) return null;
  const means = meansOn(context, item.machineKind, on);
  const machine = means.kind === 'machine' ? means.machine : null;
  const out = (says: string, gap: boolean): Placed => ({
    item,
    exercise,
    machine,
    planned: { kind: 'left out', says, gap },
  });
  if (!isMadeFor(exercise, item.machineKind))
    return out(
      `left out: ${exercise.name.toLowerCase()} is not done on a ${item.machineKind}; the programme is to be changed`,
      true,
    );
  if (item.kind === 'lift' && isTooEarly(context, on))
    return { item, exercise, machine, planned: { kind: 'left out', says: tooEarly(context), gap: false, early: true } };
  const at = { on, found, item, exercise };
  const hurting = hurtingOn(context, exercise, on);
  if (hurting && hurtsTooMuch(context, exercise, on))
    return instead(context, progress, at, showHurting(hurting.hurting));
  if (means.kind === 'none') return instead(context, progress, at, means.says);
  return { item, exercise, machine, planned: planned(context, progress, { ...at, machine }) };
};

/** Another exercise, or the same on something else, where the machine is not there; else left out, with what could be done. */
const instead = (context: PlanContext, progress: Progress, at: Omit<At, 'machine'>, why: string): Placed => {
  const { on, found, item, exercise } = at;
  const isLeftOut = adjustmentsOn(context, on).some(
    ({ track, change }) => track === item.track && change.kind === 'leave out',
  );
  const standIn = isLeftOut ? null : standInFor(context, item, exercise, on);
  if (!standIn) {
    const says = isLeftOut ? 'left out: by agreement' : `left out: ${why}${insteadHere(context, exercise, on)}`;
    return { item, exercise, machine: null, planned: { kind: 'left out', says, gap: false } };
  }
  const { says, ...placed } = standIn;
  const plan = planned(context, progress, { on, found, ...placed, insteadOf: item.track });
  const shown = plan.kind === 'item' ? { ...plan, item: { ...plan.item, says: [says, ...plan.item.says] } } : plan;
  return { ...placed, planned: shown };
};

/** Whom an item is meant for. */
const isFor = ({ known }: PlanContext, condition: ItemCondition, on: Day): boolean => {
  switch (condition) {
    case 'everyone':
      return true;
    case 'space-walk crew':
      return known.assignment?.spaceWalks === true;
    case 'before the squat gates':
      return isBehindBar(known, on);
  }
};

/** An exercise on a machine that it is not made for would be loaded by the wrong share. What an old log does not say stands. */
const isMadeFor = ({ machineKinds }: Exercise, kind: ProgrammeItem['machineKind']): boolean =>
  machineKinds.length === 0 || machineKinds.includes(kind);

const isTooEarly = ({ known }: PlanContext, on: Day): boolean =>
  known.mission !== null &&
  isInFlight(known, on) &&
  flightDay(known.mission.launch, on) < known.house.policies.firstResistiveFlightDay;

const tooEarly = ({ known }: PlanContext): string =>
  `left out: nothing resistive before flight day ${known.house.policies.firstResistiveFlightDay}`;

type Means =
  | { readonly kind: 'machine'; readonly machine: Machine }
  | { readonly kind: 'loose' }
  | { readonly kind: 'none'; readonly says: string };

const isLoose = (kind: MachineKind | LooseKind): kind is LooseKind => LOOSE_KINDS.some((each) => each === kind);

/** Weightless, a body weighs nothing and nobody hangs from a bar; what fits a bag is everywhere. */
const meansOn = (context: PlanContext, kind: MachineKind | LooseKind, on: Day): Means => {
  const { known } = context;
  if (!isThere(context, kind, on)) return { kind: 'none', says: `there is no ${kind} here` };
  if (!isLoose(kind)) {
    const machine = machineOn(known, kind, on);
    if (!machine) return { kind: 'none', says: `there is no ${kind} here` };
    return isMachineOut(machine, on)
      ? { kind: 'none', says: `the ${kind} is out of service` }
      : { kind: 'machine', machine };
  }
  const needsWeight = kind === 'body weight' || kind === 'hanging bar';
  return needsWeight && isInFlight(known, on)
    ? { kind: 'none', says: `weightless, there is no ${kind}` }
    : { kind: 'loose' };
};

interface At {
  readonly on: Day;
  readonly found: FoundSession;
  readonly item: ProgrammeItem;
  readonly exercise: Exercise;
  readonly machine: Machine | null;
  /** The track that it stands in for: what holds that holds this too. */
  readonly insteadOf?: ProgrammeItem['track'];
}

const planned = (context: PlanContext, progress: Progress, at: At): PlannedItem => {
  const rests = leftOutForWalk(context, progress, at);
  return rests === null
    ? onLightDay(plannedOfItsKind(context, progress, at), at.item, whyLight(context, at.on))
    : { kind: 'left out', says: rests, gap: false };
};

const plannedOfItsKind = (context: PlanContext, progress: Progress, at: At): PlannedItem => {
  const { on, item, exercise, machine } = at;
  const adjustments = adjustmentsOn(context, on).filter(
    (each) => each.track === item.track || (each.track === at.insteadOf && each.change.kind === 'hold'),
  );
  const line = adjustments.flatMap(({ change }) => (change.kind === 'as written' ? [change.line] : [])).at(-1) ?? null;
  const written = line === null ? null : itemAsWritten(item, { exercise, machine }, line);
  if (written?.kind === 'refused') return { kind: 'left out', says: written.says.join(' '), gap: true };
  const meant = written?.item ?? withSetsBy(item, adjustments);
  const common = {
    day: on,
    exercise,
    adjustments,
    asWritten: line,
    // What somebody wrote for a day is what they mean for it, in an easier week too.
    deload: line === null ? at.found.deload : null,
    programme: programmeOf(at.found, item),
  };
  if (meant.kind === 'drill') return planDrill(context, progress, { ...common, item: meant, machine });
  if (!machine)
    return { kind: 'left out', says: `left out: ${exercise.name.toLowerCase()} needs a machine`, gap: true };
  if (meant.kind === 'bouts') return planBouts(context, progress, { ...common, item: meant, machine });
  return planLift(context, progress, { ...at, machine, item: meant, adjustments, line });
};

const programmeOf = ({ programme }: FoundSession, { id }: ProgrammeItem) => ({
  kind: 'programme' as const,
  programme: programme.id,
  item: id,
  says: `${programme.name}, version ${programme.number}`,
});

const planLift = (
  context: PlanContext,
  progress: Progress,
  {
    on,
    found,
    item,
    exercise,
    machine,
    adjustments,
    line,
  }: At & {
    readonly item: LiftItem;
    readonly machine: Machine;
    readonly adjustments: readonly StandingAdjustment[];
    readonly line: string | null;
  },
): PlannedItem =>
  planItem(context, progress, {
    day: on,
    item,
    exercise,
    machine,
    // What somebody wrote for a day is what they mean for it, in an easier week too.
    deload: line === null ? found.deload : null,
    adjustments,
    asWritten: line,
  });
