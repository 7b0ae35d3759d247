import { expect, test } from 'vitest';
import { sessionState } from './session-state.ts';

const ISSUED = { state: 'issued', past: false, delivery: 'received', outcome: null, gaps: [] } as const;

test('a recalled card is called so, before and after its day', () => {
  expect(sessionState({ ...ISSUED, delivery: 'recalled' })).toBe('recalled');
  expect(sessionState({ ...ISSUED, delivery: 'recalled', past: true, outcome: 'not heard' })).toBe('recalled');
});

test('what became of a session is told after its day, what may become of it before', () => {
  expect(sessionState(ISSUED)).toBe('received');
  expect(sessionState({ ...ISSUED, past: true, outcome: 'part done' })).toBe('part done');
  expect(sessionState({ ...ISSUED, state: 'planned', delivery: null })).toBe('can be issued');
  expect(sessionState({ ...ISSUED, state: 'planned', delivery: null, gaps: ['No body mass is known.'] })).toBe(
    'cannot be issued',
  );
  expect(sessionState({ ...ISSUED, state: 'expected', delivery: null })).toBe('expected');
});
