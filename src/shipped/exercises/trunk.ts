import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { COUNT_AND_CUES, NO_CAPACITY, NO_SHARE } from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

const roundTo = { kg: '1', lb: '2.5' } as const;

/** Timed: one repetition is one second of holding. */
export const trunkHold: Exercise = {
  id: idOf('trunk-hold'),
  name: 'Trunk hold',
  alsoKnownAs: ['plank', 'front plank', 'plank hold'],
  pattern: 'trunk',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['low back', 'shoulder', 'elbow'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 1,
  cues: ['Straight from head to heels; keep breathing.'],
  faults: ['Low back sags, or the hips rise into a roof.', 'Holds the breath.'],
  cautions: [
    'Breathing as the physician set it: a hold invites straining.',
    'Low back takes over: end the hold there.',
  ],
  settingFields: ['attachment'],
  machineKinds: ['resistive machine', 'body weight'],
  substitutes: substitutesOf('trunk-hold'),
  source: `${NO_CAPACITY} ${NO_SHARE} Without weight it needs a machine or a strap to hold against. ${COUNT_AND_CUES}`,
};

/** Timed: one repetition is one second of holding. */

/** Timed: one repetition is one second of holding. */
export const sideHold: Exercise = {
  id: idOf('side-hold'),
  name: 'Side hold',
  alsoKnownAs: ['side plank', 'side bridge', 'side plank hold'],
  pattern: 'trunk',
  bodyPart: 'upper body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['low back', 'hip', 'shoulder', 'elbow'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 1,
  cues: ['Straight from ear to ankle; hips forward.'],
  faults: ['Hips sink or turn back.', 'Shoulder sinks into the joint.'],
  cautions: ['Shoulder hurts: from the knees, or hold the other way.', 'Breathing as the physician set it.'],
  settingFields: [],
  machineKinds: ['body weight', 'hand gear'],
  substitutes: substitutesOf('side-hold'),
  source: `${NO_CAPACITY} ${NO_SHARE} Without weight it needs a strap to hold against. ${COUNT_AND_CUES}`,
};

export const deadBug: Exercise = {
  id: idOf('dead-bug'),
  name: 'Dead bug',
  alsoKnownAs: ['dead bugs', 'deadbug'],
  pattern: 'trunk',
  bodyPart: 'upper body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['low back', 'hip'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 4,
  cues: ['Low back stays down while arm and leg go out.', 'Breathe out as they go.'],
  faults: ['Low back lifts off the floor.', 'Rushes; holds the breath.'],
  cautions: ['Among the first trunk exercises after landing.', 'Back lifts: bend the knee more.'],
  settingFields: [],
  machineKinds: ['body weight'],
  substitutes: substitutesOf('dead-bug'),
  source: `${NO_CAPACITY} ${NO_SHARE} Arm and leg move against each other on the floor; in flight there is nothing to press down on. ${COUNT_AND_CUES}`,
};

export const pallofPress: Exercise = {
  id: idOf('pallof-press'),
  name: 'Pallof press',
  alsoKnownAs: ['anti-rotation press', 'paloff press'],
  pattern: 'trunk',
  bodyPart: 'upper body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: ['low back', 'hip', 'shoulder'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 4,
  cues: ['Press straight out; let nothing turn.', 'Hips and ribs face forward.'],
  faults: ['Trunk turns towards the load.', 'Shoulders shrug.'],
  cautions: ['No loaded turning in the first days after landing.'],
  settingFields: ['handle height', 'attachment'],
  machineKinds: ['cable column', 'band', 'resistive machine'],
  substitutes: substitutesOf('pallof-press'),
  source: `${NO_CAPACITY} ${NO_SHARE} The load pulls sideways, across gravity. ${COUNT_AND_CUES}`,
};

export const birdDog: Exercise = {
  id: idOf('bird-dog'),
  name: 'Bird dog',
  alsoKnownAs: ['bird dogs', 'birddog'],
  pattern: 'trunk',
  bodyPart: 'upper body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['low back', 'hip', 'shoulder', 'wrist', 'knee'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 4,
  cues: ['Reach long, not high; hips level.', 'Hold two seconds.'],
  faults: ['Low back sags.', 'Hip opens to the side.'],
  cautions: ['Among the first trunk exercises after landing.', 'Wrist pain: on the fists.'],
  settingFields: [],
  machineKinds: ['body weight'],
  substitutes: substitutesOf('bird-dog'),
  source: `${NO_CAPACITY} ${NO_SHARE} On hands and knees; in flight it has no load. ${COUNT_AND_CUES}`,
};
