import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { cardReadings } from '#assessing/card-evidence.ts';
import { showRule } from '#domain/show-rule.ts';
import { liftsOf, workIncrements, type CardLift } from '#domain/card.ts';
import type { Effort } from '#domain/effort.ts';
import { idOf } from '#domain/identity.ts';
import type { LiftItem } from '#domain/programme.ts';
import { anyLift } from '#domain/programme-line/any-item.setup.ts';
import { prescriptionOfLift } from '#domain/programme-line/lift-line.ts';
import { writeShorthand } from '#domain/shorthand/write-shorthand.ts';
import { itemAsWritten } from '#planning/as-written.ts';
import { itemLine } from '#server/windows/item-line.ts';
import { BAR, drill, Modes, SQUAT } from './rehearsal/all-modes.ts';
import { LAUNCH, PERSON } from './rehearsal/rehearsal.ts';

/* Ranges, sets that go on, tempo and supersets: from a line to a card, and from what was done to the next load. */

const MEANS = { exercise: SQUAT, machine: BAR };

const FROM_LAST = { kind: 'from last', start: 0.6, rule: { add: { kg: '2.5', lb: '5' } } } as const;

/** Under a bar before launch, from the last load. */
const PLAIN: LiftItem = {
  ...drill(SQUAT),
  kind: 'lift',
  machineKind: 'free bar',
  leading: true,
  basis: FROM_LAST,
  warmUps: [],
  sets: [{ repetitions: 6, rest: 120 }],
  tempo: null,
  superset: null,
  reserve: null,
};

const itemOf = (line: string, before: LiftItem = PLAIN): LiftItem => {
  const written = itemAsWritten(before, MEANS, line);
  if (written.kind === 'refused' || written.item.kind !== 'lift') throw new Error(`${line} cannot be planned.`);
  return written.item;
};

const lineOf = (item: LiftItem): string => writeShorthand(prescriptionOfLift(item, SQUAT));

const squats = (...items: readonly LiftItem[]): Modes => {
  const modes = new Modes({ items });
  modes.add({
    kind: 'lifted',
    person: PERSON,
    day: addDays(LAUNCH, -390),
    exercise: SQUAT.id,
    machine: BAR.id,
    load: entered('160', 'kg'),
    repetitions: 1,
    effort: { kind: 'repetitions in reserve', value: 0 },
    side: null,
  });
  return modes;
};

const FIRST = addDays(LAUNCH, -380);
const on = (modes: Modes, day: Day, track = 'squat'): CardLift => {
  const found = liftsOf(modes.card(day)).find((item) => item.track === track);
  if (!found) throw new Error(`No ${track} on ${day}.`);
  return found;
};

test.each([
  '4 × 6 @ 80 %, rest 2:30',
  '3–4 × 6–8 @ 2 RIR, rest 2:00',
  '6, 6, 6+, rest 2:00',
  '6, 6, 6+ @ 80 %, rest 2:00',
  'top 6 @ 80 % then 2 × 8 −10 %, rest 2:00',
  '3 × 10, tempo 3-1-1, rest 1:30',
  'A1: 3 × 10 @ RPE 7, rest 1:30',
  '2–3 × 5+ @ RPE 8, tempo 4-0-1, rest 3:00',
])('“%s” is planned, and the card writes it back', (line) => {
  const item = itemOf(line, { ...PLAIN, basis: { ...FROM_LAST, start: 'effort' } });
  expect(lineOf(item)).toBe(line);
  const modes = squats(item);
  const card = on(modes, FIRST);
  // The first time is by effort where a lift goes on from its last load: so it says, as an effort.
  if (item.basis.kind !== 'from last') expect(itemLine(modes.known(), card)).toBe(line);
  expect(card.sets.filter(({ optional }) => optional)).toHaveLength(item.sets.filter((set) => set.optional).length);
});

test('whatever a lift’s line says, the item that it writes says it back', () => {
  fc.assert(
    fc.property(anyLift(SQUAT), anyLift(SQUAT), (item, before) => {
      expect(lineOf(itemOf(lineOf(item), item))).toBe(lineOf(item));
      const other = itemOf(lineOf(item), before);
      expect([other.sets, other.tempo, other.superset]).toEqual([item.sets, item.tempo, item.superset]);
    }),
    { numRuns: 300 },
  );
});

test('a card of a percentage or an effort writes back the line it was planned from', () => {
  const planned = anyLift(SQUAT).filter(({ basis }) => basis.kind === 'fraction' || basis.kind === 'effort');
  fc.assert(
    fc.property(planned, (drawn) => {
      const item: LiftItem = {
        ...drawn,
        id: PLAIN.id,
        track: PLAIN.track,
        condition: 'everyone',
        machineKind: 'free bar',
        basis: drawn.basis.kind === 'fraction' ? { kind: 'fraction', of: 0.3 } : drawn.basis,
      };
      const modes = squats(item);
      const card = liftsOf(modes.card(FIRST)).at(0);
      if (card) expect(itemLine(modes.known(), card)).toBe(lineOf(item));
      else expect(modes.leftOut(FIRST, 'squat')).toMatch(/repetitions allow/);
    }),
    { numRuns: 30 },
  );
});

