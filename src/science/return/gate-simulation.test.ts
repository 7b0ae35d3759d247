import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { GateEvidence, ScoreTest } from './gate-evidence.ts';
import { GATE_ITEMS, type GateItem, type GateItemKey } from './gate-items.table.ts';
import { latestTestRule } from './latest-test-rule.ts';
import { randomStream, type Random } from '../random.ts';
import { symmetryScore } from './recovery-score.ts';
import { stageGate } from './stage-gate.ts';

/**
 * Ten noisy tests (heel raise of both sides) and a person who is what they are: how often the last gate lets them through
 * in two rounds of three tests each. NumPy played the same with a hundred times as many people.
 */

type Shares = readonly [afterOne: number, afterTwo: number];

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/gate-simulation.json');
// Written by the script that stands beside the file.
const reference = JSON.parse(readFileSync(FILE, 'utf8')) as Readonly<Record<string, Shares>>;

const PEOPLE = 4000;
/** Chance alone leaves this less than once in fifteen thousand. */
const ERRORS = 4;

const scored = GATE_ITEMS.filter(({ typicalError }) => typicalError !== null);

const lineOf = ({ gates: { last } }: GateItem): number => (last?.kind === 'over' ? last.line : Number.NaN);

/** True value of an item [%]. */
type Truth = (item: GateItem) => number;

const oneTest = (item: GateItem, truth: Truth, chance: Random): number => {
  const noisy = (): number => truth(item) + (item.typicalError ?? 0) * chance.normal();
  return item.key === 'legSymmetry' ? symmetryScore(noisy(), noisy()) : noisy();
};

type Round = ReadonlyMap<GateItemKey, readonly ScoreTest[]>;

const roundOf = (truth: Truth, chance: Random, from: number): Round =>
  new Map(
    scored.map((item) => [
      item.key,
      [0, 1, 2].map((day) => ({ on: from + day, score: Math.max(0, oneTest(item, truth, chance)) })),
    ]),
  );

const evidenceOf = (tests: Round, today: number): GateEvidence => ({
  gate: 'last',
  today,
  enteredStage: 30,
  scores: Object.fromEntries(tests),
  standTests: [{ on: today, normal: true }],
  balanceTests: [{ on: today, fallsIn: [] }],
  sickness: [{ on: today, value: 0 }],
  pain: [{ on: today, value: 0 }],
  redFlags: [],
  required: ['balance', 'oxygenUptake'],
  judgements: [],
});

type Rule = (tests: Round, today: number) => boolean;

const byProbability: Rule = (tests, today) => stageGate(evidenceOf(tests, today)).kind === 'passed';

/** Lines as they were first proposed, up to 98 % of before flight. */
const FIRST_LINES: Readonly<Partial<Record<GateItemKey, number>>> = {
  balance: 98,
  tandemOpen: 98,
  tandemClosed: 95,
  sitToStand: 95,
};

const byLatestTest: Rule = (tests) =>
  scored.every((item) => {
    const [, previous, latest] = tests.get(item.key) ?? [];
    const found = latestTestRule({
      latest: latest?.score ?? Number.NaN,
      previous: previous?.score ?? Number.NaN,
      typicalError: item.typicalError ?? Number.NaN,
      line: FIRST_LINES[item.key] ?? lineOf(item),
    });
    return found.kind === 'passes';
  });

/** Share of people through after one round, and after two. */
const played = (name: string, truth: Truth, rule: Rule): Shares => {
  const chance = randomStream(20_270_301, name);
  let [first, second] = [0, 0];
  for (let person = 0; person < PEOPLE; person += 1) {
    const [one, two] = [60, 63].map((from) => roundOf(truth, chance, from)) as [Round, Round];
    const isThrough = rule(one, 62);
    if (isThrough) first += 1;
    // Whoever is through needs no second round, but it is drawn all the same: everybody takes as many draws.
    if (isThrough || rule(two, 65)) second += 1;
  }
  return [first / PEOPLE, second / PEOPLE];
};

/** Both programs draw: so many standard errors of the smaller sample apart at most. */
const expectAlike = (ours: Shares, theirs: Shares | undefined): void => {
  for (const place of [0, 1] as const) {
    const share = theirs?.[place] ?? Number.NaN;
    expect(Math.abs(ours[place] - share)).toBeLessThan(ERRORS * Math.sqrt((share * (1 - share)) / PEOPLE) + 1 / PEOPLE);
  }
};

const recovered: Truth = () => 100;

test('there are ten scored items, heel raise of both sides counted once', () => {
  expect(scored.filter(({ key }) => key !== 'heelRaiseRight')).toHaveLength(10);
});

test('a fully recovered person is through within two rounds in nine cases of ten', () => {
  const shares = played('recovered', recovered, byProbability);
  expect(shares[1]).toBeGreaterThan(0.9);
  expectAlike(shares, reference['recovered']);
});

test('with two tests a round a fully recovered person is through in about three cases of four only', () => {
  const ofTwo: Rule = (tests, today) =>
    byProbability(new Map([...tests].map(([key, all]) => [key, all.slice(-2)] as const)), today);
  // Drawn two hundred thousand times by another program: 0.772.
  const [, within] = played('two tests', recovered, ofTwo);
  expect(within).toBeGreaterThan(0.72);
  expect(within).toBeLessThan(0.82);
});

test('by the latest test alone, as the rule first stood, a round lets only about one in twenty of them through', () => {
  const shares = played('latest', recovered, byLatestTest);
  expect(shares[0]).toBeGreaterThan(0.03);
  expect(shares[0]).toBeLessThan(0.06);
  expectAlike(shares, reference['recoveredByLatestTest']);
});

const balanceBelow =
  (errors: number): Truth =>
  (item) =>
    item.key === 'balance' ? lineOf(item) - errors * (item.typicalError ?? 0) : 100;

test('one typical error below a single line lets about three in a hundred through a round, two errors almost nobody', () => {
  const one = played('one error', balanceBelow(1), byProbability);
  expectAlike(one, reference['balanceOneErrorBelow']);
  expect(one[1]).toBeLessThan(0.1);
  const two = played('two errors', balanceBelow(2), byProbability);
  expectAlike(two, reference['balanceTwoErrorsBelow']);
  expect(two[1]).toBeLessThan(0.005);
});

test('a person at 90 % in everything does not get through', () => {
  expect(played('ninety', () => 90, byProbability)).toEqual([0, 0]);
  expect(reference['allAtNinety']).toEqual([0, 0]);
});

test('no line of the last gate lies closer to full recovery than one typical error', () => {
  const close = scored.filter((item) => lineOf(item) > 100 - (item.typicalError ?? 0));
  expect(close.map(({ name }) => name)).toEqual([]);
});
