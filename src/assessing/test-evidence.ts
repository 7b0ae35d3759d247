import type { Day } from '#units/day.ts';
import { kilogramsOf, showEntered } from '#units/entered.ts';
import { capacityMachine, type Exercise } from '#domain/catalogue.ts';
import { showEffort } from '#domain/effort.ts';
import type { CapacityKey } from '#domain/estimate.ts';
import type { Fact } from '#domain/fact.ts';
import { ofKind, type Known } from '#domain/known.ts';
import { barEquivalentOf, deliveredBy, onTheBar, type BarReading } from './bar-equivalent.ts';
import type { Reading } from './observation.ts';
import { readSet, reserveOf } from './read-set.ts';

/** Tests of one key: the heaviest successful set of each day; of a lift with sides, the weaker side. */
export const testReadings = (known: Known, exercise: Exercise, key: CapacityKey, of: number): readonly Reading[] =>
  [...byDay(testsOf(known, exercise, key)).values()].map((sets) =>
    readTest(known, exercise, key, of, decisiveSet(sets)),
  );

/** Tests of an exercise on the machine of a key. */
export const testsOf = (known: Known, exercise: Exercise, key: CapacityKey): readonly Fact<'lifted'>[] =>
  ofKind(known, 'lifted').filter((fact) => {
    const machine = known.house.machines.get(fact.machine);
    return (
      fact.exercise === exercise.id &&
      fact.repetitions > 0 &&
      machine !== undefined &&
      capacityMachine(machine) === key.machine
    );
  });

export const showTest = (fact: Fact<'lifted'>): string =>
  `${showEntered(fact.load)} × ${fact.repetitions}${fact.side ? ` ${fact.side}` : ''}${fact.effort ? `, ${showEffort(fact.effort)}` : ''}`;

const readTest = (known: Known, exercise: Exercise, key: CapacityKey, of: number, fact: Fact<'lifted'>): Reading => {
  const says = showTest(fact);
  const unused = (why: string): Reading => ({
    kind: 'unused',
    unused: { day: fact.day, fact: fact.id, kind: 'test', says, why },
  });
  const bar = barOfTest(known, exercise, key, fact);
  if (bar.kind === 'none') return unused(bar.why);
  const reading = readSet(bar.kilograms, fact.repetitions, reserveOf(fact.effort), of, known.trainingAge);
  if (reading.kind === 'unused') return unused(reading.why);
  return {
    kind: 'observation',
    observation: {
      day: fact.day,
      y: Math.log(reading.maximum),
      variance: reading.logSd ** 2,
      lowerBound: reading.lowerBound,
      facts: [fact.id],
      kind: 'test',
      point: reading.maximum,
      range: reading.range,
      says,
      confidence: reading.confidence,
      why: reading.why,
    },
  };
};

const barOfTest = (known: Known, exercise: Exercise, key: CapacityKey, fact: Fact<'lifted'>): BarReading =>
  key.gravity === '1 g'
    ? onTheBar(kilogramsOf(fact.load))
    : barEquivalentOf(known, exercise, deliveredBy(known, fact.machine, fact.day, kilogramsOf(fact.load)));

const byDay = (tests: readonly Fact<'lifted'>[]): ReadonlyMap<Day, readonly Fact<'lifted'>[]> => {
  const days = new Map<Day, Fact<'lifted'>[]>();
  for (const test of tests) days.set(test.day, [...(days.get(test.day) ?? []), test]);
  return days;
};

const decisiveSet = (sets: readonly Fact<'lifted'>[]): Fact<'lifted'> => {
  const sides = (['left', 'right', null] as const)
    .map((side) => sets.filter((set) => set.side === side))
    .filter((some) => some.length > 0);
  const best = sides.map((some) =>
    some.reduce((heaviest, set) => (kilogramsOf(set.load) > kilogramsOf(heaviest.load) ? set : heaviest)),
  );
  return best.reduce((weaker, set) => (kilogramsOf(set.load) < kilogramsOf(weaker.load) ? set : weaker));
};
