import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { FactBody } from '#domain/fact.ts';

/** Something of the house that an entry about the house names, and the field where it is named. */
export interface NamedInHouse {
  readonly field: string;
  readonly kind: 'exercise' | 'machine' | 'site';
  readonly id: string;
}

/** Sites, machines and exercises on which an entry of the catalogue rests. */
export const namedInHouse = (body: FactBody): readonly NamedInHouse[] => {
  if (body.kind !== 'catalogued') return [];
  if (body.entry.kind === 'machine') return namedByMachine(body.entry.machine);
  return body.entry.kind === 'exercise' ? namedByExercise(body.entry.exercise) : [];
};

const namedByMachine = ({ site, groundUnitOf, limits }: Machine): readonly NamedInHouse[] => [
  { field: 'entry.machine.site', kind: 'site', id: site },
  ...(groundUnitOf === null
    ? []
    : [{ field: 'entry.machine.groundUnitOf', kind: 'machine' as const, id: groundUnitOf }]),
  ...limits.map(({ exercise }, place) => ({
    field: `entry.machine.limits.${place}.exercise`,
    kind: 'exercise' as const,
    id: exercise,
  })),
];

const namedByExercise = ({ capacity, substitutes }: Exercise): readonly NamedInHouse[] => [
  ...(capacity.kind === 'ratio'
    ? [{ field: 'entry.exercise.capacity.to', kind: 'exercise' as const, id: capacity.to }]
    : []),
  ...substitutes.map(({ exercise }, place) => ({
    field: `entry.exercise.substitutes.${place}.exercise`,
    kind: 'exercise' as const,
    id: exercise,
  })),
];
