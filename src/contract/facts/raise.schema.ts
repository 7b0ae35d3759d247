import type { ExerciseId, FactId, ProposalId, TrackId } from '#domain/identity.ts';
import { RAISE_CAUSES, type Raise } from '#domain/raise.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { choice, listUpTo } from './lists.schema.ts';
import { decimalPositive, finite, increments, wholeFrom } from './numbers.schema.ts';
import { identity, name, sentence } from './texts.schema.ts';

const step = wholeFrom(0, 50).nullable();

export const raise = record({
  track: identity<TrackId>(),
  exercise: identity<ExerciseId>(),
  exerciseName: name,
  from: increments.nullable(),
  to: increments,
  unit: choice(['kg', 'lb', 'W', 'km/h', 'N']),
  increment: decimalPositive,
  atTheBar: finite.nullable(),
  trueFraction: record({ was: finite.nullable(), is: finite }).nullable(),
  effortStep: step,
  shareStep: step,
  cause: choice(RAISE_CAUSES),
  because: listUpTo(1000, identity<FactId>()),
  cautions: listUpTo(50, sentence),
  needsReason: z.boolean({ error: 'true or false' }),
  proposal: identity<ProposalId>().nullable(),
}) satisfies z.ZodType<Raise>;

export const raises = listUpTo(500, raise);
