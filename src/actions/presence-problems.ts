import type { Fact, FactBody } from '#domain/fact.ts';
import type { CardId } from '#domain/identity.ts';
import type { Problem } from '#contract/problem.ts';

type Named = { readonly field: string; readonly what: string; readonly there: boolean };

/** Everything that an entry names must be in the log, or come with it. */
export const presenceProblems = (
  body: FactBody,
  bodies: readonly FactBody[],
  current: readonly Fact[],
): readonly Problem[] =>
  named(body, bodies, current).flatMap(({ field, what, there }) => (there ? [] : [unknown(field, what)]));

const named = (body: FactBody, bodies: readonly FactBody[], current: readonly Fact[]): readonly Named[] => {
  const is = (field: string, what: string, there: boolean): Named => ({ field, what, there });
  const entered = (of: (entry: CatalogueEntry) => boolean): boolean =>
    bodies.some((each) => each.kind === 'catalogued' && of(each.entry));
  const stands = (id: string, kind: Fact['kind']): boolean =>
    current.some((fact) => fact.id === id && fact.kind === kind);
  return [
    ...('person' in body && body.kind !== 'introduced'
      ? [
          is(
            'person',
            'person',
            bodies.some((each) => each.kind === 'introduced' && each.person === body.person),
          ),
        ]
      : []),
    ...('exercise' in body
      ? [
          is(
            'exercise',
            'exercise',
            entered((entry) => entry.kind === 'exercise' && entry.exercise.id === body.exercise),
          ),
        ]
      : []),
    ...('machine' in body
      ? [
          is(
            'machine',
            'machine',
            entered((entry) => entry.kind === 'machine' && entry.machine.id === body.machine),
          ),
        ]
      : []),
    ...('site' in body && body.kind === 'dated'
      ? [
          is(
            'site',
            'site',
            entered((entry) => entry.kind === 'site' && entry.site.id === body.site),
          ),
        ]
      : []),
    ...('mission' in body && body.kind === 'assigned'
      ? [
          is(
            'mission',
            'mission',
            bodies.some((each) => each.kind === 'dated' && each.mission === body.mission),
          ),
        ]
      : []),
    ...('card' in body && body.card !== null
      ? [is('card', 'issued card of this person', cardOf(current, body.card)?.person === body.person)]
      : []),
    ...(body.kind === 'read' ? [is('note', 'note', stands(body.note, 'noted'))] : []),
    ...(body.kind === 'restriction lifted'
      ? [is('restriction', 'restriction', stands(body.restriction, 'restricted'))]
      : []),
    ...scopeOf(body, (exercise) => entered((entry) => entry.kind === 'exercise' && entry.exercise.id === exercise)),
  ];
};

type CatalogueEntry = Extract<FactBody, { readonly kind: 'catalogued' }>['entry'];

const scopeOf = (body: FactBody, there: (exercise: string) => boolean): readonly Named[] =>
  body.kind === 'restricted' && body.restriction.scope.kind === 'exercise'
    ? [{ field: 'restriction.scope.exercise', what: 'exercise', there: there(body.restriction.scope.exercise) }]
    : [];

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
