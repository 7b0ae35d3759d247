import fc from 'fast-check';
import { expect, test } from 'vitest';
import { knownMaximum, type FoundMaximum } from './known-maximum.ts';
import { sdOf, valueOf, wordsOf } from './read-estimate.ts';
import { singleStageEstimate, singleStageFactor, type SingleStage } from './single-stage-estimate.ts';
import { AGE_FACTORS, MAXIMAL_RATE_FACTORS } from './single-stage-factors.table.ts';
import { stagedEstimate, twoPointEstimate, type Stage } from './staged-estimate.ts';
import { lineOfLeastSquares, lineSd, onLine, type Line, type Pair } from './line-through-stages.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const through = (pairs: readonly Pair[]): Line => {
  const line = lineOfLeastSquares(pairs);
  if (line.kind === 'refused') throw new Error(line.reason);
  return line;
};

/** Pairs at places a unit apart at the least, so that no line is steeper than the numbers can carry. */
const somePairs = fc
  .array(fc.record({ step: between(1, 30), y: between(-50, 50) }), { minLength: 3, maxLength: 9 })
  .map((steps) => {
    let x = 80;
    return steps.map(({ step, y }) => {
      x += step;
      return { x, y };
    });
  });

test('the order of stages does not matter', () => {
  fc.assert(
    fc.property(somePairs, (pairs) => {
      const [forth, back] = [through(pairs), through(pairs.toReversed())];
      expect(back.slope).toBeCloseTo(forth.slope, 10);
      expect(back.residualSd).toBeCloseTo(forth.residualSd, 9);
      expect([back.from, back.to, back.count]).toEqual([forth.from, forth.to, forth.count]);
    }),
  );
});

test('shifting x moves the line along, and stretching y stretches line and spread', () => {
  fc.assert(
    fc.property(somePairs, between(-40, 40), between(0.2, 5), between(80, 220), (pairs, shift, scale, at) => {
      const line = through(pairs);
      const moved = through(pairs.map(({ x, y }) => ({ x: x + shift, y: y * scale })));
      expect(onLine(moved, at + shift)).toBeCloseTo(scale * onLine(line, at), 6);
      expect(lineSd(moved, at + shift)).toBeCloseTo(scale * lineSd(line, at), 6);
    }),
  );
});

test('the line passes through the middle of the stages, where it is surest', () => {
  fc.assert(
    fc.property(somePairs, between(0.1, 60), (pairs, away) => {
      const line = through(pairs);
      const mean = pairs.reduce((total, { y }) => total + y, 0) / pairs.length;
      expect(onLine(line, line.meanX)).toBeCloseTo(mean, 8);
      expect(lineSd(line, line.meanX + away)).toBeGreaterThanOrEqual(lineSd(line, line.meanX));
    }),
  );
});

test('pairs on a line give it back with no residual', () => {
  const line = through([90, 120, 150].map((x) => ({ x, y: 0.3 * x - 12 })));
  expect(line.slope).toBeCloseTo(0.3, 12);
  expect(line.intercept).toBeCloseTo(-12, 10);
  expect(line.residualSd).toBeCloseTo(0, 10);
});

test('pairs below zero and at the largest numbers are a line too', () => {
  const line = through([-1e6, 0, 1e6].map((x) => ({ x, y: -x })));
  expect(line).toMatchObject({ slope: -1, from: -1e6, to: 1e6, count: 3 });
});

test('too few pairs, one x alone and numbers that cannot be are refused, each in its sentence', () => {
  const at = (x: number, y = 1): Pair => ({ x, y });
  expect(wordsOf(lineOfLeastSquares([at(1), at(2)]))).toContain('there are 2');
  expect(wordsOf(lineOfLeastSquares([at(1), at(1), at(1)]))).toContain('stand at the same place');
  for (const bad of [Number.NaN, Infinity, 2e6, -2e6]) {
    expect(wordsOf(lineOfLeastSquares([at(1), at(2), at(bad)]))).toContain('Pair 3: x of a pair must lie');
    expect(wordsOf(lineOfLeastSquares([at(1), at(2), at(3, bad)]))).toContain('Pair 3: y of a pair must lie');
  }
  expect(wordsOf(lineOfLeastSquares([at(0), at(0), at(5e-324)]))).toContain('stand at the same place');
});

