import { expect, test } from 'vitest';
import { addDays, isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { totalMinutes } from '#domain/card.ts';
import { showPiece } from '#domain/show-piece.ts';
import { fraction, metresPerMinute } from '#units/quantity.ts';
import { RUN_UNDER_HARNESS } from '#planning/bout-reckonings.ts';
import { LAUNCH, onFlightDay } from './rehearsal/rehearsal.ts';
import {
  BEFORE,
  bouts,
  cell,
  drill,
  GRIP,
  Modes,
  percent,
  RIDE,
  ROW,
  RUN,
  times,
  WALK,
} from './rehearsal/all-modes.ts';

/* Published prescriptions, as cards have them. Expected values are those of the papers and handbooks, or arithmetic on them. */

/** Printed to four decimals. */
const FOUR = 4;
/** Sums of doubles. */
const NINE = 9;

test('watts for a part of the greatest uptake are those of the handbook: 42 mL/(kg min), 80 kg', () => {
  // (p · 42 − 7) · 80 / 10.8, as printed in the handbook's table (Bushman 2020).
  const printed = [
    [70, 165.9259, 165],
    [75, 181.4815, 180],
    [80, 197.037, 195],
    [90, 228.1481, 230],
    [100, 259.2593, 260],
  ] as const;
  for (const [part, power, set] of printed) {
    const modes = new Modes({ items: [bouts(RIDE, times(1, 1800, percent('of greatest uptake', part)))] });
    modes.endures({ uptake: '42' });
    expect(modes.bouts(BEFORE, 'ride').bouts.map(({ watts }) => watts)).toEqual([set]);
    expect(cell(modes.workings(BEFORE, 'ride'), 'watts by the handbook', 'power')).toBeCloseTo(power, FOUR);
  }
});

test('heart rates of 60 and 75 % of the reserve, 55 to 176.5 at 45 years, are 127.9 and 146.125', () => {
  // Karvonen 1957 with 208 − 0.7 · age (Tanaka 2001).
  const birthDate = isoDay('1981-11-20');
  const modes = new Modes({ birthDate, items: [bouts(ROW, times(2, 600, percent('of heart-rate reserve', 60, 75)))] });
  modes.endures({ rest: '55' });
  const workings = modes.workings(BEFORE, 'row');
  expect(cell(workings, 'greatest heart rate by age', 'greatest heart rate')).toBeCloseTo(176.5, NINE);
  expect(cell(workings, 'heart rate by its reserve', 'from')).toBeCloseTo(127.9, NINE);
  expect(cell(workings, 'heart rate by its reserve', 'to')).toBeCloseTo(146.125, NINE);
  const { bouts: set, says } = modes.bouts(BEFORE, 'row');
  expect(set.map(({ heartRate }) => heartRate)).toEqual([
    [128, 146],
    [128, 146],
  ]);
  expect(says.join(' ')).toMatch(/by age, ± 10\/min/);
});

test('75 % of an uptake of 42 is 72.73 % of its reserve, and of the heart-rate reserve', () => {
  // %VO2R of Swain and Leutholtz 1997: (31.5 − 3.5) / (42 − 3.5).
  const modes = new Modes({ items: [bouts(ROW, times(1, 1800, percent('of greatest uptake', 75)))] });
  modes.endures({ uptake: '42', rest: '55', greatest: '176.5' });
  const workings = modes.workings(BEFORE, 'row');
  expect(cell(workings, 'heart rate by oxygen uptake', 'reserve, low')).toBeCloseTo(0.727273, 6);
  // 55 + 0.727273 · 121.5 is 143.36; five beats either way.
  expect(modes.bouts(BEFORE, 'row').bouts[0]?.heartRate).toEqual([138, 148]);
});

test('a run of 160 m/min on the ground costs 35.5 mL/(kg min), and is 9.6 km/h', () => {
  const modes = new Modes({ items: [bouts(RUN, times(1, 1800, percent('of greatest uptake', (35.5 / 45) * 100)))] });
  modes.endures({ uptake: '45' });
  expect(cell(modes.workings(BEFORE), 'running speed by the handbook', 'speed on the ground')).toBeCloseTo(160, NINE);
  expect(modes.bouts(BEFORE).bouts[0]?.speed).toBe(9.6);
});

test('a walk of 80 m/min costs 11.5 mL/(kg min), and is 4.8 km/h', () => {
  const modes = new Modes({ items: [bouts(WALK, times(1, 1800, percent('of greatest uptake', (11.5 / 46) * 100)))] });
  modes.endures({ uptake: '46' });
  expect(modes.bouts(BEFORE, 'walk').bouts[0]?.speed).toBe(4.8);
});

/** 90 kg in a harness that is set to 70: 0.7778 of body weight, of which nine tenths reach the belt. */
const underHarness = () => {
  const modes = new Modes({
    mass: '90',
    policies: { harnessStart: 0.7478, harnessMost: 0.7778 },
    items: [bouts(RUN, times(1, 1800, percent('of greatest uptake', (35.5 / 45) * 100)))],
  });
  modes.endures({ uptake: '45', rest: '55', greatest: '176.5' });
  return modes;
};

test('under 0.70 of body weight the effort of 160 m/min is that of 12.5 km/h; the cap of 1.15 lies under it', () => {
  const modes = underHarness();
  const lived = modes.livePieces(2, 36);
  const onDay = (flightDay: number) => lived.find(({ card }) => card.day === onFlightDay(flightDay));
  const workings = onDay(30)?.workings ?? [];
  // Effective 0.70: k = 1 − 0.77 · 0.30 = 0.769, 160 / 0.769 = 208.0624 m/min, 12.4837 km/h.
  expect(cell(workings, 'pull of the harness', 'effective load')).toBeCloseTo(0.7, NINE);
  const underIt = (name: string): number => cell(workings, 'running speed under the harness', name);
  expect(underIt('share of the net cost left')).toBeCloseTo(0.769, NINE);
  expect(underIt('speed of the same effort')).toBeCloseTo(208.0624, FOUR);
  expect((underIt('speed of the same effort') * 0.06).toFixed(1)).toBe('12.5');
  expect(underIt('highest speed allowed')).toBeCloseTo(184, NINE);
  // 1 − (1 − 160 / 184) / 0.77 and 160 / (0.769 · 184).
  expect(underIt('load that keeps the effort')).toBeCloseTo(0.830604, 6);
  expect(underIt('time that keeps the effort')).toBeCloseTo(1.130774, 6);
});

test('the load goes up before the speed, then the speed by no more than a tenth, once a week', () => {
  const lived = underHarness().livePieces(2, 36);
  const set = new Map(lived.map(({ card }) => [card.day - LAUNCH + 1, card.items[0]] as const));
  const speedOn = (flightDay: number) => {
    const item = set.get(flightDay);
    return item?.kind === 'bouts' ? [item.harness?.increments, item.bouts[0]?.speed] : [];
  };
  // 0.7478 of 90 kg are 67.3; a step more on day 15, after the fortnight in which straps settle.
  expect(speedOn(14)).toEqual([67, 9.6]);
  expect(speedOn(15)).toEqual([70, 9.6]);
  expect(speedOn(21)).toEqual([70, 9.6]);
  // The fourth week allows 1.15 · 9.6 = 11.04; a tenth on 9.6 is 10.56.
  expect(speedOn(22)).toEqual([70, 10.5]);
  expect(speedOn(28)).toEqual([70, 10.5]);
  expect(speedOn(29)).toEqual([70, 11]);
  const raised = lived.flatMap(({ raises }) => raises.map(({ unit, from, to, cause }) => [unit, from, to, cause]));
  expect(raised).toEqual([
    ['kg', null, 67, 'first load'],
    ['km/h', null, 96, 'first load'],
    ['kg', 67, 70, 'ramp step'],
    ['km/h', 96, 105, 'programme'],
    ['km/h', 105, 110, 'programme'],
  ]);
});

test('a cap of 190 m/min asks for a load of 0.794942 or 1.095065 of the time', () => {
  const reckoned = RUN_UNDER_HARNESS.reckon({
    'set load': fraction(0.7 / 0.9),
    'speed on the ground': metresPerMinute(160),
    'cap of the day': fraction(190 / 160),
    'slope of the factor': fraction(0.77),
  });
  expect(reckoned['speed to start with']).toBeCloseTo(190, NINE);
  expect(reckoned['load that keeps the effort']).toBeCloseTo(0.794942, 6);
  expect(reckoned['time that keeps the effort']).toBeCloseTo(1.095065, 6);
});

test('in the first three weeks nobody runs faster than on the ground', () => {
  const modes = underHarness();
  for (const day of [2, 10, 21]) expect(modes.bouts(onFlightDay(day)).bouts[0]?.speed).toBe(9.6);
  expect(modes.bouts(onFlightDay(2)).says.join(' ')).toMatch(/never faster than the same session on the ground/);
});

test('4 × 4 min at 90 % of the greatest heart rate, 3 min easy: 162 of 180, five beats either way, 35 minutes with both ends', () => {
  const modes = new Modes({ items: [bouts(RIDE, times(4, 240, percent('of greatest heart rate', 90), 180))] });
  modes.endures({ greatest: '180' });
  const card = modes.card(BEFORE);
  expect(showPiece(modes.bouts(BEFORE, 'ride'))).toBe('4 × 4 min, 3 min easy · 157–167/min');
  expect(card.minutes.find(({ label }) => label === 'ride')?.minutes).toBe(5 + 4 * 4 + 3 * 3 + 5);
  // Set-up 2 and stow 1.
  expect(totalMinutes(card)).toBe(38);
});

test('6 × 2 min at 70, 80, 90, 100, 90 and 80 %, 2 min easy, goes up and down again', () => {
  const pyramid = [70, 80, 90, 100, 90, 80].flatMap((part) => times(1, 120, percent('of greatest uptake', part), 120));
  const modes = new Modes({ items: [bouts(RIDE, pyramid)] });
  modes.endures({ uptake: '42' });
  expect(modes.bouts(BEFORE, 'ride').bouts.map(({ watts }) => watts)).toEqual([165, 195, 230, 260, 230, 195]);
  expect(modes.card(BEFORE).minutes.find(({ label }) => label === 'ride')?.minutes).toBe(5 + 6 * 2 + 5 * 2 + 5);
  const names = modes.workings(BEFORE, 'ride').map(({ reckoning }) => reckoning);
  expect(names).toContain('watts by the handbook, bouts 2, 6');
  expect(new Set(names).size).toBe(names.length);
});

test('11 × 30 s at 80 to 90 % of the reserve, 90 s easy, as in bed rest of older people', () => {
  // Hedge 2022, table 2; rest 60, greatest 160: 140 to 150.
  const modes = new Modes({
    items: [bouts(RIDE, times(11, 30, percent('of heart-rate reserve', 80, 90), 90), { warmUpSeconds: 300 })],
  });
  modes.endures({ rest: '60', greatest: '160' });
  expect(showPiece(modes.bouts(BEFORE, 'ride'))).toBe('11 × 30 s, 1:30 min easy · 140–150/min');
});

test('8 × 30 s all-out with 15 s between: on a cycle alone, and from flight day 22', () => {
  const allOut = times(8, 30, { kind: 'all-out' }, 15);
  const modes = new Modes({ items: [bouts(RIDE, allOut), bouts(RUN, allOut)] });
  expect(modes.leftOut(onFlightDay(21), 'ride')).toBe('left out: nothing all-out before flight day 22');
  expect(modes.bouts(onFlightDay(22), 'ride').bouts.map(({ rpe }) => rpe)).toEqual(Array(8).fill([9, 10]));
  for (const day of [BEFORE, onFlightDay(22)])
    expect(modes.leftOut(day)).toBe('left out: nothing all-out but on a cycle');
});

test('7 s on, 3 s off at 100 % of critical force is that force, of each hand its own; 90 % is nine tenths', () => {
  const pulses = { kind: 'pulses', count: 8, on: 7, off: 3 } as const;
  const sets = Array.from({ length: 5 }, () => ({ work: pulses, rest: 150 }));
  const grip = (of: number) => {
    const modes = new Modes({ items: [drill(GRIP, { sets, target: { kind: 'of critical force', of } })] });
    modes.tested({ what: 'critical force', side: 'left', value: entered('210', 'N') });
    modes.tested({ what: 'critical force', side: 'right', value: entered('20', 'kg') });
    return modes;
  };
  const forces = (modes: Modes) =>
    modes
      .drill(BEFORE)
      .sets.slice(0, 2)
      .map(({ force }) => force);
  // 20 kg of force are 196.133 N.
  expect(forces(grip(1))).toEqual([210, 195]);
  expect(forces(grip(0.9))).toEqual([190, 175]);
  expect(cell(grip(0.9).workings(BEFORE, 'grip'), 'force of the hand, right', 'force')).toBeCloseTo(176.5197, FOUR);
  expect(
    grip(1)
      .card(BEFORE)
      .minutes.find(({ label }) => label === 'grip')?.minutes,
  ).toBeCloseTo((2 * 5 * (80 + 150)) / 60, NINE);
});

test("the person's own line of heart rate sets the watts where no uptake is known", () => {
  // 102, 123 and 146 beats at 50, 100 and 150 W: slope 0.44, intercept 79.6667; 146.125 beats at 151.04 W.
  const modes = new Modes({ items: [bouts(RIDE, times(1, 1800, percent('of heart-rate reserve', 75)))] });
  modes.endures({ rest: '55', greatest: '176.5' });
  for (const [watts, rate] of [
    ['50', '102'],
    ['100', '123'],
    ['150', '146'],
  ] as const)
    modes.tested({
      what: 'cycle stage',
      watts: entered(watts, 'W'),
      heartRate: entered(rate, '1/min'),
      uptake: null,
      machine: null,
    });
  expect(cell(modes.workings(BEFORE, 'ride'), 'watts by the own line of heart rate', 'power')).toBeCloseTo(
    151.0417,
    FOUR,
  );
  expect(modes.bouts(BEFORE, 'ride').bouts[0]?.watts).toBe(150);
  // In flight the heart beats faster at every power: a line of the ground sets nothing there.
  expect(modes.bouts(onFlightDay(30), 'ride').bouts[0]).toMatchObject({ watts: null, heartRate: [141, 151] });
  expect(modes.bouts(onFlightDay(30), 'ride').says.join(' ')).toMatch(/find the watts by heart rate/);
});

test("the person's own line of uptake goes before the handbook", () => {
  // 7.5 + 0.14 · P instead of 7 + 0.135 · P: 31.5 mL/(kg min) at 171.43 W instead of 181.48.
  const modes = new Modes({ items: [bouts(RIDE, times(1, 1800, percent('of greatest uptake', 75)))] });
  modes.endures({ uptake: '42' });
  for (const [watts, uptake] of [
    ['100', '21.5'],
    ['150', '28.5'],
    ['200', '35.5'],
  ] as const)
    modes.tested({
      what: 'cycle stage',
      watts: entered(watts, 'W'),
      heartRate: null,
      uptake: entered(uptake, 'mL/(kg min)'),
      machine: null,
    });
  expect(modes.bouts(BEFORE, 'ride').bouts[0]?.watts).toBe(170);
  expect(cell(modes.workings(BEFORE, 'ride'), 'watts by the own line of uptake', 'power')).toBeCloseTo(171.4286, FOUR);
});

test("the person's own stage of running sets the speed on the ground, in proportion", () => {
  // 12 km/h at 150 beats, between 50 and 190: 0.7143 of the reserve; 80 % of it at 12 · 0.8 / 0.7143.
  const modes = new Modes({ items: [bouts(RUN, times(1, 1800, percent('of heart-rate reserve', 80)))] });
  modes.endures({ uptake: '42', rest: '50', greatest: '190' });
  modes.tested({
    what: 'running stage',
    speed: entered('12', 'km/h'),
    heartRate: entered('150', '1/min'),
    uptake: null,
  });
  expect(modes.bouts(BEFORE).bouts[0]?.speed).toBe(13.4);
  expect(cell(modes.workings(BEFORE), 'running speed in proportion', 'belt on the ground')).toBeCloseTo(13.44, NINE);
});

test('a rower is found by heart rate and effort, whatever is known', () => {
  const modes = new Modes({ items: [bouts(ROW, times(1, 1800, percent('of heart-rate reserve', 70)))] });
  modes.endures({ uptake: '42', rest: '50', greatest: '190' });
  expect(modes.bouts(BEFORE, 'row').bouts[0]).toMatchObject({ watts: null, speed: null, heartRate: [143, 153] });
});

test('nothing is set over what a machine takes, nor a heart rate over the greatest', () => {
  const modes = new Modes({
    items: [
      bouts(RIDE, times(1, 300, percent('of greatest uptake', 100))),
      bouts(RUN, times(1, 300, percent('of greatest uptake', 100))),
      bouts(ROW, times(1, 300, percent('of greatest heart rate', 98, 100))),
    ],
  });
  modes.endures({ uptake: '75', rest: '50', greatest: '187' });
  // (75 − 7) · 80 / 10.8 is 504 W, of 350; (75 − 3.5) / 0.2 is 357.5 m/min or 21.45 km/h, of 20.
  expect(modes.bouts(BEFORE, 'run').bouts[0]?.speed).toBe(20);
  expect(modes.bouts(BEFORE, 'row').bouts[0]?.heartRate).toEqual([180, 187]);
  const ride = modes.bouts(onFlightDay(30), 'ride');
  expect(ride.bouts[0]?.watts).toBe(350);
  expect(ride.says).toContain('held by the machine, which takes at most 350 W');
});

test('an issued card holds its workings, the text of their formulas and the facts behind them', () => {
  const modes = underHarness();
  const on = onFlightDay(5);
  const planned = modes.card(on);
  const shown = modes.workings(on);
  const [document] = modes.issue(on, [on]);
  expect(document?.card).toEqual(planned);
  expect(document?.workings).toEqual(shown);
  expect(modes.workings(on)).toEqual(shown);
  const used = new Set(shown.flatMap(({ cells }) => cells.map(({ formula }) => formula)));
  expect(new Set(document?.formulas.map(({ id }) => id))).toEqual(used);
  expect(used.size).toBeGreaterThan(8);
  const tests = modes.known().facts.filter(({ kind }) => kind === 'tested' || kind === 'measured');
  expect(tests.every(({ id }) => document?.basis.facts.includes(id))).toBe(true);
  expect(document?.basis.machines.map(({ id }) => id)).toEqual(['treadmill 0 g']);
});

test('a lower test lowers at once; a higher one is a raise to be signed, of the test that made it', () => {
  const ridden = new Modes({ items: [bouts(RIDE, times(1, 1800, percent('of greatest uptake', 75)))] });
  ridden.endures({ uptake: '42' });
  ridden.livePieces(2, 4);
  const [lower, higher] = [ridden.again(), ridden.again()];
  lower.endures({ uptake: '38' }, onFlightDay(5));
  expect(lower.bouts(onFlightDay(6), 'ride')).toMatchObject({ bouts: [{ watts: 160 }], raises: [] });
  higher.endures({ uptake: '44' }, onFlightDay(5));
  const { raises, bouts: set } = higher.bouts(onFlightDay(6), 'ride');
  expect(set[0]?.watts).toBe(195);
  expect(raises).toMatchObject([
    { from: 36, to: 39, unit: 'W', increment: '5', cause: 'new test', needsReason: false },
  ]);
  expect(raises[0]?.because).toEqual(
    higher
      .known()
      .facts.filter(({ kind }) => kind === 'tested')
      .map(({ id }) => id)
      .slice(-1),
  );
});

test('the first days home effort leads, until something was tested there; nothing all-out', () => {
  const modes = new Modes({
    landing: 60,
    policies: { blackoutDaysFromLanding: 0 },
    items: [
      bouts(RUN, times(1, 1200, percent('of heart-rate reserve', 60))),
      bouts(RIDE, times(4, 30, { kind: 'all-out' })),
    ],
  });
  modes.endures({ uptake: '42', rest: '50', greatest: '190' });
  const home = (days: number) => addDays(LAUNCH, 60 + days);
  expect(modes.bouts(home(3)).bouts[0]).toMatchObject({ heartRate: null, speed: null });
  expect(modes.leftOut(home(3), 'ride')).toBe('left out: nothing all-out in the first days home');
  expect(modes.bouts(home(14)).bouts[0]?.heartRate).toEqual([129, 139]);
  modes.endures({ rest: '60' }, home(2));
  expect(modes.bouts(home(3)).bouts[0]?.heartRate).toEqual([133, 143]);
});
