import { GATE_ITEM_KEYS, type Gate, type GateItemKey } from './gate-items.table.ts';

/** What is known on the day of a gate. All times in days since landing; fractions are hours. */

export interface ScoreTest {
  readonly on: number;
  /** Percent of the value before flight. */
  readonly score: number;
  /** Which accepted test it was; the first choice where nothing is said. */
  readonly test?: string;
}

export interface Report {
  readonly on: number;
  /** 0 to 10; of several sites the worst. */
  readonly value: number;
}

export interface Judgement {
  readonly item: GateItemKey;
  readonly on: number;
  readonly by: string;
  readonly reason: string;
}

export interface GateEvidence {
  readonly gate: Gate;
  readonly today: number;
  /** Day on which the person entered the stage that this gate leads out of. */
  readonly enteredStage: number;
  readonly scores: Readonly<Partial<Record<GateItemKey, readonly ScoreTest[]>>>;
  readonly standTests: readonly { readonly on: number; readonly normal: boolean }[];
  /** Each test of standing balance, with the conditions in which the person fell. */
  readonly balanceTests: readonly { readonly on: number; readonly fallsIn: readonly number[] }[];
  readonly sickness: readonly Report[];
  readonly pain: readonly Report[];
  readonly redFlags: readonly { readonly on: number; readonly what: string }[];
  /** Laboratory items that the physician asked for. */
  readonly required: readonly GateItemKey[];
  /** Signed by the specialist in place of a test. */
  readonly judgements: readonly Judgement[];
}

interface Dated {
  readonly on: number;
}

const datedIn = (evidence: GateEvidence): readonly (readonly [what: string, dated: readonly Dated[]])[] => [
  ['entering the stage', [{ on: evidence.enteredStage }]],
  ...GATE_ITEM_KEYS.map((key) => [`a test of ${key}`, evidence.scores[key] ?? []] as const),
  ['a stand test', evidence.standTests],
  ['a test of standing balance', evidence.balanceTests],
  ['a report of motion sickness', evidence.sickness],
  ['a report of pain', evidence.pain],
  ['a red flag', evidence.redFlags],
  ['a judgement', evidence.judgements],
];

const outside = (what: string, value: number, high: number): readonly string[] =>
  value >= 0 && value <= high ? [] : [`${what} must lie in 0 to ${high}; it is ${value}.`];

/** Everything in the evidence that cannot be, as sentences. */
export const evidenceFaults = (evidence: GateEvidence): readonly string[] => {
  if (!(evidence.today >= 0)) return [`The day must be days since landing; it is ${evidence.today}.`];
  return [
    ...datedIn(evidence).flatMap(([what, dated]) =>
      dated
        .filter(({ on }) => !(on >= 0 && on <= evidence.today))
        .map(({ on }) => `The day of ${what} must lie between landing and today; it is ${on}.`),
    ),
    ...Object.values(evidence.scores).flatMap((tests) =>
      (tests ?? []).flatMap(({ score }) => outside('A score in percent', score, 200)),
    ),
    ...[...evidence.sickness, ...evidence.pain].flatMap(({ value }) => outside('A report', value, 10)),
    ...evidence.judgements.flatMap(({ item, by, reason }) =>
      by.trim() === '' || reason.trim() === ''
        ? [`A judgement on ${item} needs the name of who signs it and a reason.`]
        : [],
    ),
  ];
};
