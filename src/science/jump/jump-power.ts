import { formula, type Formula, type FormulaInput, type FormulaRecord } from '../formula.ts';
import { bodyMass } from '../inputs.ts';
import { curveOf, type Plot } from '../plot.ts';
import { CANAVAN_VESCOVI_2004, DUNCAN_2008, FOX_MATHEWS_1974, HARMAN_1991, SAYERS_1999 } from './sources.ts';
import { watts, type Centimetres, type Kilograms, type Watts } from '#units/quantity.ts';

/**
 * Power of a jump from its height and the mass of the body: straight lines, each fitted to one group of people. They
 * show change of one person from test to test better than they tell how strong anybody is.
 */

type JumpPower = Formula<[height: Centimetres, mass: Kilograms], Watts>;

const height: FormulaInput = {
  name: 'jump height',
  symbol: 'h',
  unit: 'cm',
  possible: [0, 150],
  valid: [15, 70],
};
const mass: FormulaInput = { ...bodyMass('m'), valid: [45, 120] };

/** Of a line: watts for each centimetre and each kilogram, and where it starts. */
interface Line {
  readonly perCentimetre: number;
  readonly perKilogram: number;
  /** Below zero for every author: a jump of no height takes no power. */
  readonly start: number;
}

const powerOf = ({ perCentimetre, perKilogram, start }: Line, jump: number, body: number): number =>
  perCentimetre * jump + perKilogram * body + start;

type Written = Pick<FormulaRecord, 'title' | 'equation' | 'source' | 'doesNotKnow'> & Partial<FormulaRecord>;

const record = (id: string, written: Written): FormulaRecord => ({
  id: `jump-power/${id}`,
  revision: 1,
  inputs: [height, mass],
  output: { name: 'power', symbol: 'P', unit: 'W' },
  restsOn: [CANAVAN_VESCOVI_2004, DUNCAN_2008],
  ...written,
});

const line = (id: string, of: Line, written: Written): JumpPower =>
  formula(
    record(id, {
      conditions: [
        {
          says: 'The line gives no power above zero here: it was fitted to higher jumps or heavier people.',
          holds: (jump = 0, body = 0) => powerOf(of, jump, body) > 0,
        },
      ],
      ...written,
    }),
    (jump: Centimetres, body: Kilograms): Watts => watts(powerOf(of, jump, body)),
  );

const GROUP = 'Anybody but the group it was fitted to;';

/** How the lines part: of one body, at the heights that people jump. */
const fiveLines: Plot = {
  says: 'The same jump of a body of 75 kg, read by five lines: they part by 500 to 900 W. Only one and the same line can show a change.',
  x: { name: 'jump height', unit: 'cm' },
  y: { name: 'power', unit: 'W' },
  curves: () =>
    (
      [
        ['Sayers, squat jump', peakPowerSayersSquatJump],
        ['Sayers, countermovement jump', peakPowerSayersCountermovementJump],
        ['Harman, peak', peakPowerHarman],
        ['Canavan and Vescovi, women', peakPowerCanavanVescovi],
        ['Harman, average', averagePowerHarman],
        ['Lewis', averagePowerLewis],
      ] as const
    ).map(([label, of]) => curveOf(label, of, [15, 70], (jump) => [jump, PLOTTED_MASS])),
};
const PLOTTED_MASS = 75;

export const peakPowerSayersSquatJump: JumpPower = line(
  'sayers-squat-jump',
  { perCentimetre: 60.7, perKilogram: 45.3, start: -2055 },
  {
    title: 'Peak power of a jump [W] from a squat, Sayers',
    equation: '60.7 h + 45.3 m − 2055',
    source: SAYERS_1999,
    doesNotKnow: `${GROUP} it read 20 % too high in women and fell short in young basketball players. Its authors prefer it to the one for countermovement jumps.`,
    plot: fiveLines,
  },
);

export const peakPowerSayersCountermovementJump: JumpPower = line(
  'sayers-countermovement-jump',
  { perCentimetre: 51.9, perKilogram: 48.9, start: -2007 },
  {
    title: 'Peak power of a jump [W] with a countermovement, Sayers',
    equation: '51.9 h + 48.9 m − 2007',
    source: SAYERS_1999,
    equationFromMemory: true,
    doesNotKnow: `${GROUP} it read 21 % too high in women and fell short in young basketball players, of four lines the least.`,
  },
);

export const peakPowerHarman: JumpPower = line(
  'harman-peak',
  { perCentimetre: 61.9, perKilogram: 36, start: -1822 },
  {
    title: 'Peak power of a jump [W], Harman',
    equation: '61.9 h + 36.0 m − 1822',
    source: HARMAN_1991,
    doesNotKnow: `${GROUP} it read 7 % too high in women and fell short in young basketball players. Copies with + 1822 are wrong.`,
  },
);

export const averagePowerHarman: JumpPower = line(
  'harman-average',
  { perCentimetre: 21.2, perKilogram: 23, start: -1393 },
  {
    title: 'Average power of a jump [W], Harman',
    equation: '21.2 h + 23.0 m − 1393',
    source: HARMAN_1991,
    doesNotKnow: `${GROUP} an average over the push is not to be set beside a peak.`,
  },
);

export const peakPowerCanavanVescovi: JumpPower = line(
  'canavan-vescovi',
  { perCentimetre: 65.1, perKilogram: 25.8, start: -1413.1 },
  {
    title: 'Peak power of a jump [W] of women, Canavan and Vescovi',
    equation: '65.1 h + 25.8 m − 1413.1',
    source: CANAVAN_VESCOVI_2004,
    standardError: { value: 120.8, unit: 'W', of: 'the 20 women that it was fitted to' },
    doesNotKnow: `${GROUP} twenty women at college. Of four lines it parted most from what young basketball players did.`,
  },
);

/** Standard gravity as the authors rounded it [m/s²]. */
const GRAVITY_AS_PRINTED = 9.81;

/** Average power of a jump [W], Lewis. */
export const averagePowerLewis = formula(
  record('lewis', {
    title: 'Average power of a jump [W], Lewis',
    equation: '√4.9 · 9.81 · m · √(h / 100)',
    source: FOX_MATHEWS_1974,
    restsOn: [SAYERS_1999],
    doesNotKnow:
      'Any peak: it is the average power of a body falling from that height, kept for reading old records only.',
  }),
  (jump: Centimetres, body: Kilograms): Watts =>
    watts(Math.sqrt(4.9) * GRAVITY_AS_PRINTED * body * Math.sqrt(jump / 100)),
);
