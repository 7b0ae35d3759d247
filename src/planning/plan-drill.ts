import { fraction, newtons } from '#units/quantity.ts';
import type { Day } from '#units/day.ts';
import { kilogramsOf } from '#units/entered.ts';
import { STANDARD_GRAVITY } from '#units/gravity.ts';
import { stepsNearest, stepsNotOver } from '#units/rounding.ts';
import { handOn, type HandTest } from '#assessing/hands.ts';
import type { CardDrill, CardDrillSet } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { Side } from '#domain/effort.ts';
import { settingsFor } from '#domain/known.ts';
import type { Deload, DrillItem, HandTarget } from '#domain/programme.ts';
import { loadsLifts } from '#domain/programme-line/new-item.ts';
import type { Origin } from '#domain/working.ts';
import type { StandingAdjustment } from './adjustments.ts';
import { easierDrill } from './easier-pieces.ts';
import { capped, effortCap, loadSays, restrictedSays } from './effort-cap.ts';
import { fillReckoning, rowOf, valueOf, type FilledReckoning } from './filled-reckoning.ts';
import { FORCE_OF_HAND } from './hand-reckoning.ts';
import { isHandWork } from './hand-work.ts';
import { isInFlight } from './machine-on.ts';
import { settingRaise } from './piece-raise.ts';
import { restrictionsOn, type PlanContext } from './plan-context.ts';
import type { PlannedItem } from './plan-item.ts';
import { pieceState, type PieceState, type Progress } from './progress.ts';
import { isBehindGates, isUnderBar, leftOutBehind, mayCarryBar, nextGate } from './squat-gates.ts';
import { isBackedOff, whyPieceHeld } from './why-piece-held.ts';

export interface DrillAt {
  readonly day: Day;
  readonly item: DrillItem;
  readonly exercise: Exercise;
  /** Null where it needs none of the catalogue's machines. */
  readonly machine: Machine | null;
  /** What an easier week takes off. */
  readonly deload: Deload | null;
  readonly adjustments: readonly StandingAdjustment[];
  readonly asWritten: string | null;
  readonly programme: Extract<Origin, { readonly kind: 'programme' }>;
}

/** A drill in absolute terms for one person on one day. */
export const planDrill = (context: PlanContext, progress: Progress, at: DrillAt): PlannedItem => {
  const { exercise, day, adjustments } = at;
  if (restrictionsOn(context, exercise, day).some(({ restriction: { limit } }) => limit.kind === 'forbidden'))
    return { kind: 'left out', says: 'left out: limited by the physician', gap: false };
  const item = at.deload ? easierDrill(at.item, at.deload) : at.item;
  const forces = forcesOf(context, at, item.target, holdsOn(progress, at));
  if (isPartOfUnknown(context, at, forces))
    return {
      kind: 'left out',
      says: 'left out: limited by the physician to a part of capacity, and no load stands on the card to take it from',
      gap: false,
    };
  if (adjustments.some(({ change }) => change.kind === 'leave out'))
    return { kind: 'left out', says: 'left out: by agreement', gap: false };
  if (isBehindGate(context, at))
    return { kind: 'left out', says: leftOutBehind(nextGate(context.known, day)), gap: false };
  return { kind: 'item', item: cardDrill(context, progress, { ...at, item }, forces) };
};

const holdsOn = (progress: Progress, { item, exercise, adjustments }: DrillAt): Holds => ({
  state: pieceState(progress, item.track, null),
  held: whyPieceHeld(progress, exercise.id, adjustments),
});

/** Does whoever is there choose how hard: a load, or a force that nobody set or could tell? */
const isByFeel = ({ item: { machineKind, target }, exercise }: DrillAt, { left, right }: Forces): boolean =>
  loadsLifts(machineKind) || ((target !== null || isHandWork(exercise)) && !(left && right));

const loadsSaid = (context: PlanContext, at: DrillAt, forces: Forces): readonly string[] =>
  isByFeel(at, forces)
    ? restrictionsOn(context, at.exercise, at.day).flatMap(({ restriction: { limit } }) =>
        limit.kind === 'load at most' ? [loadSays(limit)] : [],
      )
    : [];

/** A part of a capacity is nothing that whoever is there could hold a load against. */
const isPartOfUnknown = (context: PlanContext, at: DrillAt, forces: Forces): boolean =>
  isByFeel(at, forces) &&
  restrictionsOn(context, at.exercise, at.day).some(({ restriction: { limit } }) => limit.kind === 'fraction at most');

/** Nobody who has not passed the gate before the bar takes one for sets that nobody loads, either. */
const isBehindGate = ({ known }: PlanContext, { item, exercise, day }: DrillAt): boolean =>
  isUnderBar(item.machineKind) &&
  isBehindGates(known, exercise, { gravity: isInFlight(known, day) ? '0 g' : '1 g' }, day) &&
  !mayCarryBar(known, day);

const SIDES = ['left', 'right'] as const satisfies readonly Side[];
/** Nobody reads a dynamometer finer [N]. */
export const FORCE_STEP = 5;

