import { expect, test } from 'vitest';
import { asTyped, kilogramsOfForce, showChange, showFraction, showIncrements } from './loads.ts';

test('whole increments are shown as the machine displays them', () => {
  expect(showIncrements(270, '1')).toBe('270');
  expect(showIncrements(41, '2.5')).toBe('102.5');
  expect(showIncrements(3, '0.1')).toBe('0.3');
});

test('a force stands in kilograms of force beside', () => {
  expect(kilogramsOfForce(135)).toBe('13.8');
});

test('a decimal comma is a point', () => {
  expect(asTyped(' 102,5 ')).toBe('102.5');
});

test('changes carry a sign that is not a hyphen', () => {
  expect([0.0476, -0.1, 0].map(showChange)).toEqual(['+4.8\u00a0%', '−10.0\u00a0%', '±0.0\u00a0%']);
  expect(showFraction(-0.016)).toBe('−0.02');
});
