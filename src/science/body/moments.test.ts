import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { degrees, fraction } from '#units/quantity.ts';
import { BODY } from './body-model.ts';
import { balancedTrunkLean, momentMatchedShares } from './moments.ts';
import type { Sex } from './segments.ts';

/** Balance against SciPy's own search over geometry written a second time. */

interface Fixture {
  readonly cases: readonly {
    readonly sex: Sex;
    readonly bar: number;
    readonly shankLean: number;
    readonly thighLean: number;
    readonly leanOnGround: number;
    readonly leanInFlight: number;
  }[];
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/balance.json');
// Written by the script that stands beside the file.
const { cases } = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

/** Both searches stop within 1e-10 of a degree. */
const DIGITS = 8;

test('there are cases for both sexes', () => {
  expect(new Set(cases.map(({ sex }) => sex)).size).toBe(2);
});

test.each(cases)(
  'a $sex squat of $bar body weights at $shankLean°, $thighLean° balances where SciPy finds it',
  ({ sex, bar, shankLean, thighLean, leanOnGround, leanInFlight }) => {
    const legs = { shankLean: degrees(shankLean), thighLean: degrees(thighLean) };
    const ground = balancedTrunkLean(BODY[sex], legs, fraction(bar), '1 g');
    const flight = balancedTrunkLean(BODY[sex], legs, fraction(bar), '0 g');
    expect(ground.kind === 'converged' && ground.root).toBeCloseTo(leanOnGround, DIGITS);
    expect(flight.kind === 'converged' && flight.root).toBeCloseTo(leanInFlight, DIGITS);
  },
);

test('the shares that match moments do not depend on the bar', () => {
  const anyBar = fc.double({ min: 0.1, max: 3, noNaN: true }).map(fraction);
  fc.assert(
    fc.property(fc.constantFrom(BODY.male, BODY.female), anyBar, anyBar, (body, a, b) => {
      const [one, other] = [momentMatchedShares(body, a), momentMatchedShares(body, b)];
      if (one.kind === 'none' || other.kind === 'none') throw new Error('A parallel squat balances.');
      // The search stops within 1e-10 of a degree; a moment changes by less than a bar for each radian.
      for (const joint of ['hip', 'knee', 'ankle'] as const)
        expect(one.shares[joint]).toBeCloseTo(other.shares[joint], 8);
    }),
  );
});

test('a squat that cannot balance says so', () => {
  const legs = { shankLean: degrees(0), thighLean: degrees(170) };
  const found = momentMatchedShares(BODY.male, fraction(1.5), { ...legs, thighLean: degrees(-60) });
  expect(found.kind).toBe('none');
});

test('balance weightless is not enough: a bar too light to bring the body forward is told', () => {
  const legs = { shankLean: degrees(0), thighLean: degrees(90) };
  expect(balancedTrunkLean(BODY.male, legs, fraction(0.1), '0 g').kind).toBe('converged');
  expect(balancedTrunkLean(BODY.male, legs, fraction(0.1), '1 g').kind).toBe('not bracketed');
  expect(momentMatchedShares(BODY.male, fraction(0.1), legs).kind).toBe('none');
});
