import type { Draft, FactBody } from '#domain/fact.ts';
import { idOf, type MissionId, type PersonId, type SignerId } from '#domain/identity.ts';
import type { BringInPlan } from './plan-bring-in.ts';
import { isIdOfNewMission } from './planning/read-missions.ts';
import { isIdOfNewPerson } from './planning/someone.ts';

export interface DraftOptions {
  /** Makes an identity that nothing else has. */
  readonly newId: () => string;
  readonly recordedBy: SignerId;
}

/** Gives each stand-in one identity of its own, the same wherever it stands. */
const identities = (newId: () => string): ((standIn: string) => string) => {
  const given = new Map<string, string>();
  return (standIn) => {
    const id = given.get(standIn) ?? newId();
    given.set(standIn, id);
    return id;
  };
};

const withIdentities = (body: FactBody, identityOf: (standIn: string) => string): FactBody => {
  const person =
    'person' in body && isIdOfNewPerson(body.person)
      ? { person: idOf<'person'>(identityOf(body.person)) satisfies PersonId }
      : {};
  const mission =
    'mission' in body && isIdOfNewMission(body.mission)
      ? { mission: idOf<'mission'>(identityOf(body.mission)) satisfies MissionId }
      : {};
  return { ...body, ...person, ...mission };
};

/** The drafts of a plan: all of them, or none where anything is open or refused. */
export const draftsOf = ({ ready, facts }: BringInPlan, { newId, recordedBy }: DraftOptions): readonly Draft[] => {
  if (!ready) return [];
  const identityOf = identities(newId);
  return facts.map(({ body, supersedes, reason }) => ({
    id: idOf<'fact'>(newId()),
    body: withIdentities(body, identityOf),
    recordedBy,
    supersedes,
    reason,
  }));
};
