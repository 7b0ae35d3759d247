import { impossibilities } from '../evaluate.ts';
import type { FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { SKIBA_2015 } from '../sources.ts';
import { capacityInput, criticalPowerInput, powerInput, type PowerDuration } from './power-duration.ts';
import { BARTRAM_2018, SKIBA_2012, SKIBA_CLARKE_2021 } from './sources.ts';
import { RECOVERY_MODELS, wPrimeBalance, type RecoveryModel } from './w-prime-balance.ts';
import { joules, seconds, watts, type Joules, type Seconds, type Watts } from '#units/quantity.ts';

/** A stretch of constant power. */
export interface Stretch {
  readonly power: Watts;
  readonly lasting: Seconds;
}

export type BalanceAlong =
  | {
      readonly kind: 'balance';
      /** After each stretch or sample [J]. */
      readonly after: Float64Array;
      readonly least: Joules;
      /** The stretch or sample that ends with the least balance, counted from 0. */
      readonly leastAt: number;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

const NEGATIVE =
  'The balance falls below zero. Nobody has done what the model calls impossible: critical power or the store is taken too low.';

const sampleInputs: readonly [FormulaInput, FormulaInput] = [
  powerInput(),
  { name: 'duration', symbol: 'd', unit: 's', possible: [1e-3, 86_400], valid: [1, 7200] },
];
const personInputs: readonly FormulaInput[] = [criticalPowerInput(), capacityInput()];

const isWithin = (value: number, { possible: [low, high] }: FormulaInput): boolean => value >= low && value <= high;

const GAP = 'A gap in a recording has no balance: cut the recording there, or fill the gap.';

const refusalOf = (record: Float64Array, lasting: Float64Array, person: PowerDuration): string | null => {
  const ofPerson = impossibilities({ inputs: personInputs }, [person.criticalPower, person.capacity]);
  if (ofPerson.length > 0) return ofPerson.join(' ');
  if (record.length === 0) return 'There is no power to follow.';
  const [power, duration] = sampleInputs;
  const wrong = record.findIndex(
    (value, place) => !(isWithin(value, power) && isWithin(lasting[place] as number, duration)),
  );
  if (wrong < 0) return null;
  const reasons = impossibilities({ inputs: sampleInputs }, [record[wrong] as number, lasting[wrong] as number]);
  return `Value ${wrong + 1}: ${reasons.join(' ')} ${GAP}`;
};

const followed = (
  record: Float64Array,
  lasting: Float64Array,
  person: PowerDuration,
  model: RecoveryModel,
): BalanceAlong => {
  const reason = refusalOf(record, lasting, person);
  if (reason !== null) return { kind: 'refused', reason };
  const after = wPrimeBalance(record, person, { model, lasting });
  const leastAt = after.reduce((best, value, place) => (value < (after[best] as number) ? place : best), 0);
  const least = joules(after[leastAt] as number);
  return { kind: 'balance', after, least, leastAt, cautions: least < 0 ? [NEGATIVE] : [] };
};

/** Balance along a recording with samples of one length. */
export const balanceOfRecording = (
  record: Float64Array,
  person: PowerDuration,
  secondsEach: Seconds,
  model: RecoveryModel = 'by distance',
): BalanceAlong => followed(record, new Float64Array(record.length).fill(secondsEach), person, model);

const MINUTE = seconds(60);
const EXAMPLE_PERSON: PowerDuration = { criticalPower: watts(250), capacity: joules(20_000) };
const TENTH = 6;

/** Five times a minute at 350 W and a minute at 150 W, in pieces of six seconds. */
const examplePoints = (model: RecoveryModel): readonly (readonly [number, number])[] => {
  const record = Float64Array.from({ length: 100 }, (_, place) => (Math.floor(place / 10) % 2 === 0 ? 350 : 150));
  const after = wPrimeBalance(record, EXAMPLE_PERSON, { model, lasting: new Float64Array(100).fill(MINUTE / 10) });
  return [[0, EXAMPLE_PERSON.capacity], ...Array.from(after, (value, place) => [(place + 1) * TENTH, value] as const)];
};

/** Balance [J] of the store along a session. */
export const balanceAlong = method(
  {
    id: 'critical-power/balance-along',
    revision: 1,
    title: 'Balance [J] of the store along a session',
    equations: [
      "P ≥ CP: W' − (P − CP) · d",
      "P < CP: W'_0 − (W'_0 − W') · exp(−d / τ), where D = CP − P",
      "τ = W'_0 / D",
      'τ = 2287.2 · D^(−0.688) in elite cyclists',
      "integral form: W' = W'_0 − E, where E becomes E · exp(−d / τ) + max(P − CP, 0) · τ · (1 − exp(−d / τ))",
      'τ = 546 · exp(−0.01 · D) + 316 in the integral form, where D is the mean of CP − P over all time below CP',
    ],
    inputs: [...sampleInputs, ...personInputs],
    outputs: [{ name: 'balance after each stretch', symbol: "W'", unit: 'J' }],
    refuses: [
      'no stretch at all',
      'a stretch without a possible power or duration',
      'an impossible critical power or store',
    ],
    source: SKIBA_2015,
    restsOn: [SKIBA_2012, BARTRAM_2018, SKIBA_CLARKE_2021],
    doesNotKnow:
      'That recovery slows from bout to bout, and which of the three models fits this person: after ten minutes they may lie half the store apart. It compares sessions; it promises no finish. Values below zero are shown as they are, with a caution.',
    plot: {
      says: 'A minute hard, a minute easy, five times: one session, three models, three answers.',
      x: { name: 'time', unit: 's' },
      y: { name: 'balance', unit: 'J' },
      curves: () => RECOVERY_MODELS.map((model) => ({ label: model, points: examplePoints(model) })),
    },
  },
  (stretches: readonly Stretch[], person: PowerDuration, model: RecoveryModel = 'by distance'): BalanceAlong =>
    followed(
      Float64Array.from(stretches, ({ power }) => power),
      Float64Array.from(stretches, ({ lasting }) => lasting),
      person,
      model,
    ),
);
