import { formula } from '../formula.ts';
import { curveOf, type Curve } from '../plot.ts';
import { ENGLISH_2020, MOORE_2010, MOORE_2014, OUR_OWN_DESIGN, SIBONGA_2007 } from '../sources.ts';

/** What comes back by halves: one law for bone, oxygen uptake and strength, at a pace of its own for each. */

/** Half-lives of the plot [d], as the forecasts and the return take them. */
export const PLOTTED_HALF_LIVES = { oxygen: 6, oxygenOfFourteen: 10, knee: 43, femoralNeck: 211 } as const;

/** Standard deviation of the logarithm of a half-life between people, drawn about the first curve; our own. */
export const PLOTTED_LOG_SD = 0.5;

/** Part of a deficit that is left after landing. */
export const partLeft = formula(
  {
    id: 'recovery/part-left',
    revision: 1,
    title: 'Part of a deficit that is left after landing',
    equation: '2^(−t / h)',
    inputs: [
      { name: 'days after landing', symbol: 't', unit: 'd', possible: [0, 36500], valid: [0, 1095] },
      { name: 'half-life', symbol: 'h', unit: 'd', possible: [0.1, 36500], valid: [1, 1500] },
    ],
    output: { name: 'part that is left', symbol: 'left', unit: '1' },
    source: SIBONGA_2007,
    restsOn: [MOORE_2010, MOORE_2014, ENGLISH_2020],
    doesNotKnow:
      'The exponential shape was fitted to bone; for oxygen uptake and strength it is our own. Some people never return to where they were, and density comes back before the strength of bone does. The same law stands in bone/remaining-deficit in percent of density, and in return/recovered-level with a time constant in place of the half-life, τ = h / ln(2). Their half-lives differ where studies do: each table says which other stands beside it, and why.',
    plot: {
      says: 'Oxygen uptake is back within a month by either of two half-lives; strength of the knees takes half a year, the femoral neck years. The band is one standard deviation of the half-life. Points: published deficits over the first one after landing.',
      x: { name: 'days after landing', unit: 'd' },
      y: { name: 'part of the deficit that is left', unit: '1' },
      curves: (): readonly Curve[] => {
        const { oxygen, oxygenOfFourteen, knee, femoralNeck } = PLOTTED_HALF_LIVES;
        const ofHalfLife = (label: string, half: number): Curve =>
          curveOf(label, partLeft, [0, 180], (day) => [day, half]);
        const first = ofHalfLife('maximal oxygen uptake, from five people', oxygen);
        const apart = Math.exp(PLOTTED_LOG_SD);
        return [
          {
            ...first,
            band: first.points.map(([day]) => [partLeft(day, oxygen / apart), partLeft(day, oxygen * apart)] as const),
          },
          ofHalfLife('maximal oxygen uptake, from fourteen people', oxygenOfFourteen),
          ofHalfLife('strength of the knee extensors', knee),
          ofHalfLife('femoral neck', femoralNeck),
          {
            label: 'oxygen uptake of five (Moore 2010), from the day after landing',
            scattered: true,
            points: [
              [0, 1],
              [9, 4.027 / 11.745],
            ],
          },
          {
            label: 'oxygen uptake of fourteen (Moore 2014), from the day after landing',
            scattered: true,
            points: [
              [0, 1],
              [29, 2 / 15],
            ],
          },
          {
            label: 'knee extension of 26 (English 2020), from 5 days after landing',
            scattered: true,
            points: [
              [0, 1],
              [9, 6.25 / 6.94],
              [25, 4.63 / 6.94],
            ],
          },
        ];
      },
    },
  },
  (day: number, halfLife: number): number => 2 ** (-day / halfLife),
);

/** Half-life of a deficit between two measurements [d]. */
export const halfLifeBetween = formula(
  {
    id: 'recovery/half-life-between',
    revision: 1,
    title: 'Half-life of a deficit between two measurements [d]',
    equation: 'h = t · ln(2) / ln(deficit_1 / deficit_2)',
    inputs: [
      { name: 'first deficit', symbol: 'deficit_1', unit: '%', possible: [0.001, 100], valid: [0.5, 50] },
      { name: 'second deficit', symbol: 'deficit_2', unit: '%', possible: [0.001, 100], valid: [0.1, 50] },
      { name: 'days between', symbol: 't', unit: 'd', possible: [0, 36500], valid: [1, 1500] },
    ],
    conditions: [
      {
        says: 'The second deficit is smaller than the first, by a thousandth of itself or more.',
        holds: (first = 0, second = 0) => first >= 1.001 * second,
      },
    ],
    output: { name: 'half-life', symbol: 'h', unit: 'd' },
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'Where two deficits lie close together their errors make any half-life. return/time-constant-of-two is the same reading with a time constant, h = τ · ln(2).',
  },
  (first: number, second: number, days: number): number => (days * Math.LN2) / Math.log(first / second),
);
