/** What was done, newest last, and what was taken back and can be done again. A step holds what its owner needs for both. */
export interface Steps<Step> {
  readonly done: readonly Step[];
  readonly takenBack: readonly Step[];
}

export const NO_STEPS: Steps<never> = { done: [], takenBack: [] };

/** Enough for an hour's editing; older steps are forgotten. */
export const STEPS_KEPT = 200;

/** Something new was done: what had been taken back before cannot be done again after it. */
export const withStep = <Step>({ done }: Steps<Step>, step: Step): Steps<Step> => ({
  done: [...done, step].slice(-STEPS_KEPT),
  takenBack: [],
});

export interface Turn<Step> {
  readonly step: Step;
  readonly steps: Steps<Step>;
}

/** The newest step that stands, and what is left without it; null where nothing was done. */
export const takeBack = <Step>({ done, takenBack }: Steps<Step>): Turn<Step> | null => {
  const [step] = done.slice(-1);
  return step === undefined ? null : { step, steps: { done: done.slice(0, -1), takenBack: [...takenBack, step] } };
};

/** The step that was taken back last, and what stands with it again; null where nothing was taken back. */
export const doAgain = <Step>({ done, takenBack }: Steps<Step>): Turn<Step> | null => {
  const [step] = takenBack.slice(-1);
  return step === undefined ? null : { step, steps: { done: [...done, step], takenBack: takenBack.slice(0, -1) } };
};
