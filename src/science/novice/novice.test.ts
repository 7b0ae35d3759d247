import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gateAfterPause } from './gate-after-pause.ts';
import { judgeSquatGate, type GateSession } from './judge-squat-gate.ts';
import { SQUAT_GATE_TABLE, SQUAT_GATES, squatGate, type SquatGateName } from './squat-gates.table.ts';

const session = (gate: SquatGateName, more: Partial<GateSession> = {}): GateSession => {
  const { sets, repetitions, load, confirms } = squatGate(gate);
  return {
    sets,
    repetitions,
    loadOverBodyMass: load ? load[0] : 0,
    exertion: 5,
    faults: 1,
    pain: 0,
    confirmed: confirms,
    watched: { how: 'in person', by: 'M. Okafor' },
    ...more,
  };
};

const judge = (gate: SquatGateName, sessions: readonly GateSession[], weeksOfTraining = 20) =>
  judgeSquatGate(gate, { weeksOfTraining, sessions });

const needed = (gate: SquatGateName, more: Partial<GateSession> = {}): readonly GateSession[] =>
  Array.from({ length: squatGate(gate).sessions }, () => session(gate, more));

test.each(SQUAT_GATES)('the %s is passed by what it asks for, and not by a session less', (gate) => {
  expect(judge(gate, needed(gate))).toEqual({ kind: 'passed', watchedBy: ['M. Okafor'] });
  expect(judge(gate, needed(gate).slice(1))).toMatchObject({ kind: 'not yet' });
});

test.each(SQUAT_GATES)('the %s is never passed by time alone', (gate) => {
  expect(judge(gate, [], 1000)).toMatchObject({ kind: 'not yet' });
});

test('gates stand in order, under names in words', () => {
  expect(SQUAT_GATE_TABLE.rows.map(({ name }) => name)).toEqual(SQUAT_GATES);
  for (const name of SQUAT_GATES) expect(name).toMatch(/^[a-z ]+ gate$/);
  expect(() => squatGate('back gate' as SquatGateName)).toThrow('No squat gate is called "back gate".');
});

test.each([
  { gate: 'light load gate', more: { sets: 2 }, says: 'Session 1: 2 sets of 3.' },
  { gate: 'light load gate', more: { repetitions: 7 }, says: 'Session 1: 7 repetitions of 8.' },
  {
    gate: 'light load gate',
    more: { loadOverBodyMass: 0.1 },
    says: 'Session 1: the load was 10 % of body mass; the gate asks for 15 to 25 %.',
  },
  {
    gate: 'light load gate',
    more: { loadOverBodyMass: 0.3 },
    says: 'Session 1: the load was 30 % of body mass; the gate asks for 15 to 25 %.',
  },
  { gate: 'light load gate', more: { exertion: 6.5 }, says: 'Session 1: the effort was 6.5; it may be 6 at most.' },
  { gate: 'light load gate', more: { exertion: null }, says: 'Session 1: the effort was not recorded.' },
  { gate: 'light load gate', more: { pain: 3 }, says: 'Session 1: pain was 3; it may be 2 at most.' },
  { gate: 'light load gate', more: { pain: Number.NaN }, says: 'Session 1: pain was NaN; it may be 2 at most.' },
  {
    gate: 'light load gate',
    more: { confirmed: ['the person braces and breathes'] },
    says: 'Session 1: not confirmed: no fault grows over the last three repetitions.',
  },
  {
    gate: 'light load gate',
    more: { watched: { how: 'in person', by: ' ' } },
    says: 'Session 1: nobody is named who watched.',
  },
  {
    gate: 'light load gate',
    more: { watched: { how: 'on film', by: 'M. Okafor', enough: false } },
    says: 'Session 1: the film was not enough to judge.',
  },
  {
    gate: 'clearance gate',
    more: { confirmed: [] },
    says: 'Session 1: not confirmed: the physician allows loaded training.',
  },
] as const)('$gate: $says', ({ gate, more, says }) => {
  const judged = judge(gate, needed(gate, more));
  expect(judged.kind === 'not yet' && judged.reasons).toContain(says);
});

test.each([
  { gate: 'light load gate', more: { exertion: 6, loadOverBodyMass: 0.25, pain: 2 } },
  { gate: 'bar gate', more: { exertion: 7, loadOverBodyMass: 0.5 } },
  { gate: 'first squat gate', more: { faults: 2, exertion: null } },
  { gate: 'light load gate', more: { faults: null, watched: { how: 'on film', by: 'R. Lind', enough: true } } },
] as const)('what lies on a line of the $gate passes', ({ gate, more }) => {
  expect(judge(gate, needed(gate, more)).kind).toBe('passed');
});

test('the test gate asks for six weeks, and says so first', () => {
  expect(judge('test gate', needed('test gate'), 6).kind).toBe('passed');
  expect(judge('test gate', needed('test gate'), 5)).toEqual({
    kind: 'not yet',
    reasons: ['5 weeks of training; the gate asks for 6.'],
  });
});

test('a session that fails does not take away what two others showed, and every watcher is named once', () => {
  const failed = session('first squat gate', { faults: 6 });
  const filmed = session('first squat gate', { watched: { how: 'on film', by: 'R. Lind', enough: true } });
  expect(judge('first squat gate', [session('first squat gate'), failed, filmed, filmed])).toEqual({
    kind: 'passed',
    watchedBy: ['M. Okafor', 'R. Lind'],
  });
});

test('all that is missing is told at once', () => {
  const judged = judge('bar gate', [session('bar gate', { exertion: 9, pain: 5 }), session('bar gate')]);
  expect(judged).toEqual({
    kind: 'not yet',
    reasons: [
      '1 of 2 sessions show all of it.',
      'Session 1: pain was 5; it may be 2 at most.',
      'Session 1: the effort was 9; it may be 7 at most.',
    ],
  });
});

test('more effort, more faults or more pain never pass where less did not', () => {
  const anyGate = fc.constantFrom(...SQUAT_GATES);
  const worse = fc.record({ exertion: fc.nat(4), faults: fc.nat(4), pain: fc.nat(4) });
  fc.assert(
    fc.property(anyGate, fc.nat(10), fc.nat(10), fc.nat(10), worse, (gate, exertion, faults, pain, more) => {
      const better = judge(gate, needed(gate, { exertion, faults, pain }));
      const after = judge(
        gate,
        needed(gate, { exertion: exertion + more.exertion, faults: faults + more.faults, pain: pain + more.pain }),
      );
      expect(better.kind === 'passed' || after.kind === 'not yet').toBe(true);
    }),
  );
});

test.each([
  { daysOff: 13, kind: 'go on' },
  { daysOff: 14, kind: 'check session' },
  { daysOff: 41, kind: 'check session' },
  { daysOff: 42, kind: 'specialist chooses' },
  { daysOff: 55, kind: 'specialist chooses' },
  { daysOff: 56, kind: 'back to gates' },
  { daysOff: -1, kind: 'refused' },
  { daysOff: Number.NaN, kind: 'refused' },
])('$daysOff days off: $kind', ({ daysOff, kind }) => {
  expect(gateAfterPause({ daysOff, because: 'days off' }).kind).toBe(kind);
});

test.each([
  { because: 'landing', reason: 'After landing.' },
  { because: 'injury', reason: 'After an injury.' },
] as const)('after $because the first squat gate comes again, however few the days', ({ because, reason }) => {
  expect(gateAfterPause({ daysOff: 1, because })).toEqual({ kind: 'back to gates', from: 'first squat gate', reason });
});
