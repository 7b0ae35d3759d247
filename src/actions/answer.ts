import type { Fact } from '#domain/fact.ts';
import type { Problem } from '#contract/problem.ts';
import type { Transacted } from '#storage/transaction.ts';

export interface Refusal {
  readonly kind: 'refused';
  /** Whether asking differently helps; where it was not written, nothing changed and the same may be asked again. */
  readonly because: 'request' | 'moved on' | 'not written';
  readonly problems: readonly Problem[];
}

/** What became of an action: all of it, or nothing. */
export type Answer<Result> =
  { readonly kind: 'done'; readonly result: Result; readonly facts: readonly Fact[] } | Refusal;

/** The field that a refusal names where the log has moved on since the asker looked. */
const BASIS = 'basis';

export const refused = (problems: readonly Problem[]): Refusal => ({
  kind: 'refused',
  because: problems.some((problem) => problem.field === BASIS) ? 'moved on' : 'request',
  problems,
});

/** What a transaction gives back that writes nothing. */
export const notBuilt = (
  ...problems: readonly Problem[]
): { readonly kind: 'refused'; readonly problems: readonly Problem[] } => ({ kind: 'refused', problems });

export const answerOf = <Result>(transacted: Transacted<Result>): Answer<Result> => {
  switch (transacted.kind) {
    case 'committed':
      return { kind: 'done', result: transacted.result, facts: transacted.facts };
    case 'refused':
      return refused(transacted.problems);
    case 'not written':
      return { kind: 'refused', because: 'not written', problems: [transacted.problem] };
  }
};

export const movedOn = (): Problem => ({
  what: 'The log has moved on since you looked.',
  why: 'Something about this person or the house was recorded in between, and it may change what you are about to sign.',
  whatToDo: 'Look again, then sign.',
  field: BASIS,
});
