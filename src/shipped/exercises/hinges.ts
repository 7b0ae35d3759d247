import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { COUNT_AND_CUES, NO_CAPACITY, NO_SHARE, TESTED_MAXIMUM } from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

/** Lower-body lifts are set in steps of 5 lb or 2.5 kg (common practice). */
const roundTo = { kg: '2.5', lb: '5' } as const;

const FROM_THE_HANDS = ['wrist', 'hand', 'elbow', 'shoulder', 'upper back', 'low back', 'hip', 'knee'] as const;

export const wideStanceDeadlift: Exercise = {
  id: idOf('wide-stance-deadlift'),
  name: 'Wide-stance deadlift',
  alsoKnownAs: ['sumo deadlift', 'sumo'],
  pattern: 'hip hinge',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: FROM_THE_HANDS,
  capacity: { kind: 'one-repetition maximum' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['Knees out over the toes; hands inside the knees.', 'Chest up first, then push the floor away.'],
  faults: ['Knees fall inwards.', 'Hips shoot up before the load moves.'],
  cautions: [
    'Groin or hip pinch: narrower, or the common deadlift.',
    'No heavy pulling 48 to 72 hours before a space walk.',
  ],
  settingFields: ['stance', 'straps'],
  machineKinds: ['free bar'],
  substitutes: substitutesOf('wide-stance-deadlift'),
  source: `${TESTED_MAXIMUM} ${NO_SHARE} Its trunk is steeper than in the deadlift model; kept to the ground. ${COUNT_AND_CUES}`,
};

export const raisedDeadlift: Exercise = {
  id: idOf('raised-deadlift'),
  name: 'Raised deadlift',
  alsoKnownAs: ['block pull', 'rack pull', 'deadlift from blocks'],
  pattern: 'hip hinge',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: FROM_THE_HANDS,
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['Start from where the back can stay long.', 'Same bar path as from the floor.'],
  faults: ['Too heavy because the way is short.', 'Back rounds at the start.'],
  cautions: ['To learn the hinge, or where depth is limited.', 'No heavy pulling 48 to 72 hours before a space walk.'],
  settingFields: ['block height', 'straps'],
  machineKinds: ['free bar', 'dumbbells'],
  substitutes: substitutesOf('raised-deadlift'),
  source: `${NO_CAPACITY} ${NO_SHARE} It begins higher than the deadlift model. ${COUNT_AND_CUES}`,
};

export const singleLegRomanianDeadlift: Exercise = {
  id: idOf('single-leg-romanian-deadlift'),
  name: 'Single-leg Romanian deadlift',
  alsoKnownAs: ['single-leg RDL', 'one-leg RDL', 'SL RDL'],
  pattern: 'hip hinge',
  bodyPart: 'lower body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: [...FROM_THE_HANDS, 'ankle'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['Hips level; free leg long behind.', 'Standing knee soft and still.'],
  faults: ['Hip opens to the side.', 'Back rounds to reach the floor.'],
  cautions: [
    'Balance limits the load: hold on with one hand to load more.',
    'After landing not before single-leg standing is steady.',
  ],
  settingFields: ['stance'],
  machineKinds: ['dumbbells', 'free bar', 'body weight'],
  substitutes: substitutesOf('single-leg-romanian-deadlift'),
  source: `${NO_CAPACITY} ${NO_SHARE} The free leg swings up as a counterweight, which our model leaves out. ${COUNT_AND_CUES}`,
};

export const hipThrust: Exercise = {
  id: idOf('hip-thrust'),
  name: 'Hip thrust',
  alsoKnownAs: ['barbell hip thrust', 'hip thrusts'],
  pattern: 'hip hinge',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'hips',
  loads: ['upper back', 'low back', 'hip', 'knee', 'skin'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 3,
  cues: ['Chin down, ribs down; finish with the hips.', 'Shins upright at the top.'],
  faults: ['Arches the low back instead of lifting the hips.', 'Feet too far: hamstrings cramp.'],
  cautions: ['Pad under the bar; skin and hip bones get sore.', 'Strap in before the first set where nothing weighs.'],
  settingFields: ['bench', 'bar pad', 'bar stop'],
  machineKinds: ['free bar', 'resistive machine'],
  substitutes: substitutesOf('hip-thrust'),
  source: `${NO_CAPACITY} ${NO_SHARE} The trunk turns about the bench, which none of our models follows; on the machine the load is found by effort. ${COUNT_AND_CUES}`,
};

export const gluteBridge: Exercise = {
  id: idOf('glute-bridge'),
  name: 'Glute bridge',
  alsoKnownAs: ['bridge', 'floor bridge', 'hip bridge'],
  pattern: 'hip hinge',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['low back', 'hip', 'knee'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 3,
  cues: ['Ribs down; squeeze before lifting.', 'Hold the top one second.'],
  faults: ['Low back arches.', 'Knees drift apart.'],
  cautions: ['Among the first exercises after landing: lying, no bar.', 'Cramp behind the thigh: heels nearer.'],
  settingFields: [],
  machineKinds: ['body weight', 'band'],
  substitutes: substitutesOf('glute-bridge'),
  source: `${NO_CAPACITY} ${NO_SHARE} Lying on the floor, with the body as the load. ${COUNT_AND_CUES}`,
};

export const hipHingeDrill: Exercise = {
  id: idOf('hip-hinge-drill'),
  name: 'Hip hinge drill',
  alsoKnownAs: ['hinge drill', 'dowel hinge', 'hinge with a stick'],
  pattern: 'hip hinge',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['low back', 'hip', 'knee'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 4,
  cues: ['Stick on head, back and seat: three points touch.', 'Hips go back until the back would round.'],
  faults: ['The stick leaves the low back.', 'Knees go forward: it becomes a squat.'],
  cautions: ['To learn the hinge before any load.', 'Not far bent in the first hour after getting up.'],
  settingFields: ['stick'],
  machineKinds: ['no gear'],
  substitutes: substitutesOf('hip-hinge-drill'),
  source: `${NO_CAPACITY} ${NO_SHARE} Nothing is carried. ${COUNT_AND_CUES}`,
};
