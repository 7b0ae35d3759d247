import type { GateEvidence, Judgement, Report, ScoreTest } from './gate-evidence.ts';
import { requirementText, type GateItem, type GateItemKey, type Requirement } from './gate-items.table.ts';
import { lastTestsOverLine, MOST_TESTS } from './probability-over-line.ts';

/** How one item of a gate stands, with its working. */

export interface ItemWorking {
  readonly line: number;
  readonly typicalError: number;
  /** The tests that were put together, oldest first. */
  readonly tests: readonly ScoreTest[];
  readonly mean: number;
  readonly sd: number;
  readonly probability: number;
}

export interface ItemReading {
  readonly key: GateItemKey;
  readonly name: string;
  readonly passes: boolean;
  readonly basis: 'probability' | 'yes or no' | 'judgement' | 'missing' | 'not required' | 'waits';
  /** A sentence for the specialist. */
  readonly says: string;
  readonly working?: ItemWorking;
}

type Found = Omit<ItemReading, 'key' | 'name'>;

const HOURS_PER_DAY = 24;

const missing = (says: string): Found => ({ passes: false, basis: 'missing', says });
const decided = (passes: boolean, says: string): Found => ({ passes, basis: 'yes or no', says });

const agesOf = <Dated extends { readonly on: number }>(all: readonly Dated[], today: number, maxAge: number) => {
  const ordered = all.toSorted((a, b) => a.on - b.on);
  const newest = ordered.at(-1);
  return { ordered, newest, inDate: newest !== undefined && today - newest.on <= maxAge };
};

const daysAgo = (age: number): string => {
  const days = Math.floor(age);
  return days === 0 ? 'today' : `${days} day${days === 1 ? '' : 's'} ago`;
};

/** The tests that count together: of the kind of the newest, and not more than twice as old as the newest may be. */
const testsTogether = (tests: readonly ScoreTest[], item: GateItem, today: number, maxAge: number) => {
  const kindOf = ({ test }: ScoreTest): string => test ?? item.accepted[0] ?? item.name;
  const { ordered, newest, inDate } = agesOf(tests, today, maxAge);
  const kind = newest ? kindOf(newest) : '';
  const together = ordered.filter((each) => kindOf(each) === kind && today - each.on <= 2 * maxAge).slice(-MOST_TESTS);
  return { newest, inDate, kind, together, substitute: kind !== (item.accepted[0] ?? item.name) };
};

const readOver = (
  item: GateItem,
  { line, maxAge }: Extract<Requirement, { kind: 'over' }>,
  evidence: GateEvidence,
  acceptAt: number,
): Found => {
  const { newest, inDate, kind, together, substitute } = testsTogether(
    evidence.scores[item.key] ?? [],
    item,
    evidence.today,
    maxAge,
  );
  if (!newest) return missing('not tested yet.');
  if (!inDate) return missing(`last tested ${daysAgo(evidence.today - newest.on)}; at most ${maxAge} days count.`);
  if (!item.accepted.includes(kind)) return missing(`"${kind}" is no accepted test of it.`);
  const found = lastTestsOverLine(
    together.map(({ score }) => score),
    item.typicalError ?? Number.NaN,
    line,
  );
  if (found.kind !== 'estimate') return missing(found.reason);
  const { value: mean, sd, probability } = found;
  const typicalError = item.typicalError ?? 0;
  const working = { line, typicalError, tests: together, mean, sd, probability };
  const apart = disagreement(together, line, typicalError);
  if (apart !== null) return { passes: false, basis: 'probability', says: apart, working };
  // Too few tests never carry an item, but one that is below the line already holds it back.
  if (probability >= acceptAt && together.length < item.fewest)
    return missing(`${together.length} of ${item.fewest} tests in date.`);
  return {
    passes: probability >= acceptAt,
    basis: 'probability',
    says: `${mean.toFixed(1)} % over the last ${together.length === 1 ? 'test' : `${together.length} tests`}${substitute ? ` (${kind})` : ''}, line ${line} %: probability ${probability.toFixed(2)} of being over it, ${acceptAt} needed.`,
    working,
  };
};

/** Errors by which the newest test lies under the line, where it alone would send somebody back a stage. */
const FAR_UNDER = 2;
/** Two tests of one value differ by more than this many errors of a difference once in some four hundred times. */
const FAR_APART = 3;

/** Why tests may not be put together: the newest has fallen, or they cannot be of one true value. */
const disagreement = (together: readonly ScoreTest[], line: number, typicalError: number): string | null => {
  const scores = together.map(({ score }) => score);
  const newest = scores.at(-1) ?? line;
  if (newest <= line - FAR_UNDER * typicalError)
    return `the newest test, ${newest.toFixed(1)} %, lies ${FAR_UNDER} typical errors or more under the line of ${line} %: earlier tests do not carry it.`;
  const highest = Math.max(...scores);
  return highest - newest > FAR_APART * Math.SQRT2 * typicalError
    ? `the tests disagree: ${highest.toFixed(1)} %, and ${newest.toFixed(1)} % since, with a typical error of ${typicalError} %. Test again.`
    : null;
};

