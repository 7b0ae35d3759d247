import { expect, test } from 'vitest';
import { entered } from '#units/entered.ts';
import { onFlightDay } from './rehearsal/rehearsal.ts';
import { BEFORE, bouts, drill, GRIP, HOLD, Modes, percent, RIDE, RUN, times } from './rehearsal/all-modes.ts';

const STEADY = times(1, 1800, percent('of heart-rate reserve', 70));

// A physician's limits: planned so, and recalled where a card says otherwise.

const limited = () => {
  const modes = new Modes({
    items: [
      bouts(RUN, STEADY),
      bouts(RIDE, STEADY),
      drill(GRIP, { target: { kind: 'of greatest grip', of: 0.8 } }),
      drill(HOLD),
    ],
  });
  modes.endures({ uptake: '45', rest: '50', greatest: '190' });
  for (const side of ['left', 'right'] as const)
    modes.tested({ what: 'greatest grip', side, value: entered('500', 'N') });
  modes.livePieces(2, 4);
  modes.issue(onFlightDay(5), [onFlightDay(5)]);
  return modes;
};
const ON = onFlightDay(5);

test('a knee that is forbidden takes the run out, and recalls the card that has it', () => {
  const modes = limited();
  expect(modes.limited({ kind: 'forbidden' }, { kind: 'site', site: 'ankle', side: 'left' }, ON)).toHaveLength(1);
  expect(modes.leftOut(ON)).toBe('left out: limited by the physician');
  expect(modes.bouts(ON, 'ride').bouts).toHaveLength(1);
});

test('an effort that is capped takes every target away, and recalls the card that has one', () => {
  const modes = limited();
  expect(modes.limited({ kind: 'RPE at most', rpe: 5 }, { kind: 'pattern', pattern: 'cycling' }, ON)).toHaveLength(1);
  const ride = modes.bouts(ON, 'ride');
  expect(ride).toMatchObject({ shouldFeel: [5, 5], bouts: [{ heartRate: null, watts: null, rpe: [5, 5] }] });
  expect(ride.says).toContain('limited by the physician: effort at most RPE 5');
});

test('no straining is as an effort of 7, breathing throughout', () => {
  const modes = limited();
  expect(modes.limited({ kind: 'no straining' }, { kind: 'all' }, ON)).toHaveLength(1);
  expect(modes.bouts(ON)).toMatchObject({ shouldFeel: [6, 7], bouts: [{ heartRate: null, speed: null, rpe: [6, 7] }] });
  expect(modes.drill(ON).sets.map((set) => set.force)).toEqual([null, null]);
});

test('a load at most caps the harness and the hand; a card under it stands', () => {
  const run = { kind: 'exercise', exercise: RUN.id } as const;
  const over = limited();
  expect(over.limited({ kind: 'load at most', load: entered('52', 'kg') }, run, ON)).toEqual([]);
  const under = limited();
  expect(under.limited({ kind: 'load at most', load: entered('45.5', 'kg') }, run, ON)).toHaveLength(1);
  expect(under.bouts(ON).harness).toMatchObject({ increments: 45, share: 0.65 });
  expect(under.bouts(ON).says).toContain("harness held by the physician's restriction");
  const none = limited();
  none.limited({ kind: 'load at most', load: entered('15', 'kg') }, run, ON);
  expect(none.leftOut(ON)).toBe('left out: limited by the physician');
  const hand = limited();
  // 30 kg of force are 294.2 N; 400 N were planned.
  expect(
    hand.limited({ kind: 'load at most', load: entered('30', 'kg') }, { kind: 'site', site: 'hand', side: null }, ON),
  ).toHaveLength(1);
  expect(hand.drill(ON).sets.map((set) => set.force)).toEqual([290, 290]);
});

test('a part of capacity leaves endurance out, and caps the hand by its last grip before launch', () => {
  const modes = limited();
  expect(modes.limited({ kind: 'fraction at most', of: 0.5 }, { kind: 'all' }, ON)).toHaveLength(1);
  expect(modes.leftOut(ON, 'ride')).toMatch(/limited by the physician to a part of capacity/);
  expect(modes.drill(ON).sets.map((set) => set.force)).toEqual([250, 250]);
  expect(modes.drill(ON, 'hold').sets).toHaveLength(1);
});

test('where nobody tested the hand, or effort is capped too, the card says how much load the physician allows', () => {
  const hand = { kind: 'site', site: 'hand', side: null } as const;
  const load = { kind: 'load at most', load: entered('30', 'kg') } as const;
  const untested = new Modes({ items: [drill(GRIP, { target: { kind: 'of greatest grip', of: 0.8 } })] });
  untested.limited(load, hand, ON);
  const both = limited();
  both.limited(load, hand, ON);
  both.limited({ kind: 'RPE at most', rpe: 5 }, hand, ON);
  for (const modes of [untested, both]) {
    expect(modes.drill(ON).sets.map((set) => set.force)).toEqual([null, null]);
    expect(modes.drill(ON).says).toContain('limited by the physician: at most 30 kg');
  }
});

test('a part of a grip that nobody knows is no force of nothing and none by feel: the drill is left out', () => {
  const untested = new Modes({ items: [drill(GRIP, { target: { kind: 'of critical force', of: 0.8 } })] });
  untested.limited({ kind: 'fraction at most', of: 0.5 }, { kind: 'all' }, ON);
  expect(untested.leftOut(ON, 'grip')).toMatch(/limited by the physician to a part of capacity/);
  for (const side of ['left', 'right'] as const)
    untested.tested({ what: 'critical force', side, value: entered('200', 'N') });
  expect(untested.leftOut(ON, 'grip')).toMatch(/limited by the physician to a part of capacity/);
});

test('a hand that was set no force is by feel: a later limit recalls its card, and the next card says it', () => {
  const hand = { kind: 'site', site: 'hand', side: null } as const;
  const load = { kind: 'load at most', load: entered('30', 'kg') } as const;
  const issued = (target: Parameters<typeof drill>[1]) => {
    const modes = new Modes({ items: [drill(GRIP, target)] });
    modes.issue(ON, [ON]);
    return modes;
  };
  for (const target of [null, { kind: 'of greatest grip', of: 0.8 } as const]) {
    const loaded = issued({ target });
    expect(loaded.limited(load, hand, ON)).toHaveLength(1);
    expect(loaded.drill(ON).says).toContain('limited by the physician: at most 30 kg');
    const part = issued({ target });
    expect(part.limited({ kind: 'fraction at most', of: 0.5 }, hand, ON)).toHaveLength(1);
    expect(part.leftOut(ON, 'grip')).toMatch(/limited by the physician to a part of capacity/);
  }
});

test('watts of a treadmill are refused before anybody is sent to find them', () => {
  const modes = new Modes({ items: [bouts(RUN, times(1, 600, { kind: 'watts', watts: { least: 200, most: 200 } }))] });
  expect(modes.leftOut(BEFORE)).toMatch(/a treadmill is not set in watts/);
  expect(modes.road(BEFORE, 1).gaps).not.toEqual([]);
});

test('watts that the programme names stand as they are, a range in its middle, never over the machine', () => {
  const ridden = (least: number, most: number) =>
    new Modes({ items: [bouts(RIDE, times(1, 600, { kind: 'watts', watts: { least, most } }))] }).bouts(
      onFlightDay(5),
      'ride',
    );
  expect([ridden(132, 132), ridden(120, 151), ridden(900, 900)].map((item) => item.bouts[0]?.watts)).toEqual([
    132, 135, 350,
  ]);
  expect(ridden(132, 132).row).toBeNull();
});
