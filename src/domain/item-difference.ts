import type { Exercise } from './catalogue.ts';
import type { ExerciseId } from './identity.ts';
import type { ProgrammeItem } from './programme.ts';
import { besideTheLine } from './programme-words.ts';
import { writeItem } from './programme-line/write-line.ts';

type Catalogue = ReadonlyMap<ExerciseId, Exercise>;

const nameOf = ({ exercise }: ProgrammeItem, exercises: Catalogue): string =>
  (exercises.get(exercise)?.name ?? exercise).toLowerCase();

/** "Nordic curl 3 × 6": the rest is left to the line itself. */
export const itemInWords = (item: ProgrammeItem, exercises: Catalogue): string =>
  `${nameOf(item, exercises)} ${withoutRest(writeItem(item, exercises.get(item.exercise)))}`;

const REST = /, rest [^,]+$/;
const withoutRest = (line: string): string => line.replace(REST, '');

/** What is otherwise in an item that is in both versions, one sentence for its line and one for what stands beside it. */
export const itemDifference = (was: ProgrammeItem, is: ProgrammeItem, exercises: Catalogue): readonly string[] => {
  // Most items of most versions are the same.
  if (was === is || JSON.stringify(was) === JSON.stringify(is)) return [];
  const beside = besideDifference(was, is);
  return [
    ...lineDifference(was, is, exercises),
    ...(beside.length > 0 ? [`${nameOf(is, exercises)}: ${beside.join('; ')}`] : []),
  ];
};

const lineDifference = (was: ProgrammeItem, is: ProgrammeItem, exercises: Catalogue): readonly string[] => {
  const [before, after] = [was, is].map((item) => writeItem(item, exercises.get(item.exercise))) as [string, string];
  if (was.exercise !== is.exercise) return [`${nameOf(was, exercises)} ${before} → ${nameOf(is, exercises)} ${after}`];
  if (before === after) return [];
  const isSameRest = REST.exec(before)?.[0] === REST.exec(after)?.[0];
  const [shown, shownAfter] = isSameRest ? [withoutRest(before), withoutRest(after)] : [before, after];
  return [`${nameOf(is, exercises)} ${shown} → ${shownAfter}`];
};

const besideDifference = (was: ProgrammeItem, is: ProgrammeItem): readonly string[] => {
  if (was.kind !== is.kind) return [`${KINDS[was.kind]} → ${KINDS[is.kind]}`];
  const before = new Map(besideTheLine(was));
  const changed = besideTheLine(is).flatMap(([what, says]) => {
    const said = before.get(what);
    return said === says || isSaidByLine(what, was, is) ? [] : [`${said} → ${says}`];
  });
  return [...changed, ...(was.source === is.source ? [] : ['source written anew'])];
};

const KINDS: Readonly<Record<ProgrammeItem['kind'], string>> = {
  lift: 'sets under a load',
  bouts: 'bouts of endurance',
  drill: 'sets without a load',
};

/** Rests and easy times are in the line while it says them for all sets alike. */
const isSaidByLine = (what: string, was: ProgrammeItem, is: ProgrammeItem): boolean =>
  (what === 'rests' || what === 'bouts') && [was, is].every(saysItsRests);

const saysItsRests = (item: ProgrammeItem): boolean => {
  if (item.kind === 'bouts') return item.bouts.every(({ easy }) => easy === item.bouts[0]?.easy);
  const [first] = item.sets;
  return (
    item.sets.every(({ rest }) => rest === first?.rest) && first !== undefined && first.rest >= 5 && first.rest <= 1800
  );
};
