import { flightDay, type Day } from '#units/day.ts';
import { stepsNotOver } from '#units/rounding.ts';
import type { Endurance, Found } from '#assessing/endurance.ts';
import type { CardBout, CardBouts } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import { bodyMassOn, settingsFor } from '#domain/known.ts';
import type { BoutsItem, Deload } from '#domain/programme.ts';
import type { FilledRow } from '#domain/working.ts';
import type { StandingAdjustment } from './adjustments.ts';
import { whyBoutsLeftOut } from './bouts-left-out.ts';
import type { BoutAt } from './bout-at.ts';
import { BELT_STEP, inTenths } from './bout-speed.ts';
import { WATT_STEP } from './bout-watts.ts';
import { daysSinceLanding, isFirstDayHome } from './days-home.ts';
import { easierBouts } from './easier-pieces.ts';
import { capped, effortCap, restrictedSays } from './effort-cap.ts';
import { rowOf, type FilledReckoning } from './filled-reckoning.ts';
import { harnessOn, type Harnessed } from './harness-load.ts';
import { isInFlight } from './machine-on.ts';
import { massInFlight, type PlanContext } from './plan-context.ts';
import type { PlannedItem } from './plan-item.ts';
import { settingRaise } from './piece-raise.ts';
import { harnessState, pieceState, type PieceState, type Progress } from './progress.ts';
import { setBouts } from './set-bouts.ts';
import { settingsOf } from './take-pieces.ts';
import { isBackedOff, whyPieceHeld } from './why-piece-held.ts';

export interface BoutsAt {
  readonly day: Day;
  readonly item: BoutsItem;
  readonly exercise: Exercise;
  readonly machine: Machine;
  /** What an easier week takes off. */
  readonly deload: Deload | null;
  readonly adjustments: readonly StandingAdjustment[];
  readonly asWritten: string | null;
  readonly programme: BoutAt['programme'];
}

/** Bouts of endurance in absolute terms for one person on one day. */
export const planBouts = (context: PlanContext, progress: Progress, at: BoutsAt): PlannedItem => {
  const why = whyBoutsLeftOut(context, at);
  if (why !== null) return why;
  const holds = holdsOn(context, progress, at);
  const needsHarness = at.machine.kind === 'treadmill' && at.machine.gravity === '0 g';
  const harness: Harnessed | null = needsHarness
    ? harnessOn(context, progress, { ...at, track: at.item.track, held: holds.harness })
    : null;
  return harness?.kind === 'left out' ? harness : cardBouts(context, progress, at, holds, harness);
};

interface Holds {
  readonly state: PieceState;
  /** Why nothing may go up; where somebody wrote the day, why they should give a reason. */
  readonly held: string | null;
  /** The same for what pulls: neither a line for a day nor an easier week takes a step. */
  readonly harness: string | null;
  readonly backedOff: number | null;
}

const holdsOn = (context: PlanContext, progress: Progress, at: BoutsAt): Holds => {
  const state = pieceState(progress, at.item.track, at.machine.id);
  const held = whyPieceHeld(progress, at.exercise.id, at.adjustments);
  const isOneDay = at.asWritten !== null ? 'a line that was written for this day' : null;
  return {
    state,
    held,
    harness: held ?? isOneDay ?? (at.deload ? 'the easier week' : null),
    backedOff: at.asWritten === null && isBackedOff(context, state) ? (state.backedOff?.by ?? null) : null,
  };
};

type WithHarness = Extract<Harnessed, { readonly kind: 'harness' }> | null;

