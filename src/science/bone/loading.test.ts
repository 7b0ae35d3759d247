import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fraction, kilograms, newtons, barLoad } from '#units/quantity.ts';
import { footForceLoad, groundFootForce, weightlessFootForce } from './foot-force.ts';
import {
  dailyLoadStimulus,
  equalCycles,
  loadStimulusRatio,
  type LoadGroup,
  type StimulusSettings,
} from './load-stimulus.ts';
import { osteogenicIndex, osteogenicWeek, sensitivityAfterRest } from './osteogenic-index.ts';
import { effectiveCycles, restAndSaturationStimulus, standing, type LoadBout } from './rest-and-saturation.ts';

const cycles = fc.integer({ min: 1, max: 6000 });
const force = fc.double({ min: 0.2, max: 4, noNaN: true });
const group = fc.record({ cycles, force });
const settings: fc.Arbitrary<StimulusSettings> = fc.record({
  exponent: fc.integer({ min: 3, max: 8 }),
  outer: fc.constantFrom('1/m' as const, '1/(2m)' as const),
});

const stimulus = (groups: readonly LoadGroup[], of: StimulusSettings): number => {
  const found = dailyLoadStimulus(groups, of);
  if (found.kind === 'refused') throw new Error(found.reason);
  return found.value;
};

const day = (bouts: readonly LoadBout[], exponent = 4): number => {
  const found = restAndSaturationStimulus(bouts, exponent);
  if (found.kind === 'refused') throw new Error(found.reason);
  return found.value;
};

const week = (sessions: Parameters<typeof osteogenicWeek>[0]): number => {
  const found = osteogenicWeek(sessions);
  if (found.kind === 'refused') throw new Error(found.reason);
  return found.value;
};

// Daily load stimulus

test('twice the force is twice the stimulus in the stress form, and √2 of it in the density form', () => {
  fc.assert(
    fc.property(fc.array(group, { minLength: 1, maxLength: 6 }), settings, (groups, of) => {
      const doubled = groups.map((each) => ({ ...each, force: 2 * each.force }));
      expect(stimulus(doubled, of) / stimulus(groups, of)).toBeCloseTo(of.outer === '1/m' ? 2 : Math.SQRT2, 9);
    }),
  );
});

test('the density form is the root of the stress form', () => {
  fc.assert(
    fc.property(fc.array(group, { minLength: 1, maxLength: 6 }), fc.integer({ min: 3, max: 8 }), (groups, exponent) => {
      const stress = stimulus(groups, { exponent, outer: '1/m' });
      expect(stimulus(groups, { exponent, outer: '1/(2m)' })).toBeCloseTo(Math.sqrt(stress), 9);
    }),
  );
});

test('sixteen times the cycles are twice the force, with an exponent of four', () => {
  fc.assert(
    fc.property(group, (each) => {
      const of = { exponent: 4, outer: '1/m' } as const;
      const more = [{ ...each, cycles: 16 * each.cycles }];
      expect(stimulus(more, of)).toBeCloseTo(stimulus([{ ...each, force: 2 * each.force }], of), 9);
    }),
  );
});

test('the order of groups and how they are cut up do not matter to the daily load stimulus', () => {
  fc.assert(
    fc.property(fc.array(group, { minLength: 1, maxLength: 6 }), settings, (groups, of) => {
      const whole = stimulus(groups, of);
      expect(stimulus(groups.toReversed(), of)).toBeCloseTo(whole, 9);
      const halves = groups.flatMap((each) => [1, 2].map(() => ({ ...each, cycles: each.cycles / 2 })));
      expect(stimulus(halves, of)).toBeCloseTo(whole, 9);
    }),
  );
});

test('cycles that count as much count as much', () => {
  fc.assert(
    fc.property(cycles, force, force, fc.integer({ min: 3, max: 8 }), (n, from, to, exponent) => {
      const of = { exponent, outer: '1/m' } as const;
      const equal = equalCycles(n, from, to, exponent);
      fc.pre(equal < 1_000_000);
      expect(stimulus([{ cycles: equal, force: to }], of)).toBeCloseTo(stimulus([{ cycles: n, force: from }], of), 8);
    }),
  );
});

test('a day without load has no stimulus, and no other day is compared with it', () => {
  const of = { exponent: 4, outer: '1/m' } as const;
  expect(dailyLoadStimulus([], of)).toEqual({ kind: 'estimate', value: 0, sum: 0, settings: of });
  expect(loadStimulusRatio([{ cycles: 1, force: 1 }], [], of)).toEqual({
    kind: 'none',
    reason: 'The reference day holds no load to compare with.',
  });
  expect(loadStimulusRatio([], [{ cycles: 1, force: 1 }], of)).toEqual({ kind: 'estimate', value: 0 });
});

