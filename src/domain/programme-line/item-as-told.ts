import type { Exercise } from '../catalogue.ts';
import type { ProgrammeItem } from '../programme.ts';
import { boutsAsWritten, boutsOfHolds, type Bouts } from './bouts-line.ts';
import { drillAsWritten, drillOfLongHolds, drillOfSets, type WrittenDrill } from './drill-line.ts';
import { liftAsWritten } from './lift-line.ts';
import { told, type Told } from './line-problem.ts';
import { isEndurance, newBouts, newDrill, newLift, USUAL_REST } from './new-item.ts';
import type { LineContext, Written } from './read-line.ts';
import type { Sets } from './set-groups.ts';

/** The item that a line makes of an exercise: one of the kind that stood there where it can be, else a new one. */
export const itemAsTold = (exercise: Exercise, context: LineContext, written: Written): Told<ProgrammeItem> => {
  if (written.kind === 'drill') {
    const says = written.perSide && !exercise.perSide ? [`${exercise.name} has no sides: leave /side out.`] : [];
    return asDrill(exercise, context, told(written.drill, says));
  }
  if (written.kind === 'bouts') return asBouts(exercise, context, written.bouts);
  const { prescription } = written;
  if (prescription.kind === 'sets') return asSets(exercise, context, prescription);
  return isHeld(exercise, prescription)
    ? asDrill(exercise, context, drillOfLongHolds(prescription))
    : asBouts(exercise, context, [prescription]);
};

const standing = ({ before }: LineContext, exercise: Exercise): ProgrammeItem | null =>
  before?.exercise === exercise.id ? before : null;

/** Nobody runs or rides a plank. */
const isHeld = ({ machineKinds }: Exercise, { intensity }: Bouts): boolean =>
  machineKinds.length > 0 && !machineKinds.some(isEndurance) && (intensity === null || intensity.kind === 'RPE');

const asBouts = (exercise: Exercise, context: LineContext, written: readonly Bouts[]): Told<ProgrammeItem> => {
  const before = standing(context, exercise);
  const item = before?.kind === 'bouts' ? before : newBouts(context.before, exercise, context.place);
  return item ? boutsAsWritten(item, written) : refused(`${exercise.name} is done in sets: write 3 × 10, not minutes.`);
};

const asSets = (exercise: Exercise, context: LineContext, written: Sets): Told<ProgrammeItem> => {
  if (exercise.machineKinds.length > 0 && exercise.machineKinds.every(isEndurance)) {
    const bouts = boutsOfHolds(written);
    if (bouts) return asBouts(exercise, context, [bouts]);
    return refused(`${exercise.name} is done in bouts: write 30 min @ 130 W or 4 × 4 min @ 90 % HRR, 3 min easy.`);
  }
  return isDrill(exercise, context, written)
    ? asDrill(exercise, context, drillOfSets(written, exercise))
    : asLift(exercise, context, written);
};

/** A load or a percentage makes a lift, seconds make a drill; else it stays what it is, or follows from what loads it. */
const isDrill = (exercise: Exercise, context: LineContext, { groups }: Sets): boolean => {
  if (groups.some(({ each }) => each.kind === 'hold')) return true;
  const before = standing(context, exercise);
  const loaded = groups.some(
    ({ load, intensity }) => load !== null || (intensity !== null && intensity.kind !== 'RPE'),
  );
  if (loaded) return false;
  if (before) return before.kind === 'drill';
  return newLift(null, exercise, context.place) === null;
};

const asLift = (exercise: Exercise, context: LineContext, written: Sets): Told<ProgrammeItem> => {
  const before = standing(context, exercise);
  if (before?.kind === 'lift') return liftAsWritten(before, exercise, written);
  const item = newLift(context.before, exercise, context.place);
  const rest = written.rest ?? USUAL_REST;
  return item ? liftAsWritten(item, exercise, { ...written, rest }) : refused(noMachine(exercise));
};

const asDrill = (exercise: Exercise, context: LineContext, drill: Told<WrittenDrill>): Told<ProgrammeItem> => {
  if (drill.kind === 'refused') return drill;
  const before = standing(context, exercise);
  if (before?.kind === 'drill') return told(drillAsWritten(before, drill.part), []);
  const item = newDrill(context.before, exercise, context.place);
  return item ? told(drillAsWritten(item, drill.part), []) : refused(noMachine(exercise));
};

const noMachine = ({ name, machineKinds }: Exercise): string =>
  machineKinds.every(isEndurance)
    ? `${name} is done on a treadmill, cycle or rower: write bouts, such as 30 min @ 130 W.`
    : `No machine loads ${name.toLowerCase()}: write 3 × 10, 3 × 30 s, or how it should feel, such as @ RPE 6.`;

const refused = (says: string): Told<never> => ({ kind: 'refused', says: [says] });
