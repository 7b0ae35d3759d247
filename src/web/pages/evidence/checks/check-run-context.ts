import { createContext, useContext, useEffect, useState, useSyncExternalStore } from 'react';
import type { Check } from '#science/check.ts';
import { checkRun, type CheckRun, type Recomputed, type Tally } from './check-run.ts';

const NONE = checkRun([]);

export const CheckRunContext = createContext<CheckRun>(NONE);

/** A run of checks that lasts as long as the page is open. */
export const useCheckRun = (checks: readonly Check[]): CheckRun => {
  const [run] = useState(() => checkRun(checks));
  useEffect(() => run.start(), [run]);
  return run;
};

export const useTally = (): Tally => {
  const run = useContext(CheckRunContext);
  return useSyncExternalStore(run.subscribe, run.tally);
};

/** The results of a few checks; whoever asks is drawn anew only when one of these is computed. */
export const useResults = (checks: readonly Check[]): readonly (Recomputed | undefined)[] => {
  const run = useContext(CheckRunContext);
  useSyncExternalStore(run.subscribe, () => checks.filter((check) => run.resultOf(check)).length);
  return checks.map(run.resultOf);
};
