import { repetitions } from '#units/quantity.ts';
import type { PolicyOption } from '#domain/crossing.ts';
import type { ReplacementPolicy } from '#domain/decision.ts';
import { fractionAllowing } from '#science/strength/repetition-maximum.ts';
import { crossSet, loadText, type CrossingGround } from './crossing-view.ts';
import { plannedRepetitions } from './planned-repetitions.ts';
import { replacementPolicy, shareByPolicy, sharesOf } from './plan-context.ts';

const OFFERED: readonly {
  readonly policy: 'work-matched' | 'joint-matched' | 'whole';
  readonly label: string;
  readonly note: string;
}[] = [
  { policy: 'work-matched', label: 'Work-matched', note: 'segment model: the same work over the repetition' },
  { policy: 'joint-matched', label: 'Joint-matched', note: 'what the lowest moving joint carries in 1 g' },
  { policy: 'whole', label: 'Whole', note: 'rule of thumb, an upper end: common practice, no source' },
];

/** Ways to add body weight back, each with the full load it leads to and what speaks against it. */
export const policyOptions = (ground: CrossingGround): readonly PolicyOption[] => {
  const shares = sharesOf(ground.context, ground.exercise);
  const signed = replacementPolicy(ground.context, ground.exercise);
  const own: readonly { readonly policy: ReplacementPolicy; readonly label: string; readonly note: string }[] =
    typeof signed === 'string' ? [] : [{ policy: signed, label: 'Own share', note: 'signed by the specialist' }];
  return [...OFFERED, ...own].map(({ policy, label, note }) => {
    const share = shareByPolicy(policy, shares);
    const full = crossSet(ground, 1, 1, share);
    return {
      policy,
      label,
      note,
      share,
      fullLoad: full.increments === null ? 'under the least' : loadText(ground, full.increments),
      trueFraction: full.trueFraction,
      cautions: cautionsOf(ground, full.trueFraction),
    };
  });
};

const cautionsOf = (ground: CrossingGround, trueFraction: number): readonly string[] => {
  const count = plannedRepetitions(ground.item);
  const allowed = fractionAllowing(repetitions(count)) / fractionAllowing(repetitions(ground.estimate.of));
  const percent = Math.round((trueFraction / allowed) * 100);
  return trueFraction > allowed
    ? [`By the segment model this is ${percent} % of the maximum for ${count} repetitions.`]
    : [];
};
