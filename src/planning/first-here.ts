import { repetitions } from '#units/quantity.ts';
import { ofKind } from '#domain/known.ts';
import { fractionAllowing } from '#science/strength/repetition-maximum.ts';
import type { PlanContext } from './plan-context.ts';
import { plannedRepetitions } from './planned-repetitions.ts';
import { tracksOf, type Progress } from './progress.ts';
import type { ItemAt } from './target.ts';

/** The highest effort of a first session on a machine; common practice. Four repetitions are left in reserve. */
export const FIRST_HERE_FEELS = 6;
const LEFT_IN_RESERVE = 4;

export const FIRST_HERE_SAYS = `first session of this lift on this machine: RPE ${FIRST_HERE_FEELS} or less`;

/** Has a person never done this lift on this machine? Free bars are alike; weightless, the ramps do the same. */
export const isFirstHere = ({ known }: PlanContext, progress: Progress, at: ItemAt): boolean => {
  const { machine, exercise, day } = at;
  if (machine.gravity === '0 g' || machine.kind === 'free bar') return false;
  const wasTrained = tracksOf(progress, exercise.id).some(
    (track) => track.machine === machine.id && track.last !== null,
  );
  const wasTested = ofKind(known, 'lifted').some(
    (fact) => fact.exercise === exercise.id && fact.machine === machine.id && fact.day <= day,
  );
  return !wasTrained && !wasTested;
};

/** What the planned repetitions allow with so many left, of the maximum of so many repetitions. */
export const fractionFirstHere = ({ item }: ItemAt, of: number): number => {
  const planned = plannedRepetitions(item);
  return fractionAllowing(repetitions(planned + LEFT_IN_RESERVE)) / fractionAllowing(repetitions(of));
};
