import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decimalOf, entered, kilogramsOf, numberOf, showEntered } from './entered.ts';

test.each([
  { text: '102.5', number: 102.5 },
  { text: '0', number: 0 },
  { text: '-2.5', number: -2.5 },
  { text: '+2.5', number: 2.5 },
  { text: '007', number: 7 },
  { text: '300', number: 300 },
  { text: '123456789012', number: 123_456_789_012 },
  { text: '0.123456789', number: 0.123_456_789 },
])('"$text" is $number', ({ text, number }) => {
  expect(decimalOf(text)).toBe(number);
});

test.each([
  '',
  ' ',
  '1e9',
  'NaN',
  'Infinity',
  '0x10',
  '1 000',
  '1,5',
  '.5',
  '5.',
  '--1',
  '1.2.3',
  '=1+1',
  '١٢',
  '1234567890123',
  '0.1234567890',
  '1\n',
])('"%s" is no decimal number', (text) => {
  expect(decimalOf(text)).toBeNull();
  expect(() => entered(text, 'kg')).toThrow('is not a decimal number such as 102.5.');
  expect(() => numberOf({ text, unit: 'kg' })).toThrow('is not a decimal number such as 102.5.');
});

const anyDecimal = fc
  .tuple(fc.nat(999_999), fc.option(fc.stringMatching(/^[0-9]{1,9}$/)))
  .map(([whole, part]) => (part === null ? `${whole}` : `${whole}.${part}`));

test('what was typed is kept to the letter', () => {
  fc.assert(
    fc.property(anyDecimal, (text) => {
      expect(entered(text, 'lb')).toEqual({ text, unit: 'lb' });
      expect(showEntered(entered(text, 'lb'))).toBe(`${text} lb`);
    }),
  );
});

test('300 lb are 136.077711 kg, and a kilogram is a kilogram', () => {
  // 300 × 0.45359237, exact by the definition of the pound.
  expect(kilogramsOf(entered('300', 'lb'))).toBeCloseTo(136.077711, 10);
  expect(kilogramsOf(entered('300', 'kg'))).toBe(300);
});

test('a heavier text is a heavier load', () => {
  fc.assert(
    fc.property(fc.nat(9999), fc.nat(9999), fc.constantFrom('kg' as const, 'lb' as const), (one, other, unit) => {
      const kilograms = (tenths: number): number => kilogramsOf(entered((tenths / 10).toFixed(1), unit));
      expect(Math.sign(kilograms(one) - kilograms(other))).toBe(Math.sign(one - other));
    }),
  );
});
