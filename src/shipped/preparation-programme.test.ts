import { expect, test } from 'vitest';
import type { Exercise } from '#domain/catalogue.ts';
import { isLiftItem, daysOfPhase, takeUp, type LiftItem, type ProgrammeSession } from '#domain/programme.ts';
import { addDays, isoDay } from '#units/day.ts';
import { SHIPPED_EXERCISES } from './exercises/shipped-exercises.ts';
import { PREPARATION_PROGRAMME } from './preparation-programme.ts';
import { FREE_BAR } from './shipped-house.ts';

const LAUNCH = isoDay('2027-03-03');
const { phases } = PREPARATION_PROGRAMME;
const sessions = phases.flatMap((phase) => phase.sessions);
const items = sessions.flatMap((session) => session.items.filter(isLiftItem));

const exerciseOf = (item: Pick<LiftItem, 'exercise' | 'id'>): Exercise => {
  const found = SHIPPED_EXERCISES.find((exercise) => exercise.id === item.exercise);
  if (!found) throw new Error(`${item.id} names no shipped exercise`);
  return found;
};

test('the road begins two years before launch and has no gap up to two days before it', () => {
  const days = phases.map((phase) => daysOfPhase(phase, { launch: LAUNCH, landing: null }));
  expect(days[0]?.first).toBe(addDays(LAUNCH, -730));
  expect(days.at(-1)?.last).toBe(addDays(LAUNCH, -2));
  for (const [place, next] of days.slice(1).entries()) expect(next?.first).toBe((days[place]?.last ?? 0) + 1);
});

test('common practice: at least two two-hour blocks or four single hours a week are room for every phase', () => {
  for (const phase of phases) {
    const minutes = phase.sessions.reduce((sum, session) => sum + session.blockMinutes, 0);
    expect(minutes).toBeLessThanOrEqual(phase.name === 'flight-specific preparation' ? 5 * 60 : 4 * 60);
  }
});

test('common practice: squat and deadlift are main lifts of every phase but the last week', () => {
  for (const phase of phases.slice(0, -1)) {
    const first = phase.sessions.flatMap(({ items: [main] }) => (main ? [exerciseOf(main).name] : []));
    expect(first).toContain('Back squat');
    expect(phase.sessions.flatMap(({ items: each }) => each.map((item) => exerciseOf(item).name))).toContain(
      'Deadlift',
    );
  }
});

test('the version is the digest of its content, and every session and item has an identity of its own', () => {
  const { id, ...content } = PREPARATION_PROGRAMME;
  expect(takeUp(content).id).toBe(id);
  const ids = [...sessions, ...items].map((each) => each.id);
  expect(new Set(ids).size).toBe(ids.length);
});

test('every item is done under a free bar with an exercise that ships', () => {
  expect(new Set(items.map((item) => item.machineKind))).toEqual(new Set(['free bar']));
  expect(items.map((item) => exerciseOf(item).name)).not.toContain('Pull-down');
});

test.each(phases.map((phase) => [phase.name, phase] as const))('in %s each lift has one leading track', (_, phase) => {
  const inPhase = phase.sessions.flatMap((session) => session.items.filter(isLiftItem));
  for (const exercise of new Set(inPhase.map((item) => item.exercise))) {
    const leading = inPhase.filter((item) => item.exercise === exercise && item.leading);
    expect([exercise, new Set(leading.map((item) => item.track)).size]).toEqual([exercise, 1]);
  }
});

/** Wathan 1994 (from memory), retyped: the fraction of the one-repetition maximum that n repetitions to failure allow. */
const wathan = (n: number): number => (48.8 + 53.8 * Math.exp(-0.075 * n)) / 100;

const fractionOf = ({ basis }: LiftItem): number | null => {
  if (basis.kind === 'fraction') return basis.of;
  return basis.kind === 'from last' && basis.start !== 'effort' ? basis.start : null;
};

/** A ratio to a tested lift is taken one standard deviation (15 %) too high. */
const allowed = (item: LiftItem, reserve: number): number => {
  const { capacity } = exerciseOf(item);
  const toFailure = wathan((item.sets[0]?.repetitions ?? 0) + reserve);
  if (capacity.kind === 'repetition maximum') return toFailure / wathan(capacity.of);
  return capacity.kind === 'ratio' ? toFailure * Math.exp(-0.15) : toFailure;
};

test('every fraction leaves the reserve that it promises', () => {
  const reserved = items.filter((item) => item.reserve !== null && fractionOf(item) !== null);
  expect(reserved.length).toBeGreaterThan(10);
  const astray = reserved.filter((item) => (fractionOf(item) ?? 0) > allowed(item, item.reserve ?? 0));
  expect(astray.map(({ id }) => id)).toEqual([]);
});

test('the taper has half of the sets or fewer at the load of the heavy days; the last week is far under it', () => {
  const named = (name: string) =>
    phases.find((phase) => phase.name === name)?.sessions.flatMap((each) => each.items.filter(isLiftItem)) ?? [];
  const squat = (name: string) => named(name).filter((item) => exerciseOf(item).name === 'Back squat');
  const setsOf = (list: readonly LiftItem[]): number => list.reduce((sum, item) => sum + item.sets.length, 0);
  expect(setsOf(squat('taper'))).toBeLessThanOrEqual(setsOf(squat('flight-specific preparation')) / 2);
  expect(squat('taper').map(fractionOf)).toEqual([0.78]);
  for (const item of squat('quarantine')) expect(fractionOf(item)).toBeLessThan(0.6);
});

/** By hand: set-up and stow, then for each item the change of exercise, every set with its rest, load changes. */
const minutesOf = (session: ProgrammeSession): number => {
  const { setUp, stow, changeExercise, changeLoad } = FREE_BAR.minutes;
  const ofItem = (item: LiftItem): number => {
    const { secondsPerRepetition, perSide } = exerciseOf(item);
    const sets = [...item.warmUps.map((set) => ({ ...set, rest: 60 })), ...item.sets];
    const seconds = sets.reduce((sum, set) => sum + set.repetitions * secondsPerRepetition + set.rest, 0);
    return changeExercise + changeLoad * (item.warmUps.length + 1) + (seconds / 60) * (perSide ? 2 : 1);
  };
  return setUp + stow + session.items.filter(isLiftItem).reduce((sum, item) => sum + ofItem(item), 0);
};

test.each(sessions.map((session) => [session.id, session] as const))('%s fits its block', (_, session) => {
  expect(minutesOf(session)).toBeLessThanOrEqual(session.blockMinutes);
});