const stages: readonly Stage[] = [
  { uptake: 13.75, heartRate: 102 },
  { uptake: 20.5, heartRate: 123 },
  { uptake: 27.25, heartRate: 146 },
];
const known = { value: 176.5, sd: 7 };

test('two stages on the line of three read the same maximum', () => {
  fc.assert(
    fc.property(between(0.1, 0.5), between(-25, -5), between(165, 200), (slope, intercept, maximum) => {
      const on = (heartRate: number): Stage => ({
        heartRate,
        uptake: Math.max(3.5, intercept + slope * heartRate + 25),
      });
      const [a, b, c] = [on(115), on(130), on(145)] as const;
      const two = twoPointEstimate(a, c, { value: maximum, sd: 10 });
      const three = stagedEstimate([a, b, c], { value: maximum, sd: 10 }, 60);
      expect(valueOf(two)).toBeCloseTo(valueOf(three), 8);
      expect(sdOf(two)).toBeCloseTo(sdOf(three), 6);
    }),
  );
});

test('an unsure maximal heart rate makes an unsure estimate, never a surer one', () => {
  fc.assert(
    fc.property(between(0, 15), between(0.1, 10), (sd, more) => {
      expect(sdOf(stagedEstimate(stages, { value: 176.5, sd: sd + more }))).toBeGreaterThan(
        sdOf(stagedEstimate(stages, { value: 176.5, sd })),
      );
    }),
  );
});

const cautionsOf = (estimate: ReturnType<typeof stagedEstimate>): string =>
  estimate.kind === 'estimate' ? estimate.cautions.join(' ') : estimate.reason;

test('two stages say that they know nothing of their scatter, and where the heart does not answer in a line', () => {
  const [a, b] = [
    { uptake: 17.125, heartRate: 110 },
    { uptake: 23.875, heartRate: 150 },
  ];
  const exact = { value: 150 / 0.85, sd: 10 };
  expect(cautionsOf(twoPointEstimate(a, b, exact))).toMatch(/nothing of their own scatter/);
  expect(cautionsOf(twoPointEstimate(a, b, exact))).not.toMatch(/outside 110 to/);
  expect(cautionsOf(twoPointEstimate({ ...a, heartRate: 109.9 }, b, exact))).toMatch(/outside 110 to 150/);
  expect(cautionsOf(twoPointEstimate(a, { ...b, heartRate: 150.1 }, exact))).toMatch(/outside 110 to 150/);
});

test('a falling, flat or backward pair of stages is refused', () => {
  const a = { uptake: 20, heartRate: 120 };
  for (const b of [
    { uptake: 19, heartRate: 130 },
    { uptake: 20, heartRate: 130 },
    { uptake: 25, heartRate: 120 },
    { uptake: 60, heartRate: 123 },
  ])
    expect(cautionsOf(twoPointEstimate(a, b, known))).toMatch(/does not rise/);
  expect(
    cautionsOf(
      stagedEstimate(
        stages.map(({ heartRate }) => ({ heartRate, uptake: 200 / heartRate + 10 })),
        known,
      ),
    ),
  ).toMatch(/does not rise/);
});

test('a stage at or above the maximal heart rate is refused: the maximum was given too low', () => {
  expect(cautionsOf(stagedEstimate(stages, { value: 146, sd: 10 }))).toMatch(/higher than was given/);
  expect(stagedEstimate(stages, { value: 146.1, sd: 10 }).kind).toBe('estimate');
  expect(
    cautionsOf(twoPointEstimate({ uptake: 17, heartRate: 115 }, { uptake: 24, heartRate: 137 }, { value: 137, sd: 5 })),
  ).toMatch(/higher than was given/);
});

