import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { COUNT_AND_CUES, ENDURANCE_CAPACITY, NO_SHARE } from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

/** What a harness pulls is set in steps of 1 kg or 2 lb: a step of its ramp is 3 % of body weight (our own design). */
const roundTo = { kg: '1', lb: '2' } as const;

/** Bouts are timed: one repetition is one second. */
const TIMED = {
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 1,
} as const;

/** A harness hangs on shoulders and hips, and rubs. */
const UNDER_THE_HARNESS = ['shoulder', 'low back', 'hip', 'knee', 'ankle', 'foot', 'skin'] as const;

export const treadmillRun: Exercise = {
  ...TIMED,
  id: idOf('treadmill-run'),
  name: 'Treadmill run',
  alsoKnownAs: ['run', 'running', 'treadmill running', 'TM run', 'jog', 'jogging'],
  pattern: 'running',
  loads: UNDER_THE_HARNESS,
  cues: ['Short quick steps, feet under the hips.', 'Harness: raise load before speed.'],
  faults: ['Leans on the straps or holds the rail.', 'Heavy landing far in front of the hips.'],
  cautions: [
    'Rubbed skin, or discomfort of 4: the harness load stays.',
    'Numbness, pain that spreads, hard breathing in it: stop.',
    'After landing not before agility and standing are cleared.',
  ],
  settingFields: ['harness size', 'shoulder strap', 'hip strap', 'belt'],
  machineKinds: ['treadmill'],
  substitutes: substitutesOf('treadmill-run'),
  source: `${ENDURANCE_CAPACITY} ${NO_SHARE} Weightless, a harness brings part of the body's weight back (De Witt 2014, J Biomech, abstract seen). ${COUNT_AND_CUES}`,
};

export const treadmillWalk: Exercise = {
  ...TIMED,
  id: idOf('treadmill-walk'),
  name: 'Treadmill walk',
  alsoKnownAs: ['walk', 'walking', 'treadmill walking', 'TM walk', 'brisk walk'],
  pattern: 'walking',
  loads: UNDER_THE_HARNESS,
  cues: ['Tall, eyes ahead; heels first.', 'Swing the arms, hands off the rail.'],
  faults: ['Looks at the feet.', 'One foot lands louder than the other.'],
  cautions: [
    'After landing over ground first; somebody stands beside.',
    'Dizzy or sick: hold on, stop the belt, sit down.',
    'Skin rubbed by the harness: pad it, tell it.',
  ],
  settingFields: ['harness size', 'shoulder strap', 'hip strap', 'slope'],
  machineKinds: ['treadmill'],
  substitutes: substitutesOf('treadmill-walk'),
  source: `${ENDURANCE_CAPACITY} ${NO_SHARE} Weightless, a harness brings part of the body's weight back (De Witt 2014, J Biomech, abstract seen). ${COUNT_AND_CUES}`,
};

export const overgroundWalk: Exercise = {
  ...TIMED,
  id: idOf('overground-walk'),
  name: 'Overground walk',
  alsoKnownAs: ['corridor walk', 'supervised walk', 'walk over ground'],
  pattern: 'walking',
  loads: ['low back', 'hip', 'knee', 'ankle', 'foot'],
  cues: ['Somebody at arm length; level floor.', 'Turn slowly, eyes first, then the head.'],
  faults: ['Feet wide apart, eyes on the floor.', 'Turns on one foot.'],
  cautions: ['Faint, sick or seeing double: sit down at once.', 'Never stop suddenly: walk slower, then sit.'],
  settingFields: ['helper'],
  machineKinds: ['body weight'],
  substitutes: substitutesOf('overground-walk'),
  source: `${ENDURANCE_CAPACITY} ${NO_SHARE} Walking; it needs weight, so in flight there is none. ${COUNT_AND_CUES}`,
};

export const cycling: Exercise = {
  ...TIMED,
  id: idOf('cycling'),
  name: 'Cycling',
  alsoKnownAs: ['cycle', 'bike', 'cycle ergometer', 'stationary bike', 'spinning'],
  pattern: 'cycling',
  loads: ['low back', 'hip', 'knee'],
  cues: ['70 to 90 turns a minute; push and pull.', 'Shoulders loose, breathe out long.'],
  faults: ['Hips rock from side to side.', 'Turns slower and slower at the same watts.'],
  cautions: [
    'All-out only here, and only when the card says so.',
    'In flight with a fan: sweat and breath stay around the face.',
    'Do not stop at once: roll easy until the pulse is down.',
  ],
  settingFields: ['seat height', 'handlebar', 'shoes'],
  machineKinds: ['cycle'],
  substitutes: substitutesOf('cycling'),
  source: `${ENDURANCE_CAPACITY} ${NO_SHARE} The seat carries the body, or nothing does. ${COUNT_AND_CUES}`,
};

export const rowing: Exercise = {
  ...TIMED,
  id: idOf('rowing'),
  name: 'Rowing',
  alsoKnownAs: ['rower', 'rowing machine', 'indoor rowing', 'erg'],
  pattern: 'rowing',
  loads: ['hand', 'wrist', 'shoulder', 'upper back', 'low back', 'hip', 'knee'],
  cues: ['Legs, then back, then arms; back the other way.', '20 to 26 strokes a minute; handle level.'],
  faults: ['Back opens before the legs have pushed.', 'Round low back at the front end.'],
  cautions: ['Low back of 3 or more: the cycle instead.', 'Not hard the day after heavy deadlifts.'],
  settingFields: ['foot strap', 'damper'],
  machineKinds: ['rower'],
  substitutes: substitutesOf('rowing'),
  source: `${ENDURANCE_CAPACITY} ${NO_SHARE} A seat carries the body. ${COUNT_AND_CUES}`,
};
