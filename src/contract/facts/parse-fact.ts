import type { Draft, Fact, FactBody } from '#domain/fact.ts';
import type { z } from 'zod';
import { documentIssues } from './document-digests.ts';
import { draftEnvelopeSchema, envelopeSchema, isOfEnvelope } from './envelope.schema.ts';
import { factBodySchema } from './fact-body.schema.ts';
import { type FactIssue, factIssues } from './fact-issue.ts';

export interface RefusedFact {
  readonly kind: 'refused';
  readonly issues: readonly FactIssue[];
}

export type FactReading = { readonly kind: 'fact'; readonly fact: Fact } | RefusedFact;
export type BodyReading = { readonly kind: 'body'; readonly body: FactBody } | RefusedFact;
export type DraftReading = { readonly kind: 'draft'; readonly draft: Draft } | RefusedFact;

const refused = (issues: readonly FactIssue[]): RefusedFact => ({ kind: 'refused', issues });

const read = <Output>(
  schema: z.ZodType<Output>,
  json: unknown,
): { readonly issues: readonly FactIssue[]; readonly output: Output | null } => {
  const { success, data, error } = schema.safeParse(json, { reportInput: true });
  return success ? { issues: [], output: data } : { issues: factIssues(error), output: null };
};

/** Reads a fact as it stands in a file. Whether its digest belongs to it is asked elsewhere. */
export const parseFact = (json: unknown): FactReading => {
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    return refused(read(envelopeSchema, json).issues);
  const entries = Object.entries(json);
  const envelope = read(envelopeSchema, Object.fromEntries(entries.filter(([key]) => isOfEnvelope(key))));
  const body = read(factBodySchema, Object.fromEntries(entries.filter(([key]) => !isOfEnvelope(key))));
  return envelope.output && body.output
    ? { kind: 'fact', fact: { ...body.output, ...envelope.output } }
    : refused([...envelope.issues, ...body.issues]);
};

/** Reads what somebody wants to enter; documents inside must have the digest that they name. */
export const parseFactBody = (json: unknown): BodyReading => {
  const { issues, output } = read<FactBody>(factBodySchema, json);
  if (!output) return refused(issues);
  const ofDocuments = documentIssues(output);
  return ofDocuments.length > 0 ? refused(ofDocuments) : { kind: 'body', body: output };
};

/** Reads a draft: its body and who enters it, all issues at once. */
export const parseDraft = (draft: Draft): DraftReading => {
  const { body, ...beside } = draft;
  const envelope = read(draftEnvelopeSchema, beside);
  const reading = parseFactBody(body);
  return envelope.output && reading.kind === 'body'
    ? { kind: 'draft', draft: { ...envelope.output, body: reading.body } }
    : refused([...envelope.issues, ...(reading.kind === 'refused' ? reading.issues : [])]);
};
