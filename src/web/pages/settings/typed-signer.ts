import type { Problem } from '#contract/problem.ts';
import type { Signer } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { isoOfDay, type Day } from '#units/day.ts';
import { chosenFrom, typedDay, typedWords } from '../record/typed-values.ts';
import type { Labels } from './at-its-field.ts';

/** Somebody who signs as text, the way it stands in the fields. */
export interface TypedSigner {
  readonly name: string;
  readonly role: string;
  readonly signsFor: string;
  readonly from: string;
  readonly until: string;
}

export const SIGNER_LABELS: Labels = {
  'signer.name': 'Name',
  'signer.role': 'Role',
  'signer.signsFor': 'Signs for',
  'signer.from': 'From',
  'signer.until': 'Until',
};

/** Somebody new begins today. */
export const typedSignerOf = (signer: Signer | null, today: Day): TypedSigner => ({
  name: signer?.name ?? '',
  role: signer?.role ?? 'deputy',
  signsFor: signer?.signsFor ?? '',
  from: signer === null ? isoOfDay(today) : isoOrEmpty(signer.from),
  until: isoOrEmpty(signer?.until),
});

const isoOrEmpty = (day: Day | null | undefined): string => (day === null || day === undefined ? '' : isoOfDay(day));

/** The signer that the fields come to, or null with every problem said. */
export const signerOf = (
  typed: TypedSigner,
  before: Signer | null,
  specialists: readonly Signer[],
  problems: Problem[],
): Signer | null => {
  const name = typedWords(typed.name, 'signer.name', problems);
  const id = before?.id ?? idOf<'signer'>(crypto.randomUUID());
  if (typed.role !== 'deputy') {
    const role = typed.role === 'physician' ? 'physician' : 'specialist';
    const [from, until] = [before?.from ?? null, before?.until ?? null];
    return name === null ? null : { id, name, role, signsFor: null, from, until };
  }
  const specialist = chosenFrom(specialists, typed.signsFor, 'signer.signsFor', problems);
  const from = typedDay(typed.from, 'signer.from', problems);
  const until = typedDay(typed.until, 'signer.until', problems);
  if (name === null || specialist === null || from === null || until === null) return null;
  return { id, name, role: 'deputy', signsFor: specialist.id, from, until };
};
