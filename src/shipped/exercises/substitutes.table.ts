import type { ExerciseSubstitute } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';

/*
 * What can be done instead of what, in the order in which it is tried, and how much of each quality it covers: practice
 * defaults, our own design; nobody has measured them. Each line of one exercise names the qualities that this exercise
 * trains, 0 where nothing of one is covered. Where cords or isometric pushes stand in for a bar or a machine they are rated
 * as everywhere else here: strength 0.6 and 0.7.
 */

const instead = (exercise: string, covers: ExerciseSubstitute['covers']): ExerciseSubstitute => ({
  exercise: idOf(exercise),
  covers,
});

/** Balance and mobility have no rated substitute: none of the five qualities is what they train. */
const SUBSTITUTES: Readonly<Record<string, readonly ExerciseSubstitute[]>> = {
  'back-squat': [
    instead('front-squat', { strength: 0.9, power: 0.8 }),
    instead('box-squat', { strength: 0.85, power: 0.6 }),
    instead('single-leg-squat', { strength: 0.7, power: 0.3 }),
    instead('split-squat', { strength: 0.7, power: 0.3 }),
    instead('goblet-squat', { strength: 0.5, power: 0.2 }),
    instead('cord-squat', { strength: 0.6, power: 0 }),
    instead('isometric-squat-push', { strength: 0.7, power: 0 }),
    instead('body-weight-squat', { strength: 0.2, power: 0.1 }),
  ],
  'front-squat': [
    instead('back-squat', { strength: 1, power: 1 }),
    instead('box-squat', { strength: 0.8, power: 0.6 }),
    instead('goblet-squat', { strength: 0.6, power: 0.2 }),
    instead('cord-squat', { strength: 0.6, power: 0 }),
    instead('isometric-squat-push', { strength: 0.7, power: 0 }),
    instead('body-weight-squat', { strength: 0.2, power: 0.1 }),
  ],
  'box-squat': [
    instead('back-squat', { strength: 0.9, power: 0.9 }),
    instead('goblet-squat', { strength: 0.7, power: 0.3 }),
    instead('split-squat', { strength: 0.7, power: 0.3 }),
    instead('body-weight-squat', { strength: 0.3, power: 0.1 }),
  ],
  'goblet-squat': [
    instead('box-squat', { strength: 0.9 }),
    instead('split-squat', { strength: 0.9 }),
    instead('cord-squat', { strength: 0.7 }),
    instead('body-weight-squat', { strength: 0.6 }),
  ],
  'body-weight-squat': [
    instead('goblet-squat', { strength: 1 }),
    instead('box-squat', { strength: 1 }),
    instead('step-up', { strength: 0.8 }),
  ],
  'cord-squat': [instead('isometric-squat-push', { strength: 0.8 }), instead('body-weight-squat', { strength: 0.4 })],
  'isometric-squat-push': [instead('cord-squat', { strength: 0.8 }), instead('body-weight-squat', { strength: 0.3 })],
  'single-leg-squat': [
    instead('split-squat', { strength: 0.9 }),
    instead('step-up', { strength: 0.8 }),
    instead('reverse-lunge', { strength: 0.8 }),
    instead('back-squat', { strength: 0.8 }),
    instead('goblet-squat', { strength: 0.5 }),
    instead('cord-squat', { strength: 0.5 }),
    instead('body-weight-squat', { strength: 0.3 }),
  ],
  'split-squat': [
    instead('single-leg-squat', { strength: 0.9 }),
    instead('reverse-lunge', { strength: 0.9 }),
    instead('step-up', { strength: 0.8 }),
    instead('back-squat', { strength: 0.8 }),
    instead('goblet-squat', { strength: 0.6 }),
    instead('cord-squat', { strength: 0.5 }),
    instead('body-weight-squat', { strength: 0.3 }),
  ],
  'reverse-lunge': [
    instead('split-squat', { strength: 0.9 }),
    instead('step-up', { strength: 0.9 }),
    instead('single-leg-squat', { strength: 0.9 }),
    instead('goblet-squat', { strength: 0.6 }),
    instead('body-weight-squat', { strength: 0.3 }),
  ],
  'step-up': [
    instead('reverse-lunge', { strength: 0.9 }),
    instead('split-squat', { strength: 0.9 }),
    instead('single-leg-squat', { strength: 0.9 }),
    instead('goblet-squat', { strength: 0.6 }),
    instead('body-weight-squat', { strength: 0.3 }),
  ],
  deadlift: [
    instead('wide-stance-deadlift', { strength: 0.9, power: 0.8, grip: 1 }),
    instead('raised-deadlift', { strength: 0.85, power: 0.6, grip: 1 }),
    instead('romanian-deadlift', { strength: 0.8, power: 0.3, grip: 1 }),
    instead('hip-thrust', { strength: 0.7, power: 0.4, grip: 0 }),
    instead('single-leg-romanian-deadlift', { strength: 0.6, power: 0.1, grip: 0.6 }),
    instead('leg-curl', { strength: 0.3, power: 0, grip: 0 }),
    instead('glute-bridge', { strength: 0.3, power: 0.1, grip: 0 }),
  ],
  'romanian-deadlift': [
    instead('deadlift', { strength: 0.9, grip: 1 }),
    instead('single-leg-romanian-deadlift', { strength: 0.7, grip: 0.6 }),
    instead('hip-thrust', { strength: 0.7, grip: 0 }),
    instead('leg-curl', { strength: 0.5, grip: 0 }),
    instead('glute-bridge', { strength: 0.3, grip: 0 }),
  ],
  'wide-stance-deadlift': [
    instead('deadlift', { strength: 1, power: 1, grip: 1 }),
    instead('raised-deadlift', { strength: 0.85, power: 0.6, grip: 1 }),
    instead('hip-thrust', { strength: 0.7, power: 0.4, grip: 0 }),
    instead('glute-bridge', { strength: 0.3, power: 0.1, grip: 0 }),
  ],
  'raised-deadlift': [
    instead('romanian-deadlift', { strength: 0.8, grip: 1 }),
    instead('hip-thrust', { strength: 0.6, grip: 0 }),
    instead('single-leg-romanian-deadlift', { strength: 0.6, grip: 0.6 }),
    instead('glute-bridge', { strength: 0.3, grip: 0 }),
  ],
  'single-leg-romanian-deadlift': [
    instead('romanian-deadlift', { strength: 0.9, grip: 1 }),
    instead('hip-thrust', { strength: 0.7, grip: 0 }),
    instead('glute-bridge', { strength: 0.4, grip: 0 }),
  ],
  'hip-thrust': [
    instead('romanian-deadlift', { strength: 0.8, power: 0.4 }),
    instead('deadlift', { strength: 0.8, power: 0.7 }),
    instead('glute-bridge', { strength: 0.5, power: 0.2 }),
  ],
  'glute-bridge': [instead('hip-thrust', { strength: 1 }), instead('bird-dog', { strength: 0.3 })],
  'leg-curl': [
    instead('romanian-deadlift', { strength: 0.6 }),
    instead('single-leg-romanian-deadlift', { strength: 0.6 }),
    instead('glute-bridge', { strength: 0.4 }),
  ],
  'knee-extension': [
    instead('split-squat', { strength: 0.7 }),
    instead('back-squat', { strength: 0.7 }),
    instead('single-leg-squat', { strength: 0.6 }),
    instead('step-up', { strength: 0.6 }),
    instead('body-weight-squat', { strength: 0.3 }),
  ],
  'hip-abduction': [
    instead('side-hold', { strength: 0.5 }),
    instead('single-leg-squat', { strength: 0.5 }),
    instead('step-up', { strength: 0.4 }),
  ],
  'hip-adduction': [
    instead('split-squat', { strength: 0.4 }),
    instead('reverse-lunge', { strength: 0.4 }),
    instead('side-hold', { strength: 0.3 }),
  ],
  'heel-raise': [instead('single-leg-heel-raise', { strength: 0.9 }), instead('seated-heel-raise', { strength: 0.7 })],
  'single-leg-heel-raise': [instead('heel-raise', { strength: 0.9 }), instead('seated-heel-raise', { strength: 0.7 })],
  'seated-heel-raise': [instead('heel-raise', { strength: 0.8 }), instead('single-leg-heel-raise', { strength: 0.8 })],
  'bench-press': [
    instead('incline-press', { strength: 0.85, power: 0.7 }),
    instead('push-up', { strength: 0.7, power: 0.4 }),
  ],
  'incline-press': [
    instead('bench-press', { strength: 0.9, power: 0.9 }),
    instead('shoulder-press', { strength: 0.7, power: 0.5 }),
    instead('push-up', { strength: 0.6, power: 0.3 }),
  ],
  'push-up': [instead('bench-press', { strength: 1 }), instead('incline-press', { strength: 1 })],
  'shoulder-press': [instead('incline-press', { strength: 0.7 }), instead('push-up', { strength: 0.4 })],
  'bent-over-row': [
    instead('seated-row', { strength: 0.9, grip: 0.9 }),
    instead('one-arm-row', { strength: 0.9, grip: 1 }),
    instead('cord-row', { strength: 0.6, grip: 0.2 }),
    instead('chin-up', { strength: 0.6, grip: 1 }),
    instead('pull-down', { strength: 0.5, grip: 0.8 }),
  ],
  'seated-row': [
    instead('bent-over-row', { strength: 0.9, grip: 1 }),
    instead('one-arm-row', { strength: 0.9, grip: 1 }),
    instead('cord-row', { strength: 0.6, grip: 0.2 }),
  ],
  'one-arm-row': [
    instead('seated-row', { strength: 0.9, grip: 0.9 }),
    instead('bent-over-row', { strength: 0.9, grip: 1 }),
    instead('cord-row', { strength: 0.6, grip: 0.2 }),
  ],
  'cord-row': [
    instead('seated-row', { strength: 1, grip: 1 }),
    instead('bent-over-row', { strength: 1, grip: 1 }),
    instead('one-arm-row', { strength: 1, grip: 1 }),
  ],
  'pull-down': [
    instead('chin-up', { strength: 1, grip: 1 }),
    instead('one-arm-row', { strength: 0.6, grip: 1 }),
    instead('seated-row', { strength: 0.6, grip: 0.9 }),
    instead('bent-over-row', { strength: 0.6, grip: 1 }),
    instead('cord-row', { strength: 0.4, grip: 0.2 }),
  ],
  'chin-up': [
    instead('pull-down', { strength: 0.9, grip: 0.8 }),
    instead('one-arm-row', { strength: 0.6, grip: 1 }),
    instead('seated-row', { strength: 0.6, grip: 0.9 }),
    instead('bent-over-row', { strength: 0.6, grip: 1 }),
    instead('cord-row', { strength: 0.4, grip: 0.2 }),
  ],
  'biceps-curl': [
    instead('chin-up', { strength: 0.6 }),
    instead('seated-row', { strength: 0.4 }),
    instead('one-arm-row', { strength: 0.4 }),
    instead('cord-row', { strength: 0.3 }),
  ],
  'triceps-extension': [
    instead('push-up', { strength: 0.6 }),
    instead('bench-press', { strength: 0.6 }),
    instead('incline-press', { strength: 0.6 }),
  ],
  'lateral-raise': [
    instead('shoulder-press', { strength: 0.5 }),
    instead('t-raise', { strength: 0.5 }),
    instead('y-raise', { strength: 0.5 }),
  ],
  'front-raise': [
    instead('shoulder-press', { strength: 0.7 }),
    instead('incline-press', { strength: 0.6 }),
    instead('y-raise', { strength: 0.5 }),
  ],
  'external-rotation': [
    instead('t-raise', { strength: 0.5 }),
    instead('band-pull-apart', { strength: 0.5 }),
    instead('scapular-row', { strength: 0.3 }),
  ],
  'internal-rotation': [instead('bench-press', { strength: 0.4 }), instead('push-up', { strength: 0.3 })],
  'y-raise': [
    instead('t-raise', { strength: 0.7 }),
    instead('band-pull-apart', { strength: 0.5 }),
    instead('scapular-row', { strength: 0.4 }),
  ],
  't-raise': [
    instead('band-pull-apart', { strength: 0.8 }),
    instead('y-raise', { strength: 0.7 }),
    instead('seated-row', { strength: 0.5 }),
    instead('one-arm-row', { strength: 0.4 }),
  ],
  'scapular-row': [
    instead('band-pull-apart', { strength: 0.7 }),
    instead('t-raise', { strength: 0.7 }),
    instead('seated-row', { strength: 0.6 }),
    instead('cord-row', { strength: 0.5 }),
  ],
  'band-pull-apart': [instead('t-raise', { strength: 0.9 }), instead('scapular-row', { strength: 0.7 })],
  'trunk-hold': [
    instead('dead-bug', { strength: 0.7 }),
    instead('side-hold', { strength: 0.7 }),
    instead('pallof-press', { strength: 0.6 }),
    instead('bird-dog', { strength: 0.5 }),
  ],
  'side-hold': [
    instead('one-hand-carry', { strength: 0.7 }),
    instead('pallof-press', { strength: 0.6 }),
    instead('dead-bug', { strength: 0.4 }),
  ],
  'dead-bug': [
    instead('trunk-hold', { strength: 0.7 }),
    instead('bird-dog', { strength: 0.7 }),
    instead('pallof-press', { strength: 0.5 }),
  ],
  'pallof-press': [
    instead('side-hold', { strength: 0.7 }),
    instead('one-hand-carry', { strength: 0.6 }),
    instead('trunk-hold', { strength: 0.5 }),
  ],
  'bird-dog': [instead('dead-bug', { strength: 0.7 }), instead('glute-bridge', { strength: 0.4 })],
  'two-hand-carry': [
    instead('one-hand-carry', { strength: 0.8, grip: 0.9 }),
    instead('deadlift', { strength: 0.7, grip: 0.8 }),
    instead('thick-handle-hold', { strength: 0.3, grip: 1 }),
  ],
  'one-hand-carry': [
    instead('two-hand-carry', { strength: 0.7, grip: 1 }),
    instead('side-hold', { strength: 0.6, grip: 0 }),
  ],
  'crush-hold': [
    instead('thick-handle-hold', { grip: 0.8 }),
    instead('two-hand-carry', { grip: 0.8 }),
    instead('pinch-hold', { grip: 0.5 }),
  ],
  'pinch-hold': [instead('thick-handle-hold', { grip: 0.6 }), instead('crush-hold', { grip: 0.5 })],
  'thick-handle-hold': [
    instead('crush-hold', { grip: 0.8 }),
    instead('two-hand-carry', { grip: 0.8 }),
    instead('pinch-hold', { grip: 0.6 }),
  ],
  'wrist-flexion': [
    instead('thick-handle-hold', { strength: 0.3, grip: 0.7 }),
    instead('crush-hold', { strength: 0.3, grip: 0.6 }),
  ],
  'wrist-extension': [instead('forearm-rotation', { strength: 0.4 }), instead('crush-hold', { strength: 0.3 })],
  'forearm-rotation': [instead('wrist-extension', { strength: 0.4 }), instead('wrist-flexion', { strength: 0.4 })],
  'finger-extension': [instead('wrist-extension', { strength: 0.3 })],
  'squat-jump': [
    instead('countermovement-jump', { power: 0.95, impact: 1 }),
    instead('ankle-hops', { power: 0.3, impact: 0.8 }),
    instead('drop-landing', { power: 0, impact: 0.9 }),
    instead('heel-drops', { power: 0, impact: 0.5 }),
  ],
  'countermovement-jump': [
    instead('squat-jump', { power: 0.9, impact: 1 }),
    instead('ankle-hops', { power: 0.3, impact: 0.8 }),
    instead('drop-landing', { power: 0, impact: 0.9 }),
    instead('heel-drops', { power: 0, impact: 0.5 }),
  ],
  'ankle-hops': [
    instead('countermovement-jump', { power: 0.6, impact: 1 }),
    instead('drop-landing', { power: 0, impact: 0.8 }),
    instead('heel-drops', { power: 0, impact: 0.6 }),
  ],
  'drop-landing': [
    instead('countermovement-jump', { impact: 0.9 }),
    instead('ankle-hops', { impact: 0.7 }),
    instead('heel-drops', { impact: 0.5 }),
  ],
  'heel-drops': [instead('ankle-hops', { impact: 1 }), instead('drop-landing', { impact: 1 })],
  'sit-to-stand': [instead('body-weight-squat', { strength: 1 }), instead('box-squat', { strength: 1 })],
  'hip-hinge-drill': [instead('glute-bridge', { strength: 1 }), instead('romanian-deadlift', { strength: 1 })],
  'grip-pulses': [
    instead('crush-hold', { grip: 0.7 }),
    instead('thick-handle-hold', { grip: 0.6 }),
    instead('two-hand-carry', { grip: 0.5 }),
  ],
  'finger-hold': [
    instead('thick-handle-hold', { grip: 0.6 }),
    instead('pinch-hold', { grip: 0.5 }),
    instead('crush-hold', { grip: 0.5 }),
  ],
  'treadmill-run': [
    instead('cycling', { aerobic: 1, impact: 0 }),
    instead('rowing', { aerobic: 0.9, impact: 0 }),
    instead('treadmill-walk', { aerobic: 0.6, impact: 0.4 }),
    instead('heel-drops', { aerobic: 0, impact: 0.4 }),
    instead('ankle-hops', { aerobic: 0, impact: 0.6 }),
  ],
  'treadmill-walk': [
    instead('overground-walk', { aerobic: 0.8, impact: 1 }),
    instead('treadmill-run', { aerobic: 1, impact: 1 }),
    instead('cycling', { aerobic: 1, impact: 0 }),
    instead('rowing', { aerobic: 0.9, impact: 0 }),
  ],
  'overground-walk': [
    instead('treadmill-walk', { aerobic: 1, impact: 1 }),
    instead('cycling', { aerobic: 1, impact: 0 }),
  ],
  cycling: [
    instead('treadmill-run', { aerobic: 1 }),
    instead('rowing', { aerobic: 0.9 }),
    instead('treadmill-walk', { aerobic: 0.6 }),
  ],
  rowing: [
    instead('cycling', { aerobic: 0.9 }),
    instead('treadmill-run', { aerobic: 0.9 }),
    instead('treadmill-walk', { aerobic: 0.5 }),
  ],
};

export const substitutesOf = (exercise: string): readonly ExerciseSubstitute[] => SUBSTITUTES[exercise] ?? [];

/** Exercises that the table speaks of. */
export const WITH_SUBSTITUTES: readonly string[] = Object.keys(SUBSTITUTES);
