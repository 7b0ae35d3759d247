import type { BoutsItem, DrillItem, LiftItem, ProgrammeItem } from '../programme.ts';
import { USUAL_RULES } from './lift-line.ts';
import type { Exercise } from '../catalogue.ts';
import { isEndurance, isLoose, loadsLifts, type Kind } from './new-item.ts';

/**
 * The same item on another kind of machine. Between a load and the body's own weight the sets stay and the target goes:
 * one is found by effort, the other by feel. Null where sets would have to become bouts, or seconds repetitions.
 */
export const onMachineKind = (item: ProgrammeItem, kind: Kind, exercise: Exercise): ProgrammeItem | null => {
  switch (item.kind) {
    case 'bouts':
      return isEndurance(kind) ? { ...item, machineKind: kind } : null;
    case 'lift':
      if (loadsLifts(kind)) return { ...item, machineKind: kind };
      return isLoose(kind) ? withoutLoad(item, kind) : null;
    case 'drill':
      if (isEndurance(kind)) return null;
      return isLoose(kind) ? { ...item, machineKind: kind } : underLoad(item, kind, exercise);
  }
};

const beside = ({
  id,
  track,
  exercise,
  condition,
  priority,
  shouldFeel,
  source,
}: LiftItem | BoutsItem | DrillItem) => ({
  id,
  track,
  exercise,
  condition,
  priority,
  shouldFeel,
  source,
});

const withoutLoad = (item: LiftItem, machineKind: Kind): DrillItem => ({
  ...beside(item),
  kind: 'drill',
  machineKind,
  sets: item.sets.map(({ repetitions, most, rest }) => ({
    work: { kind: 'repetitions', count: repetitions, ...(most === undefined ? {} : { most }) },
    rest,
  })),
  target: null,
});

const underLoad = (item: DrillItem, machineKind: Kind, { bodyPart }: Exercise): LiftItem | null => {
  const sets = item.sets.flatMap(({ work, rest }) =>
    work.kind === 'repetitions'
      ? [{ repetitions: work.count, ...(work.most === undefined ? {} : { most: work.most }), rest }]
      : [],
  );
  if (sets.length < item.sets.length) return null;
  return {
    ...beside(item),
    kind: 'lift',
    machineKind,
    leading: false,
    basis: { kind: 'from last', start: 'effort', rule: USUAL_RULES[bodyPart] },
    warmUps: [],
    sets,
    tempo: null,
    superset: null,
    reserve: null,
  };
};
