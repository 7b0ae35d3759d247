import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { canonicalJson } from '#domain/digest.ts';
import { idOf } from '#domain/identity.ts';
import { snapshotOf, snapshotReader } from './snapshot.ts';
import { retractFact } from './retract-fact.ts';
import { enter, LAUNCH, OTHER, PERSON, startedHouse } from './started-house.fixture.ts';

/** A road without the place in the log at which it was worked out. */
const shown = (snapshot: ReturnType<typeof snapshotOf>): string => {
  const road = snapshot.road(PERSON);
  return canonicalJson(road && { ...road, upTo: 0, rows: [...road.rows] });
};

test('a road that was kept is the road that would be made, whatever was recorded in between', async () => {
  const { workplace, signer, setToday } = await startedHouse();
  const { store, today } = workplace;
  const read = snapshotReader(store.facts, today);
  const mass = (person: typeof PERSON, kilograms: string) => ({
    kind: 'measured' as const,
    person,
    day: addDays(LAUNCH, -5),
    what: 'body mass' as const,
    value: entered(kilograms, 'kg'),
  });
  const isRight = (): boolean => shown(read()) === shown(snapshotOf(store.facts(), today()));
  const before = read().road(PERSON);
  await enter(workplace, signer, [mass(OTHER, '80')]);
  expect(read().road(PERSON)).toBe(before);
  expect(isRight()).toBe(true);
  await enter(workplace, signer, [mass(PERSON, '64')]);
  expect(read().road(PERSON)).not.toBe(before);
  expect(isRight()).toBe(true);
  await retractFact(workplace, { signer, fact: store.facts().at(-1)?.id ?? idOf('none'), reason: 'misread' });
  expect(isRight()).toBe(true);
  await enter(workplace, signer, [{ kind: 'policies set', policies: { effortSteps: [0.5, 1] } }]);
  expect(isRight()).toBe(true);
  setToday(addDays(LAUNCH, 6));
  expect(isRight()).toBe(true);
});
