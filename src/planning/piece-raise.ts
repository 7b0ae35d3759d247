import type { Day } from '#units/day.ts';
import type { Exercise } from '#domain/catalogue.ts';
import type { FactId, TrackId } from '#domain/identity.ts';
import type { Raise, RaiseCause, RaiseUnit } from '#domain/raise.ts';
import type { FilledReckoning } from './filled-reckoning.ts';
import type { PlanContext } from './plan-context.ts';
import type { PieceState } from './progress.ts';

/** One setting against the one in use. */
export interface SettingChange {
  readonly unit: RaiseUnit;
  /** One step, a decimal in the unit. */
  readonly step: string;
  readonly from: number | null;
  readonly to: number | null;
  /** "left": whose hand; null where there is one setting for all. */
  readonly side: string | null;
}

export interface RaiseAt {
  readonly day: Day;
  readonly track: TrackId;
  readonly exercise: Exercise;
  readonly state: PieceState;
  readonly asWritten: boolean;
  /** Why nothing may go up, where somebody wrote over it. */
  readonly held: string | null;
  readonly reckonings: readonly FilledReckoning[];
}

/** A setting that goes up against the last one, in whole steps of it, as somebody has to sign it. */
export const settingRaise = (
  context: PlanContext,
  at: RaiseAt,
  { unit, step, from, to, side }: SettingChange,
): readonly Raise[] => {
  if (to === null || (from !== null && to <= from + Number(step) * SAME)) return [];
  const steps = (value: number): number => Math.round(value / Number(step));
  const tooMuch = from !== null && isOverOneSignature(context, steps(from), steps(to));
  const cause = causeOf(context, at, from);
  return [
    {
      track: at.track,
      exercise: at.exercise.id,
      exerciseName: side === null ? at.exercise.name : `${at.exercise.name}, ${side}`,
      from: from === null ? null : steps(from),
      to: steps(to),
      unit,
      increment: step,
      atTheBar: null,
      trueFraction: null,
      effortStep: null,
      shareStep: null,
      cause,
      because: because(context, at, cause),
      cautions: [
        ...(at.held === null || from === null ? [] : [`Written over ${at.held}: type the reason.`]),
        ...(tooMuch ? [tooMuchAtOnce(context)] : []),
      ],
      needsReason: tooMuch || (at.held !== null && from !== null),
      proposal: null,
    },
  ];
};

/** Settings are whole steps; their decimals are not always binary. */
const SAME = 1e-6;

/** More than the policy lets one signature cover; a single step cannot be made smaller. */
export const isOverOneSignature = ({ known }: PlanContext, from: number, to: number): boolean =>
  to - from > 1 && to > from * (1 + known.house.policies.raiseAtMost) + SAME;

export const tooMuchAtOnce = ({ known }: PlanContext): string =>
  `More than ${Math.round(known.house.policies.raiseAtMost * 100)} % in one step: type the reason.`;

const causeOf = (context: PlanContext, at: RaiseAt, from: number | null): RaiseCause => {
  if (from === null) return 'first load';
  if (at.asWritten) return 'by hand';
  if (at.state.backedOff !== null) return 'back from less';
  return newFacts(context, at).length > 0 ? 'new test' : 'programme';
};

const because = (context: PlanContext, at: RaiseAt, cause: RaiseCause): readonly FactId[] => {
  if (cause === 'new test') return newFacts(context, at);
  return cause === 'back from less' ? at.state.cleanBy : [];
};

/** Tests behind the setting that are newer than the card that set the one in use. */
const newFacts = ({ tests }: PlanContext, { state, reckonings }: RaiseAt): readonly FactId[] => {
  const facts = reckonings.flatMap(({ origins }) =>
    origins.flatMap((from) => (from.kind === 'fact' ? [from.fact] : from.kind === 'estimate' ? from.facts : [])),
  );
  return [...new Set(facts)].filter((fact) => {
    const on = tests.get(fact);
    return on !== undefined && state.setOn !== null && on >= state.setOn;
  });
};
