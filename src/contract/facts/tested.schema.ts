import { HAND_UNITS, TESTS, type Test } from '#domain/tested.ts';
import type { MachineId, PersonId } from '#domain/identity.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { side } from './effort.schema.ts';
import { choice, variantOf } from './lists.schema.ts';
import { calendarDay, decimalNotNegative, decimalPositive } from './numbers.schema.ts';
import type { BodyOf } from './people.schema.ts';
import { identity } from './texts.schema.ts';

const entered = <const Unit extends string>(...units: readonly [Unit, ...Unit[]]) =>
  record({ text: decimalPositive, unit: choice(units) });

const uptake = entered('mL/(kg min)');
const heartRate = entered('1/min');
const onHand = { side, value: entered(...HAND_UNITS) };

const test = z.discriminatedUnion(
  'what',
  [
    record({ what: z.literal('greatest oxygen uptake'), value: uptake, how: choice(['measured', 'estimated']) }),
    record({ what: z.literal('greatest heart rate'), value: heartRate }),
    record({ what: z.literal('resting heart rate'), value: heartRate }),
    record({
      what: z.literal('cycle stage'),
      watts: entered('W'),
      heartRate: heartRate.nullable(),
      uptake: uptake.nullable(),
      machine: identity<MachineId>().nullable(),
    }),
    record({
      what: z.literal('running stage'),
      speed: entered('km/h'),
      heartRate: heartRate.nullable(),
      uptake: uptake.nullable(),
    }),
    record({ what: z.literal('greatest grip'), ...onHand }),
    record({ what: z.literal('critical force'), ...onHand }),
    record({ what: z.literal('jump height'), value: entered('cm', 'in') }),
    record({
      what: z.literal('heel raises'),
      side,
      value: record({ text: decimalNotNegative, unit: choice(['repetitions']) }),
    }),
  ],
  { error: variantOf(TESTS) },
) satisfies z.ZodType<Test>;

export const tested = record({
  kind: z.literal('tested'),
  person: identity<PersonId>(),
  day: calendarDay,
  test,
}) satisfies z.ZodType<BodyOf<'tested'>>;
