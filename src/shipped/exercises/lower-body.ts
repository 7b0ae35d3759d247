import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import {
  COUNT_AND_CUES,
  NO_CAPACITY,
  SEGMENT_MODEL,
  TESTED_MAXIMUM,
  TWELVE_REPETITION_MAXIMUM,
  ratioFrom,
} from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

/** Main lower-body lifts are set in steps of 5 lb or 2.5 kg (common practice). */
const roundTo = { kg: '2.5', lb: '5' } as const;

const UNDER_THE_BAR = ['neck', 'shoulder', 'upper back', 'low back', 'hip', 'knee', 'ankle'] as const;
const FROM_THE_HANDS = ['wrist', 'hand', 'elbow', 'shoulder', 'upper back', 'low back', 'hip', 'knee'] as const;

export const backSquat: Exercise = {
  id: idOf('back-squat'),
  name: 'Back squat',
  alsoKnownAs: ['squat', 'squats', 'BS', 'barbell squat', 'barbell back squat', 'high-bar squat'],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'back squat, parallel',
  carriedAt: 'shoulders',
  loads: UNDER_THE_BAR,
  capacity: { kind: 'one-repetition maximum' },
  roundTo,
  secondsPerRepetition: 4,
  cues: ['Heels down; stand taller than at home.', 'Thighs level at the bottom; knees over toes.'],
  faults: [
    'Heels lift or weight runs to the toes.',
    'Knees fall inwards on the way up.',
    'Hips rise first and the bar turns it into a hinge.',
  ],
  cautions: [
    'Only after the squat gates; nobody new starts under a bar.',
    'After landing no bar on the back until it is cleared.',
    'Stop when the low back rounds at the bottom.',
  ],
  settingFields: ['bar stop', 'stance', 'shoulder pads'],
  machineKinds: ['resistive machine', 'free bar'],
  substitutes: substitutesOf('back-squat'),
  source: `${TESTED_MAXIMUM} ${SEGMENT_MODEL} ${COUNT_AND_CUES}`,
};

export const deadlift: Exercise = {
  id: idOf('deadlift'),
  name: 'Deadlift',
  alsoKnownAs: ['DL', 'dead lift', 'conventional deadlift', 'barbell deadlift'],
  pattern: 'hip hinge',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'deadlift',
  carriedAt: 'hands',
  loads: FROM_THE_HANDS,
  capacity: { kind: 'one-repetition maximum' },
  roundTo,
  secondsPerRepetition: 4,
  cues: ['Back long; bar close to the legs.', 'Let it down slowly: nothing falls here.'],
  faults: [
    'Back rounds as the load leaves its stop.',
    'Bar drifts away from the legs.',
    'Arms bend, or the head is thrown back.',
  ],
  cautions: ['Not in the first hour after getting up.', 'No heavy pulling 48 to 72 hours before a space walk.'],
  settingFields: ['bar stop', 'stance', 'straps'],
  machineKinds: ['resistive machine', 'free bar'],
  substitutes: substitutesOf('deadlift'),
  source: `${TESTED_MAXIMUM} ${SEGMENT_MODEL} ${COUNT_AND_CUES}`,
};

export const romanianDeadlift: Exercise = {
  id: idOf('romanian-deadlift'),
  name: 'Romanian deadlift',
  alsoKnownAs: ['RDL', 'Romanian dead lift'],
  pattern: 'hip hinge',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'Romanian deadlift',
  carriedAt: 'hands',
  loads: FROM_THE_HANDS,
  capacity: { kind: 'ratio', to: deadlift.id, ratio: 0.75 },
  roundTo,
  secondsPerRepetition: 4,
  cues: ['Knees soft and still; hips go back.', 'Stop where the back would round.'],
  faults: ['Knees bend more and more: it becomes a squat.', 'Back rounds to reach lower.'],
  cautions: ['Sore hamstrings follow the first sessions: begin light.', 'Not bent far and loaded soon after landing.'],
  settingFields: ['bar stop', 'stance', 'straps'],
  machineKinds: ['resistive machine', 'free bar', 'dumbbells'],
  substitutes: substitutesOf('romanian-deadlift'),
  source: `${ratioFrom('0.75 of the deadlift')} ${SEGMENT_MODEL} ${COUNT_AND_CUES}`,
};

