import type { Draft, Fact, FactBody, Sequence } from './fact.ts';
import { idOf, instant } from './identity.ts';
import { enterInLog } from './log.ts';

/** One line of a log that a test writes: what is said, and which earlier line (from 1) it corrects. */
export type Line = FactBody | { readonly corrects: number; readonly by: FactBody };

const draftOf = (line: Line, place: number): Draft => {
  const [body, corrected] = 'by' in line ? [line.by, line.corrects] : [line, null];
  return {
    id: idOf<'fact'>(`f-${place + 1}`),
    body,
    recordedBy: idOf<'signer'>('ingrid'),
    supersedes: corrected === null ? null : idOf<'fact'>(`f-${corrected}`),
    reason: corrected === null ? null : 'mistyped',
  };
};

/** A log of these lines, in this order. */
export const logOf = (...lines: readonly Line[]): readonly Fact[] =>
  lines.map((line, place) =>
    enterInLog(draftOf(line, place), (place + 1) as Sequence, instant('2027-03-01T10:00:00.000Z')),
  );

export const upTo = (place: number): Sequence => place as Sequence;
