import type { CompareProgrammeRequest } from '#contract/requests/programme-requests.ts';
import { phasesOf, programmeOf, type Draft } from './draft.ts';

export type DraftRequest = Pick<CompareProgrammeRequest, 'programme' | 'name' | 'follows' | 'phases'>;

/** A draft as it is sent to be looked at, or taken up. */
export const draftRequest = (draft: Draft): DraftRequest => ({
  programme: programmeOf(draft),
  name: draft.name.trim(),
  follows: draft.follows,
  phases: phasesOf(draft),
});
