import type { Day } from '#units/day.ts';
import { kilogramsOf, numberOf } from '#units/entered.ts';
import { kilogramsPer } from '#units/mass.ts';
import type { CardBouts, HarnessPull } from '#domain/card.ts';
import type { BodySite } from '#domain/catalogue.ts';
import { ratingOf } from '#domain/effort.ts';
import type { Fact, PieceResult, Sequence } from '#domain/fact.ts';
import type { MachineId } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { CardRecord } from '#domain/road.ts';
import { takeHarnessBack } from './harness-raise.ts';
import { painOf } from './pain.ts';
import type { PlanContext } from './plan-context.ts';
import { harnessState, type HarnessState, type Progress } from './progress.ts';

type InHarness = CardBouts & { readonly harness: HarnessPull };

const isInHarness = (item: CardBouts): item is InHarness => item.harness !== null;

/** What hangs on a harness: straps press here, whatever the legs feel. */
const UNDER_STRAPS: readonly BodySite[] = ['shoulder', 'chest', 'hip', 'low back', 'skin'];

/** The pull of an issued card, on its own day: the signature covers it. */
export const takeIssuedHarness = (progress: Progress, item: CardBouts, { card, basis }: IssuedCard): void => {
  if (!isInHarness(item)) return;
  const state = harnessState(progress, item.machine);
  state.tracks.add(item.track);
  if (item.asWritten !== null || card.deload || basis.upTo < state.signedAfter) return;
  const share = item.harness.share ?? item.harness.ofBodyWeight;
  if (state.share === null || share > state.share + SAME) {
    state.share = share;
    state.lastStepOn = card.day;
    state.earnedBy = [];
  }
  state.inUse = item.harness.increments;
};

/** Shares are sums of binary fractions. */
const SAME = 1e-9;

/** What a session earned a harness, or took from it: everything that was done in it counts together. */
export const takeHarnessResults = (
  context: PlanContext,
  progress: Progress,
  { record, trained }: { readonly record: CardRecord; readonly trained: Fact<'trained'> },
  bouts: readonly CardBouts[],
): void => {
  for (const [machine, items] of byMachine(bouts)) {
    const state = harnessState(progress, machine);
    const worst = worstIn(context, record.hurts, items);
    state.painHolds = worst !== 'go on';
    // Less that was pulled counts whether it hurt or not; what hurt earns nothing.
    takeDone(context, state, { record, trained, items });
    if (worst === 'step back') takeHarnessBack(context, state, trained.day, trained.sequence);
    if (worst !== 'go on') state.earnedBy = [];
  }
};

const byMachine = (bouts: readonly CardBouts[]): ReadonlyMap<MachineId, readonly InHarness[]> => {
  const inHarness = bouts.filter(isInHarness);
  return new Map(inHarness.map(({ machine }) => [machine, inHarness.filter((each) => each.machine === machine)]));
};

interface Done {
  readonly record: CardRecord;
  readonly trained: Fact<'trained'>;
  readonly items: readonly InHarness[];
}

/** A step is earned by a session done whole at the pull in force, effort recorded inside the rule's limit. */
const takeDone = (context: PlanContext, state: HarnessState, { record, trained, items }: Done): void => {
  const { document } = record;
  const isOwn = !document.card.deload && items.every(({ asWritten }) => asWritten === null);
  if (!isOwn || document.basis.upTo < state.signedAfter) return;
  const results = items.map((item) => ({ item, result: trained.pieces.find((each) => each.item === item.item) }));
  const less = Math.min(...results.map(({ item, result }) => (result ? incrementsDone(item, result) : Infinity)));
  if (state.inUse !== null && less < state.inUse) {
    takeLess(context, state, items[0] as InHarness, less);
    return;
  }
  const { ruleRpeAtMost, harnessStep } = context.known.house.policies;
  const clean = results.every(({ item, result }) => {
    const rating = result?.effort ? ratingOf(result.effort) : null;
    const atThisStep = state.share !== null && item.harness.ofBodyWeight > state.share - harnessStep / 2;
    return (
      result !== undefined &&
      result.done >= item.bouts.length &&
      rating !== null &&
      rating <= ruleRpeAtMost &&
      atThisStep
    );
  });
  if (clean && !state.earnedBy.includes(trained.id)) state.earnedBy.push(trained.id);
};

/** A pull as typed, in whole increments; what was not typed was as planned. */
const incrementsDone = ({ harness: { increments, increment, unit } }: InHarness, { harness }: PieceResult): number =>
  harness === null
    ? increments
    : Math.floor(kilogramsOf(harness) / (numberOf({ text: increment, unit }) * kilogramsPer(unit)) + 1e-6);

/** Less was taken than planned: that pull counts, and coming back is a raise. */
const takeLess = (context: PlanContext, state: HarnessState, { harness }: InHarness, increments: number): void => {
  const { harnessStart } = context.known.house.policies;
  const done = (harness.ofBodyWeight * increments) / harness.increments;
  state.share = Math.min(state.share ?? harnessStart, done);
  state.inUse = increments;
  state.earnedBy = [];
};

/** Discomfort without a result, at what a harness presses or what is done in it loads. */
export const takeHarnessDiscomfort = (
  context: PlanContext,
  progress: Progress,
  hurts: readonly Fact<'hurt'>[],
  bouts: readonly CardBouts[],
  at: { readonly day: Day; readonly sequence: Sequence },
): void => {
  const onCard = byMachine(bouts);
  for (const [machine, state] of progress.harnesses) {
    const worst = worstIn(context, hurts, onCard.get(machine) ?? []);
    if (worst === 'go on') continue;
    state.painHolds = true;
    state.earnedBy = [];
    if (worst === 'step back') takeHarnessBack(context, state, at.day, at.sequence);
  }
};

type Worst = 'go on' | 'hold' | 'step back';

/** Discomfort that holds, or takes a step back at once: from where an exercise stops, and wherever skin is broken. */
const worstIn = (context: PlanContext, hurts: readonly Fact<'hurt'>[], items: readonly InHarness[]): Worst => {
  const { policies, exercises } = context.known.house;
  const loaded = items.map((item) => ({ item: item.item, loads: exercises.get(item.exercise)?.loads ?? [] }));
  const bands = [...loaded, { item: null, loads: [] }].map(
    ({ item, loads }) => painOf(hurts, item, { loads: [...loads, ...UNDER_STRAPS] }, policies).band,
  );
  const skin = Math.max(
    0,
    ...hurts
      .filter(({ site, item }) => site === 'skin' && (item === null || items.some((each) => each.item === item)))
      .map(({ score }) => score),
  );
  if (bands.some((band) => band === 'stop' || band === 'end the session') || skin >= policies.discomfortHolds)
    return 'step back';
  return bands.includes('hold') || skin > 0 ? 'hold' : 'go on';
};
