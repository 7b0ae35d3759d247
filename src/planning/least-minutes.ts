import { secondsOfTempo } from '#domain/asked-sets.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { DrillWork, LiftItem, ProgrammeItem } from '#domain/programme.ts';

const SECONDS_PER_MINUTE = 60;

/** The least time in which one item alone can be done, on the quickest machine of its kind in the house. */
export const leastMinutes = (item: ProgrammeItem, exercise: Exercise, machines: Iterable<Machine>): number => {
  const overheads = [...machines]
    .filter(({ kind }) => kind === item.machineKind)
    .map(({ minutes }) => minutes.setUp + minutes.stow + (item.kind === 'lift' ? minutes.changeLoad : 0));
  const overhead = overheads.length > 0 ? Math.min(...overheads) : 0;
  return overhead + secondsOfItem(item, exercise) / SECONDS_PER_MINUTE;
};

const secondsOfItem = (item: ProgrammeItem, exercise: Exercise): number => {
  const sides = exercise.perSide ? 2 : 1;
  switch (item.kind) {
    case 'lift':
      return sides * secondsOfLift(item, exercise);
    case 'bouts':
      // After the last bout comes the cooling down, not the easy time between bouts.
      return (
        item.warmUpSeconds +
        sum(item.bouts.map(({ seconds, easy }) => seconds + easy)) -
        (item.bouts.at(-1)?.easy ?? 0) +
        item.coolDownSeconds
      );
    case 'drill':
      return sides * sum(item.sets.map(({ work, rest }) => secondsOfWork(work, exercise) + rest));
  }
};

/** Of a range the least. */
const secondsOfLift = ({ sets, tempo }: LiftItem, { secondsPerRepetition }: Exercise): number => {
  const each = tempo ? secondsOfTempo(tempo) : secondsPerRepetition;
  const must = sets.filter(({ optional }) => !optional);
  return sum(must.map(({ repetitions, rest }) => repetitions * each + rest));
};

const secondsOfWork = (work: DrillWork, { secondsPerRepetition }: Exercise): number => {
  switch (work.kind) {
    case 'repetitions':
      return work.count * secondsPerRepetition;
    case 'hold':
      return work.seconds;
    case 'pulses':
      return work.count * (work.on + work.off);
  }
};

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
