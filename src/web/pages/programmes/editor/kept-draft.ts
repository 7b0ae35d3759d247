import type { Draft } from './draft.ts';

/** Drafts stay in this browser, so that neither a reload nor a closed window loses one. */
const FORMAT = 1;

const keyOf = (from: string): string => `programme draft ${from}`;

/** Some browsers keep nothing, by choice of whoever uses them. */
export const canKeep = (): boolean => {
  try {
    localStorage.setItem(keyOf('tried'), '');
    localStorage.removeItem(keyOf('tried'));
    return true;
  } catch {
    return false;
  }
};

export const keepDraft = (from: string, draft: Draft): void => {
  try {
    localStorage.setItem(keyOf(from), JSON.stringify({ format: FORMAT, draft }));
  } catch {
    // The page says that nothing is kept.
  }
};

export const forgetDraft = (from: string): void => {
  try {
    localStorage.removeItem(keyOf(from));
  } catch {
    // Then nothing was kept.
  }
};

/** The draft of a version that is kept here, or null where there is none that can be read. */
export const keptDraft = (from: string): Draft | null => {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(keyOf(from)) ?? 'null');
    return isKept(kept) ? kept.draft : null;
  } catch {
    return null;
  }
};

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Written by this page alone: the frame tells whether this page can read it. */
const isKept = (kept: unknown): kept is { readonly draft: Draft } =>
  isRecord(kept) &&
  kept['format'] === FORMAT &&
  isRecord(kept['draft']) &&
  typeof kept['draft']['name'] === 'string' &&
  Array.isArray(kept['draft']['phases']) &&
  kept['draft']['phases'].every(
    (phase: unknown) =>
      isRecord(phase) &&
      isRecord(phase['span']) &&
      Array.isArray(phase['sessions']) &&
      phase['sessions'].every((session: unknown) => isRecord(session) && Array.isArray(session['slots'])),
  );
