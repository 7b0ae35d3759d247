import type { Card, CardItem, CardSet, LoadLimit, Ramp, SetLoad, SignedRule } from '#domain/card.ts';
import type {
  ExerciseId,
  ItemId,
  MachineId,
  PersonId,
  ProgrammeVersionId,
  SessionId,
  TrackId,
} from '#domain/identity.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { breathingRule } from './breathing.schema.ts';
import { setting } from './catalogue.schema.ts';
import { effortBand, side } from './effort.schema.ts';
import { choice, listUpTo, variantOf } from './lists.schema.ts';
import { calendarDay, decimalPositive, finite, increments, massUnit, numberFrom, wholeFrom } from './numbers.schema.ts';
import { raise } from './raise.schema.ts';
import { identity, name, sentence, sentenceOrNone } from './texts.schema.ts';

const yesOrNo = z.boolean({ error: 'true or false' });
const place = wholeFrom(0, 10_000);

const setLoad = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('set'), increments }),
    record({ kind: z.literal('start at'), increments, rpe: effortBand }),
  ],
  { error: variantOf(['set', 'start at']) },
) satisfies z.ZodType<SetLoad>;

const cardSet = record({
  kind: choice(['warm-up', 'work']),
  load: setLoad,
  repetitions: wholeFrom(0, 1000),
  side: side.nullable(),
  rest: numberFrom(0, 3600),
}) satisfies z.ZodType<CardSet>;

const loadLimit = record({
  kind: choice([
    'ceiling',
    'machine limit',
    'shoulder limit',
    'shoulder rule',
    'restriction',
    'gate',
    'never over',
    'back-off',
    'signed load',
  ]),
  increments,
  binds: yesOrNo,
  says: sentence,
}) satisfies z.ZodType<LoadLimit>;

const rule = record({
  add: increments,
  rpeAtMost: numberFrom(0, 10),
  discomfortBelow: numberFrom(0, 10),
  neverOver: increments,
  takeOff: increments,
  says: sentence,
}) satisfies z.ZodType<SignedRule>;

const ramp = record({
  effort: numberFrom(0, 2),
  share: numberFrom(0, 2),
  effortStep: place,
  shareStep: place,
  steps: place,
}) satisfies z.ZodType<Ramp>;

const item = record({
  item: identity<ItemId>(),
  track: identity<TrackId>(),
  leading: yesOrNo,
  place,
  exercise: identity<ExerciseId>(),
  exerciseName: name,
  carriedAtShoulders: yesOrNo,
  machine: identity<MachineId>(),
  machineName: name,
  unit: massUnit,
  increment: decimalPositive,
  priority: wholeFrom(1, 1000),
  basis: choice(['fraction', 'from last', 'effort', 'fixed']),
  /** Cards of the first program do not know it. */
  asWritten: sentence.nullable().default(null),
  settings: listUpTo(50, setting),
  last: sentenceOrNone.nullable(),
  cues: listUpTo(50, sentence),
  sets: listUpTo(100, cardSet),
  reserve: finite.nullable(),
  shouldFeel: effortBand,
  ramp: ramp.nullable(),
  rule: rule.nullable(),
  limits: listUpTo(100, loadLimit),
  raise: raise.nullable(),
  row: wholeFrom(0, 100_000_000).nullable(),
  says: listUpTo(100, sentence),
}) satisfies z.ZodType<CardItem>;

const minutes = record({ label: name, minutes: numberFrom(0, 1440), overhead: yesOrNo });

export const card = record({
  person: identity<PersonId>(),
  day: calendarDay,
  missionDay: name,
  phase: name,
  week: wholeFrom(1, 10_000),
  session: identity<SessionId>(),
  title: name,
  deload: yesOrNo,
  programme: record({
    id: identity<ProgrammeVersionId>(),
    name,
    number: wholeFrom(1, 1_000_000),
  }),
  items: listUpTo(100, item),
  leftOut: listUpTo(100, record({ item: identity<ItemId>(), exerciseName: name, says: sentence })),
  minutes: listUpTo(500, minutes),
  blockMinutes: numberFrom(0, 1440),
  shortOfTime: listUpTo(100, place),
  machineDown: sentenceOrNone,
  breathing: breathingRule,
}) satisfies z.ZodType<Card>;