const cardBouts = (
  context: PlanContext,
  progress: Progress,
  at: BoutsAt,
  holds: Holds,
  harness: WithHarness,
): PlannedItem => {
  const { exercise, machine, day } = at;
  const item = at.deload ? easierBouts(at.item, at.deload) : at.item;
  const { bouts: set, rows } = setBouts(context, item.bouts, boutAt(context, at, holds, harness));
  const held = heldBack(
    context,
    progress,
    at,
    holds,
    harness,
    set.map(({ value }) => value),
  );
  const card: CardBouts = {
    kind: 'bouts',
    item: item.id,
    track: item.track,
    place: 0,
    exercise: exercise.id,
    exerciseName: exercise.name,
    priority: item.priority,
    asWritten: at.asWritten,
    settings: settingsFor(context.known, machine.id, exercise.id),
    last: holds.state.last,
    cues: [...exercise.cues, ...exercise.cautions],
    shouldFeel: capped(item.shouldFeel, effortCap(context, exercise, day)),
    says: [
      ...new Set([
        ...restrictedSays(context, exercise, day),
        ...(harness?.says ?? []),
        ...set.flatMap(({ says }) => says),
        ...held.says,
        ...testSays(context, at, held.bouts),
      ]),
    ],
    machine: machine.id,
    machineName: machine.name,
    warmUpSeconds: item.warmUpSeconds,
    bouts: held.bouts,
    coolDownSeconds: item.coolDownSeconds,
    harness: harness?.pull ?? null,
    raises: [],
    row: rowOfItem(context, rows, harness),
  };
  const raises = raisesOfBouts(
    context,
    at,
    holds,
    harness,
    card,
    set.flatMap(({ reckonings }) => reckonings),
  );
  return { kind: 'item', item: { ...card, raises } };
};

const boutAt = (context: PlanContext, at: BoutsAt, holds: Holds, harness: WithHarness): BoutAt => {
  const { known } = context;
  const { exercise, machine, day, item } = at;
  const cap = effortCap(context, exercise, day);
  const person = context.endurance.on(day);
  const share = harness?.pull.share ?? null;
  return {
    day,
    flightDay: isInFlight(known, day) && known.mission ? flightDay(known.mission.launch, day) : null,
    exercise,
    machine,
    person,
    mass: massOn(context, day),
    harness: harness?.pull ?? null,
    isLoadRaised: share !== null && share > known.house.policies.harnessStart + SAME,
    backedOff: holds.backedOff,
    rpe: item.shouldFeel,
    byEffortOnly: cap !== null || isUntestedHome(context, day, person),
    effortCap: cap,
    programme: at.programme,
  };
};

/** Shares are sums of binary fractions. */
const SAME = 1e-9;

/** In the first days after landing heart rates of before say little: effort leads until something was tested at home. */
const isUntestedHome = (context: PlanContext, on: Day, { restingRate, cycleRate, runningRate }: Endurance): boolean => {
  const since = daysSinceLanding(context.known, on);
  if (since === null || !isFirstDayHome(context.known, on)) return false;
  return ![restingRate, cycleRate, runningRate].some((test) => test !== null && on - test.day <= since);
};

const massOn = (context: PlanContext, day: Day): Pick<Found, 'value' | 'from'> | null => {
  if (isInFlight(context.known, day)) {
    const mass = massInFlight(context, day);
    return mass && { value: mass.kilograms, from: { kind: 'fact', fact: mass.fact, says: mass.says } };
  }
  const mass = bodyMassOn(context.known, day);
  return mass && { value: mass.kilograms, from: { kind: 'fact', fact: mass.fact.id, says: 'last body mass' } };
};

const testSays = (
  { known, endurance }: PlanContext,
  { day }: BoutsAt,
  bouts: readonly CardBout[],
): readonly string[] => {
  if (!known.mission || day < known.mission.launch) return [];
  if (daysSinceLanding(known, day) !== null && isFirstDayHome(known, day) && bouts.every(isByEffort))
    return ['The first days home: effort leads, heart rates of before do not count yet.'];
  const uptake = endurance.on(day).maximalUptake;
  const isSet = bouts.some(({ watts, speed }) => watts !== null || speed !== null);
  return isSet && uptake && uptake.day < known.mission.launch && isInFlight(known, day)
    ? ['Reckoned from a test before launch: heart rate and effort govern.']
    : [];
};

const isByEffort = ({ heartRate, watts, speed }: CardBout): boolean =>
  heartRate === null && watts === null && speed === null;

interface HeldBack {
  readonly bouts: readonly CardBout[];
  readonly says: readonly string[];
}

