import { expect, test } from 'vitest';
import { addDays, isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { profileOn } from '#assessing/profile.ts';
import { liftsOf } from '#domain/card.ts';
import type { Proposal } from '#domain/road.ts';
import type { Test } from '#domain/tested.ts';
import { onFlightDay, PERSON, Rehearsal } from './rehearsal/rehearsal.ts';

const TODAY = onFlightDay(20);
const BEFORE = addDays(onFlightDay(1), -30);

/** A man of 45 years, in flight, with these tests. */
const person = (...tests: readonly Test[]): Rehearsal => {
  const rehearsal = new Rehearsal({ sex: 'male', mass: '80', squat: '120', deadlift: '140', heaviestBar: '110' });
  rehearsal.add({
    kind: 'introduced',
    person: PERSON,
    name: 'Person One',
    sex: 'male',
    birthDate: isoDay('1982-01-15'),
    trainingAge: null,
  });
  for (const each of tests) rehearsal.add({ kind: 'tested', person: PERSON, day: BEFORE, test: each });
  return rehearsal;
};

const uptake = (text: string): Test => ({
  what: 'greatest oxygen uptake',
  value: entered(text, 'mL/(kg min)'),
  how: 'measured',
});
const raises = (side: 'left' | 'right', text: string): Test => ({
  what: 'heel raises',
  side,
  value: entered(text, 'repetitions'),
});
const grip = (side: 'left' | 'right', text: string): Test => ({
  what: 'greatest grip',
  side,
  value: entered(text, 'kg'),
});

const proposals = (rehearsal: Rehearsal): readonly Proposal[] =>
  rehearsal.road(TODAY).proposals.filter(({ rule, state }) => rule === 'profile' && state === 'open');

const setsOf = (rehearsal: Rehearsal, track: string): number => {
  const lift = rehearsal
    .road(TODAY)
    .cards.flatMap((card) => (card.state === 'planned' ? liftsOf(card.card) : []))
    .find((each) => each.track === track);
  return lift ? lift.sets.filter(({ kind }) => kind === 'work').length : 0;
};

/** Kaminsky 2015, men of 40 to 49 on a treadmill: half of them have 37.8 mL/(kg min) or less. */
test('an uptake far under the median of the age is low, one far over it is not', () => {
  const standing = (text: string) => profileOn(person(uptake(text)).known(), TODAY).map(({ standing: of }) => of);
  expect(standing('28')).toEqual(['low']);
  expect(standing('50')).toEqual(['fine']);
});

test('25 heel raises are usual (Lunsford and Perry 1995), and sides are held against each other', () => {
  const lines = profileOn(person(raises('left', '25'), raises('right', '18')).known(), TODAY);
  expect(lines.map(({ against, standing }) => [against, standing])).toEqual([
    ['norm', 'fine'],
    ['norm', 'low'],
    ['other side', 'low'],
  ]);
  expect(lines.at(-1)?.says).toBe('Single-leg heel raises: 72 % symmetry, the right is the weaker.');
});

test('a fall from the own best is told only where it is larger than the error of the test', () => {
  const rehearsal = person(uptake('52'));
  const later = (text: string): readonly string[] => {
    const forked = rehearsal.fork();
    forked.add({ kind: 'tested', person: PERSON, day: addDays(BEFORE, 20), test: uptake(text) });
    return profileOn(forked.known(), TODAY)
      .filter(({ against }) => against === 'own past')
      .map(({ says }) => says);
  };
  expect(later('50')).toEqual([]);
  expect(later('45')).toEqual(["Greatest oxygen uptake has fallen 13 % from this person's own best."]);
});

test('a weak grip is told against people of the age (Mathiowetz 1985)', () => {
  const standing = (text: string) =>
    profileOn(person(grip('right', text)).known(), TODAY).map(({ standing: of }) => of);
  // Men of 45 to 49, right hand: mean 49.9 kg, standard deviation 10.5 kg.
  expect(standing('30')).toEqual(['low']);
  expect(standing('50')).toEqual(['fine']);
});

test('a weak calf proposes a set more of heel raises; signed it stands on the cards, and is proposed no more', () => {
  const rehearsal = person(raises('left', '14'), raises('right', '15'));
  const [proposal, ...others] = proposals(rehearsal);
  expect(others).toEqual([]);
  expect(proposal?.says).toContain('A set more of heel raise each time?');
  if (proposal?.change?.kind !== 'adjust') throw new Error('Nothing is to be signed.');
  const { track } = proposal.change;
  const before = setsOf(rehearsal, track);
  rehearsal.add({ kind: 'decided', answers: proposal.id, basis: rehearsal.end, decision: proposal.change });
  expect(setsOf(rehearsal, track)).toBe(before + 1);
  expect(proposals(rehearsal)).toEqual([]);
});

test('declined it stays declined until there is a new test', () => {
  const rehearsal = person(raises('left', '14'));
  const [proposal] = proposals(rehearsal);
  if (!proposal) throw new Error('Nothing is proposed.');
  rehearsal.add({
    kind: 'decided',
    answers: proposal.id,
    basis: rehearsal.end,
    decision: { kind: 'decline', person: PERSON, proposal: proposal.id, reason: 'an old ankle' },
  });
  expect(proposals(rehearsal)).toEqual([]);
  rehearsal.add({ kind: 'tested', person: PERSON, day: addDays(BEFORE, 20), test: raises('left', '13') });
  expect(proposals(rehearsal)).toHaveLength(1);
});

test('sets can be fewer too, and one is always left', () => {
  const rehearsal = person();
  const track = 'squat medium';
  rehearsal.add({
    kind: 'decided',
    answers: null,
    basis: rehearsal.end,
    decision: {
      kind: 'adjust',
      person: PERSON,
      track: track as never,
      change: { kind: 'sets by', by: -9 },
      from: TODAY,
      until: null,
      reason: 'knees',
    },
  });
  expect(setsOf(rehearsal, track)).toBe(1);
});
