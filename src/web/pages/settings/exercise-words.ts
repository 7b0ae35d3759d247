import {
  LOOSE_KINDS,
  MACHINE_KINDS,
  QUALITIES,
  type CapacitySource,
  type Exercise,
  type ShareModel,
} from '#domain/catalogue.ts';
import type { Labels } from './at-its-field.ts';

export const ALL_KINDS: readonly Exercise['machineKinds'][number][] = [...MACHINE_KINDS, ...LOOSE_KINDS];

/** Every share model in the words of the list; the compiler asks for a new one here. */
const SHARE_MODEL_WORDS: Readonly<Record<ShareModel, string>> = {
  none: 'no model: nothing is added back',
  'back squat, half': 'back squat, half',
  'back squat, parallel': 'back squat, parallel',
  'back squat, deep': 'back squat, deep',
  'single-leg squat': 'single-leg squat',
  'split squat': 'split squat',
  deadlift: 'deadlift',
  'Romanian deadlift': 'Romanian deadlift',
  'heel raise': 'heel raise',
  'single-leg heel raise': 'single-leg heel raise',
  'press or row': 'press or row: the arms alone',
  curl: 'curl: the forearms alone',
  'straight-arm raise': 'straight-arm raise',
};

export const SHARE_MODELS = Object.entries(SHARE_MODEL_WORDS).map(([value, label]) => ({ value, label }));

export const isShareModel = (text: string): text is ShareModel => Object.hasOwn(SHARE_MODEL_WORDS, text);

export const CARRIED_AT: readonly Exercise['carriedAt'][] = ['shoulders', 'hands', 'hips', 'none'];

const CAPACITY_WORDS: Readonly<Record<CapacitySource['kind'], string>> = {
  'one-repetition maximum': 'its own one-repetition maximum',
  'repetition maximum': 'its own maximum of so many repetitions',
  ratio: 'a ratio to a tested lift',
  none: 'none: it runs on effort',
};

export const CAPACITY_SOURCES = Object.entries(CAPACITY_WORDS).map(([value, label]) => ({ value, label }));

/** The fields of the form, as refusals call them. */
export const EXERCISE_LABELS: Labels = {
  'entry.exercise.name': 'Name',
  'entry.exercise.alsoKnownAs': 'Other spellings',
  'entry.exercise.machineKinds': 'Done on',
  'entry.exercise.loads': 'Loads',
  'entry.exercise.pattern': 'Pattern',
  'entry.exercise.capacity.kind': 'Capacity from',
  'entry.exercise.capacity.of': 'Repetitions',
  'entry.exercise.capacity.to': 'Ratio to',
  'entry.exercise.capacity.ratio': 'Ratio',
  'entry.exercise.roundTo.kg': 'Rounded to, kg',
  'entry.exercise.roundTo.lb': 'Rounded to, lb',
  'entry.exercise.secondsPerRepetition': 'One repetition',
  'entry.exercise.cues': 'Cues',
  'entry.exercise.faults': 'Faults to watch',
  'entry.exercise.cautions': 'Cautions',
  'entry.exercise.settingFields': 'Settings at the machine',
  'entry.exercise.source': 'Rests on',
  warnings: 'Warnings',
};

/** The fields of so many rows of substitutes. */
export const substituteLabels = (rows: number): Labels =>
  Object.fromEntries(
    Array.from({ length: rows }, (_, place) => `entry.exercise.substitutes.${place}`).flatMap((at) => [
      [`${at}.exercise`, 'Substitute'] as const,
      ...QUALITIES.map((quality) => [`${at}.covers.${quality}`, `Coverage of ${quality}`] as const),
    ]),
  );

/** The fields of an exercise as the history names them. */
export const EXERCISE_FIELD_WORDS: Readonly<Record<keyof Exercise, string>> = {
  id: 'identity',
  name: 'name',
  alsoKnownAs: 'other spellings',
  pattern: 'pattern',
  bodyPart: 'body part',
  perSide: 'sides',
  shareModel: 'share',
  carriedAt: 'carried at',
  loads: 'sites it loads',
  capacity: 'capacity',
  roundTo: 'rounding',
  secondsPerRepetition: 'seconds a repetition',
  cues: 'cues',
  faults: 'faults',
  cautions: 'cautions',
  settingFields: 'settings',
  machineKinds: 'what it is done on',
  substitutes: 'substitutes',
  source: 'source',
};