/** What holds, and a back-off, keep every bout in its proportion to the hardest. */
const heldBack = (
  context: PlanContext,
  progress: Progress,
  at: BoutsAt,
  holds: Holds,
  harness: WithHarness,
  bouts: readonly CardBout[],
): HeldBack => {
  if (at.asWritten !== null) return { bouts, says: [] };
  const limits = limitsHere(context, progress, at, holds, harness);
  const watts = scaleOf(
    bouts.map((bout) => bout.watts),
    limits.map((limit) => limit.watts),
  );
  const speed = scaleOf(
    bouts.map((bout) => bout.speed),
    limits.map((limit) => limit.speed),
  );
  const binding = limits.filter((limit) => isBinding(bouts, limit));
  return {
    bouts: bouts.map((bout) => ({
      ...bout,
      watts: watts < 1 && bout.watts !== null ? stepsNotOver(bout.watts * watts, WATT_STEP) * WATT_STEP : bout.watts,
      speed: speed < 1 && bout.speed !== null ? inTenths(stepsNotOver(bout.speed * speed, BELT_STEP)) : bout.speed,
    })),
    says: [...new Set(binding.map(({ says }) => says))],
  };
};

interface SettingLimit {
  readonly watts: number | null;
  readonly speed: number | null;
  readonly says: string;
}

const limitsHere = (
  context: PlanContext,
  progress: Progress,
  { day, machine, deload }: BoutsAt,
  { state, held, backedOff }: Holds,
  harness: WithHarness,
): readonly SettingLimit[] => {
  const { watts, speed } = state.inUse;
  const { raiseAtMost, daysBetweenRaises } = context.known.house.policies;
  const lastStep = harness ? harnessState(progress, machine.id).lastStepOn : null;
  const isRecent = (raised: Day | null): boolean => raised !== null && day - raised < daysBetweenRaises;
  const isLoadFirst = harness?.raise?.cause === 'ramp step' || isRecent(lastStep);
  return [
    ...(held === null ? [] : [{ watts, speed, says: `held by ${held}` }]),
    ...(deload === null ? [] : [{ watts, speed, says: 'nothing goes up in an easier week' }]),
    ...(backedOff === null || state.backedOff === null
      ? []
      : [
          {
            watts: state.backedOff.most.watts,
            speed: state.backedOff.most.speed,
            says: 'held by the back-off: coming back is a raise',
          },
        ]),
    ...(harness && isLoadFirst
      ? [{ watts: null, speed, says: 'the load of the harness was raised: the speed waits' }]
      : []),
    ...(harness && isRecent(state.raisedOn)
      ? [{ watts: null, speed, says: 'the speed was raised less than a week ago' }]
      : []),
    ...(harness && speed !== null
      ? [
          {
            watts: null,
            speed: inTenths(stepsNotOver(speed * (1 + raiseAtMost), BELT_STEP)),
            says: 'the speed goes up by no more than one signature covers',
          },
        ]
      : []),
  ];
};

const isBinding = (bouts: readonly CardBout[], limit: SettingLimit): boolean =>
  bouts.some(
    ({ watts, speed }) =>
      (limit.watts !== null && watts !== null && watts > limit.watts + SAME) ||
      (limit.speed !== null && speed !== null && speed > limit.speed + SAME),
  );

/** The part of every setting that keeps the hardest within the tightest limit. */
const scaleOf = (settings: readonly (number | null)[], limits: readonly (number | null)[]): number => {
  const hardest = Math.max(0, ...settings.map((each) => each ?? 0));
  const tightest = Math.min(Infinity, ...limits.map((each) => each ?? Infinity));
  return hardest > tightest ? tightest / hardest : 1;
};

const raisesOfBouts = (
  context: PlanContext,
  at: BoutsAt,
  { state, held }: Holds,
  harness: WithHarness,
  card: CardBouts,
  reckonings: readonly FilledReckoning[],
): CardBouts['raises'] => {
  const { watts, speed } = settingsOf(card);
  const common = {
    day: at.day,
    track: at.item.track,
    exercise: at.exercise,
    state,
    asWritten: at.asWritten !== null,
    held: at.asWritten === null ? null : held,
    reckonings,
  };
  return [
    ...(harness?.raise ? [harness.raise] : []),
    ...settingRaise(context, common, { unit: 'W', step: '5', from: state.inUse.watts, to: watts, side: null }),
    ...settingRaise(context, common, { unit: 'km/h', step: '0.1', from: state.inUse.speed, to: speed, side: null }),
  ];
};

/** Keeps the reckonings behind an item, and answers their place; null where nothing was reckoned. */
const rowOfItem = ({ pieces }: PlanContext, rows: readonly FilledRow[], harness: WithHarness): number | null => {
  const all = [...(harness?.reckonings ?? []).map((filled) => rowOf(filled, '')), ...rows];
  if (all.length === 0) return null;
  pieces.push(all);
  return pieces.length - 1;
};
