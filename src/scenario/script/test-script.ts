import type { Machine } from '#domain/catalogue.ts';
import type { Effort, Side } from '#domain/effort.ts';
import type { FactBody } from '#domain/fact.ts';
import type { ExerciseId } from '#domain/identity.ts';
import { type Day, addDays } from '#units/day.ts';
import { entered, numberOf } from '#units/entered.ts';
import { kilogramsPer } from '#units/mass.ts';
import { stepsNotOver } from '#units/rounding.ts';
import { barToFailure, trueMaximum } from '../bodily-truth.ts';
import { daysFlown } from '../days-flown.ts';
import type { InventedPerson } from '../invented-person.ts';
import { missionWith } from '../missions.ts';
import { momentOf } from '../moment.ts';
import { normal, randomStream, type Random } from '../random.ts';
import { SPECIALIST } from '../signers.ts';
import { dayEntered } from '../taken-up.ts';
import { type ScriptEntry, entry } from './script-entry.ts';
import { TEST_DAYS, type TestDay, type TestSet } from './test-days.ts';

/** Every test before flight and after landing, from what the body could do on its day. */
export const testScript = (today: Day, seed: number): readonly ScriptEntry[] =>
  TEST_DAYS.flatMap((testDay) => {
    const random = randomStream(seed, `tests ${testDay.person.id} ${testDay.day}`);
    const day = addDays(today, testDay.day);
    const at = momentOf(dayEntered(day, today), day === dayEntered(day, today) ? '16:30' : '09:00');
    return testDay.sets.map((set, place) =>
      entry(`test ${testDay.person.id} ${testDay.day} ${place}`, at, SPECIALIST.id, {
        ...setLifted(testDay, set, random),
        day,
      }),
    );
  });

type Lifted = Extract<FactBody, { readonly kind: 'lifted' }>;

const setLifted = (testDay: TestDay, set: TestSet, random: Random): Omit<Lifted, 'day'> => {
  const { person, machine } = testDay;
  const [exercise, repetitions, reserve, given, side] = set;
  const load = given ?? loadFor(testDay, exercise, repetitions + reserve, side ?? null, random);
  return {
    kind: 'lifted',
    person: person.id,
    exercise,
    machine: machine.id,
    load: entered(load, machine.unit),
    repetitions,
    effort: testDay.effortKnown ? effortOf(reserve) : null,
    side: side ?? null,
  };
};

/** To failure is written as RPE 10, anything before as repetitions in reserve. */
const effortOf = (reserve: number): Effort =>
  reserve === 0 ? { kind: 'RPE', value: 10 } : { kind: 'repetitions in reserve', value: reserve };

/** Day-to-day spread of what a body gives (log scale). */
const DAY_SPREAD = 0.02;

const loadFor = (
  { person, machine, day }: TestDay,
  exercise: ExerciseId,
  repetitions: number,
  side: Side | null,
  random: Random,
): string => {
  const maximum = trueMaximum(person, exercise, flownBy(person, day), side);
  if (maximum === null) throw new RangeError(`${person.name} has never done ${exercise}.`);
  const bar = barToFailure(maximum, repetitions) * Math.exp(DAY_SPREAD * normal(random));
  return onTheBar(machine, bar / kilogramsPer(machine.unit));
};

/** The nearest load below, as plates make it. */
const onTheBar = (machine: Machine, wanted: number): string => {
  const step = Math.max(numberOf({ text: machine.increment, unit: machine.unit }), machine.unit === 'lb' ? 5 : 1);
  const least = numberOf({ text: machine.least, unit: machine.unit });
  return String(Math.max(least, stepsNotOver(wanted, step) * step));
};

/** Days of flight that a body still shows on a day counted from today; negative before launch. */
export const flownBy = ({ mission }: InventedPerson, day: number): number => {
  const { launch, landing } = missionWith(mission);
  return daysFlown(day, launch, landing?.[1] ?? null);
};
