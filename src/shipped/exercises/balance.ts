import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { COUNT_AND_CUES, NO_CAPACITY, NO_SHARE } from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

/** Lower-body lifts are set in steps of 5 lb or 2.5 kg (common practice). */
const roundTo = { kg: '2.5', lb: '5' } as const;

/** Timed: one repetition is one second of standing. */
export const singleLegStand: Exercise = {
  id: idOf('single-leg-stand'),
  name: 'Single-leg stand',
  alsoKnownAs: ['one-leg stand', 'stork stand', 'single-leg balance'],
  pattern: 'balance',
  bodyPart: 'lower body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['ankle', 'foot', 'knee', 'hip'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 1,
  cues: ['Eyes on one point; big toe down.'],
  faults: ['Free leg leans on the standing leg.', 'Hip drops; trunk sways to the side.'],
  cautions: ['After landing somebody stands within reach.', 'Dizzy or sick: sit down at once.'],
  settingFields: ['surface', 'eyes'],
  machineKinds: ['body weight'],
  substitutes: substitutesOf('single-leg-stand'),
  source: `${NO_CAPACITY} ${NO_SHARE} Standing; it needs weight, so in flight there is none. ${COUNT_AND_CUES}`,
};

/** Timed; the side is the foot in front. */
export const tandemStand: Exercise = {
  id: idOf('tandem-stand'),
  name: 'Tandem stand',
  alsoKnownAs: ['heel-to-toe stand', 'sharpened stand'],
  pattern: 'balance',
  bodyPart: 'lower body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['ankle', 'foot', 'knee', 'hip'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 1,
  cues: ['Heel to toe in one line; weight on both feet.'],
  faults: ['Rear foot turns out to widen the base.'],
  cautions: ['After landing somebody stands within reach.', 'Eyes shut only when eyes open is steady for 30 s.'],
  settingFields: ['surface', 'eyes'],
  machineKinds: ['body weight'],
  substitutes: substitutesOf('tandem-stand'),
  source: `${NO_CAPACITY} ${NO_SHARE} Standing; it needs weight, so in flight there is none. ${COUNT_AND_CUES}`,
};

/** Timed by the step: one repetition is one step. */
export const tandemWalk: Exercise = {
  id: idOf('tandem-walk'),
  name: 'Tandem walk',
  alsoKnownAs: ['heel-to-toe walk', 'line walk'],
  pattern: 'balance',
  bodyPart: 'lower body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['ankle', 'foot', 'knee', 'hip'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 1,
  cues: ['Heel to toe along a line; arms across the chest.'],
  faults: ['Steps off the line; looks at the feet.'],
  cautions: ['After landing somebody stands within reach.', 'Dizzy or sick: sit down at once.'],
  settingFields: ['surface', 'eyes'],
  machineKinds: ['body weight'],
  substitutes: substitutesOf('tandem-walk'),
  source: `${NO_CAPACITY} ${NO_SHARE} Walking; it needs weight, so in flight there is none. ${COUNT_AND_CUES}`,
};
