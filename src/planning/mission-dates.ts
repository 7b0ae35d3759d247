import type { Fact, Sequence } from '#domain/fact.ts';
import type { PersonId } from '#domain/identity.ts';
import type { Mission } from '#domain/known.ts';
import { currentFacts, factsOfKind, isKind } from '#domain/log.ts';

/** The mission of a person as it was dated from one place in the log on, until the next. */
export interface DatesFrom {
  readonly since: Fact;
  readonly mission: Mission | null;
}

/** How a person's mission and its dates changed, in order of the log. */
export const datesOverTime = (log: readonly Fact[], person: PersonId): readonly DatesFrom[] => {
  const dating = log.filter((fact) => isKind('dated')(fact) || (isKind('assigned')(fact) && fact.person === person));
  const ids = new Set(dating.map(({ id }) => id));
  const relevant = log.filter((fact) => ids.has(fact.id) || (fact.supersedes !== null && ids.has(fact.supersedes)));
  return relevant.reduce<readonly DatesFrom[]>((before, since) => {
    const mission = missionAt(relevant, since.sequence);
    return before.length > 0 && isSame(before.at(-1)?.mission ?? null, mission)
      ? before
      : [...before, { since, mission }];
  }, []);
};

const missionAt = (relevant: readonly Fact[], upTo: Sequence): Mission | null => {
  const current = currentFacts(relevant, upTo);
  const assigned = factsOfKind(current, 'assigned').at(-1);
  const dated = factsOfKind(current, 'dated').findLast(({ mission }) => mission === assigned?.mission);
  if (!dated) return null;
  const { mission: id, name, site, launch, landing } = dated;
  return { id, name, site, launch, landing };
};

const isSame = (a: Mission | null, b: Mission | null): boolean =>
  a?.id === b?.id &&
  a?.launch === b?.launch &&
  a?.landing?.earliest === b?.landing?.earliest &&
  a?.landing?.latest === b?.landing?.latest;

/** What stood when a fact was entered. */
export const datesWhen = (over: readonly DatesFrom[], entered: Sequence): Mission | null =>
  over.findLast(({ since }) => since.sequence <= entered)?.mission ?? null;