test('a day against itself is one', () => {
  fc.assert(
    fc.property(fc.array(group, { minLength: 1, maxLength: 6 }), settings, (groups, of) => {
      expect(loadStimulusRatio(groups, groups, of)).toEqual({ kind: 'estimate', value: 1 });
    }),
  );
});

test('what cannot be is refused on either side of a ratio', () => {
  const of = { exponent: 4, outer: '1/m' } as const;
  const good = [{ cycles: 10, force: 1 }];
  const bad = [{ cycles: -1, force: 25 }];
  const reason =
    'cycles of one leg must lie in 0 to 1000000 cycles; it is -1. peak force must lie in 0 to 20 BW; it is 25.';
  expect(loadStimulusRatio(bad, good, of)).toEqual({ kind: 'refused', reason });
  expect(loadStimulusRatio(good, bad, of)).toEqual({ kind: 'refused', reason });
  expect(dailyLoadStimulus(good, { ...of, exponent: 0 })).toMatchObject({ kind: 'refused' });
});

// Osteogenic index

test('splitting a session over two days raises the osteogenic index', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 3000 }), force, (n, peak) => {
      const whole = week([{ atHour: 0, force: peak, cycles: 2 * n }]);
      const halves = week([0, 24].map((atHour) => ({ atHour, force: peak, cycles: n })));
      expect(halves).toBeGreaterThan(whole);
    }),
  );
});

test('the index is proportional to force, and to the logarithm of cycles and one', () => {
  fc.assert(
    fc.property(force, cycles, (peak, n) => {
      expect(osteogenicIndex(2 * peak, n)).toBeCloseTo(2 * osteogenicIndex(peak, n), 9);
      expect(osteogenicIndex(peak, (n + 1) ** 2 - 1)).toBeCloseTo(2 * osteogenicIndex(peak, n), 9);
    }),
  );
});

test('sensitivity comes back with rest, and never beyond one', () => {
  expect(sensitivityAfterRest(0)).toBe(0);
  expect(1 - sensitivityAfterRest(6 * Math.LN2)).toBeCloseTo(0.5, 12);
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 200, noNaN: true }),
      fc.double({ min: 0, max: 50, noNaN: true }),
      (t, more) => {
        expect(sensitivityAfterRest(t + more)).toBeGreaterThanOrEqual(sensitivityAfterRest(t));
        expect(sensitivityAfterRest(t + more)).toBeLessThanOrEqual(1);
      },
    ),
  );
});

test('sessions out of order, or that cannot be, are refused', () => {
  const session = { force: 2, cycles: 40 };
  const found = osteogenicWeek([
    { atHour: 30, ...session },
    { atHour: 8, ...session },
  ]);
  expect(found).toEqual({
    kind: 'refused',
    reason: 'Session 2, at hour 8, stands after one at hour 30: put them in the order of time.',
  });
  const wrong = osteogenicWeek([{ atHour: 200, force: -1, cycles: -5 }]);
  expect(wrong.kind === 'refused' && wrong.reason).toMatch(/hour of the week.*cycles of one leg.*peak force/);
  expect(osteogenicWeek([])).toEqual({ kind: 'estimate', value: 0, sessions: [] });
});

test('two sessions at the same hour are in order, and the second counts nothing', () => {
  const session = { atHour: 5, force: 2, cycles: 40 };
  expect(week([session, session])).toBeCloseTo(osteogenicIndex(2, 40), 12);
});

// Rest and saturation

test('one cycle alone is worth one, and a run is worth what its parts are', () => {
  fc.assert(
    fc.property(cycles, cycles, cycles, (before, a, b) => {
      const whole = effectiveCycles(1, before, a + b);
      expect(effectiveCycles(1, before, a) + effectiveCycles(1, before + a, b)).toBeCloseTo(whole, 9);
      expect(effectiveCycles(1, 0, 1)).toBeCloseTo(1, 15);
      expect(effectiveCycles(0.5, before, a)).toBeCloseTo(effectiveCycles(1, before, a) / 2, 12);
    }),
  );
});

