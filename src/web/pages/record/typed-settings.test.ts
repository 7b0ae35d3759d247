import { expect, test } from 'vitest';
import type { Problem } from '#contract/problem.ts';
import { fieldsOfSettings, rowsFor, settingsOf, type TypedSetting } from './typed-settings.ts';

const row = (field: string, value: string, side = ''): TypedSetting => ({
  key: `${field} ${side}`,
  field,
  value,
  side,
});

const read = (...rows: readonly TypedSetting[]) => {
  const problems: Problem[] = [];
  return { settings: settingsOf(rows, problems), fields: problems.map(({ field }) => field) };
};

test('lines with a value are settings, each with its side; empty ones are left out', () => {
  expect(read(row(' bar stop ', '4'), row('stance', ''), row('pads', '2', 'left'), row('pads', '3', 'right'))).toEqual({
    settings: [
      { field: 'bar stop', value: '4', side: null },
      { field: 'pads', value: '2', side: 'left' },
      { field: 'pads', value: '3', side: 'right' },
    ],
    fields: [],
  });
});

test('a value without a name and a setting twice for one side are told at their lines, all at once', () => {
  expect(read(row('', '4'), row('pads', '2'), row('Pads', '3', 'left'))).toEqual({
    settings: null,
    fields: ['settings.0.field', 'settings.2.field'],
  });
});

test('nothing typed is no settings', () => {
  expect(read(row('stance', ' '))).toEqual({ settings: null, fields: [null] });
  expect(read()).toEqual({ settings: null, fields: [null] });
});

test('what stands comes first, then what the exercise asks for and nobody has said', () => {
  const rows = rowsFor([{ field: 'Stance', value: 'wide', side: null }], ['bar stop', 'stance']);
  expect(rows.map(({ field, value }) => [field, value])).toEqual([
    ['Stance', 'wide'],
    ['bar stop', ''],
  ]);
  expect(fieldsOfSettings(1)).toEqual(['settings.0.field', 'settings.0.value']);
});
