import type { CardId, FactId, ItemId, PersonId, ProgrammeVersionId, SetId, SignerId } from '#domain/identity.ts';
import type { IssuedCard, IssuedSet } from '#domain/issued-card.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { card } from './card.schema.ts';
import { machine } from './catalogue.schema.ts';
import { estimate } from './estimate.schema.ts';
import { listUpTo } from './lists.schema.ts';
import { calendarDay, placeInLog, wholeFrom } from './numbers.schema.ts';
import { raises } from './raise.schema.ts';
import { digest, identity, moment, name } from './texts.schema.ts';
import { formulaText, working } from './working.schema.ts';

const issuedSet = record({
  id: identity<SetId>(),
  item: identity<ItemId>(),
  place: wholeFrom(0, 1000),
}) satisfies z.ZodType<IssuedSet>;

const basis = record({
  upTo: placeInLog,
  facts: listUpTo(100_000, identity<FactId>()),
  programme: identity<ProgrammeVersionId>(),
  estimates: listUpTo(500, estimate),
  machines: listUpTo(100, machine),
  program: name,
}) satisfies z.ZodType<IssuedCard['basis']>;

export const issuedCard = record({
  document: z.literal('ballast issued card', { error: '"ballast issued card"' }),
  version: z.literal(1, { error: '1, the version of the document that this program writes' }),
  id: identity<CardId>(),
  replaces: identity<CardId>().nullable(),
  issuedAt: moment,
  issuedBy: record({ id: identity<SignerId>(), name, signsFor: name.nullable() }),
  validUntil: calendarDay,
  person: record({ id: identity<PersonId>(), name }),
  mission: record({ name, launch: calendarDay }),
  card,
  sets: listUpTo(5000, issuedSet),
  raises,
  workings: listUpTo(5000, working),
  formulas: listUpTo(500, formulaText),
  basis,
  digest,
}) satisfies z.ZodType<IssuedCard>;
