import { MACHINE } from '#contract/facts/any-issued-card.setup.ts';
import { expect, test } from 'vitest';
import { capacityMachine } from './catalogue.ts';

test('free bars are one machine wherever they hang; every other machine is its own', () => {
  expect(capacityMachine({ ...MACHINE, kind: 'free bar' })).toBe('free bar');
  expect(capacityMachine(MACHINE)).toBe(MACHINE.id);
});
