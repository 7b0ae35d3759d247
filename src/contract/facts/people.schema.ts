import { SET_ASIDE, type Fact, type FactBody } from '#domain/fact.ts';
import type { MissionId, PersonId, SiteId } from '#domain/identity.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { choice, listUpTo, variantOf } from './lists.schema.ts';
import { calendarDay, decimalNotNegative, decimalPositive, enteredMass, numberFrom } from './numbers.schema.ts';
import { identity, name, sentenceOrNone } from './texts.schema.ts';

export type BodyOf<Kind extends FactBody['kind']> = Extract<FactBody, { readonly kind: Kind }>;

const person = identity<PersonId>();

export const introduced = record({
  kind: z.literal('introduced'),
  person,
  name,
  sex: choice(['female', 'male']),
  birthDate: calendarDay.nullable(),
  trainingAge: record({ text: decimalNotNegative, unit: z.literal('years', { error: '"years"' }) }).nullable(),
}) satisfies z.ZodType<BodyOf<'introduced'>>;

export const measured = z.discriminatedUnion(
  'what',
  [
    record({
      kind: z.literal('measured'),
      person,
      day: calendarDay,
      what: z.literal('body mass'),
      value: enteredMass,
    }),
    record({
      kind: z.literal('measured'),
      person,
      day: calendarDay,
      what: z.literal('stature'),
      value: record({ text: decimalPositive, unit: choice(['cm', 'in']) }),
    }),
  ],
  { error: variantOf(['body mass', 'stature']) },
) satisfies z.ZodType<BodyOf<'measured'>>;

type Landing = Fact<'dated'>['landing'];

const landing = record({ earliest: calendarDay, latest: calendarDay })
  .refine(({ earliest, latest }) => earliest <= latest, { error: 'two days, the earlier one first' })
  .nullable() satisfies z.ZodType<Landing>;

export const dated = record({
  kind: z.literal('dated'),
  mission: identity<MissionId>(),
  name,
  site: identity<SiteId>(),
  launch: calendarDay,
  landing,
}).refine((mission) => mission.landing === null || mission.launch <= mission.landing.earliest, {
  error: 'a landing on or after the day of launch',
  path: ['landing'],
}) satisfies z.ZodType<BodyOf<'dated'>>;

export const assigned = record({
  kind: z.literal('assigned'),
  person,
  mission: identity<MissionId>(),
  role: choice(['prime', 'backup']),
  team: choice(['ours', 'another team']),
  /** The first program did not ask. */
  spaceWalks: z.boolean({ error: 'true or false' }).default(false),
}) satisfies z.ZodType<BodyOf<'assigned'>>;

export const stays = record({
  kind: z.literal('stays'),
  person,
  site: identity<SiteId>(),
  from: calendarDay,
  until: calendarDay.nullable(),
}).refine(({ from, until }) => until === null || from <= until, {
  error: 'two days, the earlier one first',
  path: ['until'],
}) satisfies z.ZodType<BodyOf<'stays'>>;

const twoDays = { error: 'two days, the earlier one first', path: ['until'] };
const minutesOfDay = numberFrom(0, 1440);

export const available = record({
  kind: z.literal('available'),
  person,
  from: calendarDay,
  until: calendarDay.nullable(),
  minutes: listUpTo(7, minutesOfDay).refine((each) => each.length === 7, { error: 'minutes of seven days' }),
}).refine(({ from, until }) => until === null || from <= until, twoDays) satisfies z.ZodType<BodyOf<'available'>>;

export const setAside = record({
  kind: z.literal('set aside'),
  person,
  from: calendarDay,
  until: calendarDay,
  what: choice(SET_ASIDE),
  minutes: minutesOfDay,
  text: sentenceOrNone,
}).refine(({ from, until }) => from <= until, twoDays) satisfies z.ZodType<BodyOf<'set aside'>>;

export const spaceWalk = record({
  kind: z.literal('space walk'),
  person,
  day: calendarDay,
  text: sentenceOrNone,
}) satisfies z.ZodType<BodyOf<'space walk'>>;

export const roadHolds = record({
  kind: z.literal('road holds'),
  person,
  from: calendarDay,
  until: calendarDay.nullable(),
  text: sentenceOrNone,
}).refine(({ from, until }) => until === null || from <= until, twoDays) satisfies z.ZodType<BodyOf<'road holds'>>;
