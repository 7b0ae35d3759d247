import type { Check } from '../check.ts';
import { AEROBIC_SESSIONS } from './aerobic-sessions.table.ts';
import { HEDGE_2022 } from './sources.ts';

/** Warm-up and cool-down of the sessions of older adults, five minutes each. */
const BEFORE_AND_AFTER = 10;

const minutesOf = (name: string): number => {
  const session = AEROBIC_SESSIONS.rows.find((row) => row.name === name);
  return session ? (session.bouts * (session.boutSeconds + session.restSeconds)) / 60 + BEFORE_AND_AFTER : Number.NaN;
};

export const studiedSessionChecks: readonly Check[] = (
  [
    ['half-minute intervals of older adults', 32],
    ['continuous of older adults', 30],
  ] as const
).map(([name, printed]) => ({
  kind: 'series',
  title: `Whole length of ${name} [min]`,
  compute: () => minutesOf(name),
  printed,
  within: 0,
  because: 'whole minutes, printed beside the bouts that they are the sum of',
  source: HEDGE_2022,
}));
