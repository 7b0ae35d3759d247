import type {
  Card,
  CardBout,
  CardBouts,
  CardDrill,
  CardItem,
  CardLift,
  CardSet,
  LoadLimit,
  Ramp,
  SetLoad,
  SignedRule,
} from '#domain/card.ts';
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
import { askedSet, drillWork, isRange, RANGE_SAYS, supersetLetter, tempo } from './programme.schema.ts';
import { asLiftWhereUnsaid, record } from './record.schema.ts';
import { breathingRule } from './breathing.schema.ts';
import { setting } from './catalogue.schema.ts';
import { effortBand, side } from './effort.schema.ts';
import { choice, listUpTo, variantOf } from './lists.schema.ts';
import { calendarDay, decimalPositive, finite, increments, massUnit, numberFrom, wholeFrom } from './numbers.schema.ts';
import { raise, raises } from './raise.schema.ts';
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
  ...askedSet,
  repetitions: wholeFrom(0, 1000),
  side: side.nullable(),
  rest: numberFrom(0, 3600),
}).refine(isRange, RANGE_SAYS) satisfies z.ZodType<CardSet>;

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

const anyItem = {
  item: identity<ItemId>(),
  track: identity<TrackId>(),
  place,
  exercise: identity<ExerciseId>(),
  exerciseName: name,
  priority: wholeFrom(1, 1000),
  /** Cards of the first program do not know it. */
  asWritten: sentence.nullable().default(null),
  settings: listUpTo(50, setting),
  last: sentenceOrNone.nullable(),
  cues: listUpTo(50, sentence),
  shouldFeel: effortBand,
  says: listUpTo(100, sentence),
};
const machine = { machine: identity<MachineId>(), machineName: name };
const loads = { unit: massUnit, increment: decimalPositive };
const seconds = numberFrom(0, 14_400);
const row = wholeFrom(0, 100_000_000).nullable();
/** The first cards of these kinds do not tell it. */
const rowOfPiece = row.default(null);

const lift = record({
  ...anyItem,
  ...machine,
  ...loads,
  kind: z.literal('lift'),
  leading: yesOrNo,
  carriedAtShoulders: yesOrNo,
  basis: choice(['fraction', 'from last', 'effort', 'fixed']),
  sets: listUpTo(100, cardSet),
  /** The first cards knew neither. */
  tempo,
  superset: record({ letter: supersetLetter, inTurnWith: listUpTo(100, place) })
    .nullable()
    .default(null),
  reserve: finite.nullable(),
  ramp: ramp.nullable(),
  rule: rule.nullable(),
  limits: listUpTo(100, loadLimit),
  raise: raise.nullable(),
  row,
}) satisfies z.ZodType<CardLift>;

const heartRate = numberFrom(0, 300);

const bout = record({
  seconds,
  easy: seconds,
  heartRate: z.tuple([heartRate, heartRate], { error: 'two heart rates' }).nullable(),
  watts: numberFrom(0, 3000).nullable(),
  speed: numberFrom(0, 100).nullable(),
  rpe: effortBand,
}) satisfies z.ZodType<CardBout>;

const bouts = record({
  ...anyItem,
  ...machine,
  kind: z.literal('bouts'),
  warmUpSeconds: seconds,
  bouts: listUpTo(100, bout),
  coolDownSeconds: seconds,
  harness: record({
    ...loads,
    increments,
    ofBodyWeight: numberFrom(0, 2),
    share: numberFrom(0, 2).nullable().default(null),
  }).nullable(),
  raises,
  row: rowOfPiece,
}) satisfies z.ZodType<CardBouts>;

const drill = record({
  ...anyItem,
  kind: z.literal('drill'),
  means: name,
  sets: listUpTo(
    100,
    record({
      work: drillWork,
      side: side.nullable(),
      rest: numberFrom(0, 3600),
      force: numberFrom(0, 5000).nullable(),
    }),
  ),
  raises,
  row: rowOfPiece,
}) satisfies z.ZodType<CardDrill>;

/** Cards of the first program hold lifts only, and do not say so; the first ones of other kinds told their sums in sentences. */
const asItemOfToday = (json: unknown): unknown => {
  const told = asLiftWhereUnsaid(json);
  if (typeof told !== 'object' || told === null || !('working' in told) || !('says' in told)) return told;
  const { working, says, ...rest } = told;
  if (!Array.isArray(working) || !Array.isArray(says)) return told;
  const sentences: readonly unknown[] = [says, working];
  return { ...rest, says: sentences.flat() };
};

const item = z.preprocess(
  asItemOfToday,
  z.discriminatedUnion('kind', [lift, bouts, drill], { error: variantOf(['lift', 'bouts', 'drill']) }),
) satisfies z.ZodType<CardItem>;

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
