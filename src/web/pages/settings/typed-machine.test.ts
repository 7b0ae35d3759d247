import { expect, test } from 'vitest';
import type { Problem } from '#contract/problem.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import { backSquat } from '#shipped/exercises/lower-body.ts';
import { SKERRY_MACHINES, SKERRY_SITES } from '#scenario/skerry-station.ts';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { deliveredOver } from './delivered-over.ts';
import { machineOf, typedMachineOf, type TypedMachine } from './typed-machine.ts';

const house = {
  sites: SKERRY_SITES,
  machines: SKERRY_MACHINES,
  exercises: SHIPPED_EXERCISES,
} as unknown as HouseWindow;

const read = (typed: TypedMachine, before: Parameters<typeof machineOf>[1] = null) => {
  const problems: Problem[] = [];
  return { machine: machineOf(typed, before, house, problems), fields: problems.map(({ field }) => field) };
};

test('every machine comes out of the fields as it went in', () => {
  for (const each of SKERRY_MACHINES) expect(read(typedMachineOf(each), each)).toEqual({ machine: each, fields: [] });
});

test('unit, step and gravity of a machine that is there stay, whatever the fields hold', () => {
  const [before] = SKERRY_MACHINES;
  const typed = { ...typedMachineOf(before ?? null), unit: 'kg', increment: '7', name: 'Resistive machine, aft' };
  expect(read(typed, before).machine).toEqual({ ...before, name: 'Resistive machine, aft' });
});

const NEW: TypedMachine = {
  ...typedMachineOf(null),
  name: 'Heavy bar',
  site: 'brae-house',
  increment: '2,5',
  least: '20',
  ceiling: '400',
  setUp: '3',
  stow: '3',
  changeExercise: '2',
  changeLoad: '1',
};

test('a new machine has the gravity of its site; a decimal comma is a point', () => {
  expect(read(NEW).machine).toMatchObject({ gravity: '1 g', increment: '2.5', unit: 'kg', limits: [] });
  expect(read({ ...NEW, site: 'skerry-station' }).machine?.gravity).toBe('0 g');
});

test('a cycle is set in watts and has no loads to be typed', () => {
  const typed = { ...NEW, kind: 'cycle', increment: '', least: '', ceiling: '', mostWatts: '350' };
  expect(read(typed)).toMatchObject({ machine: { mostWatts: 350, mostSpeed: null, limits: [] }, fields: [] });
});

test('all that cannot be read is told at once, each at its field', () => {
  const limits = [{ key: 'one', exercise: '', attachment: '', most: 'much' }];
  const typed = { ...NEW, name: '', site: '', least: '', stow: 'x', limits };
  expect(read(typed)).toEqual({
    machine: null,
    fields: [
      'entry.machine.name',
      'entry.machine.site',
      'entry.machine.least',
      'entry.machine.limits.0.exercise',
      'entry.machine.limits.0.most',
      'entry.machine.minutes.stow',
    ],
  });
  expect(
    read({ ...NEW, limits: [{ key: 'one', exercise: backSquat.id, attachment: ' ', most: '100' }] }).machine?.limits,
  ).toEqual([{ exercise: backSquat.id, attachment: null, most: '100' }]);
});

test('delivered over set needs two loads', () => {
  expect(deliveredOver('200', '208')).toBe('1.04');
  expect(deliveredOver('300', '299')).toBe('0.9967');
  for (const [set, delivered] of [
    ['', '208'],
    ['0', '208'],
    ['200', 'x'],
  ] as const)
    expect(deliveredOver(set, delivered)).toBeNull();
});
