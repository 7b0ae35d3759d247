import { isoOfDay, type Day } from '#units/day.ts';
import type { Side } from '#domain/effort.ts';
import { ofKind, type Known } from '#domain/known.ts';
import { newtonsOf } from '#domain/tested.ts';
import type { Found } from './endurance.ts';

export type HandTest = 'greatest grip' | 'critical force';

/** A hand's newest test of a kind on or before a day [N], or null where it was never tested. */
export const handOn = (known: Known, what: HandTest, side: Side, on: Day): Found | null => {
  const tests = ofKind(known, 'tested').flatMap(({ day, test, id }): readonly Found[] =>
    day <= on && test.what === what && test.side === side
      ? [
          {
            value: newtonsOf(test.value),
            day,
            from: { kind: 'fact', fact: id, says: `${what} of the ${side} hand, tested ${isoOfDay(day)}` },
          },
        ]
      : [],
  );
  return tests.reduce<Found | null>((last, each) => (last && last.day > each.day ? last : each), null);
};
