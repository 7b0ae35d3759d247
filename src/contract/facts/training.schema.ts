import type { PieceResult, SetResult } from '#domain/fact.ts';
import type { CardId, ExerciseId, FactId, ItemId, MachineId, PersonId, SetId } from '#domain/identity.ts';
import { SQUAT_GATES, WAYS_OF_WATCHING } from '#domain/squat-gate.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { bodySite } from './catalogue.schema.ts';
import { effort, side } from './effort.schema.ts';
import { choice, listUpTo } from './lists.schema.ts';
import { calendarDay, enteredLoad, numberFrom, wholeFrom } from './numbers.schema.ts';
import type { BodyOf } from './people.schema.ts';
import { identity, name, note, sentence, sentenceOrNone } from './texts.schema.ts';

const person = identity<PersonId>();
const card = identity<CardId>();
const item = identity<ItemId>();
/** 0: it was tried and did not move. */
const repetitions = wholeFrom(0, 1000);

export const lifted = record({
  kind: z.literal('lifted'),
  person,
  day: calendarDay,
  exercise: identity<ExerciseId>(),
  machine: identity<MachineId>(),
  load: enteredLoad,
  repetitions,
  effort: effort.nullable(),
  side: side.nullable(),
}) satisfies z.ZodType<BodyOf<'lifted'>>;

export const judged = record({
  kind: z.literal('judged'),
  person,
  day: calendarDay,
  gate: choice(SQUAT_GATES),
  passed: z.boolean({ error: 'true or false' }),
  observedBy: name,
  watched: choice(WAYS_OF_WATCHING),
}) satisfies z.ZodType<BodyOf<'judged'>>;

export const lookedAt = record({
  kind: z.literal('looked at'),
  person,
  day: calendarDay,
  what: z.literal('hands and shoulders', { error: '"hands and shoulders"' }),
  passed: z.boolean({ error: 'true or false' }),
  observedBy: name,
}) satisfies z.ZodType<BodyOf<'looked at'>>;

export const carried = record({
  kind: z.literal('carried'),
  person,
  day: calendarDay,
  load: enteredLoad,
}) satisfies z.ZodType<BodyOf<'carried'>>;

const setResult = record({
  set: identity<SetId>(),
  repetitions,
  load: enteredLoad,
  effort: effort.nullable(),
  side: side.nullable(),
}) satisfies z.ZodType<SetResult>;

const pieceResult = record({
  item,
  done: wholeFrom(0, 1000),
  minutes: numberFrom(0, 1440).nullable(),
  watts: numberFrom(0, 3000).nullable(),
  speed: numberFrom(0, 100).nullable(),
  harness: enteredLoad.nullable(),
  heartRate: numberFrom(20, 260).nullable(),
  effort: effort.nullable(),
}) satisfies z.ZodType<PieceResult>;

export const trained = record({
  kind: z.literal('trained'),
  person,
  day: calendarDay,
  card,
  sets: listUpTo(1000, setResult),
  /** The first program knew lifts only. */
  pieces: listUpTo(100, pieceResult).default([]),
  sessionRpe: numberFrom(0, 10).nullable(),
  minutes: numberFrom(0, 1440).nullable(),
}) satisfies z.ZodType<BodyOf<'trained'>>;

export const hurt = record({
  kind: z.literal('hurt'),
  person,
  day: calendarDay,
  card: card.nullable(),
  item: item.nullable(),
  site: bodySite,
  side: side.nullable(),
  score: numberFrom(0, 10),
  when: choice(['during', 'next morning']),
}) satisfies z.ZodType<BodyOf<'hurt'>>;

export const noted = record({
  kind: z.literal('noted'),
  person,
  day: calendarDay,
  card: card.nullable(),
  item: item.nullable(),
  text: note,
}) satisfies z.ZodType<BodyOf<'noted'>>;

export const read = record({
  kind: z.literal('read'),
  person,
  note: identity<FactId>(),
}) satisfies z.ZodType<BodyOf<'read'>>;

export const calledOff = record({
  kind: z.literal('called off'),
  person,
  day: calendarDay,
  card: card.nullable(),
  cause: choice(['medical', 'machine', 'operations', 'travel', 'rest by agreement']),
  text: sentenceOrNone,
}) satisfies z.ZodType<BodyOf<'called off'>>;

export const missed = record({
  kind: z.literal('missed'),
  person,
  day: calendarDay,
  card,
}) satisfies z.ZodType<BodyOf<'missed'>>;

export const received = record({
  kind: z.literal('received'),
  person,
  card,
  what: choice(['card', 'recall']),
  how: sentence,
  on: calendarDay,
}) satisfies z.ZodType<BodyOf<'received'>>;
