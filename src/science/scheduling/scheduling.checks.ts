import { printedResults, printedRows, type Check } from '../check.ts';
import { COUNTED_BY_HAND, RECOMPUTED } from '../sources.ts';
import { CONCURRENT_EFFECTS } from './concurrent-effects.table.ts';
import { concurrentShare, costOfGap, interferenceCost, type TimedSession } from './interference-cost.ts';
import { STUTZ_2019 } from './sources.ts';
import { timingBreaches, type DayFrame, type PlacedSession } from './timing-breaches.ts';

const NO_ROUNDING = 'a sum of tenths, exact but for rounding in doubles';

const at = (clock: number): number => clock * 60;
const TREADMILL: TimedSession = { work: 'endurance', onTreadmill: true, from: at(8), until: at(9) };
const squat = (from: number): TimedSession => ({
  work: 'strength',
  lowerBody: true,
  from: at(from),
  until: at(from + 1),
});

const cost = (sessions: readonly TimedSession[], power: boolean) => (): number => {
  const found = interferenceCost(sessions, power);
  if (found.kind === 'refused') throw new RangeError(found.reason);
  return found.total;
};

const shares = CONCURRENT_EFFECTS.rows.flatMap(({ alone, found }) => (alone === null ? [] : [[found, alone] as const]));
const PRINTED_SHARES = [0.818182, 0.691057, 0.604396];

export const interferenceChecks: readonly Check[] = [
  ...printedRows(
    RECOMPUTED,
    5e-7 + 1e-12,
    'written to six decimals',
    shares.map(([found, alone], place) => [concurrentShare, [found, alone], PRINTED_SHARES[place] ?? Number.NaN]),
  ),
  ...printedRows(RECOMPUTED, 1e-12, 'a step, read off its definition', [
    [costOfGap, [1, 1], 1],
    [costOfGap, [1, 0.3], 0.3],
    [costOfGap, [4, 1], 0.2],
    [costOfGap, [6, 1], 0],
  ]),
  ...printedResults(interferenceCost, RECOMPUTED, 1e-12, NO_ROUNDING, [
    ['Treadmill until 9, squat from 10, power a goal', cost([TREADMILL, squat(10)], true), 2],
    ['The same, power no goal', cost([TREADMILL, squat(10)], false), 1.3],
    ['Squat first', cost([squat(6), TREADMILL], true), 1],
    ['Squat four hours later', cost([TREADMILL, squat(13)], true), 0.2],
    ['Squat six hours later', cost([TREADMILL, squat(15)], true), 0],
  ]),
];

const FRAME: DayFrame = { waking: at(6), lightsOut: at(21.5), mealsEnd: [at(7)], protectedWindows: [] };
const evening: PlacedSession = { from: at(19.5), until: at(20.5), intensity: 'hard', shakes: true, lifts: false };

const minutesBroken = (session: PlacedSession, rule: string) => (): number => {
  const found = timingBreaches(session, FRAME);
  if (found.kind === 'refused') throw new RangeError(found.reason);
  return found.breaches.find((breach) => breach.rule.id === rule)?.by ?? -1;
};

export const timingChecks: readonly Check[] = [
  ...printedResults(
    timingBreaches,
    STUTZ_2019,
    1e-9,
    'whole minutes: at one hour or less before sleep harm was found',
    [['Hard work that ends an hour before lights-out', minutesBroken(evening, 'before-sleep-least'), 0]],
  ),
  ...printedResults(timingBreaches, COUNTED_BY_HAND, 1e-9, 'whole minutes', [
    ['The same, half an hour earlier', minutesBroken({ ...evening, until: at(20) }, 'before-sleep'), 30],
  ]),
];
