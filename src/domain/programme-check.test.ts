import { expect, test } from 'vitest';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { idOf } from './identity.ts';
import type { LiftItem, ProgrammePhase, ProgrammeSession, RoadEdge } from './programme.ts';
import { programmeProblems } from './programme-check.ts';

const EXERCISES = new Map(SHIPPED_EXERCISES.map((exercise) => [exercise.id, exercise]));

const item = (id: string, more: Partial<LiftItem> = {}): LiftItem => ({
  kind: 'lift',
  id: idOf(id),
  track: idOf('squat'),
  leading: true,
  exercise: idOf('back-squat'),
  machineKind: 'free bar',
  condition: 'everyone',
  priority: 1,
  basis: { kind: 'fraction', of: 0.8 },
  warmUps: [],
  sets: [{ repetitions: 5, rest: 120 }],
  tempo: null,
  superset: null,
  reserve: null,
  shouldFeel: [7, 8],
  source: '',
  ...more,
});

const session = (id: string, weekday: number, items: readonly LiftItem[]): ProgrammeSession => ({
  id: idOf(id),
  title: `Day ${weekday}`,
  weekday,
  blockMinutes: 60,
  items,
});

const launch = (days: number): RoadEdge => ({ from: 'launch', days });
const landing = (days: number): RoadEdge => ({ from: 'landing', days });

const phase = (more: Partial<ProgrammePhase> = {}): ProgrammePhase => ({
  name: 'main flight',
  span: { first: launch(0), last: null },
  deload: null,
  sessions: [session('one', 1, [item('a')])],
  source: '',
  ...more,
});

const fieldsOf = (...phases: readonly ProgrammePhase[]): readonly string[] =>
  programmeProblems({ phases }, EXERCISES).map(({ field }) => field);

test('a programme in order has no problem', () => {
  expect(programmeProblems({ phases: [phase()] }, EXERCISES)).toEqual([]);
});

test('every problem is told at its place, all at once', () => {
  const items = [
    item('a'),
    item('a', { exercise: idOf('juggling') }),
    item('b', { machineKind: 'cycle' }),
    item('c', { sets: [] }),
    item('d', {
      sets: [
        { repetitions: 5, rest: 60 },
        { repetitions: 5, rest: 60, loadBy: 1.2 },
      ],
    }),
  ];
  expect(fieldsOf(phase({ sessions: [session('one', 1, items), session('one', 1, [])] }))).toEqual([
    'phases.0.sessions.1',
    'phases.0.sessions.0.items.1',
    'phases.0.sessions.1.weekday',
    'phases.0.sessions.0.items.1.exercise',
    'phases.0.sessions.0.items.2.machineKind',
    'phases.0.sessions.0.items.3.sets',
    'phases.0.sessions.0.items.4.sets',
  ]);
});

test('a load on what no machine loads is refused, though the exercise may be done there', () => {
  const lunge = item('a', { exercise: idOf('reverse-lunge'), machineKind: 'body weight' });
  expect(fieldsOf(phase({ sessions: [session('one', 1, [lunge])] }))).toEqual([
    'phases.0.sessions.0.items.0.machineKind',
  ]);
});

test('an empty programme is no programme', () => {
  expect(fieldsOf(phase({ sessions: [] }))).toEqual(['phases']);
  expect(fieldsOf()).toEqual(['phases']);
});

const other = (first: RoadEdge, last: RoadEdge | null): ProgrammePhase =>
  phase({ name: 'last flight weeks', span: { first, last }, sessions: [] });

test.each([
  { first: launch(0), last: launch(13), next: other(launch(14), null), told: [] },
  { first: launch(0), last: launch(13), next: other(launch(13), null), told: ['phases.1.span'] },
  { first: launch(0), last: null, next: other(landing(-14), null), told: ['phases.1.span'] },
  { first: launch(0), last: landing(-15), next: other(landing(-14), landing(-1)), told: [] },
  { first: launch(0), last: null, next: other(landing(0), null), told: [] },
  { first: landing(0), last: null, next: other(landing(5), landing(9)), told: ['phases.1.span'] },
  { first: launch(0), last: launch(9), next: other(landing(-5), launch(3)), told: ['phases.1.span'] },
])('$first.from $first.days to $last.days beside $next.span: $told', ({ first, last, next, told }) => {
  expect(fieldsOf(phase({ span: { first, last } }), next)).toEqual(told);
});

test('two phases of one name cannot be told apart', () => {
  const later = phase({ span: { first: landing(0), last: null }, sessions: [] });
  expect(fieldsOf(phase(), later)).toEqual(['phases.1.name']);
});
