import type { Exercise } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { COUNT_AND_CUES, NO_SHARE } from './sources.ts';
import { substitutesOf } from './substitutes.table.ts';

/** Upper-body lifts are set in steps of 2.5 lb or 1 kg (common practice). */
const roundTo = { kg: '1', lb: '2.5' } as const;

const OF_A_HAND_TEST =
  'Capacity: none of a load; the force comes from the greatest grip and the critical force of each hand, both tested.';

/** Pulses: on and off in turn against a handle that shows the force. */
export const gripPulses: Exercise = {
  id: idOf('grip-pulses'),
  name: 'Grip pulses',
  alsoKnownAs: ['critical force intervals', 'grip intervals', 'repeated grip'],
  pattern: 'grip',
  bodyPart: 'upper body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['hand', 'wrist', 'elbow', 'skin'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 10,
  cues: ['Close to the line, hold it, open fully.', 'Wrist straight; shoulder loose.'],
  faults: ['Overshoots, then fades.', 'Hand stays half closed in the pause.'],
  cautions: [
    'No heavy grip 48 to 72 hours before a space walk.',
    'After a space walk look at skin and nails first.',
    'Two repetitions under 95 % of the line: end the set.',
  ],
  settingFields: ['handle span'],
  machineKinds: ['hand gear'],
  substitutes: substitutesOf('grip-pulses'),
  source: `${OF_A_HAND_TEST} ${NO_SHARE} The hand closes on itself. ${COUNT_AND_CUES}`,
};

/** Timed: one repetition is one second of holding. */
export const fingerHold: Exercise = {
  id: idOf('finger-hold'),
  name: 'Finger hold',
  alsoKnownAs: ['half-crimp hold', 'finger strap hold', 'edge hold'],
  pattern: 'grip',
  bodyPart: 'upper body',
  perSide: true,
  shareModel: 'none',
  carriedAt: 'none',
  loads: ['hand', 'wrist', 'elbow', 'skin'],
  capacity: { kind: 'none' },
  roundTo,
  secondsPerRepetition: 1,
  cues: ['Middle joints bent, finger tips on the edge.', 'Build up over two seconds.'],
  faults: ['Finger tips bend backwards.', 'Jerks into the hold.'],
  cautions: ['No heavy grip 48 to 72 hours before a space walk.', 'A sore finger pulley: stop, weeks are at stake.'],
  settingFields: ['edge depth', 'strap'],
  machineKinds: ['hand gear'],
  substitutes: substitutesOf('finger-hold'),
  source: `${OF_A_HAND_TEST} ${NO_SHARE} An edge on a strap underfoot. Holds of this kind gave 8 % in four weeks in trained climbers (Levernier 2017, J Strength Cond Res, seen). ${COUNT_AND_CUES}`,
};
