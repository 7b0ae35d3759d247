import type { Effort, Side } from '#domain/effort.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { choice, variantOf } from './lists.schema.ts';
import { numberFrom } from './numbers.schema.ts';

export const side = choice(['left', 'right']) satisfies z.ZodType<Side>;

export const effort = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('RPE'), value: numberFrom(1, 10) }),
    record({ kind: z.literal('repetitions in reserve'), value: numberFrom(0, 10) }),
  ],
  { error: variantOf(['RPE', 'repetitions in reserve']) },
) satisfies z.ZodType<Effort>;

/** Two ratings, the lower first. */
export const effortBand = z
  .tuple([numberFrom(0, 10), numberFrom(0, 10)], { error: 'two ratings of effort from 0 to 10' })
  .refine(([from, to]) => from <= to, { error: 'two ratings of effort, the lower one first' });
