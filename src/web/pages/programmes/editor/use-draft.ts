import { useEffect, useState } from 'react';
import { doAgain, NO_STEPS, takeBack, withStep, type Steps } from '#web/parts/block/undo.ts';
import type { Draft } from './draft.ts';
import { canKeep, forgetDraft, keepDraft, keptDraft } from './kept-draft.ts';

/** What was changed, with a name where many strokes of the keyboard are one step. */
interface Step {
  readonly was: Draft;
  readonly is: Draft;
  readonly stroke: string | null;
}

export interface Editing {
  readonly draft: Draft;
  /** One step that can be taken back; strokes of one name that follow each other are one. */
  readonly change: (next: Draft, stroke?: string) => void;
  readonly undo: () => boolean;
  readonly redo: () => boolean;
  /** Is there anything that was not in the version it was made from? */
  readonly isTouched: boolean;
  /** False where the browser keeps nothing: then a reload loses the draft. */
  readonly isKept: boolean;
  readonly startAnew: () => void;
  readonly forget: () => void;
}

/** A draft with what was done to it, kept in this browser under the version it was made from. */
export const useDraft = (from: string, start: Draft): Editing => {
  const [{ draft, steps }, set] = useState<{ readonly draft: Draft; readonly steps: Steps<Step> }>(() => ({
    draft: keptDraft(from) ?? start,
    steps: NO_STEPS,
  }));
  const [isKept] = useState(canKeep);
  const isTouched = JSON.stringify(draft) !== JSON.stringify(start);
  useEffect(() => {
    if (isTouched) keepDraft(from, draft);
    else forgetDraft(from);
  }, [from, draft, isTouched]);
  const turn = (made: ReturnType<typeof takeBack<Step>>, to: 'was' | 'is'): boolean => {
    if (made) set({ draft: made.step[to], steps: made.steps });
    return made !== null;
  };
  return {
    draft,
    change: (next, stroke) =>
      set((now) => ({
        draft: next,
        steps: stepsWith(now.steps, { was: now.draft, is: next, stroke: stroke ?? null }),
      })),
    undo: () => turn(takeBack(steps), 'was'),
    redo: () => turn(doAgain(steps), 'is'),
    isTouched,
    isKept,
    startAnew: () =>
      set((now) => ({ draft: start, steps: withStep(now.steps, { was: now.draft, is: start, stroke: null }) })),
    forget: () => forgetDraft(from),
  };
};

const stepsWith = (steps: Steps<Step>, step: Step): Steps<Step> => {
  const [last] = steps.done.slice(-1);
  return last && step.stroke !== null && last.stroke === step.stroke && steps.takenBack.length === 0
    ? { ...steps, done: [...steps.done.slice(0, -1), { ...last, is: step.is }] }
    : withStep(steps, step);
};
