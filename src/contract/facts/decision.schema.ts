import { LOOSE_KINDS, MACHINE_KINDS } from '#domain/catalogue.ts';
import type { Change, Decision, ReplacementPolicy } from '#domain/decision.ts';
import type {
  CardId,
  ExerciseId,
  FactId,
  PersonId,
  ProgrammeVersionId,
  ProposalId,
  SessionId,
  TrackId,
} from '#domain/identity.ts';
import type { Anchor } from '#domain/mission-day.ts';
import { problemsOfLine } from '#domain/programme-line/written-line.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { issuedCard } from './issued-card.schema.ts';
import { bodySite } from './catalogue.schema.ts';
import { side } from './effort.schema.ts';
import { choice, listUpTo, variantOf } from './lists.schema.ts';
import { calendarDay, enteredLoad, enteredMass, numberFrom, wholeFrom } from './numbers.schema.ts';
import { raises } from './raise.schema.ts';
import { identity, sentence, sentenceOrNone } from './texts.schema.ts';

const anchor = z.union(
  [record({ on: calendarDay }), record({ from: choice(['launch', 'landing']), days: wholeFrom(-10_000, 10_000) })],
  { error: 'a day, or days from launch or landing' },
) satisfies z.ZodType<Anchor>;

const replacementPolicy = z.union(
  [choice(['work-matched', 'joint-matched', 'whole']), record({ share: numberFrom(0, 1.2) })],
  { error: '"work-matched", "joint-matched", "whole", or a share of body weight from 0 to 1.2' },
) satisfies z.ZodType<ReplacementPolicy>;

const shorthand = sentence.refine((line) => problemsOfLine(line).length === 0, {
  error: 'a line of shorthand such as 4 × 6 @ 80 %',
});

const change = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('fraction by'), by: numberFrom(-1, 1) }),
    record({ kind: z.literal('sets by'), by: wholeFrom(-10, 10) }),
    record({ kind: z.literal('leave out') }),
    record({ kind: z.literal('keep') }),
    record({ kind: z.literal('hold') }),
    record({ kind: z.literal('back off'), by: numberFrom(0, 1) }),
    record({ kind: z.literal('load'), load: enteredLoad }),
    record({ kind: z.literal('as written'), line: shorthand }),
  ],
  { error: variantOf(['fraction by', 'sets by', 'leave out', 'keep', 'hold', 'back off', 'load', 'as written']) },
) satisfies z.ZodType<Change>;

const person = identity<PersonId>();
const exercise = identity<ExerciseId>();
const from = calendarDay;

export const decision = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('follow'), person, programme: identity<ProgrammeVersionId>(), from: anchor }),
    record({
      kind: z.literal('adjust'),
      person,
      track: identity<TrackId>(),
      change,
      from,
      until: calendarDay.nullable(),
      reason: sentence,
    }),
    record({ kind: z.literal('end adjustment'), person, adjustment: identity<FactId>() }),
    record({
      kind: z.literal('replace body weight'),
      person,
      exercise,
      policy: replacementPolicy,
      reason: sentence,
    }),
    record({ kind: z.literal('fix body mass'), person, mass: enteredMass, from, reason: sentence }),
    record({ kind: z.literal('limit shoulders'), person, load: enteredLoad, from, reason: sentence }),
    record({ kind: z.literal('re-base'), person, exercise, from }),
    record({ kind: z.literal('raise'), person, from, raises }),
    record({
      kind: z.literal('decline'),
      person,
      proposal: identity<ProposalId>(),
      reason: sentenceOrNone,
    }),
    record({
      kind: z.literal('re-make'),
      person,
      day: calendarDay,
      session: identity<SessionId>(),
      here: listUpTo(20, choice([...MACHINE_KINDS, ...LOOSE_KINDS])),
      minutes: numberFrom(1, 1440),
      hurts: listUpTo(20, record({ site: bodySite, side: side.nullable(), score: numberFrom(0, 10) })),
      reason: sentence,
    }),
    record({ kind: z.literal('issue'), person, card: issuedCard, raises }),
    record({
      kind: z.literal('recall'),
      person,
      card: identity<CardId>(),
      because: identity<FactId>(),
      says: sentence,
    }),
  ],
  {
    error: variantOf([
      'follow',
      'adjust',
      'end adjustment',
      'replace body weight',
      'fix body mass',
      'limit shoulders',
      're-base',
      'raise',
      'decline',
      're-make',
      'issue',
      'recall',
    ]),
  },
) satisfies z.ZodType<Decision>;
