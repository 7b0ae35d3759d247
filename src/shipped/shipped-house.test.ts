import type { FactBody } from '#domain/fact.ts';
import { scenarioHouse } from '#scenario/skerry-station.ts';
import { decimalOf } from '#units/entered.ts';
import { expect, test } from 'vitest';
import { shippedFacts } from './shipped-house.ts';

const entriesOf = (facts: readonly FactBody[]) =>
  facts.flatMap((fact) => (fact.kind === 'catalogued' ? [fact.entry] : []));
const machinesOf = (facts: readonly FactBody[]) =>
  entriesOf(facts).flatMap((entry) => (entry.kind === 'machine' ? [entry.machine] : []));
const sitesOf = (facts: readonly FactBody[]) =>
  entriesOf(facts).flatMap((entry) => (entry.kind === 'site' ? [entry.site] : []));

const HOUSES = [
  ['empty start', shippedFacts()],
  ['scenario', scenarioHouse()],
] as const;

test('an empty start holds machines aboard and in a gym, one programme and no people', () => {
  const facts = shippedFacts();
  expect(new Set(facts.map((fact) => fact.kind))).toEqual(new Set(['catalogued']));
  expect(machinesOf(facts).map(({ kind, gravity }) => [kind, gravity])).toEqual([
    ['resistive machine', '0 g'],
    ['free bar', '1 g'],
    ['treadmill', '0 g'],
    ['cycle', '0 g'],
    ['treadmill', '1 g'],
    ['cycle', '1 g'],
    ['dumbbells', '1 g'],
  ]);
  expect(sitesOf(facts).map(({ place }) => place)).toEqual(['aboard', 'ground']);
  expect(entriesOf(facts).filter((entry) => entry.kind === 'programme').length).toBe(1);
});

test.each(HOUSES)('%s: machines stand at known sites, weightless exactly aboard', (_, facts) => {
  const places = new Map(sitesOf(facts).map(({ id, place }) => [id, place]));
  for (const { site, gravity } of machinesOf(facts))
    expect(places.get(site)).toBe(gravity === '0 g' ? 'aboard' : 'ground');
});

test.each(HOUSES)(
  '%s: loads are decimals, the least is not over the ceiling, limits name known exercises',
  (_, facts) => {
    const exercises = entriesOf(facts).flatMap((entry) => (entry.kind === 'exercise' ? [entry.exercise.id] : []));
    for (const { name, increment, least, ceiling, limits } of machinesOf(facts)) {
      const [step, from, to] = [increment, least, ceiling].map((text) => decimalOf(text) ?? Number.NaN);
      expect({ name, positive: Number(step) > 0, ordered: Number(from) <= Number(to) }).toEqual({
        name,
        positive: true,
        ordered: true,
      });
      for (const { exercise, most } of limits) {
        expect(exercises).toContain(exercise);
        expect(decimalOf(most)).toBeLessThanOrEqual(Number(to));
      }
    }
  },
);

test('the ground unit is that of the resistive machine aboard', () => {
  const machines = machinesOf(scenarioHouse());
  const ground = machines.filter(({ groundUnitOf }) => groundUnitOf !== null);
  expect(ground.length).toBe(1);
  const flown = machines.find(({ id }) => id === ground[0]?.groundUnitOf);
  expect([flown?.kind, flown?.gravity, ground[0]?.gravity]).toEqual(['resistive machine', '0 g', '1 g']);
});
