import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { COUNT_AND_CUES, NO_CAPACITY, NO_SHARE } from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

/** Upper-body lifts are set in steps of 2.5 lb or 1 kg (common practice). */
const roundTo = { kg: '1', lb: '2.5' } as const;

/** Timed: one repetition is one second of walking. */
export const twoHandCarry: Exercise = {
  id: idOf('two-hand-carry'),
  name: 'Two-hand carry',
  alsoKnownAs: ['farmer carry', 'farmers walk', 'farmer walk', 'loaded carry'],
  pattern: 'carry',
  bodyPart: 'upper body',
  perSide: false,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: ['hand', 'wrist', 'elbow', 'shoulder', 'upper back', 'low back', 'hip', 'knee', 'ankle', 'foot'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 1,
  cues: ['Stand tall; short quick steps.', 'Shoulders level.'],
  faults: ['Leans back or to one side.', 'Grip opens: put it down first.'],
  cautions: ['Path clear; put it down before the grip goes.', 'No heavy grip 48 to 72 hours before a space walk.'],
  settingFields: ['handle'],
  machineKinds: ['dumbbells'],
  substitutes: substitutesOf('two-hand-carry'),
  source: `${NO_CAPACITY} ${NO_SHARE} Walking; there is none of it without weight. ${COUNT_AND_CUES}`,
};

/** Timed: one repetition is one second of walking. */
export const oneHandCarry: Exercise = {
  id: idOf('one-hand-carry'),
  name: 'One-hand carry',
  alsoKnownAs: ['suitcase carry', 'suitcase walk', 'one-arm carry'],
  pattern: 'carry',
  bodyPart: 'upper body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'hands',
  loads: ['hand', 'wrist', 'elbow', 'shoulder', 'upper back', 'low back', 'hip', 'knee', 'ankle', 'foot'],
  capacity: { kind: 'none' },
  roundTo: roundTo,
  secondsPerRepetition: 1,
  cues: ['Walk as if the other hand held the same.'],
  faults: ['Leans towards or away from the load.'],
  cautions: [
    'Low back of 3 or more: stop, take the two-hand carry.',
    'No heavy grip 48 to 72 hours before a space walk.',
  ],
  settingFields: ['handle'],
  machineKinds: ['dumbbells'],
  substitutes: substitutesOf('one-hand-carry'),
  source: `${NO_CAPACITY} ${NO_SHARE} Walking; there is none of it without weight. ${COUNT_AND_CUES}`,
};
