import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { COUNT_AND_CUES, NO_CAPACITY, NO_SHARE } from './sources.ts';

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
  roundTo: { kg: '1', lb: '2.5' },
  secondsPerRepetition: 1,
  cues: ['Straight from head to heels; keep breathing.'],
  settingFields: ['attachment'],
  source: `${NO_CAPACITY} ${NO_SHARE} Without weight it needs a machine or a strap to hold against. ${COUNT_AND_CUES}`,
};
