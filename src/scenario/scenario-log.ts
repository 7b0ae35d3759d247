import type { Day } from '#units/day.ts';
import { type Chronicle, pen, writeTogether } from './chronicle.ts';
import { scriptUntil } from './script/script.ts';

export const SCENARIO_SEED = 2027;

/** The scenario without cards: house, people, tests, masses, limits, decisions. Deterministic for a day and a seed. */
export const scenarioLog = (today: Day, seed: number = SCENARIO_SEED): Chronicle => {
  const log = pen();
  for (const moment of scriptUntil(today, seed)) writeTogether(log, moment);
  return log.finished();
};
