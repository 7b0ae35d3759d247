import { method } from '../method.ts';
import { MOORE_2014, OUR_OWN_DESIGN } from '../sources.ts';
import { cautionsOf, refusalOf, refused, type Estimated } from './estimate.ts';
import { MAXIMAL_RATE_SD, maximalRateTanaka } from './maximal-rate-of-age.ts';
import { age, maximalRate } from './inputs.ts';
import { TANAKA_2001 } from './sources.ts';

/** The maximal heart rate to work with: what was measured, else the line of the age with what it does not know. */

/** How far the peaks of two maximal tests of one person lie apart [1/min]; our own setting. */
export const MEASURED_PEAK_SD = 3;

export interface KnownOfMaximalRate {
  /** Highest heart rate of a maximal test [1/min]. */
  readonly measured?: number;
  /** [years] */
  readonly age?: number;
}

/** The maximal heart rate of a person [1/min]. */
export const personalMaximalRate = method(
  {
    id: 'maximal-heart-rate/personal',
    revision: 1,
    title: 'The maximal heart rate to work with, measured before predicted',
    equations: ['measured: HR_max = HR_peak, SD 3', 'else HR_max = 208 − 0.7 · age, SD 10'],
    inputs: [maximalRate, age([20, 75])],
    outputs: [{ name: 'maximal heart rate', symbol: 'HR_max', unit: '1/min' }],
    refuses: ['Neither a measured peak nor an age.', 'A peak or an age that is not possible.'],
    source: OUR_OWN_DESIGN,
    restsOn: [TANAKA_2001, MOORE_2014],
    doesNotKnow:
      'Whether the test was truly maximal. Peak heart rate did not move in or after long flight (14 people), so a peak measured before flight is kept. The standard deviation of a measured peak is our own setting.',
  },
  ({ measured, age: years }: KnownOfMaximalRate): Estimated => {
    const { inputs } = personalMaximalRate.record;
    if (measured !== undefined)
      return (
        refusalOf({ inputs: inputs.slice(0, 1) }, [measured]) ?? {
          kind: 'estimate',
          value: measured,
          sd: MEASURED_PEAK_SD,
          cautions: [],
        }
      );
    if (years === undefined) return refused('Give a measured peak heart rate, or the age to predict it from.');
    return (
      refusalOf({ inputs: inputs.slice(1) }, [years]) ?? {
        kind: 'estimate',
        value: maximalRateTanaka(years),
        sd: MAXIMAL_RATE_SD,
        cautions: ['The maximal heart rate is predicted from age.', ...cautionsOf(maximalRateTanaka, [years])],
      }
    );
  },
);
