import type { FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { COMMON_PRACTICE, OUR_OWN_DESIGN } from '../sources.ts';
import { FREEMAN_2011, MECK_2001 } from './sources.ts';
import { STAND_TEST_LIMITS, type StandTestLimits } from './stand-test-limits.ts';

/** Five minutes lying, ten minutes standing: normal or not. Yes or no on purpose, never a probability. */

/** Pressures in mmHg, heart rate per minute; null where it was not taken. */
export interface Circulation {
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly heartRate: number | null;
}

export interface StandReading extends Circulation {
  /** Minutes since standing up. */
  readonly minute: number;
}

export interface StandTest {
  readonly lying: Circulation;
  /** In order of their minutes. */
  readonly standing: readonly StandReading[];
  /** Light-headed, grey vision, near fainting, or fainted. */
  readonly presyncope: boolean;
  /** How long the person stood [min]. */
  readonly stood: number;
}

export type StandJudgement =
  | {
      readonly kind: 'judgement';
      readonly normal: boolean;
      /** Why it is not normal; empty where it is. */
      readonly reasons: readonly string[];
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

const MEASURES = [
  { key: 'systolic', name: 'systolic pressure', unit: 'mmHg', possible: [40, 280] },
  { key: 'diastolic', name: 'diastolic pressure', unit: 'mmHg', possible: [20, 200] },
  { key: 'heartRate', name: 'heart rate', unit: '1/min', possible: [25, 240] },
] as const;

const faultsOf = (when: string, circulation: Circulation): readonly string[] =>
  MEASURES.flatMap(({ key, name, unit, possible: [low, high] }) => {
    const value = circulation[key];
    return value === null || (value >= low && value <= high)
      ? []
      : [`The ${name} ${when} must lie in ${low} to ${high} ${unit}; it is ${value}.`];
  });

const impossible = ({ lying, standing, stood }: StandTest): readonly string[] => [
  ...faultsOf('lying', lying),
  ...standing.flatMap((reading) => faultsOf(`at minute ${reading.minute}`, reading)),
  ...(stood >= 0 && stood <= 60 ? [] : [`The time stood must lie in 0 to 60 min; it is ${stood}.`]),
  ...(standing.every(({ minute }, place) => minute >= (standing[place - 1]?.minute ?? 0))
    ? []
    : ['The standing readings must be in order of their minutes, from 0.']),
];

/** What has to be there before anything can be said to be normal. */
const missing = ({ lying, standing }: StandTest, { fallsWithin }: StandTestLimits): readonly string[] => {
  const early = standing.filter(({ minute }) => minute <= fallsWithin);
  const complete = (reading: Circulation): boolean => reading.systolic !== null && reading.diastolic !== null;
  return [
    ...MEASURES.filter(({ key }) => lying[key] === null).map(({ name }) => `The ${name} lying was not recorded.`),
    ...(early.some(complete) ? [] : [`No blood pressure was recorded within ${fallsWithin} minutes of standing up.`]),
    ...(standing.some(({ heartRate }) => heartRate !== null) ? [] : ['No heart rate was recorded while standing.']),
  ];
};

const fallsOf = (
  test: StandTest,
  key: 'systolic' | 'diastolic',
  least: number,
): readonly { readonly minute: number; readonly says: string }[] =>
  test.standing.flatMap(({ minute, [key]: value }) => {
    const before = test.lying[key];
    const fall = before === null || value === null ? 0 : before - value;
    return fall >= least ? [{ minute, says: `${key} pressure fell by ${fall} mmHg at minute ${minute}` }] : [];
  });

/** The first minute from which heart rate was up for so many readings in a row. */
const sustainedRise = (test: StandTest, { heartRateRise, riseInRow }: StandTestLimits): number | null => {
  const { heartRate: lying } = test.lying;
  let row: readonly number[] = [];
  for (const { minute, heartRate } of test.standing) {
    if (heartRate === null) continue;
    row = lying !== null && heartRate - lying >= heartRateRise ? [...row, minute] : [];
    if (row.length >= riseInRow) return row[0] ?? null;
  }
  return null;
};

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

const judged = (test: StandTest, limits: StandTestLimits): StandJudgement => {
  const falls = [
    ...fallsOf(test, 'systolic', limits.systolicFall),
    ...fallsOf(test, 'diastolic', limits.diastolicFall),
  ];
  const [early, late] = [true, false].map((want) =>
    falls.filter(({ minute }) => minute <= limits.fallsWithin === want),
  );
  const risen = sustainedRise(test, limits);
  const reasons = [
    ...(test.presyncope ? ['Near fainting.'] : []),
    ...(test.stood < limits.stand ? [`Stood ${test.stood} of ${limits.stand} minutes.`] : []),
    ...(early ?? []).map(({ says }) => sentence(says)),
    ...(risen === null ? [] : [`Heart rate stayed up by ${limits.heartRateRise} or more from minute ${risen}.`]),
  ];
  const cautions = (late ?? []).map(({ says }) => `${sentence(says)} That is late, and a word for the physician.`);
  return { kind: 'judgement', normal: reasons.length === 0, reasons, cautions };
};

const input = (name: string, symbol: string, unit: string, possible: readonly [number, number]): FormulaInput => ({
  name,
  symbol,
  unit,
  possible,
  valid: possible,
});

/** Whether a stand test is normal. */
export const standTest = method(
  {
    id: 'return/stand-test',
    revision: 1,
    title: 'Stand test: normal or not',
    equations: [
      'not normal where SBP_lying − SBP ≥ 20 or DBP_lying − DBP ≥ 10 within 3 min of standing',
      'not normal where HR − HR_lying ≥ 30 in two readings in a row',
      'not normal where the person nearly fainted, or stood less than 10 min',
    ],
    inputs: [
      ...MEASURES.map(({ name, unit, possible }) => input(`${name}, lying and standing`, name, unit, possible)),
      input('time stood', 't', 'min', [0, 60]),
    ],
    outputs: [{ name: 'normal', symbol: '', unit: 'yes or no, with the reasons' }],
    refuses: [
      'A reading that cannot be, or readings out of order.',
      'No reading lying, no pressure within three minutes of standing up, or no heart rate standing: unless what is there is not normal already.',
    ],
    source: FREEMAN_2011,
    restsOn: [MECK_2001, COMMON_PRACTICE, OUR_OWN_DESIGN],
    doesNotKnow:
      'Fluid taken, compression worn, time of day, the physician’s own limits. That two readings in a row make a rise last is our own and may be edited. A person who was told to stop is not normal here; only the physician says what it means.',
  },
  (test: StandTest, limits: StandTestLimits = STAND_TEST_LIMITS): StandJudgement => {
    const wrong = impossible(test);
    if (wrong.length > 0) return { kind: 'refused', reasons: wrong };
    const found = judged(test, limits);
    const lacking = missing(test, limits);
    return found.kind === 'judgement' && found.normal && lacking.length > 0
      ? { kind: 'refused', reasons: lacking }
      : found;
  },
);
