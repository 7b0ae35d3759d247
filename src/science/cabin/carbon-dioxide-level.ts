import { formula, type FormulaInput, type FormulaRecord } from '../formula.ts';
import { curveOf, type Curve } from '../plot.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { LAW_2014, STANDARD_3001_VOLUME_2 } from './sources.ts';

/** Carbon dioxide of a cabin whose air is well mixed. Levels in parts of a million by volume, above what else is there. */

const MILLION = 1_000_000;

const added: FormulaInput = {
  name: 'carbon dioxide added, as it fills the cabin',
  symbol: 'G',
  unit: 'm³/min',
  possible: [0, 0.1],
  valid: [0, 0.02],
};
const clean: FormulaInput = {
  name: 'flow of clean air',
  symbol: 'Q',
  unit: 'm³/min',
  possible: [0.01, 100],
  valid: [0.1, 20],
};
const volume: FormulaInput = {
  name: 'volume of the cabin',
  symbol: 'V',
  unit: 'm³',
  possible: [1, 5000],
  valid: [10, 1000],
};
const level = (name: string, symbol: string): FormulaInput => ({
  name,
  symbol,
  unit: 'ppm',
  possible: [0, 200_000],
  valid: [0, 20_000],
});
const pressure: FormulaInput = {
  name: 'cabin pressure',
  symbol: 'p',
  unit: 'mmHg',
  possible: [150, 900],
  valid: [380, 780],
};

const NOT_MIXED =
  'That without free convection breath stays where it is: near a face the level may be far above the mean. Scrubbers are taken as clean air of a steady flow.';

const record = (
  written: Pick<FormulaRecord, 'id' | 'title' | 'equation' | 'inputs' | 'output'> & Partial<FormulaRecord>,
): FormulaRecord => ({
  revision: 1,
  source: COMMON_PRACTICE,
  restsOn: [STANDARD_3001_VOLUME_2],
  doesNotKnow: NOT_MIXED,
  ...written,
});

const rise = { name: 'level above what else is there', symbol: 'C', unit: 'ppm' } as const;

/** Carbon dioxide [ppm] that a steady source ends at. */
export const steadyLevel = formula(
  record({
    id: 'cabin/steady-level',
    title: 'Carbon dioxide [ppm] that a steady source ends at',
    equation: '10^6 · G / Q',
    inputs: [added, clean],
    output: { ...rise, symbol: 'C_∞' },
  }),
  (source: number, flow: number): number => (MILLION * source) / flow,
);

/** Carbon dioxide [ppm] of a cabin after a time with a steady source. */
export const levelAfter = formula(
  record({
    id: 'cabin/level-after',
    title: 'Carbon dioxide [ppm] of a cabin after a time with a steady source',
    equation: '10^6 · (G / Q) · (1 − exp(−Q · t / V)) + C_0 · exp(−Q · t / V)',
    inputs: [
      added,
      clean,
      volume,
      { name: 'time', symbol: 't', unit: 'min', possible: [0, 100_000], valid: [0, 1440] },
      level('level before', 'C_0'),
    ],
    output: rise,
    plot: {
      says: 'One person at 1.8 L/min in 100 m³: the cleaner the air that comes in, the sooner and the lower the level settles.',
      x: { name: 'time', unit: 'min' },
      y: { name: 'level above what else is there', unit: 'ppm' },
      curves: (): readonly Curve[] =>
        [0.9, 1.8, 3.6].map((flow) =>
          curveOf(`clean air ${flow} m³/min`, levelAfter, [0, 180], (minutes) => [0.0018, flow, 100, minutes, 0]),
        ),
    },
  }),
  (source: number, flow: number, room: number, minutes: number, before: number): number => {
    const left = Math.exp((0 - flow * minutes) / room);
    return steadyLevel(source, flow) * (1 - left) + before * left;
  },
);

/** Partial pressure [mmHg] of a level. */
export const partialPressure = formula(
  record({
    id: 'cabin/partial-pressure',
    title: 'Partial pressure [mmHg] of a level',
    equation: 'C · p / 10^6',
    inputs: [level('level', 'C'), pressure],
    output: { name: 'partial pressure', symbol: 'p_CO2', unit: 'mmHg' },
    doesNotKnow: 'Nothing more: it is the law of partial pressures.',
  }),
  (parts: number, total: number): number => (parts * total) / MILLION,
);

/** Level [ppm] of a partial pressure. */
export const levelOfPressure = formula(
  record({
    id: 'cabin/level-of-pressure',
    title: 'Level [ppm] of a partial pressure',
    equation: '10^6 · p_CO2 / p',
    inputs: [{ name: 'partial pressure', symbol: 'p_CO2', unit: 'mmHg', possible: [0, 150], valid: [0, 15] }, pressure],
    output: { name: 'level', symbol: 'C', unit: 'ppm' },
    doesNotKnow: 'Nothing more: it is the law of partial pressures.',
  }),
  (partial: number, total: number): number => (MILLION * partial) / total,
);

/** Odds of a reported headache against those at another level of carbon dioxide. */
export const headacheOdds = formula(
  record({
    id: 'cabin/headache-odds',
    title: 'Odds of a reported headache against those at another level of carbon dioxide',
    equation: '2^Δ',
    inputs: [
      {
        name: 'difference of the mean partial pressure',
        symbol: 'Δ',
        unit: 'mmHg',
        possible: [-10, 10],
        valid: [-4, 4],
      },
    ],
    output: { name: 'ratio of odds', symbol: 'OR', unit: '1' },
    source: LAW_2014,
    restsOn: [],
    doesNotKnow:
      'Whether carbon dioxide was the cause: it is an association of means over a day or a week with headaches that were reported, in few people. No plan is moved by it.',
  }),
  (difference: number): number => 2 ** difference,
);
