import { count } from '../inputs.ts';
import { formula } from '../formula.ts';
import { HELMS_2017, ZOURDOS_2016 } from '../sources.ts';
import { HALPERIN_2022 } from './sources.ts';
import { repetitions, type Exertion, type Repetitions } from '#units/quantity.ts';

/** Lowest rating of which repetitions in reserve can be read; below it the scale says only "little effort". */
const LOWEST_READABLE = 5;
const HIGHEST = 10;

/** Repetitions in reserve from a rating of perceived exertion. */
export const repetitionsInReserve = formula(
  {
    id: 'effort/repetitions-in-reserve',
    revision: 1,
    title: 'Repetitions in reserve from a rating of perceived exertion',
    equation: '10 − RPE',
    inputs: [
      {
        name: 'rating of perceived exertion',
        symbol: 'RPE',
        unit: 'RPE',
        possible: [LOWEST_READABLE, HIGHEST],
        valid: [7, HIGHEST],
      },
    ],
    output: { name: 'repetitions in reserve', symbol: 'r', unit: 'repetitions' },
    source: ZOURDOS_2016,
    restsOn: [HELMS_2017, HALPERIN_2022],
    doesNotKnow:
      'People leave about one repetition more than they say (0.95, 95 % interval 0.17 to 1.73); nothing is added for it, so a maximum read from it is a little low.',
  },
  (exertion: Exertion): Repetitions => repetitions(HIGHEST - exertion),
);

/** Repetitions that the set would have had if taken to failure. */
export const effectiveRepetitions = formula(
  {
    id: 'effort/effective-repetitions',
    revision: 1,
    title: 'Repetitions that the set would have had if taken to failure',
    equation: 'n + r',
    inputs: [
      count('repetitions completed', 'n', [0, 100], [1, 15]),
      count('repetitions in reserve', 'r', [0, 20], [0, 4]),
    ],
    output: { name: 'effective repetitions', symbol: 'n_eff', unit: 'repetitions' },
    source: ZOURDOS_2016,
    restsOn: [HALPERIN_2022],
    doesNotKnow: 'Whether the person judges the reserve well.',
  },
  (completed: Repetitions, reserve: Repetitions): Repetitions => repetitions(completed + reserve),
);

export type Reserve =
  | { readonly kind: 'reserve'; readonly repetitions: Repetitions; readonly coarse: boolean }
  | { readonly kind: 'refused'; readonly reason: string };

/** The reserve that a rating stands for, or why none can be read. */
export const reserveOfExertion = (exertion: Exertion): Reserve => {
  if (exertion > HIGHEST) return { kind: 'refused', reason: `RPE ends at 10; it is ${exertion}.` };
  if (!(exertion >= LOWEST_READABLE))
    return {
      kind: 'refused',
      reason: `Repetitions in reserve can be read from RPE 5 to 10; at ${exertion} the set was too easy.`,
    };
  return { kind: 'reserve', repetitions: repetitionsInReserve(exertion), coarse: exertion < 7 };
};
