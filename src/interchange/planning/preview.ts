import type { Issue, Preview, PreviewPerson } from '#contract/bring-in.ts';
import type { FactBody } from '#domain/fact.ts';
import type { PlannedFact } from './planned-fact.ts';
import { isIdOfNewPerson } from './someone.ts';

const ofKind = (facts: readonly PlannedFact[], kind: FactBody['kind']): readonly PlannedFact[] =>
  facts.filter(({ body }) => body.kind === kind);

const personOf = (name: string, id: string, facts: readonly PlannedFact[]): PreviewPerson => ({
  name,
  isNew: isIdOfNewPerson(id),
  tests: ofKind(facts, 'lifted').length,
  measurements: ofKind(facts, 'measured').length,
  lines: facts.map(({ rows, says }) => ({ rows, says })),
});

/** What would be recorded, by person, and what would not. */
export const previewOf = (facts: readonly PlannedFact[], issues: readonly Issue[]): Preview => {
  const byPerson = new Map<string, { readonly name: string; readonly facts: PlannedFact[] }>();
  for (const fact of facts) {
    if (!fact.someone) continue;
    const { id, name } = fact.someone;
    const entry = byPerson.get(id) ?? { name, facts: [] };
    entry.facts.push(fact);
    byPerson.set(id, entry);
  }
  const people = [...byPerson]
    .map(([id, { name, facts: own }]) => personOf(name, id, own))
    .toSorted((one, other) => one.name.localeCompare(other.name, 'en'));
  const missions = ofKind(facts, 'dated');
  return {
    people,
    missions: missions.map(({ rows, says }) => ({ rows, says })),
    totals: {
      people: people.length,
      newPeople: people.filter(({ isNew }) => isNew).length,
      tests: ofKind(facts, 'lifted').length,
      measurements: ofKind(facts, 'measured').length,
      missions: missions.length,
      facts: facts.length,
    },
    passedOver: issues.filter(({ kind }) => kind === 'passed over'),
  };
};
