import type { FactId, ItemId, ProgrammeVersionId } from '#domain/identity.ts';
import type { FormulaText, Origin, Working, WorkingCell } from '#domain/working.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { listUpTo, variantOf } from './lists.schema.ts';
import { finite, wholeFrom } from './numbers.schema.ts';
import { identity, name, sentenceOrNone } from './texts.schema.ts';

const says = sentenceOrNone;

const origin = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('fact'), fact: identity<FactId>(), says }),
    record({
      kind: z.literal('estimate'),
      exercise: name,
      facts: listUpTo(10_000, identity<FactId>()),
      says,
    }),
    record({
      kind: z.literal('programme'),
      programme: identity<ProgrammeVersionId>(),
      item: identity<ItemId>(),
      says,
    }),
    record({ kind: z.literal('model'), formula: name, says }),
    record({ kind: z.literal('policy'), says }),
    record({ kind: z.literal('decision'), fact: identity<FactId>(), says }),
    record({ kind: z.literal('rounding'), says }),
  ],
  { error: variantOf(['fact', 'estimate', 'programme', 'model', 'policy', 'decision', 'rounding']) },
) satisfies z.ZodType<Origin>;

const revision = wholeFrom(0, 100_000);

const cell = record({
  name,
  formula: name,
  revision,
  title: sentenceOrNone,
  equation: sentenceOrNone,
  unit: sentenceOrNone,
  of: listUpTo(100, name),
  value: finite,
  outsideRange: listUpTo(100, sentenceOrNone),
}) satisfies z.ZodType<WorkingCell>;

export const working = record({
  reckoning: name,
  item: identity<ItemId>(),
  given: listUpTo(200, record({ name, value: finite, from: origin })),
  cells: listUpTo(200, cell),
}) satisfies z.ZodType<Working>;

export const formulaText = record({
  id: name,
  revision,
  title: sentenceOrNone,
  equation: sentenceOrNone,
  source: sentenceOrNone,
  status: sentenceOrNone,
  doesNotKnow: sentenceOrNone,
}) satisfies z.ZodType<FormulaText>;
