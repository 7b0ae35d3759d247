import type { FactBody } from '#domain/fact.ts';
import type { Machine } from '#domain/catalogue.ts';
import type { Test } from '#domain/tested.ts';
import { type Day, addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import type { InventedPerson } from '../invented-person.ts';
import { momentOf } from '../moment.ts';
import { ANSELM, INES, JOON_HO, KERTTU, MIRELA, NOOR, RAFAEL, TOMAS, WEN_LI, YUSUF } from '../people.ts';
import { normal, randomStream, type Random } from '../random.ts';
import { SPECIALIST } from '../signers.ts';
import { CYCLE } from '../skerry-station.ts';
import { costOfSpeed, costOfWatts, partOfReserve, trueRate, trueUptake } from '../stamina-truth.ts';
import { dayEntered } from '../taken-up.ts';
import { type ScriptEntry, entry } from './script-entry.ts';
import { flownBy } from './test-script.ts';

type What = 'cycle to the end' | 'cycle in stages' | 'run to the end' | 'resting' | 'hands' | 'greatest grip' | 'jump';

interface Occasion {
  readonly person: InventedPerson;
  /** Days from today. */
  readonly day: number;
  readonly what: readonly What[];
}

const on = (person: InventedPerson, day: number, ...what: readonly What[]): Occasion => ({ person, day, what });

/** Oona and Adaeze were never tested for endurance, Tomas not to the end: there effort leads, or age. */
const OCCASIONS: readonly Occasion[] = [
  on(INES, -128, 'cycle to the end', 'resting', 'hands'),
  on(INES, -38, 'cycle to the end', 'run to the end', 'resting', 'hands', 'jump'),
  on(TOMAS, -52, 'resting', 'greatest grip'),
  on(KERTTU, -147, 'cycle to the end', 'run to the end', 'resting', 'hands', 'jump'),
  on(KERTTU, -62, 'cycle in stages', 'hands'),
  on(KERTTU, -31, 'hands'),
  on(RAFAEL, -148, 'cycle to the end', 'run to the end', 'resting', 'hands'),
  on(RAFAEL, -60, 'cycle in stages'),
  on(MIRELA, -54, 'cycle to the end', 'resting', 'greatest grip'),
  on(YUSUF, -22, 'cycle to the end', 'run to the end', 'resting', 'jump'),
  on(WEN_LI, -70, 'cycle to the end', 'run to the end', 'resting', 'hands', 'jump'),
  on(WEN_LI, -30, 'hands'),
  on(ANSELM, -29, 'resting'),
  on(JOON_HO, -220, 'cycle to the end', 'resting', 'greatest grip'),
  on(JOON_HO, -3, 'greatest grip'),
  on(NOOR, -243, 'cycle to the end', 'resting', 'jump'),
  on(NOOR, -12, 'cycle in stages', 'resting'),
  on(NOOR, -2, 'cycle to the end', 'jump'),
];

/** Tests of heart and lungs, of hands and of the jump, from what the body could do on its day. */
export const staminaScript = (today: Day, seed: number): readonly ScriptEntry[] =>
  OCCASIONS.flatMap(({ person, day: fromToday, what }) => {
    const random = randomStream(seed, `stamina ${person.id} ${fromToday}`);
    const day = addDays(today, fromToday);
    const at = momentOf(dayEntered(day, today), day === dayEntered(day, today) ? '17:05' : '09:10');
    const tests = what.flatMap((each) => testsOf(person, fromToday, each, random));
    return tests.map((test, place) =>
      entry(`tested ${person.id} ${fromToday} ${place}`, at, SPECIALIST.id, {
        kind: 'tested',
        person: person.id,
        day,
        test,
      } satisfies FactBody),
    );
  });

const testsOf = (person: InventedPerson, fromToday: number, what: What, random: Random): readonly Test[] => {
  const flown = flownBy(person, fromToday);
  const spread = (value: number, of: number): number => value * (1 + of * normal(random));
  switch (what) {
    case 'cycle to the end':
      return [...stages(person, flown, random), ...greatest(person, flown, random)];
    case 'cycle in stages':
      return stages(person, flown, random, machineOn(flown));
    case 'run to the end':
      return runs(person, flown, random);
    case 'resting':
      return [{ what: 'resting heart rate', value: entered(String(person.stamina.restingRate), '1/min') }];
    case 'hands':
      return [...grips(person, random), ...lasting(person, random)];
    case 'greatest grip':
      return grips(person, random);
    case 'jump':
      return [{ what: 'jump height', value: entered(spread(person.sex === 'male' ? 37 : 29, 0.04).toFixed(1), 'cm') }];
  }
};

/** In flight the cycle is the one aboard; on the ground it is never said which. */
const machineOn = (flown: number): Machine | null => (flown >= 0 ? CYCLE : null);

const greatest = (person: InventedPerson, flown: number, random: Random): readonly Test[] => [
  {
    what: 'greatest oxygen uptake',
    value: entered((trueUptake(person, flown) * (1 + 0.02 * normal(random))).toFixed(1), 'mL/(kg min)'),
    how: 'measured',
  },
  { what: 'greatest heart rate', value: entered(String(person.stamina.greatestRate), '1/min') },
];

/** Parts of the greatest uptake at which a stage is ridden, in steps of 25 W. */
const STAGES = [0.4, 0.55, 0.7];

const stages = (
  person: InventedPerson,
  flown: number,
  random: Random,
  machine: Machine | null = null,
): readonly Test[] =>
  STAGES.map((part) => {
    const uptake = trueUptake(person, flown);
    const watts = 25 * Math.round((part * uptake - 6) * (person.bodyMass / (11.2 * 25)));
    const cost = costOfWatts(person, watts);
    return {
      what: 'cycle stage',
      watts: entered(String(watts), 'W'),
      heartRate: entered(String(trueRate(person, partOfReserve(cost, uptake), 5, random)), '1/min'),
      uptake: machine ? null : entered((cost * (1 + 0.02 * normal(random))).toFixed(1), 'mL/(kg min)'),
      machine: machine?.id ?? null,
    };
  });

const SPEEDS = [7, 8.5, 10];

const runs = (person: InventedPerson, flown: number, random: Random): readonly Test[] =>
  SPEEDS.map((speed) => {
    const cost = costOfSpeed(person, 'running', speed, null);
    return {
      what: 'running stage',
      speed: entered(String(speed), 'km/h'),
      heartRate: entered(String(trueRate(person, partOfReserve(cost, trueUptake(person, flown)), 5, random)), '1/min'),
      uptake: entered((cost * (1 + 0.02 * normal(random))).toFixed(1), 'mL/(kg min)'),
    };
  });

const SIDES = ['left', 'right'] as const;

const grips = ({ grip }: InventedPerson, random: Random): readonly Test[] =>
  SIDES.map((side) => ({
    what: 'greatest grip',
    side,
    value: entered(String(Math.round(grip[side] * (1 + 0.03 * normal(random)))), 'N'),
  }));

/** What an all-out test says of lasting force lies over what lasts, and is never the same twice. */
const READS_HIGH = 1.12;

const lasting = ({ grip }: InventedPerson, random: Random): readonly Test[] =>
  SIDES.map((side) => ({
    what: 'critical force',
    side,
    value: entered(String(Math.round(grip[side] * grip.lasting * READS_HIGH * (1 + 0.06 * normal(random)))), 'N'),
  }));
