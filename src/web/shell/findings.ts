import type { HouseWindow } from '#contract/windows/house-window.ts';
import { readCardCode } from '#domain/card-code.ts';

/** A page that can be gone to by its name. */
export interface Finding {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly path: string;
}

const MOST = 12;
const personIn = (location: string): string | null => /^\/people\/([^/]+)/.exec(location)?.[1] ?? null;

/** What is looked through. */
interface Found {
  readonly people: readonly Pick<HouseWindow['people'][number], 'id' | 'name' | 'dayLabel'>[];
  readonly exercises: readonly Pick<HouseWindow['exercises'][number], 'id' | 'name'>[];
}

/** People by name, exercises by name (of all people, and of the person in view, if any), a card by its code. */
export const findings = (house: Found, location: string, typed: string): readonly Finding[] => {
  const wanted = typed.trim().toLowerCase();
  if (wanted === '') return [];
  const person = personIn(location);
  const people = house.people.map(({ id, name, dayLabel }): Finding => ({
    id: `person ${id}`,
    name,
    kind: dayLabel,
    path: `/people/${id}`,
  }));
  const exercises = house.exercises.flatMap(({ id, name }): readonly Finding[] => [
    { id: `lift ${id}`, name, kind: 'all people', path: `/lift/${id}` },
    {
      id: `exercise ${id}`,
      name,
      kind: person ? 'crossing' : 'exercise',
      path: person ? `/people/${person}/crossing?exercise=${encodeURIComponent(id)}` : `/settings#${id}`,
    },
  ]);
  const named = [...people, ...exercises].filter(({ name }) => name.toLowerCase().includes(wanted));
  return [...cardOf(typed), ...named].slice(0, MOST);
};

const cardOf = (typed: string): readonly Finding[] => {
  const reading = readCardCode(typed);
  return reading.kind === 'code'
    ? [
        {
          id: `card ${reading.code}`,
          name: `Card ${reading.code}`,
          kind: 'by its code',
          path: `/cards/${reading.code}`,
        },
      ]
    : [];
};
