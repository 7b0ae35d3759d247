import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { SetGroup, SetIntensity } from '#domain/prescription.ts';
import type { LiftItem, LoadBasis, ProgrammeItem } from '#domain/programme.ts';
import { bandOf, reserveSaid } from '#domain/programme-line/lift-line.ts';
import {
  liftRefusals,
  targetRefusals,
  warmUpsOf,
  workGroupsOf,
  workSetsOf,
  type Sets,
} from '#domain/programme-line/set-groups.ts';
import { readShorthand } from '#domain/shorthand/read-shorthand.ts';
import { boutsAsWritten, drillAsWritten } from './piece-as-written.ts';

/** An item of the programme as a line of shorthand would have it, or every reason why it cannot be planned so. */
export type ItemAsWritten =
  | { readonly kind: 'item'; readonly item: ProgrammeItem }
  | { readonly kind: 'refused'; readonly says: readonly string[] };

interface Means {
  readonly exercise: Exercise;
  readonly machine: Machine | null;
}

/**
 * What the line does not say (rest, warm-ups, a target) stays as the programme has it. A tempo and the letter of a superset
 * are said whole by the line: a line without them has none.
 */
export const itemAsWritten = (item: ProgrammeItem, { exercise, machine }: Means, line: string): ItemAsWritten => {
  if (item.kind === 'bouts') return boutsAsWritten(item, line);
  if (item.kind === 'drill') return drillAsWritten(item, exercise, line);
  const reading = readShorthand(line);
  if (reading.kind === 'problems') return refused(...reading.problems.map(({ says }) => says));
  const { prescription } = reading;
  if (prescription.kind === 'bouts') return refused(BOUTS);
  if (!machine) return refused('There is no machine here to load: leave it out, or go where one is.');
  const work = workGroupsOf(prescription.groups);
  const says = [...liftRefusals(prescription, exercise), ...targetRefusals(work)];
  return says.length > 0 ? refused(...says) : { kind: 'item', item: written(item, machine, prescription) };
};

const refused = (...says: readonly string[]): ItemAsWritten => ({ kind: 'refused', says });

const BOUTS = 'Bouts of endurance are not planned on this line: write sets, such as 4 × 6 @ 80 %.';

const written = (item: LiftItem, machine: Machine, { groups, tempo, superset, rest }: Sets): LiftItem => {
  const work = workGroupsOf(groups);
  const first = work[0] as SetGroup;
  const warmUps = groups.filter((group) => group.warmUp);
  return {
    ...item,
    basis: basisOf(item, first, machine),
    warmUps: warmUps.length > 0 ? warmUpsOf(warmUps, first) : item.warmUps,
    sets: workSetsOf(work, rest ?? item.sets[0]?.rest ?? 0),
    tempo,
    superset,
    reserve: reserveOf(item, first.intensity),
    shouldFeel: bandOf(first.intensity) ?? item.shouldFeel,
  };
};

const basisOf = ({ basis }: LiftItem, { load, intensity }: SetGroup, { unit }: Machine): LoadBasis => {
  if (load) return { kind: 'fixed', load: { text: load.text, unit: load.unit ?? unit } };
  if (intensity?.kind === 'of maximum') return { kind: 'fraction', of: intensity.of.least };
  const rpe = bandOf(intensity);
  return rpe ? { kind: 'effort', rpe } : basis;
};

/** A reserve that the line does not name is not the programme's any more, where the line sets its own load. */
const reserveOf = ({ reserve }: LiftItem, intensity: SetIntensity | null): number | null =>
  intensity === null ? reserve : reserveSaid(intensity);