export const heelRaise: Exercise = {
  id: idOf('heel-raise'),
  name: 'Heel raise',
  alsoKnownAs: ['heel raises', 'calf raise', 'calf raises', 'standing calf raise', 'standing heel raise'],
  pattern: 'heel raise',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'heel raise',
  carriedAt: 'shoulders',
  loads: ['neck', 'shoulder', 'upper back', 'low back', 'ankle', 'foot'],
  capacity: { kind: 'repetition maximum', of: 12 },
  roundTo,
  secondsPerRepetition: 3,
  cues: ['Full height; hold the top one second.', 'Knees straight; weight over the big toes.'],
  faults: ['Bounces at the bottom; half of the height only.', 'Weight runs to the outer edge of the foot.'],
  cautions: [
    'Load on the shoulders: stop for numb hands or neck pain.',
    'After landing begin without load, hands on something firm.',
  ],
  settingFields: ['bar stop', 'block', 'shoulder pads'],
  machineKinds: ['resistive machine', 'free bar'],
  substitutes: substitutesOf('heel-raise'),
  source: `${TWELVE_REPETITION_MAXIMUM} ${SEGMENT_MODEL} ${COUNT_AND_CUES}`,
};

export const singleLegHeelRaise: Exercise = {
  id: idOf('single-leg-heel-raise'),
  name: 'Single-leg heel raise',
  alsoKnownAs: ['single-leg calf raise', 'one-leg heel raise', 'one-leg calf raise'],
  pattern: 'heel raise',
  bodyPart: 'lower body',
  perSide: true,
  shareModel: 'single-leg heel raise',
  carriedAt: 'shoulders',
  loads: ['neck', 'shoulder', 'upper back', 'low back', 'ankle', 'foot'],
  capacity: { kind: 'repetition maximum', of: 12 },
  roundTo,
  secondsPerRepetition: 3,
  cues: ['Full height; hold the top one second.', 'Free foot off the plate.'],
  faults: ['Height falls off before the count is done.', 'Knee bends to help; hip hangs to one side.'],
  cautions: [
    'Count each side for itself; do not even out by cheating.',
    'After landing only with something firm to hold.',
  ],
  settingFields: ['bar stop', 'block', 'shoulder pads'],
  machineKinds: ['resistive machine', 'free bar', 'dumbbells', 'body weight'],
  substitutes: substitutesOf('single-leg-heel-raise'),
  source: `${TWELVE_REPETITION_MAXIMUM} ${SEGMENT_MODEL} ${COUNT_AND_CUES}`,
};

export const singleLegSquat: Exercise = {
  id: idOf('single-leg-squat'),
  name: 'Single-leg squat',
  alsoKnownAs: ['SLS', 'single leg squat', 'one-leg squat', '1-leg squat'],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: true,
  shareModel: 'single-leg squat',
  carriedAt: 'shoulders',
  loads: UNDER_THE_BAR,
  capacity: { kind: 'ratio', to: backSquat.id, ratio: 0.37 },
  roundTo,
  secondsPerRepetition: 4,
  cues: ['Whole foot on the plate; hips level.', 'Both sides alike; the weaker side starts.'],
  faults: ['Knee falls inwards over the big toe.', 'Pelvis tips or turns to the free side.'],
  cautions: [
    'Knee pain under the cap: less depth, tell the specialist.',
    'After landing not before two-legged squats are steady.',
  ],
  settingFields: ['bar stop', 'foot mark', 'shoulder pads'],
  machineKinds: ['resistive machine', 'free bar', 'dumbbells', 'body weight'],
  substitutes: substitutesOf('single-leg-squat'),
  source: `${ratioFrom('0.37 of the back squat on each leg')} ${SEGMENT_MODEL} ${COUNT_AND_CUES}`,
};

export const splitSquat: Exercise = {
  id: idOf('split-squat'),
  name: 'Split squat',
  alsoKnownAs: ['static lunge', 'stationary lunge'],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: true,
  shareModel: 'split squat',
  carriedAt: 'shoulders',
  loads: UNDER_THE_BAR,
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 4,
  cues: ['Load on the front foot; trunk upright.', 'Rear knee down, not forward.'],
  faults: ['Front heel lifts; front knee falls inwards.', 'Pushes off the rear foot.'],
  cautions: [
    'Rear toes and groin feel the stretch: shorten the stance.',
    'After landing hold on to something until it is steady.',
  ],
  settingFields: ['bar stop', 'foot marks', 'shoulder pads'],
  machineKinds: ['resistive machine', 'free bar', 'dumbbells', 'body weight'],
  substitutes: substitutesOf('split-squat'),
  source: `${NO_CAPACITY} ${SEGMENT_MODEL} ${COUNT_AND_CUES}`,
};
