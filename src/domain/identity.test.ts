import { expect, test } from 'vitest';
import { idOf, instant, type PersonId } from './identity.ts';

test('an identity is never empty', () => {
  expect(idOf<'person'>('marit-lund')).toBe('marit-lund');
  expect(() => idOf('')).toThrow('An identity cannot be empty.');
});

test('identities of different things are different types', () => {
  // @ts-expect-error a machine is no person
  const person: PersonId = idOf<'machine'>('resistive-aboard');
  expect(person).toBe('resistive-aboard');
});

test('a moment is written in full, in UTC', () => {
  expect(instant('2026-11-25T10:18:19.123Z')).toBe('2026-11-25T10:18:19.123Z');
});

test.each(['2026-11-25', '2026-11-25T10:18:19Z', '2026-11-25T10:18:19.123+01:00', '2026-11-25 10:18:19.123Z', ''])(
  '"%s" is no moment',
  (text) => {
    expect(() => instant(text)).toThrow('is not a moment in UTC');
  },
);
