import type { ExerciseId } from '#domain/identity.ts';
import type { Restriction, RestrictionLimit, RestrictionScope } from '#domain/restriction.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { bodySite, pattern } from './catalogue.schema.ts';
import { side } from './effort.schema.ts';
import { variantOf } from './lists.schema.ts';
import { calendarDay, enteredLoad, numberFrom } from './numbers.schema.ts';
import { identity, name } from './texts.schema.ts';

const scope = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('exercise'), exercise: identity<ExerciseId>() }),
    record({ kind: z.literal('pattern'), pattern }),
    record({ kind: z.literal('site'), site: bodySite, side: side.nullable() }),
    record({ kind: z.literal('all') }),
  ],
  { error: variantOf(['exercise', 'pattern', 'site', 'all']) },
) satisfies z.ZodType<RestrictionScope>;

const limit = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('forbidden') }),
    record({ kind: z.literal('load at most'), load: enteredLoad }),
    record({ kind: z.literal('fraction at most'), of: numberFrom(0, 1) }),
    record({ kind: z.literal('RPE at most'), rpe: numberFrom(0, 10) }),
    record({ kind: z.literal('no straining') }),
  ],
  { error: variantOf(['forbidden', 'load at most', 'fraction at most', 'RPE at most', 'no straining']) },
) satisfies z.ZodType<RestrictionLimit>;

export const restriction = record({
  scope,
  limit,
  toldBy: name,
  toldOn: calendarDay,
  confirmed: z.boolean({ error: 'true or false' }),
  from: calendarDay,
  reviewOn: calendarDay.nullable(),
}) satisfies z.ZodType<Restriction>;
