import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { COUNT_AND_CUES, NO_CAPACITY, NO_SHARE } from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

/** Lower-body lifts are set in steps of 5 lb or 2.5 kg (common practice). */
const roundTo = { kg: '2.5', lb: '5' } as const;

export const reverseLunge: Exercise = {
  id: idOf('reverse-lunge'),
  name: 'Reverse lunge',
  alsoKnownAs: ['lunge', 'lunges', 'backward lunge', 'step-back lunge'],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: ['hand', 'wrist', 'low back', 'hip', 'knee', 'ankle'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['Step back long; front shin near upright.', 'Push through the whole front foot.'],
  faults: ['Front knee falls inwards.', 'Rear foot pushes; trunk tips sideways.'],
  cautions: ['After landing only when single-leg standing is steady.', 'Kneecap pain: shorter way or the split squat.'],
  settingFields: ['step length'],
  machineKinds: ['dumbbells', 'free bar', 'body weight'],
  substitutes: substitutesOf('reverse-lunge'),
  source: `${NO_CAPACITY} ${NO_SHARE} One foot moves, and our models hold the feet still. ${COUNT_AND_CUES}`,
};

export const stepUp: Exercise = {
  id: idOf('step-up'),
  name: 'Step-up',
  alsoKnownAs: ['step up', 'step-ups', 'box step-up'],
  pattern: 'squat',
  bodyPart: 'lower body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: ['hand', 'wrist', 'low back', 'hip', 'knee', 'ankle'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['Whole foot on the box; stand up on the top leg.', 'Come down slowly on the same leg.'],
  faults: ['Springs off the lower foot.', 'Knee falls inwards; hip drops to the free side.'],
  cautions: ['Box at most knee high; lower while balance is unsure.', 'After landing beside something firm to hold.'],
  settingFields: ['box height'],
  machineKinds: ['dumbbells', 'free bar', 'body weight'],
  substitutes: substitutesOf('step-up'),
  source: `${NO_CAPACITY} ${NO_SHARE} The body climbs with the load and only one foot stays. ${COUNT_AND_CUES}`,
};
