import { wPrimeBalance } from '#science/critical-power/w-prime-balance.ts';
import { randomStream } from '#science/random.ts';
import { joules, watts } from '#units/quantity.ts';
import { measure, measured, present, ratioOf } from './measure.ts';
import { askReference, largestDistance, sayAgreement } from './python-reference.ts';

/** Six hours of power, one value a second: hard and easy bouts of chance length around critical power. */
const SECONDS = 6 * 3600;
const RUNS = 101;
const PERSON = { criticalPower: watts(205), capacity: joules(16_000) };

const recordOf = (): Float64Array => {
  const chance = randomStream(5, 'power');
  const record = new Float64Array(SECONDS);
  let [hard, left] = [false, 0];
  for (let second = 0; second < SECONDS; second += 1) {
    if (left === 0) {
      hard = !hard;
      left = 20 + chance.below(hard ? 60 : 240);
    }
    left -= 1;
    record[second] = Math.max(0, (hard ? 270 : 130) + 15 * chance.normal());
  }
  return record;
};

interface Balances {
  readonly distance: readonly number[];
  readonly loop: readonly number[];
  readonly integral: readonly number[];
}

const record = recordOf();
const reference = askReference<Balances>('w_prime_balance.py', { power: Array.from(record), ...PERSON, runs: RUNS });
const byDistance = await measure('differential form', () => wPrimeBalance(record, PERSON, { model: 'by distance' }), {
  runs: RUNS,
  warmUp: 25,
});
const byIntegral = await measure('integral form', () => wPrimeBalance(record, PERSON, { model: 'integral' }), {
  runs: RUNS,
  warmUp: 25,
});

const title = `Balance above critical power over ${SECONDS} seconds`;
if (reference.kind === 'missing') {
  present(title, [byDistance, byIntegral]);
  console.log(`  ${reference.why}`);
} else {
  const { versions, times, result } = reference.answer;
  present(title, [
    ratioOf(
      'differential form: NumPy without a loop against ours',
      measured('NumPy, two running sums', times['distance'] ?? []),
      byDistance,
    ),
    ratioOf(
      'differential form: Python loop against ours',
      measured('Python, second by second', times['loop'] ?? []),
      byDistance,
    ),
    ratioOf('integral form: SciPy against ours', measured('SciPy, linear filter', times['integral'] ?? []), byIntegral),
  ]);
  console.log(`  ${versions}`);
  // Of a store of 16,000 J; twenty thousand additions in another order leave a millionth of a joule at most.
  const within = 1e-6;
  const ours = wPrimeBalance(record, PERSON, { model: 'by distance' });
  sayAgreement('differential form against running sums [J]', largestDistance(ours, result.distance), within);
  sayAgreement('differential form against the loop [J]', largestDistance(ours, result.loop), within);
  sayAgreement(
    'integral form against the filter [J]',
    largestDistance(wPrimeBalance(record, PERSON, { model: 'integral' }), result.integral),
    within,
  );
}
