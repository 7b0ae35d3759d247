import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { COUNT_AND_CUES, NO_SHARE, NOTHING_TO_LOAD } from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

/** Nothing is set; the field is there for whoever puts a load on it all the same. */
const WITHOUT_GEAR = {
  pattern: 'mobility',
  shareModel: 'none',
  carriedAt: 'none',
  capacity: { kind: 'none' },
  machineKinds: ['no gear'],
} as const;
const LOWER = { ...WITHOUT_GEAR, bodyPart: 'lower body', roundTo: { kg: '2.5', lb: '5' } } as const;
const UPPER = { ...WITHOUT_GEAR, bodyPart: 'upper body', roundTo: { kg: '1', lb: '2.5' } } as const;

const sourceOf = (what: string): string => `${NOTHING_TO_LOAD} ${NO_SHARE} ${what} ${COUNT_AND_CUES}`;

export const ankleRock: Exercise = {
  ...LOWER,
  id: idOf('ankle-rock'),
  name: 'Ankle rock',
  alsoKnownAs: ['knee to wall', 'ankle mobility', 'dorsiflexion drill'],
  perSide: true,
  loads: ['ankle', 'foot', 'knee'],
  secondsPerRepetition: 3,
  cues: ['Knee over the toes, heel stays down.', 'Same distance on both sides.'],
  faults: ['Heel lifts.', 'Arch falls and the knee goes inwards.'],
  cautions: ['Pinch in front of the ankle: shorter way.'],
  settingFields: ['distance'],
  substitutes: substitutesOf('ankle-rock'),
  source: sourceOf('The knee glides forward over the foot.'),
};

export const hipFlexorStretch: Exercise = {
  ...LOWER,
  id: idOf('hip-flexor-stretch'),
  name: 'Hip flexor stretch',
  alsoKnownAs: ['half-kneeling hip stretch', 'couch stretch', 'kneeling lunge stretch'],
  perSide: true,
  loads: ['hip', 'knee', 'low back'],
  secondsPerRepetition: 1,
  cues: ['Squeeze the seat first, then a little forward.', 'Ribs stay down.'],
  faults: ['Low back arches to go farther.'],
  cautions: ['Kneecap sore: pad under it, or standing.', 'Easy pull only; never into pain.'],
  settingFields: ['pad'],
  substitutes: substitutesOf('hip-flexor-stretch'),
  source: sourceOf('Held, without a load; one repetition is one second.'),
};

export const hipRotation: Exercise = {
  ...LOWER,
  id: idOf('hip-rotation'),
  name: 'Hip rotation',
  alsoKnownAs: ['90/90', 'hip switches', 'ninety-ninety'],
  perSide: false,
  loads: ['hip', 'knee', 'low back'],
  secondsPerRepetition: 4,
  cues: ['Both knees over to one side, then the other.', 'Turn from the hips, chest tall.'],
  faults: ['Turns from the low back.', 'Falls into the last part.'],
  cautions: ['Groin pinch or knee twist: lean back on the hands.'],
  settingFields: [],
  substitutes: substitutesOf('hip-rotation'),
  source: sourceOf('The thighs turn in the hips.'),
};

export const thoracicRotation: Exercise = {
  ...UPPER,
  id: idOf('thoracic-rotation'),
  name: 'Thoracic rotation',
  alsoKnownAs: ['open book', 'open books', 'T-spine rotation', 'upper back rotation'],
  perSide: true,
  loads: ['upper back', 'low back', 'shoulder'],
  secondsPerRepetition: 4,
  cues: ['Knees stay together; open the top arm.', 'Breathe out into the turn.'],
  faults: ['Hips turn along.', 'Only the arm swings.'],
  cautions: ['Slow: no quick turns of the head after landing.'],
  settingFields: [],
  substitutes: substitutesOf('thoracic-rotation'),
  source: sourceOf('The upper back turns over still hips.'),
};

export const catCamel: Exercise = {
  ...UPPER,
  id: idOf('cat-camel'),
  name: 'Cat and camel',
  alsoKnownAs: ['cat camel', 'cat cow', 'spine waves'],
  perSide: false,
  loads: ['low back', 'upper back', 'neck'],
  secondsPerRepetition: 4,
  cues: ['Round and arch slowly, bone by bone.', 'Never to the end of the way.'],
  faults: ['Only the low back moves.', 'Head is thrown back.'],
  cautions: ['Early in flight backs ache: small and easy.', 'Not far bent in the first hour after getting up.'],
  settingFields: [],
  substitutes: substitutesOf('cat-camel'),
  source: sourceOf('The spine rounds and arches without a load.'),
};

export const shoulderSlide: Exercise = {
  ...UPPER,
  id: idOf('shoulder-slide'),
  name: 'Shoulder slide',
  alsoKnownAs: ['wall slide', 'wall slides', 'overhead reach'],
  perSide: false,
  loads: ['shoulder', 'upper back', 'neck'],
  secondsPerRepetition: 4,
  cues: ['Forearms up the wall, blades round.', 'Ribs down, neck long.'],
  faults: ['Shoulders shrug.', 'Low back arches to reach higher.'],
  cautions: ['Painful arc: stop under it.', 'Easy on the day before suited work.'],
  settingFields: [],
  substitutes: substitutesOf('shoulder-slide'),
  source: sourceOf('The arms rise along a wall.'),
};

export const wristRock: Exercise = {
  ...UPPER,
  id: idOf('wrist-rock'),
  name: 'Wrist rock',
  alsoKnownAs: ['wrist mobility', 'prayer stretch', 'wrist circles'],
  perSide: false,
  loads: ['wrist', 'hand', 'elbow'],
  secondsPerRepetition: 3,
  cues: ['Palms down, rock forward and back.', 'Then backs of the hands, lightly.'],
  faults: ['Elbows bend to get away from it.'],
  cautions: ['Tingling fingers: less, and tell it.'],
  settingFields: [],
  substitutes: substitutesOf('wrist-rock'),
  source: sourceOf('The hand bends both ways, as after work in gloves.'),
};