test('what cannot be is told stage by stage, with the maximal rate beside it', () => {
  const told = cautionsOf(
    stagedEstimate([{ uptake: -1, heartRate: 102 }, { uptake: 20, heartRate: 10 }, ...stages], { value: 300, sd: -1 }),
  );
  expect(told).toMatch(/Stage 1: oxygen uptake/);
  expect(told).toMatch(/Stage 2: heart rate/);
  expect(told).toMatch(/maximal heart rate must/);
  expect(told).toMatch(/its standard deviation must/);
});

test('a short span of heart rates and a low top stage are flagged, and a missing resting rate is said', () => {
  const span = (width: number): readonly Stage[] =>
    [0, 0.5, 1].map((step) => ({ heartRate: 120 + width * step, uptake: 20 + 10 * step }));
  expect(cautionsOf(stagedEstimate(span(29.9), known, 55))).toMatch(/span 30 beats/);
  expect(cautionsOf(stagedEstimate(span(30), known, 55))).not.toMatch(/span/);
  // 65 % of what lies between 55 and 176.5 is 133.975.
  const top = (heartRate: number): readonly Stage[] => [...stages.slice(0, 2), { uptake: 26, heartRate }];
  expect(cautionsOf(stagedEstimate(top(133.9), known, 55))).toMatch(/top stage reaches 65 %/);
  expect(cautionsOf(stagedEstimate(top(134), known, 55))).not.toMatch(/top stage/);
  expect(cautionsOf(stagedEstimate(stages, known))).toMatch(/Without a resting heart rate/);
  for (const resting of [0, 176.5, Number.NaN])
    expect(cautionsOf(stagedEstimate(stages, known, resting))).toMatch(/was not used/);
  expect(cautionsOf(stagedEstimate(stages.slice(0, 2), known))).toMatch(/at least three points/);
});

const man: SingleStage = {
  sex: 'male',
  workRate: 900,
  heartRates: [148, 148],
  bodyMass: 80,
  factor: { by: 'age', years: 45 },
};

test('a faster heart at the same work means a smaller maximum, an older person too', () => {
  fc.assert(
    fc.property(
      between(126, 168),
      between(15, 64),
      fc.constantFrom('male' as const, 'female' as const),
      (rate, years, sex) => {
        const at = (heartRate: number, age: number): number =>
          valueOf(
            singleStageEstimate({ ...man, sex, heartRates: [heartRate, heartRate], factor: { by: 'age', years: age } }),
          );
        expect(at(rate + 1, years)).toBeLessThan(at(rate, years));
        expect(at(rate, years + 1)).toBeLessThan(at(rate, years));
      },
    ),
  );
});

test('every printed factor stands at its row, and between two rows lies between them', () => {
  const factorAt = (factor: SingleStage['factor']): number => {
    const found = singleStageFactor(factor);
    return found.kind === 'factor' ? found.value : Number.NaN;
  };
  for (const [years, factor] of AGE_FACTORS) expect(factorAt({ by: 'age', years })).toBe(factor);
  for (const [rate, factor] of MAXIMAL_RATE_FACTORS) expect(factorAt({ by: 'maximal heart rate', rate })).toBe(factor);
  expect(factorAt({ by: 'age', years: 20 })).toBeCloseTo(1.05, 12);
  expect(factorAt({ by: 'maximal heart rate', rate: 195 })).toBeCloseTo(0.965, 12);
  expect(factorAt({ by: 'maximal heart rate', rate: 152 })).toBeCloseTo(0.65, 12);
});

test('outside the printed ages and rates there is no factor, and why is said', () => {
  for (const years of [14.9, 65.1, Number.NaN])
    expect(wordsOf(singleStageFactor({ by: 'age', years }))).toContain(`the age is ${years}`);
  for (const rate of [149, 211, Number.NaN])
    expect(wordsOf(singleStageFactor({ by: 'maximal heart rate', rate }))).toContain(`it is ${rate}`);
});

