import { seconds, type Fraction, type Seconds } from '#units/quantity.ts';
import { evaluate } from '../evaluate.ts';
import { method } from '../method.ts';
import { ENDURANCE_AUTHORS, enduranceTimeFreyLawAvin } from './endurance-time.ts';
import { EL_AHRACHE_2006, FREY_LAW_AVIN_2010 } from './sources.ts';

export type EnduranceBand =
  | {
      readonly kind: 'estimate';
      /** By the grip curve of Frey Law and Avin. */
      readonly value: Seconds;
      /** Shortest and longest of the authors who cover this force. */
      readonly band: readonly [low: Seconds, high: Seconds];
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

const SAYS = 'The band is the spread of authors, not of people.';

/** How long a force can be held: the grip curve, with the spread of four authors around it. */
export const enduranceBand = method(
  {
    id: 'grip-endurance/band',
    revision: 1,
    title: 'Time a force can be held [s], with the spread of four authors',
    equations: ['T = 33.55 I^(−1.61)', 'T_low = least of the authors who cover I', 'T_high = greatest of them'],
    inputs: enduranceTimeFreyLawAvin.record.inputs,
    outputs: [enduranceTimeFreyLawAvin.record.output],
    refuses: ['A force outside 0.1 to 0.9 of the maximum in the same glove.'],
    source: FREY_LAW_AVIN_2010,
    restsOn: [EL_AHRACHE_2006],
    doesNotKnow: `Single people, and work with breaks. ${SAYS}`,
  },
  (share: Fraction): EnduranceBand => {
    const met = ENDURANCE_AUTHORS.map((author) => ({ author, time: evaluate(author, [share]) }));
    const times = met.flatMap(({ time }) => (time.kind === 'value' ? [time.value] : []));
    const [first] = met;
    if (first?.time.kind !== 'value')
      return {
        kind: 'refused',
        reason: `${(first?.time.reasons ?? []).join(' ')} The curves say nothing there: test the person.`,
      };
    const silent = met.flatMap(({ author, time }) =>
      time.kind === 'refused' ? [`${author.record.title} does not cover this force.`] : [],
    );
    return {
      kind: 'estimate',
      value: seconds(first.time.value),
      band: [seconds(Math.min(...times)), seconds(Math.max(...times))],
      cautions: [SAYS, ...silent],
    };
  },
);
