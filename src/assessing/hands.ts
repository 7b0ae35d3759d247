import type { Day } from '#units/day.ts';
import type { Side } from '#domain/effort.ts';
import type { FactId } from '#domain/identity.ts';
import { ofKind, type Known } from '#domain/known.ts';
import { newtonsOf } from '#domain/tested.ts';

export type HandTest = 'greatest grip' | 'critical force';

/** A hand's newest test of a kind on or before a day [N], or null where it was never tested. */
export const handOn = (
  known: Known,
  what: HandTest,
  side: Side,
  on: Day,
): { readonly newtons: number; readonly fact: FactId; readonly day: Day } | null => {
  const tests = ofKind(known, 'tested').flatMap(({ day, test, id }) =>
    day <= on && test.what === what && test.side === side ? [{ newtons: newtonsOf(test.value), fact: id, day }] : [],
  );
  return tests.reduce<(typeof tests)[number] | null>((last, each) => (last && last.day > each.day ? last : each), null);
};
