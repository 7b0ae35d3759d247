import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { derive } from './derive.ts';
import { inventedRoad, LAUNCH } from './invented-road.setup.ts';
import { leastMinutes } from './least-minutes.ts';
import { sessionMinutes, totalOf } from './minutes.ts';

const { known } = inventedRoad();
const { exercises, machines } = known.house;
const programmed = new Map(
  SET_PROGRAMME.phases.flatMap(({ sessions }) =>
    sessions.flatMap(({ items }) => items.map((item) => [item.id, item] as const)),
  ),
);

test('no item of a card takes less time alone than is reckoned for it before anybody is known', () => {
  const cards = derive(known, addDays(LAUNCH, 20), addDays(LAUNCH, 27)).cards.flatMap((each) =>
    each.state === 'issued' || each.card.deload ? [] : [each.card],
  );
  const compared = cards.flatMap(({ items }) =>
    items.flatMap((card) => {
      const [item, exercise] = [programmed.get(card.item), exercises.get(card.exercise)];
      if (!item || !exercise) return [];
      const machine = 'machine' in card ? (machines.get(card.machine) ?? null) : null;
      const alone = totalOf(sessionMinutes([card], () => ({ exercise, machine })));
      return [{ name: exercise.name, kind: item.kind, alone, least: leastMinutes(item, exercise, machines.values()) }];
    }),
  );
  expect(new Set(compared.map(({ kind }) => kind))).toEqual(new Set(['lift', 'bouts', 'drill']));
  expect(compared.filter(({ alone, least }) => least > alone + 1e-9)).toEqual([]);
});
