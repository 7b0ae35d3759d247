/** A refusal as a person reads it: what happened, why, what to do; `field` names the place where it was typed. */
export interface Problem {
  readonly what: string;
  readonly why: string;
  readonly whatToDo: string;
  readonly field: string | null;
  /** Only unlikely: it is taken where whoever typed it says that it is right. */
  readonly mayStand?: true;
}

export interface Refused {
  readonly refused: readonly Problem[];
}
