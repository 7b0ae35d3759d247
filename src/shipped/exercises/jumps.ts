import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { COUNT_AND_CUES, NO_CAPACITY, NO_SHARE } from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

/** Lower-body lifts are set in steps of 5 lb or 2.5 kg (common practice). */
const roundTo = { kg: '2.5', lb: '5' } as const;

export const squatJump: Exercise = {
  id: idOf('squat-jump'),
  name: 'Squat jump',
  alsoKnownAs: ['SJ', 'static jump', 'jump squat', 'squat jumps'],
  pattern: 'jump',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['low back', 'hip', 'knee', 'ankle', 'foot'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['Two seconds still at the bottom; no dip.', 'Land softly, toes then heels.'],
  faults: ['Dips before the jump.', 'Lands stiff; knees fall inwards.'],
  cautions: [
    'After landing no jumps before bone and physician clear them.',
    'Only with a still, warm body; stop when height falls.',
  ],
  settingFields: ['harness load'],
  machineKinds: ['body weight', 'treadmill'],
  substitutes: substitutesOf('squat-jump'),
  source: `${NO_CAPACITY} ${NO_SHARE} Its power has a model of its own; in flight only a harness brings the body back. ${COUNT_AND_CUES}`,
};

export const countermovementJump: Exercise = {
  id: idOf('countermovement-jump'),
  name: 'Countermovement jump',
  alsoKnownAs: ['CMJ', 'counter-movement jump', 'vertical jump'],
  pattern: 'jump',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['low back', 'hip', 'knee', 'ankle', 'foot'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['Hands on the hips; dip and go at once.', 'Land where you left.'],
  faults: ['Knees tuck in the air.', 'Lands stiff; knees fall inwards.'],
  cautions: [
    'After landing no jumps before bone and physician clear them.',
    'Few and full: five good ones, long rest.',
  ],
  settingFields: ['harness load'],
  machineKinds: ['body weight', 'treadmill'],
  substitutes: substitutesOf('countermovement-jump'),
  source: `${NO_CAPACITY} ${NO_SHARE} Its power has a model of its own; in flight only a harness brings the body back. ${COUNT_AND_CUES}`,
};

export const ankleHops: Exercise = {
  id: idOf('ankle-hops'),
  name: 'Ankle hops',
  alsoKnownAs: ['pogo hops', 'pogos', 'pogo jumps'],
  pattern: 'jump',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['knee', 'ankle', 'foot', 'low back'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 1,
  cues: ['Knees nearly straight; quick and light.'],
  faults: ['Knees bend; heels slam.', 'Drifts forward.'],
  cautions: ['After landing no jumps before bone and physician clear them.', 'Heel cord or shin pain: stop, tell it.'],
  settingFields: ['harness load'],
  machineKinds: ['body weight', 'treadmill'],
  substitutes: substitutesOf('ankle-hops'),
  source: `${NO_CAPACITY} ${NO_SHARE} Springs of the ankle; in flight only a harness brings the body back. ${COUNT_AND_CUES}`,
};

export const dropLanding: Exercise = {
  id: idOf('drop-landing'),
  name: 'Drop landing',
  alsoKnownAs: ['drop and stick', 'depth landing', 'land and hold'],
  pattern: 'jump',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['low back', 'hip', 'knee', 'ankle', 'foot'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 5,
  cues: ['Step off, do not jump; land and stand still.', 'Knees over toes; quiet feet.'],
  faults: ['Knees fall inwards.', 'Loud landing on the heels.'],
  cautions: ['After landing no jumps before bone and physician clear them.', 'Box at most 30 cm to begin with.'],
  settingFields: ['box height'],
  machineKinds: ['body weight'],
  substitutes: substitutesOf('drop-landing'),
  source: `${NO_CAPACITY} ${NO_SHARE} It is a fall: there is none without weight. ${COUNT_AND_CUES}`,
};

export const heelDrops: Exercise = {
  id: idOf('heel-drops'),
  name: 'Heel drops',
  alsoKnownAs: ['heel drop', 'heel strikes'],
  pattern: 'jump',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['low back', 'hip', 'knee', 'ankle', 'foot'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 2,
  cues: ['Rise on the toes, drop to the heels.', 'Knees straight but not locked.'],
  faults: ['Eases the heels down: no impact.', 'Leans forward.'],
  cautions: ['After landing no jumps before bone and physician clear them.', 'Heel or back pain of 3 or more: stop.'],
  settingFields: ['harness load'],
  machineKinds: ['body weight', 'treadmill'],
  substitutes: substitutesOf('heel-drops'),
  source: `${NO_CAPACITY} ${NO_SHARE} A small fall; in flight only a harness brings the heels down. ${COUNT_AND_CUES}`,
};