const cardDrill = (context: PlanContext, progress: Progress, at: DrillAt, forces: Forces): CardDrill => {
  const { exercise, machine, day, item } = at;
  const { state, held } = holdsOn(progress, at);
  const sides: readonly (Side | null)[] = exercise.perSide ? SIDES : [null];
  const { says, reckoned } = forces;
  const reckonings = reckoned.map(({ filled }) => filled);
  return {
    kind: 'drill',
    item: item.id,
    track: item.track,
    place: 0,
    exercise: exercise.id,
    exerciseName: exercise.name,
    priority: item.priority,
    asWritten: at.asWritten,
    settings: machine ? settingsFor(context.known, machine.id, exercise.id) : [],
    last: state.last,
    cues: [...exercise.cues, ...exercise.cautions],
    shouldFeel: capped(item.shouldFeel, effortCap(context, exercise, day)),
    says: [...new Set([...restrictedSays(context, exercise, day), ...loadsSaid(context, at, forces), ...says])],
    means: machine?.name ?? item.machineKind,
    sets: item.sets.flatMap(({ work, rest }) =>
      sides.map((side): CardDrillSet => ({ work, side, rest, force: side && forces[side] })),
    ),
    raises: SIDES.flatMap((side) =>
      settingRaise(
        context,
        {
          day,
          track: item.track,
          exercise,
          state,
          asWritten: at.asWritten !== null,
          held: at.asWritten === null ? null : held,
          reckonings,
        },
        { unit: 'N', step: String(FORCE_STEP), from: state.inUse[side], to: forces[side], side },
      ),
    ),
    row: rowOfDrill(context, reckoned),
  };
};

/** What was reckoned for one hand. */
interface OfHand {
  readonly side: Side;
  readonly filled: FilledReckoning;
}

const rowOfDrill = ({ pieces }: PlanContext, reckoned: readonly OfHand[]): number | null => {
  if (reckoned.length === 0) return null;
  pieces.push(reckoned.map(({ side, filled }) => rowOf(filled, side)));
  return pieces.length - 1;
};

interface Forces {
  readonly left: number | null;
  readonly right: number | null;
  readonly reckoned: readonly OfHand[];
  readonly says: readonly string[];
}

interface Holds {
  readonly state: PieceState;
  readonly held: string | null;
}

/** What each hand holds, of its own test; by feel where a physician limits effort, or nobody tested it. */
const forcesOf = (context: PlanContext, at: DrillAt, target: HandTarget | null, holds: Holds): Forces => {
  const none: Forces = { left: null, right: null, reckoned: [], says: [] };
  if (target === null || !at.exercise.perSide || effortCap(context, at.exercise, at.day) !== null) return none;
  const [left, right] = SIDES.map((side) => forceOf(context, at, target, side, holds));
  return {
    left: left?.force ?? null,
    right: right?.force ?? null,
    reckoned: [...(left?.reckoned ?? []), ...(right?.reckoned ?? [])],
    says: [...(left?.says ?? []), ...(right?.says ?? [])],
  };
};

interface Force {
  readonly force: number | null;
  readonly reckoned: readonly OfHand[];
  readonly says: readonly string[];
}

const forceOf = (context: PlanContext, at: DrillAt, target: HandTarget, side: Side, holds: Holds): Force => {
  const { kind, of } = target;
  const what: HandTest = kind === 'of critical force' ? 'critical force' : 'greatest grip';
  const test = handOn(context.known, what, side, at.day);
  if (!test) return { force: null, reckoned: [], says: [`No ${what} of the ${side} hand is known: by feel.`] };
  const from: Origin = { ...at.programme, says: `${at.programme.says}: ${Number((of * 100).toFixed(1))} % of ${what}` };
  const filled = fillReckoning(FORCE_OF_HAND, {
    target: [fraction(of), from],
    'tested force': [newtons(test.value), test.from],
  });
  if (filled.kind === 'refused') return { force: null, reckoned: [], says: filled.reasons };
  const asked = stepsNearest(valueOf(filled, 'force'), FORCE_STEP) * FORCE_STEP;
  const limits = limitsOn(context, at, side, holds);
  const most = limits.reduce<ForceLimit | null>(
    (least, each) => (least && least.newtons <= each.newtons ? least : each),
    null,
  );
  const isHeld = most !== null && asked > most.newtons;
  return {
    force: isHeld ? stepsNotOver(most.newtons, FORCE_STEP) * FORCE_STEP : asked,
    reckoned: [{ side, filled }],
    says: isHeld && most.says !== null ? [most.says] : [],
  };
};

interface ForceLimit {
  readonly newtons: number;
  readonly says: string | null;
}

/** A hand holds no more than it ever did; a physician, a hold or a back-off may allow less. */
const limitsOn = (context: PlanContext, at: DrillAt, side: Side, { state, held }: Holds): readonly ForceLimit[] => {
  const { known } = context;
  const greatest = handOn(known, 'greatest grip', side, at.day);
  const now = state.inUse[side];
  const backedOff = isBackedOff(context, state) ? (state.backedOff?.most[side] ?? null) : null;
  const isOwn = at.asWritten === null;
  return [
    ...(greatest ? [{ newtons: greatest.value, says: null }] : []),
    ...physicianLimits(context, at, side),
    ...(isOwn && held !== null && now !== null ? [{ newtons: now, says: `held by ${held}` }] : []),
    ...(isOwn && at.deload !== null && now !== null ? [{ newtons: now, says: null }] : []),
    ...(isOwn && backedOff !== null
      ? [{ newtons: backedOff, says: 'held by the back-off: coming back is a raise' }]
      : []),
  ];
};

const PHYSICIAN = 'limited by the physician';

/** A load is a force under standard gravity; a part of capacity is one of the last grip before launch. */
const physicianLimits = (context: PlanContext, { exercise, day }: DrillAt, side: Side): readonly ForceLimit[] =>
  restrictionsOn(context, exercise, day).flatMap(({ restriction: { limit } }) => {
    if (limit.kind === 'load at most')
      return [{ newtons: kilogramsOf(limit.load) * STANDARD_GRAVITY, says: PHYSICIAN }];
    if (limit.kind !== 'fraction at most') return [];
    const launch = context.known.mission?.launch ?? day;
    const before = handOn(context.known, 'greatest grip', side, launch < day ? launch : day);
    return [{ newtons: before ? limit.of * before.value : 0, says: PHYSICIAN }];
  });
