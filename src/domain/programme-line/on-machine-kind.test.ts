import fc from 'fast-check';
import { expect, test } from 'vitest';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import type { Exercise } from '../catalogue.ts';
import { anyBouts, anyDrill, anyLift } from './any-item.setup.ts';
import { onMachineKind } from './on-machine-kind.ts';

const [exercise] = SHIPPED_EXERCISES as readonly [Exercise];

test('a lift goes from machine to machine as it is, and to the body’s own weight without its target', () => {
  fc.assert(
    fc.property(anyLift(exercise), (lift) => {
      expect(onMachineKind(lift, 'dumbbells', exercise)).toEqual({ ...lift, machineKind: 'dumbbells' });
      const drill = onMachineKind(lift, 'body weight', exercise);
      expect(drill).toMatchObject({ kind: 'drill', id: lift.id, track: lift.track, priority: lift.priority });
      const back = drill && onMachineKind(drill, 'free bar', exercise);
      expect(back).toMatchObject({ kind: 'lift', id: lift.id, basis: { kind: 'from last', start: 'effort' } });
      expect(onMachineKind(lift, 'cycle', exercise)).toBeNull();
    }),
  );
});

test('bouts stay on what is run, ridden or rowed', () => {
  fc.assert(
    fc.property(anyBouts(exercise), (bouts) => {
      expect(onMachineKind(bouts, 'rower', exercise)).toEqual({ ...bouts, machineKind: 'rower' });
      expect(onMachineKind(bouts, 'free bar', exercise)).toBeNull();
    }),
  );
});

test('a drill goes under a load only where all its sets count repetitions', () => {
  fc.assert(
    fc.property(anyDrill(exercise), (drill) => {
      const counted = drill.sets.every(({ work }) => work.kind === 'repetitions');
      expect(onMachineKind(drill, 'cable column', exercise) === null).toBe(!counted);
      expect(onMachineKind(drill, 'band', exercise)).toEqual({ ...drill, machineKind: 'band' });
      expect(onMachineKind(drill, 'treadmill', exercise)).toBeNull();
    }),
  );
});
