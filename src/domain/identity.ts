declare const kindOfId: unique symbol;
type Id<Kind extends string> = string & { readonly [kindOfId]: Kind };

export type FactId = Id<'fact'>;
export type PersonId = Id<'person'>;
export type SignerId = Id<'signer'>;
export type MissionId = Id<'mission'>;
export type SiteId = Id<'site'>;
export type MachineId = Id<'machine'>;
export type ExerciseId = Id<'exercise'>;
export type ProgrammeId = Id<'programme'>;
export type ProgrammeVersionId = Id<'programme version'>;
export type SessionId = Id<'session'>;
export type ItemId = Id<'item'>;
/** A named line of the programme whose identity runs through weeks and versions: "squat heavy". */
export type TrackId = Id<'track'>;
export type CardId = Id<'card'>;
export type SetId = Id<'set'>;
export type ProposalId = Id<'proposal'>;
export type Digest = Id<'SHA-256, hexadecimal'>;

/** A moment in UTC, such as 2026-11-25T10:18:19.123Z. */
export type Instant = string & { readonly [kindOfId]: 'UTC instant' };

/** Gives an identity its kind. The text itself is made by whoever has chance at hand. */
export const idOf = <Kind extends string>(text: string): Id<Kind> => {
  if (text === '') throw new RangeError('An identity cannot be empty.');
  return text as Id<Kind>;
};

export const instant = (text: string): Instant => {
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/.test(text))
    throw new RangeError(`"${text}" is not a moment in UTC such as 2026-11-25T10:18:19.123Z.`);
  return text as Instant;
};
