import { expect, test } from 'vitest';
import type { Source } from '#science/formula.ts';
import { byAuthor } from './by-author.ts';

test('sources stand by the letters of their first author, whatever their case and accents', () => {
  const sources = ['Zourdos', 'de Leva', 'Åstrand', 'Brzycki'].map((text): Source => ({ text, status: 'seen' }));
  expect(byAuthor(sources).map(({ text }) => text)).toEqual(['Åstrand', 'Brzycki', 'de Leva', 'Zourdos']);
});