const readReports = (
  reports: readonly Report[],
  { line, hours }: Extract<Requirement, { kind: 'at most' }>,
  today: number,
): Found => {
  const wanted = Math.ceil(hours / HOURS_PER_DAY);
  const recent = reports.filter(({ on }) => today - on <= hours / HOURS_PER_DAY);
  const worst = Math.max(...recent.map(({ value }) => value));
  if (worst > line) return decided(false, `up to ${worst} of 10 in the last ${hours} h; at most ${line}.`);
  const reported = new Set(recent.map(({ on }) => Math.floor(on))).size;
  return reported < wanted
    ? missing(`reported on ${reported} of the last ${wanted} days.`)
    : decided(true, `at most ${worst} of 10 in the last ${hours} h.`);
};

const readStand = (
  { standTests, today }: GateEvidence,
  { days, maxAge }: Extract<Requirement, { kind: 'normal' }>,
): Found => {
  const { ordered, newest, inDate } = agesOf(standTests, today, maxAge);
  if (!newest) return missing('not tested yet.');
  if (!inDate) return missing(`last tested ${daysAgo(today - newest.on)}; at most ${maxAge} days count.`);
  if (!newest.normal) return decided(false, 'the newest test was not normal.');
  const since = ordered.findLastIndex(({ normal }) => !normal);
  const normalDays = new Set(ordered.slice(since + 1).map(({ on }) => Math.floor(on))).size;
  return decided(normalDays >= days, `normal on ${normalDays} of ${days} day${days > 1 ? 's' : ''} in a row.`);
};

const readFalls = (
  { balanceTests, today }: GateEvidence,
  { conditions, maxAge }: Extract<Requirement, { kind: 'no fall' }>,
): Found => {
  const { newest, inDate } = agesOf(balanceTests, today, maxAge);
  if (!newest) return missing('not tested yet.');
  if (!inDate) return missing(`last tested ${daysAgo(today - newest.on)}; at most ${maxAge} days count.`);
  const fell = newest.fallsIn.filter((condition) => conditions.includes(condition));
  return fell.length > 0
    ? decided(false, `fell in ${fell.map((condition) => `condition ${condition}`).join(' and ')}.`)
    : decided(true, `no fall in conditions 1 to ${Math.max(...conditions)}.`);
};

const readRequirement = (item: GateItem, requirement: Requirement, evidence: GateEvidence, acceptAt: number): Found => {
  switch (requirement.kind) {
    case 'over':
      return readOver(item, requirement, evidence, acceptAt);
    case 'at most':
      return readReports(item.key === 'pain' ? evidence.pain : evidence.sickness, requirement, evidence.today);
    case 'normal':
      return readStand(evidence, requirement);
    case 'no fall':
      return readFalls(evidence, requirement);
  }
};

/**
 * The newest signed judgement in this stage; only a scored item may be judged, and none that the physician asked for. A test
 * since then is news that the signer had not seen: it is to be judged again.
 */
const judgementOn = (item: GateItem, requirement: Requirement, evidence: GateEvidence): Judgement | null => {
  if (requirement.kind !== 'over' || evidence.required.includes(item.key)) return null;
  const newestTest = Math.max(-Infinity, ...(evidence.scores[item.key] ?? []).map(({ on }) => on));
  const theirs = evidence.judgements.filter(
    (each) => each.item === item.key && each.on >= evidence.enteredStage && each.on >= newestTest,
  );
  return theirs.toSorted((a, b) => a.on - b.on).at(-1) ?? null;
};

const settled = (item: GateItem, requirement: Requirement, evidence: GateEvidence, found: Found): Found => {
  if (found.passes) return found;
  const judgement = judgementOn(item, requirement, evidence);
  if (judgement)
    return {
      ...found,
      passes: true,
      basis: 'judgement',
      says: `passed by the judgement of ${judgement.by}: ${judgement.reason}`,
    };
  return found.basis === 'missing' && item.laboratory && !evidence.required.includes(item.key)
    ? { ...found, passes: true, basis: 'not required', says: `${found.says} The physician did not ask for it.` }
    : found;
};

/** How an item stands at a gate; null where the gate does not ask for it. */
export const readItem = (item: GateItem, evidence: GateEvidence, acceptAt: number): ItemReading | null => {
  const requirement = item.gates[evidence.gate];
  if (!requirement) return null;
  const found = readRequirement(item, requirement, evidence, acceptAt);
  const { says, ...rest } = settled(item, requirement, evidence, found);
  return { key: item.key, name: item.name, ...rest, says: `${item.name}: ${says}` };
};

/** What the item asks, for a screen that lists them before any test. */
export const asksOf = (item: GateItem, gate: GateEvidence['gate']): string =>
  `${item.name}: ${requirementText(item.gates[gate])}.`;