test('a partner that is left out takes the letter with it; two in turn name each other and share the longer rest', () => {
  const [first, second] = [
    itemOf('A1: 3 × 6 @ 60 %, rest 2:00'),
    { ...itemOf('A2: 3 × 8 @ 50 %, rest 1:30'), id: idOf<'item'>('again'), track: idOf<'track'>('again') },
  ];
  expect(on(squats(first), FIRST).superset).toBeNull();
  const both = squats(first, second);
  expect(on(both, FIRST).superset).toEqual({ letter: 'A1', inTurnWith: [2] });
  expect(on(both, FIRST, 'again')).toMatchObject({ superset: { letter: 'A2', inTurnWith: [1] } });
  expect(on(both, FIRST, 'again').sets.map(({ rest }) => rest)).toEqual([120, 120, 120]);
});

/** Trains the squat of two weeks, a week apart, and answers that of the third. */
const afterDoing = (line: string, done: readonly (number | null)[], effort: Effort | null = RPE_7): CardLift => {
  const modes = squats(itemOf(line));
  for (const day of [FIRST, addDays(FIRST, 7)]) doOn(modes, day, done, effort);
  return on(modes, addDays(FIRST, 14));
};

const RPE_7: Effort = { kind: 'RPE', value: 7 };

const doOn = (modes: Modes, day: Day, done: readonly (number | null)[], effort: Effort | null): void => {
  const [document] = modes.issue(day, [day], { squat: 'rehearsed' });
  const item = document && liftsOf(document.card)[0];
  if (!document || !item) throw new Error('Nothing was issued.');
  const load = entered(String((workIncrements(item) ?? 0) * Number(item.increment)), item.unit);
  modes.add({
    kind: 'trained',
    person: PERSON,
    day,
    card: document.id,
    sets: document.sets.flatMap(({ id, place }) => {
      const repetitions = done[place] ?? null;
      return repetitions === null ? [] : [{ set: id, repetitions, load, effort, side: null }];
    }),
    pieces: [],
    sessionRpe: 7,
    minutes: 60,
  });
};

const change = (line: string, done: readonly (number | null)[]): number => {
  const modes = squats(itemOf(line));
  return (workIncrements(afterDoing(line, done)) ?? 0) - (workIncrements(on(modes, FIRST)) ?? 0);
};

test('first repetitions, then load: the step is added once every set reached the most of its range', () => {
  expect(change('3 × 6–8', [8, 8, 8])).toBeGreaterThan(0);
  expect(change('3 × 6–8', [8, 8, 7])).toBe(0);
  expect(change('3 × 6–8', [6, 6, 6])).toBe(0);
  expect(change('3 × 6', [6, 6, 6])).toBeGreaterThan(0);
});

test('a set that may be left out holds nothing back, and counts where it was done', () => {
  expect(change('2–3 × 6–8', [8, 8])).toBeGreaterThan(0);
  expect(change('2–3 × 6–8', [8, 8, 6])).toBe(0);
  expect(change('2–3 × 6', [6])).toBe(0);
});

test('the signed rule says so, on the card and in its short form', () => {
  const item = afterDoing('3 × 6–8', [6, 6, 6]);
  expect(item.rule?.says).toContain('if 8 in every set at RPE 8 or less');
  expect(showRule(item, String)).toContain('if 8 in every set at RPE ≤ 8');
  expect(afterDoing('6–8, 6–8, 5–6', [6, 6, 5]).rule?.says).toContain('if the most in every set');
});

test('a card is done when what must be is done', () => {
  const outcome = (done: readonly (number | null)[]) => {
    const modes = squats(itemOf('2–3 × 6–8 @ 60 %'));
    doOn(modes, FIRST, done, RPE_7);
    const card = modes.road(addDays(FIRST, 1)).cards.find((each) => each.state === 'issued');
    return card?.state === 'issued' ? card.record.outcome : null;
  };
  expect(outcome([6, 6])).toBe('done');
  expect(outcome([6])).toBe('part done');
});

test('repetitions beyond the planned are evidence with the reserve told, and “at least” without', () => {
  const readingOf = (line: string, done: number, effort: Effort | null) => {
    const modes = squats(itemOf(line, { ...PLAIN, reserve: 2 }));
    doOn(modes, FIRST, [done], effort);
    const [reading] = cardReadings(
      modes.known(),
      SQUAT,
      { exercise: SQUAT.id, gravity: '1 g', machine: 'free bar' },
      1,
    );
    if (reading?.kind !== 'observation') throw new Error(`Nothing is read from ${line}.`);
    return reading.observation;
  };
  const told = readingOf('1 × 6+', 10, { kind: 'repetitions in reserve', value: 1 });
  expect(told.lowerBound).toBe(false);
  expect(told.point).toBeGreaterThan(readingOf('1 × 6+', 8, { kind: 'repetitions in reserve', value: 1 }).point);
  expect(readingOf('1 × 6+', 10, null).lowerBound).toBe(true);
  expect(readingOf('1 × 6', 6, null).lowerBound).toBe(false);
});

test('what repetitions allow is asked of the most of a range', () => {
  const allowed = (line: string) => on(squats(itemOf(line)), FIRST).says.join(' ');
  expect(allowed('3 × 3 @ 90 %')).toBe('');
  expect(allowed('3 × 3–8 @ 90 %')).toMatch(/of the maximum for 8 repetitions/);
});
