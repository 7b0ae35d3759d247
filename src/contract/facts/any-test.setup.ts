import type { PieceResult } from '#domain/fact.ts';
import type { Test } from '#domain/tested.ts';
import { entered } from '#units/entered.ts';
import { idOf } from '#domain/identity.ts';
import fc from 'fast-check';

/** Tests beside lifts, and results of bouts and drills, to be drawn by tests. */
const decimal = fc.integer({ min: 1, max: 99_999 }).map((tenths) => (tenths / 10).toFixed(1));
const side = fc.constantFrom('left' as const, 'right' as const);
const orNull = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: null });
const inUnit = <Unit extends string>(...units: readonly Unit[]) =>
  fc.tuple(decimal, fc.constantFrom(...units)).map(([text, unit]) => entered(text, unit));
const uptake = inUnit('mL/(kg min)');
const heartRate = inUnit('1/min');

export const anyTest: fc.Arbitrary<Test> = fc.oneof(
  fc.record({
    what: fc.constant('greatest oxygen uptake' as const),
    value: uptake,
    how: fc.constantFrom('measured' as const, 'estimated' as const),
  }),
  fc.record({ what: fc.constantFrom('greatest heart rate' as const, 'resting heart rate' as const), value: heartRate }),
  fc.record({
    what: fc.constant('cycle stage' as const),
    watts: inUnit('W'),
    heartRate: orNull(heartRate),
    uptake: orNull(uptake),
    machine: fc.constant(null),
  }),
  fc.record({
    what: fc.constant('running stage' as const),
    speed: inUnit('km/h'),
    heartRate: orNull(heartRate),
    uptake: orNull(uptake),
  }),
  fc.record({
    what: fc.constantFrom('greatest grip' as const, 'critical force' as const),
    side,
    value: inUnit('N', 'kg', 'lb'),
  }),
  fc.record({ what: fc.constant('jump height' as const), value: inUnit('cm', 'in') }),
  fc.record({ what: fc.constant('heel raises' as const), side, value: inUnit('repetitions') }),
);

export const anyPiece: fc.Arbitrary<PieceResult> = fc.record({
  item: fc.stringMatching(/^[a-z0-9-]{1,12}$/).map((text) => idOf<'item'>(text)),
  done: fc.nat(20),
  minutes: orNull(fc.nat(150)),
  watts: orNull(fc.nat(400)),
  speed: orNull(fc.integer({ min: 0, max: 200 }).map((tenths) => tenths / 10)),
  harness: orNull(inUnit('kg', 'lb')),
  heartRate: orNull(fc.integer({ min: 40, max: 210 })),
  effort: orNull(fc.record({ kind: fc.constant('RPE' as const), value: fc.integer({ min: 1, max: 10 }) })),
});
