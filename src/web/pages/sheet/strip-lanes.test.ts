import { expect, test } from 'vitest';
import type { SheetColumn, SheetStrip } from '#contract/windows/sheet-window.ts';
import { day } from '#units/day.ts';
import { laneCells, stripLanes } from './strip-lanes.ts';

const column = (at: number): SheetColumn => ({
  day: day(at),
  missionDay: `flight day ${at}`,
  title: 'Lower body',
  state: 'planned',
  past: false,
  card: null,
  code: null,
  delivery: null,
  outcome: null,
  calledOff: null,
  minutes: 60,
  blockMinutes: 90,
  deload: false,
  gaps: [],
});
const columns = [10, 12, 15, 20].map(column);

const strip = (...spans: readonly [number, number, 'bar' | 'mark'][]): SheetStrip => ({
  label: 'machine',
  spans: spans.map(([from, to, shape]) => ({ from: day(from), to: day(to), says: `${from}`, tone: 'plain', shape })),
});

const places = (given: SheetStrip): readonly string[] =>
  stripLanes(columns, given).map((lane) => lane.map(({ start, end }) => `${start}-${end}`).join(' '));

test('a bar covers the sessions of its days', () => {
  expect(places(strip([12, 16, 'bar']))).toEqual(['1-3']);
});

test('a bar between two sessions stands at the later one', () => {
  expect(places(strip([16, 17, 'bar']))).toEqual(['3-4']);
});

test('what is over before the first session or begins after the last is not drawn', () => {
  expect(places(strip([1, 9, 'bar'], [21, 30, 'bar']))).toEqual([]);
});

test('what began earlier and goes on fills from the first column', () => {
  expect(places(strip([1, 99, 'bar']))).toEqual(['0-4']);
});

test('spans that overlap stand in lanes of their own', () => {
  expect(places(strip([10, 15, 'bar'], [12, 12, 'mark'], [20, 20, 'mark']))).toEqual(['0-3 3-4', '1-2']);
});

test('what holds over the same days is one bar that says both', () => {
  const lanes = stripLanes(columns, strip([10, 12, 'bar'], [10, 12, 'bar']));
  expect(lanes.map((lane) => lane.map(({ span }) => span.says))).toEqual([['10; 10']]);
});

test('the cells of a lane fill every column once', () => {
  const lanes = stripLanes(columns, strip([12, 12, 'mark']));
  const cells = lanes.flatMap((lane) => laneCells(lane, columns.length));
  expect(cells.map(({ width, laid }) => `${width}${laid ? '!' : ''}`)).toEqual(['1', '1!', '2']);
});
