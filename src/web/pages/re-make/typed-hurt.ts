import type { BodySite } from '#domain/catalogue.ts';
import type { Hurting } from '#domain/decision.ts';

/** A line of what hurts, as it is being typed. */
export interface TypedHurt {
  readonly key: number;
  readonly site: BodySite;
  readonly side: '' | 'left' | 'right';
  readonly score: string;
}

/** Lines with a whole number from 0 to 10; a line without one says nothing yet. */
export const hurtsOf = (typed: readonly TypedHurt[]): readonly Hurting[] =>
  typed.flatMap(({ site, side, score }) =>
    /^(10|\d)$/.test(score.trim()) ? [{ site, side: side === '' ? null : side, score: Number(score) }] : [],
  );

export const nextHurt = (typed: readonly TypedHurt[], site: BodySite): TypedHurt => ({
  key: Math.max(0, ...typed.map(({ key }) => key)) + 1,
  site,
  side: '',
  score: '',
});
