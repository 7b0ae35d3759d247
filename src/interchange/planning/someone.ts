import { idOf, type PersonId } from '#domain/identity.ts';
import type { PersonOnRecord } from './context.ts';

/** A person whom rows of the file are about. */
export interface Someone {
  /** The person's own, or one that stands for a new person until drafts are made. */
  readonly id: PersonId;
  readonly name: string;
  readonly onRecord: PersonOnRecord | null;
  readonly sex: 'female' | 'male' | null;
}

const NEW = 'new person: ';

export const idOfNewPerson = (key: string): PersonId => idOf<'person'>(`${NEW}${key}`);
export const isIdOfNewPerson = (id: string): boolean => id.startsWith(NEW);

/** Whom a row is about, as far as that is settled. */
export type Subject =
  | { readonly kind: 'someone'; readonly someone: Someone }
  /** A question about the name is open. */
  | { readonly kind: 'open' }
  | { readonly kind: 'left out' }
  /** The row names nobody: it may still tell of a mission. */
  | { readonly kind: 'nobody' };
