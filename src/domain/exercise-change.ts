import type { Exercise, LooseKind, MachineKind } from './catalogue.ts';
import type { ExerciseId, ProgrammeVersionId } from './identity.ts';
import type { ProgrammeVersion } from './programme.ts';

/** A line of a programme that asks for an exercise. */
export interface ExerciseUse {
  readonly version: ProgrammeVersionId;
  readonly programme: string;
  readonly number: number;
  readonly phase: string;
  readonly session: string;
  readonly machineKind: MachineKind | LooseKind;
  /** Does its load come from a capacity? */
  readonly needsCapacity: boolean;
}

/** Every line of every programme, by the exercise that it asks for. */
export const usesByExercise = (
  programmes: Iterable<ProgrammeVersion>,
): ReadonlyMap<ExerciseId, readonly ExerciseUse[]> => {
  const uses = new Map<ExerciseId, ExerciseUse[]>();
  for (const { id, name, number, phases } of programmes)
    for (const phase of phases)
      for (const session of phase.sessions)
        for (const item of session.items) {
          const before = uses.get(item.exercise) ?? [];
          uses.set(item.exercise, before);
          before.push({
            version: id,
            programme: name,
            number,
            phase: phase.name,
            session: session.title,
            machineKind: item.machineKind,
            needsCapacity: 'basis' in item && item.basis.kind === 'fraction',
          });
        }
  return uses;
};

export interface ChangeWarning {
  readonly field: 'machineKinds' | 'capacity.kind' | 'pattern' | 'shareModel';
  readonly says: string;
}

/** What of an exercise can be changed so that something else goes wrong. */
export interface Described {
  readonly machineKinds: Exercise['machineKinds'];
  readonly pattern: string;
  readonly capacity: string;
  readonly shareModel: string;
}

/** What a change would do that is easily overlooked. Nothing of it is forbidden; it is to be seen before it is signed. */
export const exerciseWarnings = (
  before: Exercise,
  after: Described,
  uses: readonly ExerciseUse[],
): readonly ChangeWarning[] => [
  ...lostKinds(before, after, uses),
  ...lostCapacity(before, after, uses),
  ...lostGates(before, after),
  ...otherShare(before, after),
];

/** Where no kind was ever said, every one is allowed: the first that is said takes away the others. */
const lostKinds = (
  { machineKinds }: Exercise,
  after: Described,
  uses: readonly ExerciseUse[],
): readonly ChangeWarning[] => {
  const asked = [...new Set(uses.map(({ machineKind }) => machineKind))];
  const lost = asked.filter(
    (kind) => !after.machineKinds.includes(kind) && (machineKinds.length === 0 || machineKinds.includes(kind)),
  );
  return lost.map((kind) => ({
    field: 'machineKinds',
    says: `${linesOf(uses.filter(({ machineKind }) => machineKind === kind))} with the ${kind}: left out of every card that is not issued yet.`,
  }));
};

const lostCapacity = (
  { capacity }: Exercise,
  after: Described,
  uses: readonly ExerciseUse[],
): readonly ChangeWarning[] => {
  const asking = uses.filter(({ needsCapacity }) => needsCapacity);
  if (capacity.kind === 'none' || after.capacity !== 'none' || asking.length === 0) return [];
  return [
    {
      field: 'capacity.kind',
      says: `${linesOf(asking)} as a fraction of its capacity: without one they have no load.`,
    },
  ];
};

/** The squat gates stand before squats and hip hinges under a bar. */
const isGated = (pattern: string): boolean => pattern === 'squat' || pattern === 'hip hinge';

const lostGates = ({ pattern }: Exercise, after: Described): readonly ChangeWarning[] =>
  isGated(pattern) && !isGated(after.pattern)
    ? [
        {
          field: 'pattern',
          says: `The squat gates do not stand before the pattern ${after.pattern}: somebody who has not passed them would get a bar.`,
        },
      ]
    : [];

const otherShare = ({ shareModel }: Exercise, after: Described): readonly ChangeWarning[] =>
  shareModel === after.shareModel
    ? []
    : [
        {
          field: 'shareModel',
          says: 'Another share of body weight: in flight every load of it that is not issued yet is worked out anew.',
        },
      ];

/** "3 lines of Flight, version 1 and 1 line of Preparation, version 2 ask for it". */
const linesOf = (uses: readonly ExerciseUse[]): string => {
  const versions = new Map(uses.map((use) => [use.version, use] as const));
  const said = [...versions.values()].map(({ version, programme, number }) => {
    const count = uses.filter((use) => use.version === version).length;
    return `${count} ${count === 1 ? 'line' : 'lines'} of ${programme}, version ${number}`;
  });
  return `${said.join(' and ')} ${uses.length === 1 ? 'asks' : 'ask'} for it`;
};
