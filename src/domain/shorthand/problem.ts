/** What is wrong with a line of shorthand, at its place, and what to write instead. */
export interface ShorthandProblem {
  readonly from: number;
  readonly to: number;
  readonly says: string;
}

/** Thrown inside the reader only; `readShorthand` answers with the problem. */
export class Unreadable extends Error {
  readonly problem: ShorthandProblem;
  constructor(problem: ShorthandProblem) {
    super(problem.says);
    this.problem = problem;
  }
}
