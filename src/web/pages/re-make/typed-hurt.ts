import type { BodySite } from '#domain/catalogue.ts';
import type { Problem } from '#contract/problem.ts';
import type { Hurting } from '#domain/decision.ts';

/** A line of what hurts, as it is being typed. */
export interface TypedHurt {
  readonly key: number;
  readonly site: BodySite;
  readonly side: '' | 'left' | 'right';
  readonly score: string;
}

const isRead = ({ score }: TypedHurt): boolean => /^(10|\d)$/.test(score.trim());

/** Lines with a whole number from 0 to 10. */
export const hurtsOf = (typed: readonly TypedHurt[]): readonly Hurting[] =>
  typed
    .filter(isRead)
    .map(({ site, side, score }) => ({ site, side: side === '' ? null : side, score: Number(score) }));

/** A line that cannot be read is asked about: nothing is signed as if it did not hurt. */
export const unreadHurts = (typed: readonly TypedHurt[]): readonly Problem[] =>
  typed
    .filter((hurt) => !isRead(hurt))
    .map(({ key, site, score }) => ({
      field: `hurts.${key}`,
      what: score.trim() === '' ? `How much the ${site} hurts is not told.` : `“${score}” is no discomfort.`,
      why: 'What is trained depends on it, and it is not guessed.',
      whatToDo: 'Type a whole number from 0 to 10, or take the line out.',
    }));

export const nextHurt = (typed: readonly TypedHurt[], site: BodySite): TypedHurt => ({
  key: Math.max(0, ...typed.map(({ key }) => key)) + 1,
  site,
  side: '',
  score: '',
});
