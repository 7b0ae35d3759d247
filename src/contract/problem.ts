/** A refusal as a person reads it: what happened, why, what to do; `field` names the place where it was typed. */
export interface Problem {
  readonly what: string;
  readonly why: string;
  readonly whatToDo: string;
  readonly field: string | null;
}

export interface Refused {
  readonly refused: readonly Problem[];
}