test('a man and a woman are read off their own charts', () => {
  // By hand: 2.1 · 134 / 87 · 0.78 over 80 kg, and 2.1 · 126 / 76 · 0.78 over 80 kg.
  expect(valueOf(singleStageEstimate(man))).toBeCloseTo((1000 * 2.1 * 134 * 0.78) / 87 / 80, 10);
  expect(valueOf(singleStageEstimate({ ...man, sex: 'female' }))).toBeCloseTo((1000 * 2.1 * 126 * 0.78) / 76 / 80, 10);
});

test('either a number or a factor that cannot be is refused alone', () => {
  expect(singleStageEstimate({ ...man, bodyMass: 5 })).toEqual({
    kind: 'refused',
    reason: 'body mass must lie in 25 to 300 kg; it is 5.',
  });
  expect(singleStageEstimate({ ...man, factor: { by: 'age', years: 70 } })).toEqual({
    kind: 'refused',
    reason: 'The factors are printed for 15 to 65 years; the age is 70. Use a test with a measured maximal heart rate.',
  });
});

test('above the chart the work rate is flagged, and not the oxygen that was made of it', () => {
  expect(wordsOf(singleStageEstimate({ ...man, workRate: 1300 }))).toBe(
    'work rate 1300 kg m/min is outside 300 to 1050.',
  );
});

test('a refused estimate reads as no number', () => {
  const none = singleStageEstimate({ ...man, bodyMass: 5 });
  expect([valueOf(none), sdOf(none)]).toEqual([Number.NaN, Number.NaN]);
});

test('stages of one uptake are no line, and a slope of ten a beat is none either', () => {
  const flat = stages.map(({ heartRate }) => ({ heartRate, uptake: 20 }));
  expect(wordsOf(stagedEstimate(flat, known))).toMatch(/does not rise/);
  const steep = (rise: number) =>
    wordsOf(twoPointEstimate({ uptake: 20, heartRate: 120 }, { uptake: 20 + rise, heartRate: 121 }, known));
  expect(steep(10)).toMatch(/does not rise/);
  expect(steep(9)).not.toMatch(/does not rise/);
});

test('a top stage of exactly 65 % of the reserve is high enough', () => {
  const to = (top: number) => [80, 100, top].map((heartRate, place) => ({ heartRate, uptake: 12 + 6 * place }));
  expect(wordsOf(stagedEstimate(to(115), { value: 150, sd: 5 }, 50))).toBe('');
  expect(wordsOf(stagedEstimate(to(114), { value: 150, sd: 5 }, 50))).toMatch(/top stage reaches 64 %/);
});

test('a known maximal rate takes the place of the age', () => {
  const byRate = singleStageEstimate({ ...man, factor: { by: 'maximal heart rate', rate: 180 } });
  expect(valueOf(byRate) / valueOf(singleStageEstimate(man))).toBeCloseTo(0.83 / 0.78, 12);
  expect(byRate).toMatchObject({ sd: 5.7 });
  expect(cautionsOf(byRate)).toBe(
    'The standard deviation of 5.7 was found with the factor for the age; with a known maximal heart rate nobody we know of printed one.',
  );
});

test('the two last minutes are averaged, and a stage that is not steady is flagged', () => {
  const uneven = (fifth: number, sixth: number) => singleStageEstimate({ ...man, heartRates: [fifth, sixth] });
  expect(valueOf(uneven(146, 150))).toBeCloseTo(valueOf(uneven(148, 148)), 10);
  expect(cautionsOf(uneven(145.5, 150.5))).not.toMatch(/not steady/);
  expect(cautionsOf(uneven(145, 151))).toMatch(/differ by 6 beats/);
  expect(cautionsOf(uneven(151, 145))).toMatch(/differ by 6 beats/);
});

