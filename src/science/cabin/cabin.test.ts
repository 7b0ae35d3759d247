import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evaluate } from '../evaluate.ts';
import { CABIN_PROMPTS } from './closed-cabin.table.ts';
import { headacheOdds, levelAfter, levelOfPressure, partialPressure, steadyLevel } from './carbon-dioxide-level.ts';
import { carbonDioxideFlow, carbonDioxideMass, flowInCabin, heatToCabin, metabolicHeat } from './exercise-output.ts';
import { levelAlong, type Cabin, type Exerciser } from './level-along.ts';
import { oxygenFlow, watts } from '#units/quantity.ts';

interface Fixture {
  readonly made: Readonly<Record<string, string | number>>;
  readonly outputs: readonly Readonly<
    Record<
      'ratio' | 'oxygen' | 'celsius' | 'kilopascals' | 'power' | 'flow' | 'mass' | 'heat' | 'toCabin' | 'inCabin',
      number
    >
  >[];
  readonly levels: readonly (readonly [number, number, number, number, number, number])[];
  readonly days: readonly {
    readonly cabin: Cabin;
    readonly people: readonly (readonly [from: number, until: number, flow: number])[];
    readonly minutes: readonly number[];
    readonly levels: readonly number[];
  }[];
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/cabin.json');
// Written by the script that stands beside the file.
const fixture = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

test('the reference says what made it', () => {
  expect(Object.keys(fixture.made)).toEqual(expect.arrayContaining(['by', 'seed', 'scipy']));
});

test('carbon dioxide and heat of a person are as a separate program has them', () => {
  for (const of of fixture.outputs) {
    const flow = carbonDioxideFlow(of.ratio, oxygenFlow(of.oxygen));
    expect(flow).toBeCloseTo(of.flow, 12);
    expect(carbonDioxideMass(flow)).toBeCloseTo(of.mass, 11);
    expect(flowInCabin(flow, of.celsius, of.kilopascals)).toBeCloseTo(of.inCabin, 11);
    const heat = metabolicHeat(oxygenFlow(of.oxygen));
    expect(heat).toBeCloseTo(of.heat, 9);
    expect(heatToCabin(heat, watts(of.power))).toBeCloseTo(of.toCabin, 9);
  }
});

test('the level is the one that SciPy integrates', () => {
  for (const [source, clean, volume, minutes, before, printed] of fixture.levels)
    // The integrator is asked for a relative 1e-12 a step.
    expect(levelAfter(source, clean, volume, minutes, before)).toBeCloseTo(printed, 5);
});

const people = (of: readonly (readonly [from: number, until: number, flow: number])[]): readonly Exerciser[] =>
  of.map(([from, until, flow]) => ({ from, until, flow }));

const levels = (cabin: Cabin, exercisers: readonly Exerciser[], limit?: number) => {
  const along = levelAlong(cabin, exercisers, limit);
  if (along.kind === 'refused') throw new Error(along.reason);
  return along;
};

test('a day of people who come and go has the levels that SciPy integrates', () => {
  for (const { cabin, people: who, minutes, levels: printed } of fixture.days) {
    const along = levels(cabin, people(who));
    expect(along.levels.map(({ minute }) => minute)).toEqual(minutes);
    for (const [place, { level }] of along.levels.entries()) expect(level).toBeCloseTo(printed[place] as number, 5);
    expect(along.highest.level).toBeCloseTo(Math.max(...printed), 5);
    expect(along.over).toBeNull();
  }
});

const cabins = fc.record({
  volume: fc.integer({ min: 20, max: 600 }),
  cleanAir: fc.double({ min: 0.3, max: 8, noNaN: true }),
  background: fc.integer({ min: 0, max: 5000 }),
});
const flows = fc.double({ min: 0, max: 0.006, noNaN: true });
const exercisers = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 1, max: 120 }), flows), {
    minLength: 1,
    maxLength: 5,
  })
  .map((all) => all.map(([from, long, flow]) => ({ from, until: from + long, flow })));

test('a level lies between where it began and where a steady source ends', () => {
  fc.assert(
    fc.property(flows, cabins, fc.integer({ min: 0, max: 1000 }), fc.integer({ min: 0, max: 9000 }), (...all) => {
      const [source, { cleanAir, volume }, minutes, before] = all;
      const [now, end] = [levelAfter(source, cleanAir, volume, minutes, before), steadyLevel(source, cleanAir)];
      expect(now).toBeGreaterThanOrEqual(Math.min(before, end) - 1e-6);
      expect(now).toBeLessThanOrEqual(Math.max(before, end) + 1e-6);
    }),
  );
});

