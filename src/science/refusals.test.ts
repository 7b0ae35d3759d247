import { expect, test } from 'vitest';
import { remainingStrength } from './adaptation/remaining-strength.ts';
import { intensityZone } from './aerobic/intensity-zone.ts';
import { personalMaximalRate } from './aerobic/personal-maximal-rate.ts';
import { cyclePower } from './aerobic/cycle-workload.ts';
import { singleStageEstimate, singleStageFactor } from './aerobic/single-stage-estimate.ts';
import { treadmillSpeed, treadmillUptake } from './aerobic/treadmill.ts';
import { uptakeOfPercentile, uptakePercentile } from './aerobic/uptake-percentile.ts';
import { boneScore, youngReference } from './bone/bone-score.ts';
import { acceptablePrecision, scanChange } from './bone/scan-change.ts';
import { compareCriticalForces } from './hand/all-out-test.ts';
import { enduranceBand } from './hand/endurance-band.ts';
import { gripScore } from './hand/grip-score.ts';
import { constantsFromSummary } from './hand/personal-constants.ts';
import { spaceWalkRulesBefore } from './hand/spacewalk-rules-before.ts';
import { suitedGrip } from './hand/suited-grip.ts';
import type { AnyMethod } from './method.ts';
import { gateAfterPause } from './novice/gate-after-pause.ts';
import { adherenceQuantile } from './projection/adherence.ts';
import { latestTestRule } from './return/latest-test-rule.ts';
import { sidesAgainstThemselves } from './return/recovery-score.ts';
import { ALL_METHODS } from './textbook.ts';
import {
  boneDensity,
  fraction,
  kilograms,
  newtons,
  type BoneDensity,
  type Fraction,
  type Newtons,
} from '#units/quantity.ts';

/** A method that takes plain numbers refuses one that cannot be, and never carries it on into a result. */

/** Brands are refused where they are made; here one that slipped through is cast. */
type Case = readonly [method: AnyMethod, of: (first: number) => { readonly kind: string }, possible: number];

const SIDES = { left: 100, right: 100 };
const SCANS = { after: boneDensity(0.9), precision: boneDensity(0.01), machines: 'same' } as const;
const STAGE = {
  sex: 'male',
  heartRates: [148, 148],
  bodyMass: 80,
  factor: { by: 'age', years: 45 },
} as const;

const CASES: readonly Case[] = [
  [remainingStrength, (days) => remainingStrength({ days, legs: 'unloaded', ill: false }), 20],
  [intensityZone, (value) => intensityZone('heartRateReserve', value), 0.5],
  [personalMaximalRate, (age) => personalMaximalRate({ age }), 40],
  [personalMaximalRate, (measured) => personalMaximalRate({ measured }), 180],
  [cyclePower, (part) => cyclePower(part, 40, 80), 0.6],
  [singleStageFactor, (years) => singleStageFactor({ by: 'age', years }), 40],
  [singleStageEstimate, (workRate) => singleStageEstimate({ ...STAGE, workRate }), 900],
  [treadmillUptake, (speed) => treadmillUptake(speed, 0), 80],
  [treadmillSpeed, (uptake) => treadmillSpeed(uptake, 0, 'running'), 40],
  [uptakePercentile, (age) => uptakePercentile('female', age, 35), 40],
  [uptakeOfPercentile, (age) => uptakeOfPercentile('female', age, 50), 40],
  [boneScore, (value) => boneScore(value as BoneDensity, youngReference('total hip', 'male', 'sex-matched')), 0.9],
  [acceptablePrecision, (sd) => acceptablePrecision('total hip', sd as BoneDensity, boneDensity(0.9)), 0.01],
  [scanChange, (before) => scanChange({ ...SCANS, before: before as BoneDensity }), 0.95],
  [compareCriticalForces, (earlier) => compareCriticalForces(earlier as Newtons, newtons(200)), 210],
  [enduranceBand, (share) => enduranceBand(share as Fraction), 0.4],
  [gripScore, (age) => gripScore({ sex: 'male', age, side: 'right', grip: kilograms(50), from: 'mean of three' }), 40],
  [
    constantsFromSummary,
    (force) =>
      constantsFromSummary({
        criticalForce: force as Newtons,
        maximum: newtons(500),
        impulse: 8000,
        duty: fraction(0.7),
      }),
    150,
  ],
  [spaceWalkRulesBefore, (hours) => spaceWalkRulesBefore(hours), 30],
  [suitedGrip, (bare) => suitedGrip(bare as Newtons, { kind: 'by pressure', kilopascals: 29.6 }), 500],
  [gateAfterPause, (daysOff) => gateAfterPause({ daysOff, because: 'days off' }), 20],
  [adherenceQuantile, (done) => adherenceQuantile(done, 2, 0.5), 8],
  [latestTestRule, (latest) => latestTestRule({ latest, previous: 90, typicalError: 3, line: 90 }), 95],
  [sidesAgainstThemselves, (left) => sidesAgainstThemselves({ left, right: 100 }, SIDES), 90],
];

const NAMED = CASES.map((each) => [each[0].record.id, each] as const);

test.each(NAMED)('%s refuses a first number that cannot be', (_, [, of]) => {
  const { NaN: none, POSITIVE_INFINITY: endless } = Number;
  const taken = [none, endless, -endless, 1e12, -1e12].filter((first) => !/^(refused|none)$/.test(of(first).kind));
  expect(taken).toEqual([]);
});

test.each(NAMED)('%s takes one that can be', (_, [, of, possible]) => {
  expect(of(possible).kind).not.toMatch(/^(refused|none)$/);
});

/** What a method makes of the middles of its inputs, where it takes them as plain numbers at all. */
const takesPlainNumbers = (method: AnyMethod): boolean => {
  const middles = method.record.inputs.map(({ valid: [low, high] }) => (low + high) / 2);
  try {
    const found = (method as unknown as (...given: readonly number[]) => unknown)(...middles.slice(0, method.length));
    return typeof found === 'object' && found !== null && 'kind' in found && found.kind === 'estimate';
  } catch {
    return false;
  }
};

test('no method that takes plain numbers is left out', () => {
  const plain = ALL_METHODS.filter(takesPlainNumbers).map(({ record }) => record.id);
  expect(plain.length).toBeGreaterThan(4);
  const held = new Set(CASES.map(([method]) => method.record.id));
  expect(plain.filter((id) => !held.has(id))).toEqual([]);
});
