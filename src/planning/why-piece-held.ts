import type { Day } from '#units/day.ts';
import type { ExerciseId, TrackId } from '#domain/identity.ts';
import { adjustmentsOn, type StandingAdjustment } from './adjustments.ts';
import type { PlanContext } from './plan-context.ts';
import type { PieceState, Progress } from './progress.ts';

/** Why nothing of a track of bouts or drills may go up today, whatever earned it; null where nothing holds it. */
export const whyPieceHeld = (
  progress: Progress,
  exercise: ExerciseId,
  adjustments: readonly StandingAdjustment[],
): string | null => {
  if (adjustments.some(({ change }) => change.kind === 'hold')) return 'a signed hold';
  const hold = progress.pieceHolds.get(exercise);
  if (hold?.painHolds) return 'discomfort last time';
  return hold && hold.unread.length > 0 ? 'a note that nobody has read yet' : null;
};

/** Does a signed hold stand on any of these tracks? */
export const isAnyHeld = (context: PlanContext, on: Day, tracks: ReadonlySet<TrackId>): boolean =>
  adjustmentsOn(context, on).some(({ track, change }) => change.kind === 'hold' && tracks.has(track));

/** Two clean sessions at the lower setting earn the way back from a back-off; it stands on the card as a raise. */
export const isBackedOff = ({ known }: PlanContext, { backedOff, cleanBy }: PieceState): boolean =>
  backedOff !== null && cleanBy.length < known.house.policies.sessionsPerStep;