test('a time cut in two gives the same level', () => {
  fc.assert(
    fc.property(flows, cabins, fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 300 }), (...all) => {
      const [source, { cleanAir, volume }, first, second] = all;
      const half = levelAfter(source, cleanAir, volume, first, 500);
      expect(levelAfter(source, cleanAir, volume, second, half)).toBeCloseTo(
        levelAfter(source, cleanAir, volume, first + second, 500),
        6,
      );
    }),
  );
});

test('no matter is lost: what was added is in the air or was cleaned', () => {
  // With hardly any clean air everything stays: 1 L/min for an hour in 100 m³ is 600 ppm.
  expect(levelAfter(0.001, 1e-6, 100, 60, 0)).toBeCloseTo(600, 3);
});

test('people together leave what they leave alone, added up', () => {
  fc.assert(
    fc.property(cabins, exercisers, (cabin, all) => {
      const bare = { ...cabin, background: 0 };
      const whole = levels(bare, all);
      const until = whole.levels.at(-1)?.minute ?? 0;
      const alone = all.map((one) => {
        const last = levels(bare, [one]).levels.at(-1);
        return levelAfter(0, bare.cleanAir, bare.volume, until - (last?.minute ?? 0), last?.level ?? 0);
      });
      expect(whole.levels.at(-1)?.level).toBeCloseTo(
        alone.reduce((sum, each) => sum + each, 0),
        4,
      );
    }),
  );
});

test('the highest level is over the limit by as much as it says', () => {
  const cabin = { volume: 100, cleanAir: 1.8, background: 2600 };
  const one = [{ from: 0, until: 45, flow: 0.0018 }];
  expect(levels(cabin, one, 3000).over).toBeCloseTo(155.1419, 3);
  expect(levels(cabin, one, 3200).over).toBe(0);
  expect(levels(cabin, one).highest.minute).toBe(45);
  const emptier = levels(cabin, [{ from: 0, until: 45, flow: 0 }], 2600);
  expect(emptier).toMatchObject({ over: 0, highest: { minute: 0, level: 2600 } });
});

test('what cannot be is refused with its place', () => {
  const cabin = { volume: 100, cleanAir: 1.8, background: 0 };
  const one = { from: 0, until: 45, flow: 0.0018 };
  const reason = (of: Partial<Cabin>, who: readonly Exerciser[], limit: number | null = null): string => {
    const along = levelAlong({ ...cabin, ...of }, who, limit);
    return along.kind === 'refused' ? along.reason : 'accepted';
  };
  expect(reason({}, [one])).toBe('accepted');
  expect(reason({}, [])).toContain('Nobody');
  for (const wrong of [-1, Number.NaN, Infinity]) {
    expect(reason({ volume: wrong }, [one])).toContain('volume of the cabin must lie');
    expect(reason({ cleanAir: wrong }, [one])).toContain('flow of clean air must lie');
    expect(reason({ background: wrong }, [one])).toContain('background must lie');
    expect(reason({}, [one], wrong)).toContain('limit of the mission must lie');
    expect(reason({}, [one, { ...one, flow: wrong }])).toContain('Session 2: carbon dioxide of a person must lie');
  }
  for (const backwards of [{ until: 0 }, { from: -Infinity }, { until: Infinity }, { from: Number.NaN }])
    expect(reason({}, [{ ...one, ...backwards }])).toBe('Session 1: it must end after it begins.');
  expect(reason({ volume: 0, cleanAir: 0 }, [{ ...one, until: 0, flow: 9 }], 0)).toMatch(
    /clean air.*volume.*limit.*Session 1: it must end.*Session 1: carbon dioxide/,
  );
});

test('the curves and the prompts are those of the formula and the table', () => {
  const curves = levelAfter.record.plot?.curves() ?? [];
  expect(curves.map(({ points }) => points.at(-1))).toEqual(
    [0.9, 1.8, 3.6].map((clean) => [180, levelAfter(0.0018, clean, 100, 180, 0)]),
  );
  expect(CABIN_PROMPTS.rows.map((row) => CABIN_PROMPTS.cells(row))[2]?.slice(2)).toEqual([2.5, 'mmHg', 'low']);
});

test('parts of a million and mmHg are there and back', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: 300, max: 780 }), (parts, total) => {
      expect(levelOfPressure(partialPressure(parts, total), total)).toBeCloseTo(parts, 6);
    }),
  );
});

test('more mechanical power than metabolic heat is refused, as much is not', () => {
  expect(evaluate(heatToCabin, [300, 300])).toMatchObject({ kind: 'value', value: 0 });
  expect(evaluate(heatToCabin, [300, 301]).kind).toBe('refused');
});

test('odds multiply as differences add', () => {
  expect(headacheOdds(0)).toBe(1);
  expect(headacheOdds(-1)).toBe(0.5);
  expect(headacheOdds(1.5) * headacheOdds(0.5)).toBeCloseTo(headacheOdds(2), 12);
});
