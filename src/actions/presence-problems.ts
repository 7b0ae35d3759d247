import type { Fact, FactBody } from '#domain/fact.ts';
import type { CardId } from '#domain/identity.ts';
import type { Problem } from '#contract/problem.ts';
import { namedInHouse } from './named-in-house.ts';

interface Named {
  readonly field: string;
  readonly what: string;
  readonly there: boolean;
}

/** Everything that an entry names must be in the log, or come with it. */
export const presenceProblems = (
  body: FactBody,
  bodies: readonly FactBody[],
  current: readonly Fact[],
): readonly Problem[] =>
  [...namedPeople(body, bodies), ...namedThings(body, entriesIn(bodies)), ...namedFacts(body, current)].flatMap(
    ({ field, what, there }) => (there ? [] : [unknown(field, what)]),
  );

type CatalogueEntry = Extract<FactBody, { readonly kind: 'catalogued' }>['entry'];

const entriesIn = (bodies: readonly FactBody[]): readonly CatalogueEntry[] =>
  bodies.flatMap((body) => (body.kind === 'catalogued' ? [body.entry] : []));

const named = (field: string, what: string, there: boolean): Named => ({ field, what, there });

const namedPeople = (body: FactBody, bodies: readonly FactBody[]): readonly Named[] => {
  const isIntroduced = (person: string): boolean =>
    bodies.some((each) => each.kind === 'introduced' && each.person === person);
  const isDated = (mission: string): boolean =>
    bodies.some((each) => each.kind === 'dated' && each.mission === mission);
  return [
    ...('person' in body && body.kind !== 'introduced' ? [named('person', 'person', isIntroduced(body.person))] : []),
    ...(body.kind === 'assigned' ? [named('mission', 'mission', isDated(body.mission))] : []),
  ];
};

const namedThings = (body: FactBody, entries: readonly CatalogueEntry[]): readonly Named[] => {
  const isExercise = (id: string): boolean =>
    entries.some((entry) => entry.kind === 'exercise' && entry.exercise.id === id);
  const isMachine = (id: string): boolean =>
    entries.some((entry) => entry.kind === 'machine' && entry.machine.id === id);
  const isSite = (id: string): boolean => entries.some((entry) => entry.kind === 'site' && entry.site.id === id);
  const scope = body.kind === 'restricted' ? body.restriction.scope : null;
  return [
    ...('exercise' in body ? [named('exercise', 'exercise', isExercise(body.exercise))] : []),
    ...('machine' in body ? [named('machine', 'machine', isMachine(body.machine))] : []),
    ...(body.kind === 'dated' ? [named('site', 'site', isSite(body.site))] : []),
    ...namedInHouse(body).map(({ field, kind, id }) =>
      named(field, kind, kind === 'exercise' ? isExercise(id) : kind === 'machine' ? isMachine(id) : isSite(id)),
    ),
    ...(scope?.kind === 'exercise'
      ? [named('restriction.scope.exercise', 'exercise', isExercise(scope.exercise))]
      : []),
  ];
};

const namedFacts = (body: FactBody, current: readonly Fact[]): readonly Named[] => {
  const stands = (id: string, kind: Fact['kind'], person: string): boolean =>
    current.some((fact) => fact.id === id && fact.kind === kind && 'person' in fact && fact.person === person);
  return [
    ...('card' in body && body.card !== null
      ? [named('card', 'issued card of this person', cardOf(current, body.card)?.person === body.person)]
      : []),
    ...(body.kind === 'read' ? [named('note', 'note', stands(body.note, 'noted', body.person))] : []),
    ...(body.kind === 'restriction lifted'
      ? [named('restriction', 'restriction', stands(body.restriction, 'restricted', body.person))]
      : []),
  ];
};

/** The decision that issued a card. */
export const cardOf = (current: readonly Fact[], card: CardId) => {
  for (const fact of current)
    if (fact.kind === 'decided' && fact.decision.kind === 'issue' && fact.decision.card.id === card)
      return fact.decision;
  return null;
};

const unknown = (field: string, what: string): Problem => ({
  what: `There is no such ${what} in this log.`,
  why: 'An entry about something unknown could never be shown or used.',
  whatToDo: `Choose the ${what} from the list, or enter it first.`,
  field,
});