test('a heart rate or a work rate outside the chart is flagged, once, and what cannot be is refused with the factor', () => {
  expect(cautionsOf(singleStageEstimate({ ...man, heartRates: [120, 120] }))).toBe(
    'heart rate of the stage 120 1/min is outside 125 to 170.',
  );
  expect(cautionsOf(singleStageEstimate({ ...man, workRate: 1200 }))).toBe(
    'work rate 1200 kg m/min is outside 300 to 1050.',
  );
  expect(cautionsOf(singleStageEstimate(man))).toBe('');
  const told = cautionsOf(singleStageEstimate({ ...man, bodyMass: 5, factor: { by: 'age', years: 70 } }));
  expect(told).toMatch(/body mass must lie/);
  expect(told).toMatch(/the age is 70/);
});

const found = (way: string, value: number, sd: number): FoundMaximum => ({ way, value, sd, measured: false });

test('a measurement stands before every estimate, however sure the estimate', () => {
  fc.assert(
    fc.property(between(20, 60), between(20, 60), between(0.2, 9), (measured, computed, sd) => {
      const taken = knownMaximum([
        { way: 'gas exchange', measured: true, value: measured },
        found('walk', computed, sd),
      ]);
      expect(taken).toMatchObject({ kind: 'estimate', value: measured, measured: true, way: 'gas exchange' });
      expect(taken.kind === 'estimate' ? taken.sd : Number.NaN).toBeCloseTo(0.03 * measured, 10);
    }),
  );
});

test('of estimates the surest is taken, of equals the last, and the others are set aside with their distance', () => {
  expect(knownMaximum([found('walk', 40, 5), found('stages', 44, 3), found('run', 43, 3.9)])).toEqual({
    kind: 'estimate',
    way: 'stages',
    measured: false,
    value: 44,
    sd: 3,
    cautions: [],
    setAside: [
      { way: 'run', value: 43, apart: 1 / Math.hypot(3.9, 3) },
      { way: 'walk', value: 40, apart: 4 / Math.hypot(5, 3) },
    ],
  });
  expect(knownMaximum([found('first', 40, 4), found('second', 41, 4)])).toMatchObject({ way: 'second' });
});

test('two ways that lie over two standard deviations apart are told', () => {
  const apart = (value: number) => knownMaximum([found('stages', 40, 3), found('walk', value, 4)]);
  expect(apart(50)).toMatchObject({ cautions: [] });
  expect(apart(50.1)).toMatchObject({ cautions: ['walk lies 2.0 standard deviations away: one of the two is wrong.'] });
  expect(apart(29.9)).toMatchObject({ cautions: ['walk lies 2.0 standard deviations away: one of the two is wrong.'] });
});

test('nothing, a value that cannot be and an estimate without a spread are refused together', () => {
  expect(knownMaximum([])).toEqual({
    kind: 'refused',
    reason: 'Give at least one maximal uptake, measured or computed.',
  });
  const told = knownMaximum([
    found('walk', 120, 5),
    { way: 'run', measured: false, value: 40 },
    found('stages', 40, 0),
  ]);
  if (told.kind !== 'refused') throw new Error('was taken');
  expect(told.reason).toMatch(/walk: a maximal uptake must lie in 7 to 100/);
  expect(told.reason).toMatch(/run: a computed value needs its standard deviation/);
  expect(told.reason).toMatch(/stages: a standard deviation must lie in 0.1 to 30; it is 0/);
  for (const [value, sd] of [
    [7, 0.1],
    [100, 30],
  ] as const)
    expect(knownMaximum([found('walk', value, sd)]).kind).toBe('estimate');
  for (const [value, sd] of [
    [6.9, 3],
    [100.1, 3],
    [40, 30.1],
    [Number.NaN, 3],
    [40, Number.NaN],
  ] as const)
    expect(knownMaximum([found('walk', value, sd)]).kind).toBe('refused');
});
