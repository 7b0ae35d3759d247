import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import { BODY_SITES, PATTERNS } from '#domain/catalogue.ts';
import type { Fact } from '#domain/fact.ts';
import type { Restriction, RestrictionLimit, RestrictionScope } from '#domain/restriction.ts';
import { isoOfDay, type Day } from '#units/day.ts';
import { massUnitOf } from './amount-fields.tsx';
import { sideOf } from './test-form.tsx';
import { chosenFrom, typedAmount, typedDay, typedDayOrNone, typedNumber, typedWords } from './typed-values.ts';

/** A restriction as text, the way it stands in the fields. */
export interface TypedRestriction {
  readonly scope: string;
  readonly exercise: string;
  readonly pattern: string;
  readonly site: string;
  readonly side: string;
  readonly limit: string;
  readonly load: string;
  readonly unit: string;
  readonly percent: string;
  readonly rpe: string;
  readonly toldBy: string;
  readonly toldOn: string;
  readonly confirmed: string;
  readonly from: string;
  readonly reviewOn: string;
  readonly medicalReason: string;
}

export const startOfRestriction = (today: Day, correcting: Fact<'restricted'> | null): TypedRestriction => {
  const empty: TypedRestriction = {
    scope: 'site',
    exercise: '',
    pattern: '',
    site: '',
    side: '',
    limit: 'forbidden',
    load: '',
    unit: 'lb',
    percent: '',
    rpe: '',
    toldBy: '',
    toldOn: isoOfDay(today),
    confirmed: 'no',
    from: isoOfDay(today),
    reviewOn: '',
    medicalReason: '',
  };
  if (correcting === null) return empty;
  const { restriction } = correcting;
  return {
    ...empty,
    ...typedScope(restriction.scope),
    ...typedLimit(restriction.limit),
    toldBy: restriction.toldBy,
    toldOn: isoOfDay(restriction.toldOn),
    confirmed: restriction.confirmed ? 'yes' : 'no',
    from: isoOfDay(restriction.from),
    reviewOn: restriction.reviewOn === null ? '' : isoOfDay(restriction.reviewOn),
    medicalReason: correcting.medicalReason ?? '',
  };
};

const typedScope = (scope: RestrictionScope): Partial<TypedRestriction> => {
  switch (scope.kind) {
    case 'exercise':
      return { scope: scope.kind, exercise: scope.exercise };
    case 'pattern':
      return { scope: scope.kind, pattern: scope.pattern };
    case 'site':
      return { scope: scope.kind, site: scope.site, side: scope.side ?? '' };
    case 'all':
      return { scope: scope.kind };
  }
};

const typedLimit = (limit: RestrictionLimit): Partial<TypedRestriction> => {
  switch (limit.kind) {
    case 'load at most':
      return { limit: limit.kind, load: limit.load.text, unit: limit.load.unit };
    case 'fraction at most':
      return { limit: limit.kind, percent: String(Number((limit.of * 100).toPrecision(6))) };
    case 'RPE at most':
      return { limit: limit.kind, rpe: String(limit.rpe) };
    case 'forbidden':
    case 'no straining':
      return { limit: limit.kind };
  }
};

/** The restriction that the fields come to, or null with every problem said. */
export const restrictionOf = (typed: TypedRestriction, house: HouseWindow, problems: Problem[]): Restriction | null => {
  const scope = scopeOf(typed, house, problems);
  const limit = limitOf(typed, problems);
  const from = typedDay(typed.from, 'restriction.from', problems);
  const toldBy = typedWords(typed.toldBy, 'restriction.toldBy', problems);
  const toldOn = typedDay(typed.toldOn, 'restriction.toldOn', problems);
  const reviewOn = typedDayOrNone(typed.reviewOn, 'restriction.reviewOn', problems);
  if (scope === null || limit === null || from === null || toldBy === null || toldOn === null) return null;
  return { scope, limit, toldBy, toldOn, confirmed: typed.confirmed === 'yes', from, reviewOn };
};

const scopeOf = (typed: TypedRestriction, house: HouseWindow, problems: Problem[]): RestrictionScope | null => {
  const named = <Name extends string>(names: readonly Name[], chosen: string, field: string): Name | null =>
    chosenFrom(
      names.map((id) => ({ id })),
      chosen,
      `restriction.scope.${field}`,
      problems,
    )?.id ?? null;
  switch (typed.scope) {
    case 'exercise': {
      const exercise = chosenFrom(house.exercises, typed.exercise, 'restriction.scope.exercise', problems);
      return exercise && { kind: 'exercise', exercise: exercise.id };
    }
    case 'pattern': {
      const pattern = named(PATTERNS, typed.pattern, 'pattern');
      return pattern && { kind: 'pattern', pattern };
    }
    case 'site': {
      const site = named(BODY_SITES, typed.site, 'site');
      return site && { kind: 'site', site, side: sideOf(typed.side) };
    }
    default:
      return { kind: 'all' };
  }
};

const limitOf = (typed: TypedRestriction, problems: Problem[]): RestrictionLimit | null => {
  switch (typed.limit) {
    case 'load at most': {
      const load = typedAmount(typed.load, massUnitOf(typed.unit), 'restriction.limit.load.text', problems);
      return load && { kind: 'load at most', load };
    }
    case 'fraction at most': {
      const percent = typedNumber(typed.percent, 'restriction.limit.of', problems);
      return percent === null ? null : { kind: 'fraction at most', of: percent / 100 };
    }
    case 'RPE at most': {
      const rpe = typedNumber(typed.rpe, 'restriction.limit.rpe', problems);
      return rpe === null ? null : { kind: 'RPE at most', rpe };
    }
    case 'no straining':
      return { kind: 'no straining' };
    default:
      return { kind: 'forbidden' };
  }
};
