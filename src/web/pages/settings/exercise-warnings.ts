import type { ExerciseSetting, ProgrammeUse } from '#contract/windows/settings-window.ts';
import type { Exercise } from '#domain/catalogue.ts';
import type { TypedExercise } from './typed-exercise.ts';

type Changed = Pick<TypedExercise, 'machineKinds' | 'pattern' | 'capacity' | 'shareModel'>;

/** What a change would do that is easily overlooked. Nothing here is forbidden; it is to be seen before it is signed. */
export const exerciseWarnings = ({ exercise, uses }: ExerciseSetting, after: Changed): readonly string[] => [
  ...lostKinds(exercise, uses, after),
  ...lostCapacity(exercise, uses, after),
  ...lostGates(exercise, after),
  ...otherShare(exercise, after),
];

const lostKinds = ({ machineKinds }: Exercise, uses: readonly ProgrammeUse[], after: Changed): readonly string[] =>
  machineKinds
    .filter((kind) => !after.machineKinds.includes(kind))
    .flatMap((kind) => {
      const asking = uses.filter(({ machineKind }) => machineKind === kind);
      return asking.length === 0
        ? []
        : [`${linesOf(asking)} with the ${kind}: left out of every card that is not issued yet.`];
    });

const lostCapacity = ({ capacity }: Exercise, uses: readonly ProgrammeUse[], after: Changed): readonly string[] => {
  const asking = uses.filter(({ needsCapacity }) => needsCapacity);
  if (capacity.kind === 'none' || after.capacity !== 'none' || asking.length === 0) return [];
  return [`${linesOf(asking)} as a fraction of its capacity: without one they have no load.`];
};

/** The squat gates stand before squats and hip hinges under a bar. */
const isGated = (pattern: string): boolean => pattern === 'squat' || pattern === 'hip hinge';

const lostGates = ({ pattern }: Exercise, after: Changed): readonly string[] =>
  isGated(pattern) && !isGated(after.pattern)
    ? [`The squat gates do not stand before a ${after.pattern}: somebody who has not passed them would get a bar.`]
    : [];

const otherShare = ({ shareModel }: Exercise, after: Changed): readonly string[] =>
  shareModel !== after.shareModel
    ? ['Another share of body weight: in flight every load of it that is not issued yet is worked out anew.']
    : [];

/** "3 lines of Set programme, version 1 and 1 of Preparation, version 2 (followed by 4) ask for it". */
const linesOf = (uses: readonly ProgrammeUse[]): string => {
  const versions = new Map(uses.map((use) => [use.version, use] as const));
  const said = [...versions.values()].map(({ version, programme, number, followers }) => {
    const count = uses.filter((use) => use.version === version).length;
    return `${count} ${count === 1 ? 'line' : 'lines'} of ${programme}, version ${number} (followed by ${followers})`;
  });
  return `${said.join(' and ')} ${uses.length === 1 ? 'asks' : 'ask'} for it`;
};
