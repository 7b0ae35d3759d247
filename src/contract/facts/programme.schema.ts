import type { ExerciseId, ItemId, ProgrammeId, ProgrammeVersionId, SessionId, TrackId } from '#domain/identity.ts';
import { LOOSE_KINDS, MACHINE_KINDS } from '#domain/catalogue.ts';
import {
  ITEM_CONDITIONS,
  PHASE_NAMES,
  type BoutsItem,
  type DrillItem,
  type DrillWork,
  type LiftItem,
  type LoadBasis,
  type ProgrammeItem,
  type ProgrammePhase,
  type ProgrammeSession,
  type ProgrammeVersion,
} from '#domain/programme.ts';
import type { AskedRepetitions } from '#domain/asked-sets.ts';
import { z } from 'zod';
import { asLiftWhereUnsaid, record } from './record.schema.ts';
import { boutIntensity } from './prescription.schema.ts';
import { effortBand } from './effort.schema.ts';
import { choice, listUpTo, variantOf } from './lists.schema.ts';
import { decimalPositive, enteredLoad, numberFrom, wholeFrom } from './numbers.schema.ts';
import { identity, name, sentenceOrNone } from './texts.schema.ts';

const fraction = numberFrom(0, 2);
const repetitions = wholeFrom(1, 1000);
const flightDay = wholeFrom(1, 10_000);

const loadBasis = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('fraction'), of: fraction }),
    record({
      kind: z.literal('from last'),
      start: z.union([fraction, z.literal('effort')], { error: 'a fraction of capacity, or "effort"' }),
      rule: record({ add: record({ kg: decimalPositive, lb: decimalPositive }) }),
    }),
    record({ kind: z.literal('effort'), rpe: effortBand }),
    record({ kind: z.literal('fixed'), load: enteredLoad }),
  ],
  { error: variantOf(['fraction', 'from last', 'effort', 'fixed']) },
) satisfies z.ZodType<LoadBasis>;

const anyItem = {
  id: identity<ItemId>(),
  track: identity<TrackId>(),
  exercise: identity<ExerciseId>(),
  machineKind: choice([...MACHINE_KINDS, ...LOOSE_KINDS]),
  /** The first programmes were for everyone. */
  condition: choice(ITEM_CONDITIONS).default('everyone'),
  priority: wholeFrom(1, 1000),
  shouldFeel: effortBand,
  source: sentenceOrNone,
};
const rest = numberFrom(0, 3600);
const seconds = numberFrom(1, 14_400);
const idle = numberFrom(0, 14_400);

const count = wholeFrom(0, 20);
/** The first programmes knew none. */
export const tempo = z.tuple([count, count, count], { error: 'seconds down, held and up' }).nullable().default(null);
export const supersetLetter = z.string().regex(/^[A-H]\d?$/, { error: 'a letter from A to H, with a digit or none' });

/** How many repetitions a set asks for, and whether it may be left out. */
export const askedSet = {
  repetitions,
  most: repetitions.exactOptional(),
  orMore: z.literal(true, { error: 'true, or not there' }).exactOptional(),
  optional: z.literal(true, { error: 'true, or not there' }).exactOptional(),
};
export const isRange = ({ repetitions: least, most }: AskedRepetitions): boolean => most === undefined || most > least;
export const RANGE_SAYS = { error: 'a range of repetitions, the smaller number first', path: ['most'] };

const programmeSet = record({ ...askedSet, rest, loadBy: fraction.exactOptional() }).refine(isRange, RANGE_SAYS);

const lift = record({
  ...anyItem,
  kind: z.literal('lift'),
  leading: z.boolean({ error: 'true or false' }),
  basis: loadBasis,
  warmUps: listUpTo(20, record({ of: fraction, repetitions })),
  sets: listUpTo(100, programmeSet),
  tempo,
  superset: supersetLetter.nullable().default(null),
  reserve: numberFrom(0, 20).nullable(),
}) satisfies z.ZodType<LiftItem>;

const bouts = record({
  ...anyItem,
  kind: z.literal('bouts'),
  warmUpSeconds: idle,
  bouts: listUpTo(100, record({ seconds, intensity: boutIntensity.nullable(), easy: idle })),
  coolDownSeconds: idle,
}) satisfies z.ZodType<BoutsItem>;

/** What one set of a drill asks for. */
export const drillWork = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('repetitions'), count: repetitions, most: repetitions.exactOptional() }).refine(
      ({ count: least, most }) => most === undefined || most > least,
      RANGE_SAYS,
    ),
    record({ kind: z.literal('hold'), seconds, most: seconds.exactOptional() }).refine(
      ({ seconds: least, most }) => most === undefined || most > least,
      RANGE_SAYS,
    ),
    record({ kind: z.literal('pulses'), count: repetitions, on: seconds, off: idle }),
  ],
  { error: variantOf(['repetitions', 'hold', 'pulses']) },
) satisfies z.ZodType<DrillWork>;

const drill = record({
  ...anyItem,
  kind: z.literal('drill'),
  sets: listUpTo(100, record({ work: drillWork, rest })),
  target: record({ kind: choice(['of critical force', 'of greatest grip']), of: fraction }).nullable(),
}) satisfies z.ZodType<DrillItem>;

/** The first programmes knew lifts only, and did not say so. */
const item = z.preprocess(
  asLiftWhereUnsaid,
  z.discriminatedUnion('kind', [lift, bouts, drill], { error: variantOf(['lift', 'bouts', 'drill']) }),
) satisfies z.ZodType<ProgrammeItem>;

const session = record({
  id: identity<SessionId>(),
  title: name,
  weekday: wholeFrom(1, 7),
  blockMinutes: numberFrom(0, 1440),
  items: listUpTo(100, item),
}) satisfies z.ZodType<ProgrammeSession>;

const flightDays = z
  .tuple([flightDay, flightDay.nullable()], { error: 'the first and the last flight day' })
  .refine(([first, last]) => last === null || first <= last, { error: 'two flight days, the earlier one first' });

const edge = record({ from: choice(['launch', 'landing']), days: wholeFrom(-2000, 2000) });
const span = record({ first: edge, last: edge.nullable() }).refine(
  ({ first, last }) => last === null || first.from !== last.from || first.days <= last.days,
  { error: 'two days, the earlier one first' },
);

const phaseContent = {
  name: choice(PHASE_NAMES),
  deload: record({ everyWeeks: wholeFrom(1, 100), fewerSets: wholeFrom(0, 100), loadBy: fraction }).nullable(),
  sessions: listUpTo(50, session),
  source: sentenceOrNone,
};

/** The first programmes knew days of the flight only: flight day 1 is launch day. */
const phaseInFlightDays = record({ ...phaseContent, flightDays }).transform(
  ({ flightDays: [first, last], ...content }): ProgrammePhase => ({
    ...content,
    span: {
      first: { from: 'launch', days: first - 1 },
      last: last === null ? null : { from: 'launch', days: last - 1 },
    },
  }),
);

/** A phase as it is written today. */
export const programmePhase = record({ ...phaseContent, span }) satisfies z.ZodType<ProgrammePhase>;

const phase = z.union([programmePhase, phaseInFlightDays]) satisfies z.ZodType<ProgrammePhase>;

export const programmeVersion = record({
  programme: identity<ProgrammeId>(),
  name,
  number: wholeFrom(1, 1_000_000),
  follows: identity<ProgrammeVersionId>().nullable(),
  phases: listUpTo(50, phase),
  id: identity<ProgrammeVersionId>(),
}) satisfies z.ZodType<ProgrammeVersion>;
