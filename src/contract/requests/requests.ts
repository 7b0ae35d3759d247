import { z } from 'zod';

const id = z.string().min(1).max(80);
const day = z.number().int();
const reason = z.string().trim().max(2000);
const line = z.string().trim().max(200);

/** Everything that is written names who writes it. */
const signed = { signer: id };

export const openRequest = z.strictObject({
  which: z.enum(['scenario', 'own']),
  signerName: z.string().trim().min(1).max(120).nullable(),
});

/** Facts that are typed by hand: the server checks the body against the log's own schema. */
export const recordRequest = z.strictObject({
  ...signed,
  entries: z
    .array(
      z.strictObject({
        body: z.unknown(),
        supersedes: id.nullable(),
        reason: reason.nullable(),
        /** "It is right as typed", where the program has asked. */
        sure: z.boolean().default(false),
      }),
    )
    .min(1)
    .max(50),
});

export const retractRequest = z.strictObject({ ...signed, fact: id, reason: reason.min(1) });

export const issuePreviewRequest = z.strictObject({ days: z.array(day).min(1).max(31) });
export const issueRequest = z.strictObject({
  ...signed,
  days: z.array(day).min(1).max(31),
  /** What the signer saw: refused where the log has moved on since. */
  basis: z.number().int(),
  /** Typed reasons for raises above the policy's step, by track. */
  reasons: z.record(z.string(), reason),
});

export const answerProposalRequest = z.strictObject({
  ...signed,
  person: id,
  answer: z.enum(['sign', 'decline']),
  reason: reason,
  /** Another number of sets than was proposed. */
  setsBy: z
    .number()
    .int()
    .min(-10)
    .max(10)
    .refine((by) => by !== 0, 'No set more and none fewer is no change: decline instead.')
    .nullable()
    .default(null),
  basis: z.number().int(),
});

/** What a line would make of an item: looked at, not signed. */
export const writtenRequest = z.strictObject({ track: id, day, line });

export const adjustRequest = z.strictObject({
  ...signed,
  change: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('hold') }),
    z.strictObject({ kind: z.literal('back off') }),
    z.strictObject({ kind: z.literal('leave out') }),
    z.strictObject({ kind: z.literal('keep') }),
    z.strictObject({ kind: z.literal('as written'), line }),
  ]),
  track: id,
  from: day,
  until: day.nullable(),
  reason: reason.min(1),
});

/** What is to stand in a cell: a line, nothing, or what the programme says. Lines are read, and refused, cell by cell. */
const cell = z.strictObject({
  track: id,
  day,
  change: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('as written'), line: z.string().trim().max(2000) }),
    z.strictObject({ kind: z.literal('leave out') }),
    z.strictObject({ kind: z.literal('as programmed') }),
  ]),
});

const cells = z.array(cell).min(1).max(400);

/** What cells would come to: looked at, not signed. */
export const cellsRequest = z.strictObject({ cells });

export const writeCellsRequest = z.strictObject({
  ...signed,
  cells,
  reason: reason.min(1),
  /** What the signer saw; null where one cell is written and seen as it is typed. */
  basis: z.number().int().nullable(),
});

export const policyRequest = z.strictObject({
  ...signed,
  exercise: id,
  policy: z.union([
    z.enum(['work-matched', 'joint-matched', 'whole']),
    z.strictObject({ share: z.number().min(0).max(1.2) }),
  ]),
  reason: reason.min(1),
});

export const followRequest = z.strictObject({ ...signed, programme: id, from: day });

export type OpenRequest = z.infer<typeof openRequest>;
export type RecordRequest = z.infer<typeof recordRequest>;
export type RetractRequest = z.infer<typeof retractRequest>;
export type IssuePreviewRequest = z.infer<typeof issuePreviewRequest>;
export type IssueRequest = z.infer<typeof issueRequest>;
export type AnswerProposalRequest = z.infer<typeof answerProposalRequest>;
export type AdjustRequest = z.infer<typeof adjustRequest>;
export type WrittenRequest = z.infer<typeof writtenRequest>;
export type CellAsked = z.infer<typeof cell>;
export type CellsRequest = z.infer<typeof cellsRequest>;
export type WriteCellsRequest = z.infer<typeof writeCellsRequest>;
export type PolicyRequest = z.infer<typeof policyRequest>;
export type FollowRequest = z.infer<typeof followRequest>;
