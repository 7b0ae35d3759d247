import type { Day } from '#units/day.ts';
import { LOOSE_KINDS, type Exercise, type LooseKind, type Machine } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import type { BoutsItem, DrillItem, DrillWork, LiftItem, ProgrammeItem } from '#domain/programme.ts';
import { machinesOn } from './machine-on.ts';
import { isMachineOut, type PlanContext } from './plan-context.ts';
import { saidToBeHere } from './re-made.ts';
import { bestInsteadOn } from './substitute-here.ts';
import type { Instead, Means } from './substitutes.ts';

/** What is done in place of an item whose machine is not where a person trains. */
export interface StandIn {
  readonly item: ProgrammeItem;
  readonly exercise: Exercise;
  readonly machine: Machine | null;
  readonly says: string;
}

/** The first load on anything new is found at this effort at most; common practice. */
const FIRST_FEELS = [5, 6] as const;

/** The best substitute that can be planned with what is there on a day, or null where none can. */
export const standInFor = (context: PlanContext, item: ProgrammeItem, exercise: Exercise, on: Day): StandIn | null => {
  const best = bestInsteadOn(context, exercise, on);
  if (!best || best.ifThere) return null;
  const machine = isLoose(best.on) ? null : machineOf(context, best.on, on);
  if (!isLoose(best.on) && !machine && saidToBeHere(context, on) === null) return null;
  const instead = itemInstead(item, best, machine);
  return instead && { item: instead, exercise: best.exercise, machine, says: saysOf(exercise, best) };
};

const isLoose = (kind: Means): kind is LooseKind => LOOSE_KINDS.some((each) => each === kind);

const machineOf = ({ known }: PlanContext, kind: Means, on: Day): Machine | null =>
  machinesOn(known, on).find((machine) => machine.kind === kind && !isMachineOut(machine, on)) ?? null;

const itemInstead = (item: ProgrammeItem, { exercise, on }: Instead, machine: Machine | null): ProgrammeItem | null => {
  const common = {
    exercise: exercise.id,
    machineKind: on,
    track: idOf<'track'>(`${item.track}, ${exercise.id} ${on}`),
  };
  switch (item.kind) {
    case 'bouts':
      return machine && isEndurance(exercise) ? ({ ...item, ...common } satisfies BoutsItem) : null;
    case 'drill':
      return { ...item, ...common };
    case 'lift':
      return machine ? liftInstead(item, common) : drillInstead(item, common, isLoose(on));
  }
};

const isEndurance = ({ pattern }: Exercise): boolean =>
  pattern === 'running' || pattern === 'walking' || pattern === 'cycling' || pattern === 'rowing';

type Common = Pick<LiftItem, 'exercise' | 'machineKind' | 'track'>;

/** Under another load: found by effort, then the last load there; it leads nothing and earns nothing elsewhere. */
const liftInstead = (item: LiftItem, common: Common): LiftItem => ({
  ...item,
  ...common,
  leading: false,
  basis: {
    kind: 'from last',
    start: 'effort',
    rule: item.basis.kind === 'from last' ? item.basis.rule : { add: { kg: '2.5', lb: '5' } },
  },
  reserve: null,
  shouldFeel: FIRST_FEELS,
});

/** Under a load that nobody entered: whoever is there finds one that feels as a first one should. */
const drillInstead = (item: LiftItem, common: Common, unloaded: boolean): DrillItem => ({
  ...common,
  kind: 'drill',
  id: item.id,
  condition: item.condition,
  priority: item.priority,
  shouldFeel: unloaded ? item.shouldFeel : FIRST_FEELS,
  source: item.source,
  sets: item.sets.map(({ repetitions, most, rest }) => {
    const work: DrillWork = { kind: 'repetitions', count: repetitions, ...(most === undefined ? {} : { most }) };
    return { work, rest };
  }),
  target: null,
});

const saysOf = (exercise: Exercise, best: Instead): string => `instead of ${exercise.name.toLowerCase()}: ${best.says}`;
