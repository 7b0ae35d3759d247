import { BODY_SITES, LOOSE_KINDS, MACHINE_KINDS } from '#domain/catalogue.ts';
import { z } from 'zod';

const id = z.string().min(1).max(80);

/** What is there, how long, and what hurts: looked at, not signed. */
export const reMakeRequest = z.strictObject({
  day: z.number().int(),
  session: id,
  here: z.array(z.enum([...MACHINE_KINDS, ...LOOSE_KINDS])).max(20),
  minutes: z.number(),
  hurts: z
    .array(
      z.strictObject({ site: z.enum(BODY_SITES), side: z.enum(['left', 'right']).nullable(), score: z.number().int() }),
    )
    .max(20),
});

export const signedReMakeRequest = reMakeRequest.extend({
  signer: id,
  reason: z.string().trim().min(1).max(2000),
  /** What the signer saw: refused where the log has moved on since. */
  basis: z.number().int(),
});

export type ReMakeRequest = z.infer<typeof reMakeRequest>;
export type SignedReMakeRequest = z.infer<typeof signedReMakeRequest>;

/** What comes back when it is signed: the card's code, and its text for a telephone. */
export interface ReMadeAnswer {
  readonly card: string;
  readonly code: string;
  readonly text: string;
  readonly messages: number;
}
