import { expect, test } from 'vitest';
import type { Signer } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { day } from '#units/day.ts';
import { signersOn } from './signer.tsx';

const signer = (id: string, role: Signer['role'], days: readonly [number, number] | null = null): Signer => ({
  id: idOf(id),
  name: id,
  role,
  signsFor: role === 'deputy' ? idOf('specialist') : null,
  from: days && day(days[0]),
  until: days && day(days[1]),
});
const everybody = [
  signer('physician', 'physician'),
  signer('deputy', 'deputy', [10, 12]),
  signer('specialist', 'specialist'),
];
const namesOn = (today: number): readonly string[] => signersOn(everybody, today).map(({ name }) => name);

test('a deputy signs between two days, both included', () => {
  expect([9, 10, 12, 13].map((today) => namesOn(today).includes('deputy'))).toEqual([false, true, true, false]);
});

test('specialists stand first', () => {
  expect(namesOn(11)).toEqual(['specialist', 'deputy', 'physician']);
});
