import { isoDay } from '#units/day.ts';
import { expect, test } from 'vitest';
import { agenda } from './agenda.ts';
import { momentOf } from './moment.ts';

const at = (clock: string) => momentOf(isoDay('2027-02-28'), clock);

test('things happen in order of time, of one moment in the order in which they were added, and may add more', () => {
  const seen: string[] = [];
  const { add, runUntil } = agenda();
  add({ at: at('12:00'), happen: () => seen.push('noon') });
  add({
    at: at('08:00'),
    happen: () => {
      seen.push('morning');
      add({ at: at('12:00'), happen: () => seen.push('noon, added later') });
      add({ at: at('09:00'), happen: () => seen.push('nine') });
    },
  });
  add({ at: at('12:00'), happen: () => seen.push('noon again') });
  add({ at: at('23:00'), happen: () => seen.push('night') });
  runUntil(at('23:00'));
  expect(seen).toEqual(['morning', 'nine', 'noon', 'noon again', 'noon, added later']);
});
