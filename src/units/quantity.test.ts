import { expect, test } from 'vitest';
import { KILOGRAMS_PER_POUND, kilogramsPer } from './mass.ts';
import {
  barLoad,
  daySpan,
  degrees,
  exertion,
  fraction,
  kilograms,
  logRatio,
  machineLoad,
  minutes,
  repetitions,
  seconds,
  type BarLoad,
  type MachineLoad,
} from './quantity.ts';

const MAKERS = {
  barLoad,
  daySpan,
  degrees,
  exertion,
  fraction,
  kilograms,
  logRatio,
  machineLoad,
  minutes,
  repetitions,
  seconds,
};

test.each(Object.entries(MAKERS))('%s refuses what is no finite number and says which', (_name, make) => {
  expect(make(1.5)).toBe(1.5);
  for (const value of [NaN, Infinity, -Infinity])
    expect(() => make(value)).toThrow(`must be a finite number; it is ${value}.`);
});

test('what hangs on a bar and what a machine pulls are different types', () => {
  // @ts-expect-error a bar load becomes a machine load by the crossing alone
  const pulled: MachineLoad = barLoad(100);
  // @ts-expect-error nor the other way round
  const hung: BarLoad = machineLoad(100);
  // @ts-expect-error nor is a bare number either
  const bare: BarLoad = 100;
  expect([pulled, hung, bare]).toEqual([100, 100, 100]);
});

test('a pound is 0.45359237 kg, exact by the agreement of 1959', () => {
  expect(KILOGRAMS_PER_POUND).toBe(0.45359237);
  expect(kilogramsPer('lb')).toBe(0.45359237);
  expect(kilogramsPer('kg')).toBe(1);
});
