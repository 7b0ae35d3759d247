import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { idOf } from '#domain/identity.ts';
import {
  ADDED_FROM,
  ASSIGNED_IN,
  assigned,
  dated,
  DATED_IN,
  inventedRoad,
  LANDING,
  LAUNCH,
  PERSON,
  tested,
} from './invented-road.setup.ts';
import { datesOverTime, datesWhen } from './mission-dates.ts';

const SLIPPED = addDays(LAUNCH, 11);

const launchesOf = (log: ReturnType<typeof inventedRoad>['log']) =>
  datesOverTime(log, PERSON).map(({ since, mission }) => [since.sequence, mission && mission.launch - LAUNCH]);

test('before anybody is assigned there are no dates; a correction of them counts from where it was entered', () => {
  const { log } = inventedRoad(tested(addDays(LAUNCH, -50)), { corrects: DATED_IN, by: dated(SLIPPED, LANDING) });
  expect(launchesOf(log)).toEqual([
    [DATED_IN, null],
    [ASSIGNED_IN, 0],
    [ADDED_FROM + 1, 11],
  ]);
});

test('dates that are entered again as they were change nothing, nor does a change of role', () => {
  const { log } = inventedRoad(
    { corrects: DATED_IN, by: dated(LAUNCH, LANDING) },
    { corrects: ASSIGNED_IN, by: assigned('backup') },
  );
  expect(launchesOf(log)).toHaveLength(2);
});

test('dates that are taken back were never given after it; another person’s assignment is none of theirs', () => {
  const { log } = inventedRoad(
    { ...assigned('prime'), person: idOf('another'), mission: idOf('plover-2') } as ReturnType<typeof assigned>,
    { corrects: DATED_IN, by: { kind: 'retracted' } },
  );
  expect(launchesOf(log).at(-1)).toEqual([ADDED_FROM + 1, null]);
});

test('what stood when a fact was entered is the last change at or before it', () => {
  const { log } = inventedRoad({ corrects: DATED_IN, by: dated(SLIPPED, null) });
  const over = datesOverTime(log, PERSON);
  const launchAt = (place: number) => datesWhen(over, place as Parameters<typeof datesWhen>[1])?.launch ?? null;
  expect([DATED_IN - 1, ASSIGNED_IN, ADDED_FROM - 1, ADDED_FROM].map(launchAt)).toEqual([
    null,
    LAUNCH,
    LAUNCH,
    SLIPPED,
  ]);
});
