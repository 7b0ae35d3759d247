import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { COUNT_AND_CUES, NO_CAPACITY, NO_SHARE, TESTED_MAXIMUM } from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

/** Lower-body lifts are set in steps of 5 lb or 2.5 kg (common practice). */
const roundTo = { kg: '2.5', lb: '5' } as const;

export const frontSquat: Exercise = {
  id: idOf('front-squat'),
  name: 'Front squat',
  alsoKnownAs: ['FS', 'barbell front squat'],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'shoulders',
  loads: ['neck', 'shoulder', 'elbow', 'wrist', 'upper back', 'low back', 'hip', 'knee', 'ankle'],
  capacity: { kind: 'one-repetition maximum' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['Elbows high; bar on the shoulders, not in the hands.', 'Sit straight down between the heels.'],
  faults: ['Elbows drop and the bar rolls forward.', 'Heels lift; upper back rounds.'],
  cautions: [
    'For people who squat well already, not to learn on.',
    'Wrists that will not bend: cross the arms or leave it out.',
    'On the ground only: no share of ours for the machine.',
  ],
  settingFields: ['bar stop', 'stance', 'grip'],
  machineKinds: ['free bar'],
  substitutes: substitutesOf('front-squat'),
  source: `${TESTED_MAXIMUM} ${NO_SHARE} Its trunk stands steeper than in the back squat model, which moves the share by about 0.04: for that reason it is kept to the ground, where no share is needed. ${COUNT_AND_CUES}`,
};

export const boxSquat: Exercise = {
  id: idOf('box-squat'),
  name: 'Box squat',
  alsoKnownAs: ['squat to box', 'box squats'],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'shoulders',
  loads: ['neck', 'shoulder', 'upper back', 'low back', 'hip', 'knee', 'ankle'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 5,
  cues: ['Sit back to the box under control; stay tight on it.', 'Stand up without rocking.'],
  faults: ['Drops the last way onto the box.', 'Rocks forward to get up.', 'Knees fall inwards.'],
  cautions: [
    'Box high enough to reach without rounding the back.',
    'Begin without load; the bar waits for the squat gates.',
    'On the ground only: nothing sits you down up there.',
  ],
  settingFields: ['box height', 'stance', 'bar stop'],
  machineKinds: ['free bar', 'dumbbells', 'body weight'],
  substitutes: substitutesOf('box-squat'),
  source: `${NO_CAPACITY} ${NO_SHARE} A pause on the box breaks the movement that our model follows. ${COUNT_AND_CUES}`,
};

export const gobletSquat: Exercise = {
  id: idOf('goblet-squat'),
  name: 'Goblet squat',
  alsoKnownAs: ['goblet', 'goblet squats'],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: ['elbow', 'wrist', 'upper back', 'low back', 'hip', 'knee', 'ankle'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['Weight close to the breast bone, elbows down.', 'Elbows pass inside the knees at the bottom.'],
  faults: [
    'Weight drifts away from the chest.',
    'Heels lift; knees fall inwards.',
    'Low back tucks under at the bottom.',
  ],
  cautions: [
    'Learn it before any bar; go on only when depth is steady.',
    'Arms limit the load: a heavy squat is another exercise.',
  ],
  settingFields: ['stance', 'heel block'],
  machineKinds: ['dumbbells'],
  substitutes: substitutesOf('goblet-squat'),
  source: `${NO_CAPACITY} ${NO_SHARE} The load hangs in front of the chest and the trunk is steep. ${COUNT_AND_CUES}`,
};

export const bodyWeightSquat: Exercise = {
  id: idOf('body-weight-squat'),
  name: 'Body-weight squat',
  alsoKnownAs: ['air squat', 'air squats', 'bodyweight squat', 'unloaded squat'],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['low back', 'hip', 'knee', 'ankle'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 3,
  cues: ['Feet flat; knees follow the toes.', 'As deep as the back stays long.'],
  faults: [
    'Heels lift; knees fall inwards.',
    'Trunk folds over the thighs.',
    'One hip drops or the weight shifts to one side.',
  ],
  cautions: [
    'Where everybody who has never squatted begins.',
    'After landing with something firm to hold; stop when dizzy.',
  ],
  settingFields: ['stance', 'heel block'],
  machineKinds: ['body weight'],
  substitutes: substitutesOf('body-weight-squat'),
  source: `${NO_CAPACITY} ${NO_SHARE} Nothing is carried; in flight it has no load at all. ${COUNT_AND_CUES}`,
};

export const cordSquat: Exercise = {
  id: idOf('cord-squat'),
  name: 'Cord squat',
  alsoKnownAs: ['band squat', 'banded squat', 'elastic squat'],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'shoulders',
  loads: ['neck', 'shoulder', 'upper back', 'low back', 'hip', 'knee', 'ankle'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['Cords alike on both sides before the first set.', 'Slow down: the cord pulls hardest at the top.'],
  faults: ['Cords slip to one side.', 'Only the top half, where the cord is tight.'],
  cautions: [
    'Look over every cord for cracks before use; guard the eyes.',
    'A machine of its own: its loads say nothing of the bar.',
  ],
  settingFields: ['cord', 'cord length', 'shoulder pads'],
  machineKinds: ['band'],
  substitutes: substitutesOf('cord-squat'),
  source: `${NO_CAPACITY} ${NO_SHARE} The load grows along the way, so no constant share stands for it. ${COUNT_AND_CUES}`,
};

/** Timed: one repetition is one second of pushing against a stop or a strap. */
export const isometricSquatPush: Exercise = {
  id: idOf('isometric-squat-push'),
  name: 'Isometric squat push',
  alsoKnownAs: ['isometric squat', 'wall push squat'],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'shoulders',
  loads: ['neck', 'shoulder', 'upper back', 'low back', 'hip', 'knee', 'ankle'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 1,
  cues: ['Five seconds at each of three knee angles.', 'Build up over one second; let go as slowly.'],
  faults: ['Jerks into the stop.', 'Only one angle is trained.'],
  cautions: ['Tempts to strain: breathing as the physician set it.', 'Not where straining is forbidden.'],
  settingFields: ['bar stop'],
  machineKinds: ['resistive machine', 'free bar', 'hand gear'],
  substitutes: substitutesOf('isometric-squat-push'),
  source: `${NO_CAPACITY} ${NO_SHARE} Nothing moves, so no work is matched. ${COUNT_AND_CUES}`,
};
