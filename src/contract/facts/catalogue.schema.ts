import {
  BODY_SITES,
  LOOSE_KINDS,
  MACHINE_KINDS,
  PATTERNS,
  QUALITIES,
  type CapacitySource,
  type Exercise,
  type ExerciseSubstitute,
  type Machine,
  type Setting,
  type Site,
} from '#domain/catalogue.ts';
import type { ExerciseId, MachineId, SiteId } from '#domain/identity.ts';
import { z } from 'zod';
import { record } from './record.schema.ts';
import { side } from './effort.schema.ts';
import { choice, listUpTo, variantOf } from './lists.schema.ts';
import { calendarDay, decimalNotNegative, decimalPositive, massUnit, numberFrom, wholeFrom } from './numbers.schema.ts';
import { identity, name, sentence, sentenceOrNone, textUpTo } from './texts.schema.ts';

export const bodySite = choice(BODY_SITES);

export const pattern = choice(PATTERNS);

const shareModel = choice([
  'back squat, half',
  'back squat, parallel',
  'back squat, deep',
  'single-leg squat',
  'split squat',
  'deadlift',
  'Romanian deadlift',
  'heel raise',
  'single-leg heel raise',
  'press or row',
  'curl',
  'straight-arm raise',
  'none',
]);

const capacitySource = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('one-repetition maximum') }),
    record({ kind: z.literal('repetition maximum'), of: wholeFrom(2, 100) }),
    record({ kind: z.literal('ratio'), to: identity<ExerciseId>(), ratio: numberFrom(0.01, 10) }),
    record({ kind: z.literal('none') }),
  ],
  { error: variantOf(['one-repetition maximum', 'repetition maximum', 'ratio', 'none']) },
) satisfies z.ZodType<CapacitySource>;

export const setting = record({
  field: name,
  value: textUpTo(200),
  side: side.nullable(),
}) satisfies z.ZodType<Setting>;

const covers = numberFrom(0, 1);

const substitute = record({
  exercise: identity<ExerciseId>(),
  covers: z.partialRecord(choice(QUALITIES), covers, { error: 'a record of qualities, each from 0 to 1' }),
}) satisfies z.ZodType<ExerciseSubstitute>;

/** Exercises of the first program say nothing of faults, cautions, machine kinds and substitutes. */
export const exercise = record({
  id: identity<ExerciseId>(),
  name,
  alsoKnownAs: listUpTo(100, name),
  pattern,
  bodyPart: choice(['lower body', 'upper body']),
  perSide: z.boolean({ error: 'true or false' }),
  shareModel,
  carriedAt: choice(['shoulders', 'hands', 'hips', 'none']),
  loads: listUpTo(BODY_SITES.length, bodySite),
  capacity: capacitySource,
  roundTo: record({ kg: decimalPositive, lb: decimalPositive }),
  secondsPerRepetition: numberFrom(0.1, 120),
  cues: listUpTo(20, sentence),
  faults: listUpTo(20, sentence).default([]),
  cautions: listUpTo(20, sentence).default([]),
  settingFields: listUpTo(20, name),
  machineKinds: listUpTo(20, choice([...MACHINE_KINDS, ...LOOSE_KINDS])).default([]),
  substitutes: listUpTo(20, substitute).default([]),
  source: sentenceOrNone,
}) satisfies z.ZodType<Exercise>;

export const site = record({
  id: identity<SiteId>(),
  name,
  place: choice(['ground', 'aboard']),
}) satisfies z.ZodType<Site>;

const minutes = numberFrom(0, 240);

export const machine = record({
  id: identity<MachineId>(),
  name,
  site: identity<SiteId>(),
  kind: choice(MACHINE_KINDS),
  gravity: choice(['0 g', '1 g']),
  groundUnitOf: identity<MachineId>().nullable(),
  unit: massUnit,
  increment: decimalPositive,
  least: decimalNotNegative,
  ceiling: decimalPositive,
  /** Machines of the first program do not say them. */
  mostWatts: numberFrom(1, 3000).nullable().default(null),
  mostSpeed: numberFrom(1, 60).nullable().default(null),
  limits: listUpTo(
    500,
    record({ exercise: identity<ExerciseId>(), attachment: name.nullable(), most: decimalNotNegative }),
  ),
  minutes: record({ setUp: minutes, stow: minutes, changeExercise: minutes, changeLoad: minutes }),
  outOfService: record({ from: calendarDay, until: calendarDay.nullable(), reason: sentenceOrNone }).nullable(),
}) satisfies z.ZodType<Machine>;