test('twice the force is twice the rest-and-saturation stimulus', () => {
  fc.assert(
    fc.property(fc.array(group, { minLength: 1, maxLength: 4 }), fc.integer({ min: 3, max: 8 }), (groups, exponent) => {
      const doubled = groups.map((each) => ({ ...each, force: 2 * each.force }));
      const [once, twice] = [groups, doubled].map((each) => day([{ gapHours: 0, groups: each }], exponent));
      expect((twice ?? 0) / (once ?? 1)).toBeCloseTo(2, 9);
    }),
  );
});

test('splitting a bout with six hours of rest raises the index, whatever its cycles', () => {
  fc.assert(
    fc.property(cycles, force, (n, peak) => {
      const half = { gapHours: 6, groups: [{ cycles: n, force: peak }] };
      const whole = { gapHours: 0, groups: [{ cycles: 2 * n, force: peak }] };
      expect(day([half, half])).toBeGreaterThan(day([whole]));
    }),
  );
});

test('splitting one cycle and one with too little rest lowers the index: the artefact that the record names', () => {
  const single = { gapHours: 1, groups: [{ cycles: 1, force: 1 }] };
  expect(day([single, single])).toBeLessThan(day([{ gapHours: 0, groups: [{ cycles: 2, force: 1 }] }]));
});

test('the higher force first counts more than the higher force last: a property of the index', () => {
  fc.assert(
    fc.property(
      cycles,
      force,
      fc.double({ min: 1.01, max: 3, noNaN: true }),
      fc.double({ min: 0.25, max: 12, noNaN: true }),
      (n, low, factor, gapHours) => {
        const [hard, easy] = [low * factor, low].map((peak) => ({ gapHours, groups: [{ cycles: n, force: peak }] }));
        if (!hard || !easy) throw new Error('two bouts');
        expect(day([hard, easy])).toBeGreaterThan(day([easy, hard]));
      },
    ),
  );
});

test('a gap under a quarter of an hour goes on with the bout; the gap of the first bout says nothing', () => {
  const groups = [{ cycles: 500, force: 1.5 }];
  const whole = day([{ gapHours: 0, groups: [{ cycles: 1000, force: 1.5 }] }]);
  expect(
    day([
      { gapHours: 9, groups },
      { gapHours: 0.24, groups },
    ]),
  ).toBeCloseTo(whole, 12);
  expect(
    day([
      { gapHours: 9, groups },
      { gapHours: 0.25, groups },
    ]),
  ).toBeLessThan(whole - 0.01);
  expect(day([{ gapHours: Number.NaN, groups }])).toBe(day([{ gapHours: 0, groups }]));
});

test('a bout that goes on keeps the sensitivity it began with', () => {
  const groups = [{ cycles: 50, force: 1.5 }];
  const joined = [{ gapHours: 4, groups: [...groups, ...groups] }];
  const gapped = [
    { gapHours: 4, groups },
    { gapHours: 0.1, groups },
  ];
  const first = { gapHours: 0, groups };
  expect(day([first, ...gapped])).toBeCloseTo(day([first, ...joined]), 12);
});

test('standing is a cycle a minute at half of body weight', () => {
  expect(standing(45)).toEqual({ cycles: 45, force: 0.5 });
});

test('what cannot be is refused', () => {
  const wrong = restAndSaturationStimulus(
    [
      { gapHours: 0, groups: [{ cycles: -1, force: 1 }] },
      { gapHours: -2, groups: [{ cycles: 1, force: 99 }] },
    ],
    0,
  );
  expect(wrong.kind === 'refused' && wrong.reason).toMatch(/exponent.*cycles.*hours of rest.*peak force/);
});

// Under a foot

test('in weightlessness the body adds nothing: half the body, twice the share of body weight', () => {
  const of = (mass: number, pull: number) =>
    weightlessFootForce(fraction(0.5), newtons(pull), fraction(0.1), kilograms(mass));
  expect(of(80, 0)).toBe(0);
  expect(of(50, 900)).toBeCloseTo(2 * of(100, 900), 12);
});

test('the load that gives the foot force of the ground gives it', () => {
  const body = fc.double({ min: 40, max: 150, noNaN: true }).map(kilograms);
  const bar = fc.double({ min: 0, max: 300, noNaN: true }).map(barLoad);
  fc.assert(
    fc.property(body, bar, fc.constantFrom(0.5, 1).map(fraction), (mass, weight, share) => {
      const pull = footForceLoad(weight, mass);
      const still = weightlessFootForce(share, pull, fraction(0), mass);
      expect(still).toBeCloseTo(groundFootForce(share, weight, mass), 9);
    }),
  );
});
