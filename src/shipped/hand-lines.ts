import { crushHold, fingerExtension, forearmRotation, wristExtension } from './exercises/grip.ts';
import { fingerHold, gripPulses } from './exercises/hand-training.ts';
import { drillSets, held, pulses, repeated, type DrillLine } from './piece-line.ts';

/*
 * Hands and forearms of who works outside in a suit. Of one hand: while the other works, it rests. Doses are common
 * practice. Forces are of the person's own tests: a critical force as mean of the last contractions of an all-out test lies
 * about 16 % above what can be held on and on (Balas 2024, Eur J Appl Physiol 124:2787–2798, seen), so work below it is set
 * at 0.65, which is 77 % of what can.
 */

const CREW = { condition: 'space-walk crew', machineKind: 'hand gear' } as const;
const PRACTICE = 'common practice; no heavy grip in the last 48 to 72 h before a space walk.';

export const GREATEST_GRIP: DrillLine = {
  ...CREW,
  name: 'greatest-grip',
  track: 'greatest grip',
  exercise: crushHold,
  sets: drillSets(4, held(8), 70),
  target: { kind: 'of greatest grip', of: 0.9 },
  shouldFeel: [7, 8],
  source: `Greatest grip: 3 to 5 × 5 to 10 s at 85 to 95 %, 2 to 3 min of rest for each hand, twice a week: ${PRACTICE}`,
};

export const CRITICAL_FORCE: DrillLine = {
  ...CREW,
  name: 'critical-force',
  track: 'critical-force intervals',
  exercise: gripPulses,
  sets: drillSets(4, pulses(8, 7, 3), 40),
  target: { kind: 'of critical force', of: 1 },
  shouldFeel: [6, 8],
  source: `Critical force: 4 to 6 sets of 6 to 10 × (7 s on, 3 s off) at 90 to 110 %, twice a week: ${PRACTICE} Pattern of the all-out test of Giles 2019, Int J Sports Physiol Perform 14:972–979 (from memory).`,
};

export const BELOW_CRITICAL: DrillLine = {
  ...CREW,
  name: 'below-critical-force',
  track: 'grip below critical force',
  exercise: gripPulses,
  sets: drillSets(1, pulses(48, 5, 5), 30),
  target: { kind: 'of critical force', of: 0.65 },
  shouldFeel: [4, 6],
  source: `Capacity below critical force: as long on as off at 70 to 85 % of what can be held, 8 to 12 min for each hand; one bout for each hand instead of two or three, for time: ${PRACTICE}`,
};

export const SUIT_LIKE: DrillLine = {
  ...CREW,
  name: 'suit-like-grip',
  track: 'suit-like grip',
  exercise: gripPulses,
  sets: drillSets(1, pulses(60, 5, 5), 30),
  target: null,
  shouldFeel: [4, 6],
  source: `As in a suit: resisted closing in a stiff glove and turning of tools, 10 to 20 min at the force and turn of the task, once a week in the last weeks: ${PRACTICE} By feel, because force in a glove is not that of the bare hand.`,
};

export const FINGER_HOLD: DrillLine = {
  ...CREW,
  name: 'finger-hold',
  track: 'finger hold',
  exercise: fingerHold,
  sets: drillSets(4, held(8), 60),
  target: null,
  shouldFeel: [7, 8],
  source: `Fingers: 4 to 6 × 6 to 10 s (Levernier 2017, doi 10.1519/JSC.0000000000002230, seen, in trained climbers): ${PRACTICE}`,
};

/** What balances gripping needs a band and no test. */
const BALANCE =
  'Opening the fingers, bending the wrist back and turning the forearm: 2 to 3 × 12 to 20, two to three times a week: common practice.';

export const FINGER_EXTENSION: DrillLine = {
  ...CREW,
  machineKind: 'band',
  name: 'finger-extension',
  track: 'finger extension',
  exercise: fingerExtension,
  sets: drillSets(2, repeated(15), 15),
  target: null,
  shouldFeel: [4, 6],
  source: BALANCE,
};

export const WRIST_EXTENSION: DrillLine = {
  ...CREW,
  machineKind: 'band',
  name: 'wrist-extension',
  track: 'wrist extension',
  exercise: wristExtension,
  sets: drillSets(2, repeated(12), 10),
  target: null,
  shouldFeel: [4, 6],
  source: BALANCE,
};

export const FOREARM_ROTATION: DrillLine = {
  ...CREW,
  name: 'forearm-rotation',
  track: 'forearm rotation',
  exercise: forearmRotation,
  sets: drillSets(2, repeated(12), 10),
  target: null,
  shouldFeel: [4, 6],
  source: BALANCE,
};
