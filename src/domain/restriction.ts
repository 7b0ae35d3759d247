import type { Day } from '#units/day.ts';
import type { Entered } from '#units/entered.ts';
import type { BodySite, Exercise, Pattern } from './catalogue.ts';
import type { Side } from './effort.ts';
import type { ExerciseId } from './identity.ts';

export type RestrictionScope =
  | { readonly kind: 'exercise'; readonly exercise: ExerciseId }
  | { readonly kind: 'pattern'; readonly pattern: Pattern }
  | { readonly kind: 'site'; readonly site: BodySite; readonly side: Side | null }
  | { readonly kind: 'all' };

export type RestrictionLimit =
  | { readonly kind: 'forbidden' }
  | { readonly kind: 'load at most'; readonly load: Entered }
  /** Of the last pre-flight capacity, in bar-equivalent. */
  | { readonly kind: 'fraction at most'; readonly of: number }
  | { readonly kind: 'RPE at most'; readonly rpe: number }
  | { readonly kind: 'no straining' };

/** A physician's limit. It binds from its day until its lifting is signed; a review date lifts nothing. */
export interface Restriction {
  readonly scope: RestrictionScope;
  readonly limit: RestrictionLimit;
  readonly toldBy: string;
  readonly toldOn: Day;
  /** Unconfirmed still binds. */
  readonly confirmed: boolean;
  readonly from: Day;
  readonly reviewOn: Day | null;
}

/** Is this exercise inside the scope? A side restricts every lift that loads the site: both hands hold one bar. */
export const isWithinScope = (scope: RestrictionScope, exercise: Exercise): boolean => {
  switch (scope.kind) {
    case 'all':
      return true;
    case 'exercise':
      return scope.exercise === exercise.id;
    case 'pattern':
      return scope.pattern === exercise.pattern;
    case 'site':
      return exercise.loads.includes(scope.site);
  }
};

/** "no shoulder loading, left", "back squat at most 200 lb": what binds, never why. */
export const showRestriction = (restriction: Restriction, exerciseName: (id: ExerciseId) => string): string =>
  `${showScope(restriction.scope, exerciseName)}: ${showLimit(restriction.limit)}`;

const showScope = (scope: RestrictionScope, exerciseName: (id: ExerciseId) => string): string => {
  switch (scope.kind) {
    case 'all':
      return 'every exercise';
    case 'exercise':
      return exerciseName(scope.exercise);
    case 'pattern':
      return `every ${scope.pattern}`;
    case 'site':
      return `everything that loads the ${scope.side ? `${scope.side} ` : ''}${scope.site}`;
  }
};

const showLimit = (limit: RestrictionLimit): string => {
  switch (limit.kind) {
    case 'forbidden':
      return 'forbidden';
    case 'load at most':
      return `at most ${limit.load.text} ${limit.load.unit}`;
    case 'fraction at most':
      return `at most ${Math.round(limit.of * 100)} % of the last capacity before flight`;
    case 'RPE at most':
      return `effort at most RPE ${limit.rpe}`;
    case 'no straining':
      return 'no straining, breathe throughout';
  }
};
