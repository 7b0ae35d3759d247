import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { ARM_MODEL, COUNT_AND_CUES, NO_CAPACITY, NO_SHARE } from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

/** Upper-body lifts are set in steps of 2.5 lb or 1 kg (common practice). */
const roundTo = { kg: '1', lb: '2.5' } as const;

export const pushUp: Exercise = {
  id: idOf('push-up'),
  name: 'Push-up',
  alsoKnownAs: ['push up', 'push-ups', 'press-up', 'press-ups'],
  pattern: 'horizontal press',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: ['shoulder', 'elbow', 'wrist', 'chest', 'low back'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 3,
  cues: ['Straight from head to heels.', 'Elbows half way to the ribs.'],
  faults: ['Hips sag or lead.', 'Shoulder blades wing.'],
  cautions: ['Wrist pain: on the fists or on handles.', 'After a space walk look at hands and wrists first.'],
  settingFields: ['handles'],
  machineKinds: ['body weight', 'band'],
  substitutes: substitutesOf('push-up'),
  source: `${NO_CAPACITY} ${NO_SHARE} The body turns about the toes; in flight only a cord gives it load. ${COUNT_AND_CUES}`,
};

export const chinUp: Exercise = {
  id: idOf('chin-up'),
  name: 'Chin-up',
  alsoKnownAs: ['chin up', 'chin-ups', 'pull-up', 'pull-ups', 'pull up', 'pullup'],
  pattern: 'vertical pull',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: ['shoulder', 'elbow', 'wrist', 'hand', 'upper back'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['From long arms; chest to the bar.', 'Shoulders down before the arms bend.'],
  faults: ['Kips with the legs.', 'Half of the way; neck reaches for the bar.'],
  cautions: ['Elbow or front of shoulder hurts: pull-down instead.', 'Not heavy 48 to 72 hours before a space walk.'],
  settingFields: ['grip width', 'assist band'],
  machineKinds: ['hanging bar'],
  substitutes: substitutesOf('chin-up'),
  source: `${NO_CAPACITY} ${NO_SHARE} The body itself is the load; in flight there is none. ${COUNT_AND_CUES}`,
};

export const cordRow: Exercise = {
  id: idOf('cord-row'),
  name: 'Cord row',
  alsoKnownAs: ['band row', 'elastic row'],
  pattern: 'horizontal pull',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: ['shoulder', 'elbow', 'wrist', 'hand', 'upper back'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 3,
  cues: ['Sit or stand tall; pull to the lowest ribs.', 'Let it back slowly: it snaps if let go.'],
  faults: ['Leans back to finish.', 'Shoulders shrug.'],
  cautions: [
    'Look over every cord for cracks before use; guard the eyes.',
    'A machine of its own: its loads say nothing of the row.',
  ],
  settingFields: ['cord', 'cord length'],
  machineKinds: ['band'],
  substitutes: substitutesOf('cord-row'),
  source: `${NO_CAPACITY} ${NO_SHARE} The load grows along the way and runs across gravity. ${COUNT_AND_CUES}`,
};

export const oneArmRow: Exercise = {
  id: idOf('one-arm-row'),
  name: 'One-arm row',
  alsoKnownAs: ['single-arm row', 'one arm row', '1-arm row'],
  pattern: 'horizontal pull',
  bodyPart: 'upper body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: ['shoulder', 'elbow', 'wrist', 'hand', 'upper back', 'low back'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 3,
  cues: ['Free hand on the bench; back flat.', 'Elbow past the ribs.'],
  faults: ['Trunk turns to throw the weight.', 'Shoulder rolls forward at the bottom.'],
  cautions: ['Not heavy 48 to 72 hours before a space walk.'],
  settingFields: ['bench', 'handle'],
  machineKinds: ['dumbbells', 'cable column', 'resistive machine'],
  substitutes: substitutesOf('one-arm-row'),
  source: `${NO_CAPACITY} ${NO_SHARE} One arm moves; the arm model is of both. What one arm weighs is little and is not replaced. ${COUNT_AND_CUES}`,
};

export const inclinePress: Exercise = {
  id: idOf('incline-press'),
  name: 'Incline press',
  alsoKnownAs: ['incline bench', 'incline bench press'],
  pattern: 'horizontal press',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'press or row',
  carriedAt: 'hands',
  loads: ['shoulder', 'elbow', 'wrist', 'chest'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 3,
  cues: ['Bench at 30 to 45 degrees; forearms upright.', 'Lower to the upper chest.'],
  faults: ['Hips leave the seat.', 'Elbows flare.'],
  cautions: [
    'Under a free bar only with somebody there or with stops.',
    'Steeper hurts the shoulder: lower the bench.',
  ],
  settingFields: ['bench angle', 'bar stop', 'grip width'],
  machineKinds: ['free bar', 'dumbbells', 'resistive machine'],
  substitutes: substitutesOf('incline-press'),
  source: `${NO_CAPACITY} ${ARM_MODEL} Forearms upright, as the model asks. ${COUNT_AND_CUES}`,
};
