import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { ARM_MODEL, COUNT_AND_CUES, NO_CAPACITY, NO_SHARE, TESTED_MAXIMUM, ratioFrom } from './sources.ts';

/** Upper-body lifts are set in steps of 2.5 lb or 1 kg, or the machine's least above it (common practice). */
const roundTo = { kg: '1', lb: '2.5' } as const;

const PRESSING = ['shoulder', 'elbow', 'wrist', 'chest'] as const;
const PULLING = ['shoulder', 'elbow', 'wrist', 'hand', 'upper back'] as const;

export const benchPress: Exercise = {
  id: idOf('bench-press'),
  name: 'Bench press',
  alsoKnownAs: ['bench', 'flat bench', 'flat bench press', 'barbell bench press'],
  pattern: 'horizontal press',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'press or row',
  carriedAt: 'hands',
  loads: PRESSING,
  capacity: { kind: 'one-repetition maximum' },
  roundTo,
  secondsPerRepetition: 3,
  cues: ['Strap the hips down before the first set.', 'Shoulder blades back; forearms in line.'],
  settingFields: ['bar stop', 'bench', 'grip width'],
  source: `${TESTED_MAXIMUM} ${ARM_MODEL} ${COUNT_AND_CUES}`,
};

export const shoulderPress: Exercise = {
  id: idOf('shoulder-press'),
  name: 'Shoulder press',
  alsoKnownAs: ['OHP', 'overhead press', 'military press', 'strict press', 'standing press'],
  pattern: 'vertical press',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'press or row',
  carriedAt: 'hands',
  loads: [...PRESSING, 'neck', 'low back'],
  capacity: { kind: 'ratio', to: benchPress.id, ratio: 0.65 },
  roundTo,
  secondsPerRepetition: 3,
  cues: ['Ribs down; do not lean back.', 'Finish over the middle of the feet.'],
  settingFields: ['bar stop', 'seat', 'grip width'],
  source: `${ratioFrom('0.65 of the bench press')} ${ARM_MODEL} ${COUNT_AND_CUES}`,
};

export const bentOverRow: Exercise = {
  id: idOf('bent-over-row'),
  name: 'Bent-over row',
  alsoKnownAs: ['BOR', 'bent over row', 'barbell row', 'bent-over barbell row'],
  pattern: 'horizontal pull',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'press or row',
  carriedAt: 'hands',
  loads: [...PULLING, 'low back'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 3,
  cues: ['Back flat; elbows past the ribs.', 'Brace: nothing pulls you down here.'],
  settingFields: ['bar stop', 'attachment', 'stance'],
  source: `${NO_CAPACITY} ${ARM_MODEL} ${COUNT_AND_CUES}`,
};

export const seatedRow: Exercise = {
  id: idOf('seated-row'),
  name: 'Seated row',
  alsoKnownAs: ['cable row', 'seated cable row'],
  pattern: 'horizontal pull',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: PULLING,
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 3,
  cues: ['Sit tall; pull to the lowest ribs.'],
  settingFields: ['seat', 'attachment'],
  source: `${NO_CAPACITY} ${NO_SHARE} The arms travel level, across gravity. ${COUNT_AND_CUES}`,
};

export const pullDown: Exercise = {
  id: idOf('pull-down'),
  name: 'Pull-down',
  alsoKnownAs: ['lat pull-down', 'lat pulldown', 'pulldown', 'pull down', 'cable pull-down'],
  pattern: 'vertical pull',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: PULLING,
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 3,
  cues: ['Belt on; pull to the collar bones.', 'Let the arms go all the way up.'],
  settingFields: ['seat', 'attachment', 'grip width'],
  source: `${NO_CAPACITY} ${NO_SHARE} On the ground the weight of the arms helps this pull, so nothing is added. ${COUNT_AND_CUES}`,
};

export const bicepsCurl: Exercise = {
  id: idOf('biceps-curl'),
  name: 'Biceps curl',
  alsoKnownAs: ['curl', 'curls', 'bicep curl', 'barbell curl', 'arm curl'],
  pattern: 'arm',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'curl',
  carriedAt: 'hands',
  loads: ['elbow', 'wrist', 'hand'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 3,
  cues: ['Elbows at the ribs and still.'],
  settingFields: ['bar stop', 'attachment'],
  source: `${NO_CAPACITY} ${ARM_MODEL} ${COUNT_AND_CUES}`,
};

export const tricepsExtension: Exercise = {
  id: idOf('triceps-extension'),
  name: 'Triceps extension',
  alsoKnownAs: ['tricep extension', 'lying triceps extension', 'overhead triceps extension', 'elbow extension'],
  pattern: 'arm',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'curl',
  carriedAt: 'hands',
  loads: ['elbow', 'wrist', 'hand', 'shoulder'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 3,
  cues: ['Upper arms still; forearms do the work.'],
  settingFields: ['bar stop', 'attachment'],
  source: `${NO_CAPACITY} ${ARM_MODEL} Lying or overhead, where the forearms are lifted; not pressed down. ${COUNT_AND_CUES}`,
};

export const lateralRaise: Exercise = {
  id: idOf('lateral-raise'),
  name: 'Lateral raise',
  alsoKnownAs: ['side raise', 'lateral raises', 'side lateral raise'],
  pattern: 'arm',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'straight-arm raise',
  carriedAt: 'hands',
  loads: ['shoulder', 'elbow', 'wrist', 'hand'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 3,
  cues: ['Arms long; no higher than the shoulders.'],
  settingFields: ['attachment'],
  source: `${NO_CAPACITY} ${ARM_MODEL} ${COUNT_AND_CUES}`,
};

export const frontRaise: Exercise = {
  id: idOf('front-raise'),
  name: 'Front raise',
  alsoKnownAs: ['front raises', 'straight-arm front raise'],
  pattern: 'arm',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'straight-arm raise',
  carriedAt: 'hands',
  loads: ['shoulder', 'elbow', 'wrist', 'hand', 'low back'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 3,
  cues: ['Arms long; trunk still.'],
  settingFields: ['attachment'],
  source: `${NO_CAPACITY} ${ARM_MODEL} ${COUNT_AND_CUES}`,
};
