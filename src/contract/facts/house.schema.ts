import type { CatalogueEntry, Signer } from '#domain/fact.ts';
import type { ExerciseId, FactId, MachineId, PersonId, ProposalId, SignerId } from '#domain/identity.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { breathingRule } from './breathing.schema.ts';
import { exercise, machine, setting, site } from './catalogue.schema.ts';
import { decision } from './decision.schema.ts';
import { choice, listUpTo, variantOf } from './lists.schema.ts';
import { calendarDay, decimalPositive, placeInLog } from './numbers.schema.ts';
import type { BodyOf } from './people.schema.ts';
import { somePolicies } from './policies.schema.ts';
import { programmeVersion } from './programme.schema.ts';
import { restriction } from './restriction.schema.ts';
import { identity, name, sentence } from './texts.schema.ts';

const person = identity<PersonId>();

export const restricted = record({
  kind: z.literal('restricted'),
  person,
  restriction,
  medicalReason: sentence.nullable(),
}) satisfies z.ZodType<BodyOf<'restricted'>>;

export const restrictionLifted = record({
  kind: z.literal('restriction lifted'),
  person,
  restriction: identity<FactId>(),
  toldBy: name,
  on: calendarDay,
}) satisfies z.ZodType<BodyOf<'restriction lifted'>>;

export const breathingSet = record({
  kind: z.literal('breathing set'),
  person,
  rule: breathingRule,
  toldBy: name,
}) satisfies z.ZodType<BodyOf<'breathing set'>>;

const signer = record({
  id: identity<SignerId>(),
  name,
  role: choice(['specialist', 'physician', 'deputy']),
  signsFor: identity<SignerId>().nullable(),
  from: calendarDay.nullable(),
  until: calendarDay.nullable(),
}) satisfies z.ZodType<Signer>;

export const signs = record({ kind: z.literal('signs'), signer }) satisfies z.ZodType<BodyOf<'signs'>>;

const entry = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('site'), site }),
    record({ kind: z.literal('machine'), machine }),
    record({ kind: z.literal('exercise'), exercise }),
    record({ kind: z.literal('programme'), version: programmeVersion }),
  ],
  { error: variantOf(['site', 'machine', 'exercise', 'programme']) },
) satisfies z.ZodType<CatalogueEntry>;

export const catalogued = record({
  kind: z.literal('catalogued'),
  entry,
}) satisfies z.ZodType<BodyOf<'catalogued'>>;

export const calibrated = record({
  kind: z.literal('calibrated'),
  machine: identity<MachineId>(),
  day: calendarDay,
  factor: decimalPositive,
}) satisfies z.ZodType<BodyOf<'calibrated'>>;

export const setUp = record({
  kind: z.literal('set up'),
  person,
  machine: identity<MachineId>(),
  exercise: identity<ExerciseId>(),
  settings: listUpTo(50, setting),
}) satisfies z.ZodType<BodyOf<'set up'>>;

export const policiesSet = record({
  kind: z.literal('policies set'),
  policies: somePolicies,
}) satisfies z.ZodType<BodyOf<'policies set'>>;

export const decided = record({
  kind: z.literal('decided'),
  decision,
  answers: identity<ProposalId>().nullable(),
  basis: placeInLog,
}) satisfies z.ZodType<BodyOf<'decided'>>;

export const retracted = record({ kind: z.literal('retracted') }) satisfies z.ZodType<BodyOf<'retracted'>>;
