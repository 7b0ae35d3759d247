import fc from 'fast-check';
import { expect, test } from 'vitest';
import reference from '../../../test/fixtures/science/machine-transfer.json' with { type: 'json' };
import { machineTransfer, TRANSFER_PRIOR_LOG_SD } from './machine-transfer.ts';

test('nothing seen on both: the same level, as far apart as was assumed', () => {
  expect(machineTransfer([])).toEqual({ ratio: 1, logSd: TRANSFER_PRIOR_LOG_SD });
});

test('a lift without a variance is an error of the program', () => {
  expect(() => machineTransfer([{ logRatio: 0.1, variance: 0 }])).toThrow(RangeError);
  expect(() => machineTransfer([{ logRatio: Number.NaN, variance: 0.01 }])).toThrow(RangeError);
});

const anyLift = fc.record({
  logRatio: fc.double({ min: -0.4, max: 0.4, noNaN: true }),
  variance: fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
});

test('every lift seen narrows it, and it lies between the assumption and what was seen', () => {
  fc.assert(
    fc.property(fc.array(anyLift, { minLength: 1, maxLength: 8 }), (lifts) => {
      const { ratio, logSd } = machineTransfer(lifts);
      const seen = lifts.map(({ logRatio }) => logRatio);
      expect(logSd).toBeLessThan(machineTransfer(lifts.slice(1)).logSd);
      expect(Math.log(ratio)).toBeGreaterThanOrEqual(Math.min(0, ...seen) - 1e-12);
      expect(Math.log(ratio)).toBeLessThanOrEqual(Math.max(0, ...seen) + 1e-12);
    }),
  );
});

test('in which order the lifts are told makes no difference', () => {
  fc.assert(
    fc.property(fc.array(anyLift, { maxLength: 8 }), (lifts) => {
      expect(machineTransfer(lifts.toReversed()).ratio).toBeCloseTo(machineTransfer(lifts).ratio, 12);
    }),
  );
});

test.each(reference.cases)(
  'least squares of NumPy with $lifts.length lifts say the same',
  ({ lifts, ratio, logSd }) => {
    const learned = machineTransfer(lifts);
    expect(learned.ratio).toBeCloseTo(ratio, 12);
    expect(learned.logSd).toBeCloseTo(logSd, 12);
  },
);
