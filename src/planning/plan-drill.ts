import type { Day } from '#units/day.ts';
import { handOn } from '#assessing/hands.ts';
import type { CardDrill, CardDrillSet } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { Side } from '#domain/effort.ts';
import { settingsFor } from '#domain/known.ts';
import type { DrillItem, HandTarget } from '#domain/programme.ts';
import type { Raise } from '#domain/raise.ts';
import type { StandingAdjustment } from './adjustments.ts';
import { capped, effortCap, restrictedSays } from './effort-cap.ts';
import { restrictionsOn, type PlanContext } from './plan-context.ts';
import type { PlannedItem } from './plan-item.ts';
import { pieceState, type Progress } from './progress.ts';

export interface DrillAt {
  readonly day: Day;
  readonly item: DrillItem;
  readonly exercise: Exercise;
  /** Null where it needs none of the catalogue's machines. */
  readonly machine: Machine | null;
  readonly adjustments: readonly StandingAdjustment[];
  readonly asWritten: string | null;
}

/** A drill in absolute terms for one person on one day. */
export const planDrill = (context: PlanContext, progress: Progress, at: DrillAt): PlannedItem => {
  const { exercise, day, adjustments } = at;
  if (restrictionsOn(context, exercise, day).some(({ restriction: { limit } }) => limit.kind === 'forbidden'))
    return { kind: 'left out', says: 'left out: limited by the physician', gap: false };
  if (adjustments.some(({ change }) => change.kind === 'leave out'))
    return { kind: 'left out', says: 'left out: by agreement', gap: false };
  return { kind: 'item', item: cardDrill(context, progress, at) };
};

const SIDES = ['left', 'right'] as const satisfies readonly Side[];
/** Nobody reads a dynamometer finer. */
const FORCE_STEP = 5;

const cardDrill = (context: PlanContext, progress: Progress, at: DrillAt): CardDrill => {
  const { item, exercise, machine, day } = at;
  const cap = effortCap(context, exercise, day);
  const isCapped = cap !== null && cap < item.shouldFeel[1];
  const target = isCapped ? null : item.target;
  const sides: readonly (Side | null)[] = exercise.perSide ? SIDES : [null];
  const forces = new Map(sides.map((side) => [side, target && side ? forceOf(context, at, target, side) : null]));
  const state = pieceState(progress, item.track, machine?.id ?? null);
  const heaviest = Math.max(...[...forces.values()].map((force) => force?.newtons ?? 0));
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
    cues: exercise.cues,
    shouldFeel: capped(item.shouldFeel, cap),
    says: [...new Set(restrictedSays(context, exercise, day))],
    means: machine?.name ?? item.machineKind,
    sets: item.sets.flatMap(({ work, rest }) =>
      sides.map((side): CardDrillSet => ({ work, side, rest, force: forces.get(side)?.newtons ?? null })),
    ),
    raises: heaviest > 0 ? forceRaise(at, state.force, heaviest) : [],
    working: [...new Set([...forces.values()].flatMap((force) => force?.says ?? []))],
  };
};

const forceOf = (
  { known }: PlanContext,
  { day }: DrillAt,
  { kind, of }: HandTarget,
  side: Side,
): { readonly newtons: number | null; readonly says: string } => {
  const what = kind === 'of critical force' ? 'critical force' : 'greatest grip';
  const test = handOn(known, what, side, day);
  if (!test) return { newtons: null, says: `No ${what} of the ${side} hand is known: by feel.` };
  const newtons = Math.round((of * test.newtons) / FORCE_STEP) * FORCE_STEP;
  return { newtons, says: `${side}: ${Math.round(of * 100)} % of ${Math.round(test.newtons)} N` };
};

const forceRaise = ({ item, exercise }: DrillAt, from: number | null, to: number): readonly Raise[] =>
  from !== null && to <= from
    ? []
    : [
        {
          track: item.track,
          exercise: exercise.id,
          exerciseName: exercise.name,
          from: from === null ? null : Math.round(from),
          to: Math.round(to),
          unit: 'N',
          increment: '1',
          atTheBar: null,
          trueFraction: null,
          effortStep: null,
          shareStep: null,
          cause: from === null ? 'first load' : 'new test',
          because: [],
          cautions: [],
          needsReason: false,
          proposal: null,
        },
      ];
