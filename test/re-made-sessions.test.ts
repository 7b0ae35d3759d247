import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { totalMinutes, type Card } from '#domain/card.ts';
import type { Hurting } from '#domain/decision.ts';
import { idOf } from '#domain/identity.ts';
import { shortText } from '#interchange/plain-text/short-text.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { LAUNCH, PERSON, Rehearsal } from './rehearsal/rehearsal.ts';

const MONDAY = addDays(LAUNCH, -385);
type Here = readonly ('free bar' | 'dumbbells' | 'body weight' | 'band')[];

const phase = SET_PROGRAMME.phases.find(({ name }) => name === 'general preparation');
const ofMonday = phase?.sessions.find(({ weekday }) => weekday === 1);
if (!phase || !ofMonday) throw new Error('The preparation begins with a session on Mondays.');

interface What {
  readonly here?: Here;
  readonly minutes?: number;
  readonly hurts?: readonly Hurting[];
  readonly session?: string;
}

const person = (): Rehearsal => {
  const rehearsal = new Rehearsal({ sex: 'male', mass: '80' });
  rehearsal.test('back-squat', '120', addDays(MONDAY, -10));
  rehearsal.test('bench-press', '90', addDays(MONDAY, -10));
  rehearsal.follow(SET_PROGRAMME.id, -730);
  return rehearsal;
};

const reMake = (rehearsal: Rehearsal, { here = ['free bar'], minutes = 60, hurts = [], session }: What): void => {
  rehearsal.add({
    kind: 'decided',
    answers: null,
    basis: rehearsal.end,
    decision: {
      kind: 're-make',
      person: PERSON,
      day: MONDAY,
      session: session ? idOf(session) : ofMonday.id,
      here,
      minutes,
      hurts,
      reason: 'told by telephone',
    },
  });
};

const planned = (rehearsal: Rehearsal): { readonly card: Card; readonly gaps: readonly string[] } => {
  const found = rehearsal.road(MONDAY, 1).cards.find(({ day }) => day === MONDAY);
  if (found?.state !== 'planned') throw new Error('No session is planned on that day.');
  return found;
};

const made = (what: What): { readonly card: Card; readonly gaps: readonly string[] } => {
  const rehearsal = person();
  reMake(rehearsal, what);
  return planned(rehearsal);
};

test('with what is there a squat stands on another load, and says what it stands in for', () => {
  const { card } = made({ here: ['dumbbells', 'body weight'] });
  const squat = card.items.find(({ says }) => says.some((each) => each.startsWith('instead of back squat:')));
  expect(squat).toMatchObject({ kind: 'lift', machineName: 'Dumbbells', shouldFeel: [5, 6] });
});

test.each([15, 25, 40, 60])('%i minutes are never exceeded, and what is left out says so', (minutes) => {
  const { card } = made({ minutes });
  expect(totalMinutes(card)).toBeLessThanOrEqual(minutes);
  expect(card.blockMinutes).toBe(minutes);
});

test('what hurts at five or more is not trained, nor is anything else that loads it', () => {
  const { card } = made({
    here: ['free bar', 'dumbbells', 'body weight'],
    hurts: [{ site: 'knee', side: 'left', score: 6 }],
  });
  const exercises = person().known().house.exercises;
  const loaded = card.items.filter(({ exercise }) => exercises.get(exercise)?.loads.includes('knee'));
  expect(loaded.map(({ exerciseName }) => exerciseName)).toEqual([]);
  expect(card.leftOut.find(({ exerciseName }) => exerciseName === 'Back squat')?.says).toContain(
    'it hurts at the left knee (6 of 10)',
  );
});

test('at seven or more there is no session: it cannot be issued', () => {
  const { gaps } = made({ hurts: [{ site: 'low back', side: null, score: 8 }] });
  expect(gaps).toContain('No session: it hurts at the low back (8 of 10); the physician comes first.');
});

test('another session of the programme can be trained on the day', () => {
  const other = phase.sessions.find(({ id }) => id !== ofMonday.id);
  if (!other) throw new Error('The phase has one session only.');
  expect(made({ session: other.id }).card.title).toBe(other.title);
});

test('only its own day is made anew', () => {
  const rehearsal = person();
  reMake(rehearsal, { here: ['body weight'], minutes: 10 });
  const next = rehearsal.road(MONDAY, 9).cards.find(({ day }) => day === addDays(MONDAY, 7));
  expect(next?.state !== 'issued' && next?.card.blockMinutes).toBe(ofMonday.blockMinutes);
});

test('the last one of a day stands', () => {
  const rehearsal = person();
  reMake(rehearsal, { minutes: 10 });
  reMake(rehearsal, { minutes: 45 });
  expect(planned(rehearsal).card.blockMinutes).toBe(45);
});

test('the session fits three text messages of plain letters', () => {
  const { card } = made({ here: ['dumbbells', 'body weight'], minutes: 40 });
  const { text, messages } = shortText(card, 'K7QF-2M9X');
  expect(text).toMatch(/^[\x20-\x7E\n]*$/);
  expect(messages).toBeLessThanOrEqual(3);
  for (const { exerciseName } of card.items) expect(text).toContain(exerciseName);
  expect(text).toContain('stop, tell somebody');
  expect(text).toContain('Card K7QF-2M9X');
});

test('what is locked by signature is never what goes for want of time, and what goes says what it costs', () => {
  const rehearsal = person();
  const track = ofMonday.items.at(-1)?.track;
  if (!track) throw new Error('Mondays hold nothing.');
  reMake(rehearsal, { minutes: 25 });
  expect(planned(rehearsal).card.items.map((item) => item.track)).not.toContain(track);
  rehearsal.add({
    kind: 'decided',
    answers: null,
    basis: rehearsal.end,
    decision: {
      kind: 'adjust',
      person: PERSON,
      track,
      change: { kind: 'keep' },
      from: MONDAY,
      until: null,
      reason: 'the weak link',
    },
  });
  const { card } = planned(rehearsal);
  expect(card.items.map((item) => item.track)).toContain(track);
  expect(totalMinutes(card)).toBeLessThanOrEqual(25);
  expect(card.shortOfTime.map((place) => card.items[place - 1]?.track)).not.toContain(track);
  expect(card.leftOut.map(({ says }) => says).join()).toMatch(/it costs \d+ (sets|minutes) of /);
});
