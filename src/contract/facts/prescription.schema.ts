import type { BoutIntensity } from '#domain/prescription.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { variantOf } from './lists.schema.ts';
import { numberFrom } from './numbers.schema.ts';

const spanFrom = (least: number, most: number) =>
  record({ least: numberFrom(least, most), most: numberFrom(least, most) }).refine((span) => span.least <= span.most, {
    error: 'two numbers, the smaller one first',
  });

const share = spanFrom(0, 2);

/** How hard a bout of endurance is meant to be. */
export const boutIntensity = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('of heart-rate reserve'), of: share }),
    record({ kind: z.literal('of greatest heart rate'), of: share }),
    record({ kind: z.literal('of greatest uptake'), of: share }),
    record({ kind: z.literal('watts'), watts: spanFrom(0, 2000) }),
    record({ kind: z.literal('RPE'), rating: spanFrom(0, 10) }),
    record({ kind: z.literal('all-out') }),
  ],
  {
    error: variantOf([
      'of heart-rate reserve',
      'of greatest heart rate',
      'of greatest uptake',
      'watts',
      'RPE',
      'all-out',
    ]),
  },
) satisfies z.ZodType<BoutIntensity>;
