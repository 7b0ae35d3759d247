import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Day, dayFromIso, isoDay, isoOfDay } from '#units/day.ts';
import { isAmbiguousDate, orderProvedBy, readBirthDate, readDate, readDateRange } from './read-date.ts';
import type { Value } from './value.ts';

const isoOf = (read: Value<Day>): string => (read.kind === 'value' ? isoOfDay(read.value) : read.kind);

describe('a date is read', () => {
  test.each([
    ['2027-02-10', '2027-02-10'],
    ['2027/2/10', '2027-02-10'],
    ['20270210', '2027-02-10'],
    ['2027-02-10T09:30:00Z', '2027-02-10'],
    ['2027-02-10 09:30', '2027-02-10'],
    ['10 February 2027', '2027-02-10'],
    ['10-Feb-27', '2027-02-10'],
    ['Feb 10, 2027', '2027-02-10'],
    ['February 10th 2027', '2027-02-10'],
    ['Wed, 10 Feb 2027', '2027-02-10'],
    ['10.Feb.2027', '2027-02-10'],
    ['13/02/2027', '2027-02-13'],
    ['02/13/2027', '2027-02-13'],
    ['13.02.27', '2027-02-13'],
  ])('%s is %s', (text, iso) => {
    expect(isoOf(readDate(text, null))).toBe(iso);
  });
});

test.each([
  ['03/04/2027', 'day first', '2027-04-03'],
  ['03/04/2027', 'month first', '2027-03-04'],
  ['3.4.2027', 'day first', '2027-04-03'],
  ['13/04/2027', 'month first', '2027-04-13'],
] as const)('%s read %s is %s', (text, order, iso) => {
  expect(isoOf(readDate(text, order))).toBe(iso);
});

test.each(['31/02/2027', '2027-02-31', '30 February 2027', '31 June 2027', '32/01/2027', '2027-13-01', '29/02/2027'])(
  '%s is no day of the calendar',
  (text) => {
    expect(readDate(text, null)).toMatchObject({
      kind: 'wrong',
      said: { what: `“${text}” is no day of the calendar.` },
    });
  },
);

test('29 February of a leap year is one', () => {
  expect(isoOf(readDate('29/02/2028', null))).toBe('2028-02-29');
});

test.each(['soon', '10 Foo 2027', '=TODAY()', '2027', '1/2', 'NaN'])('%s is no date', (text) => {
  expect(readDate(text, null)).toMatchObject({ kind: 'wrong', said: { what: `“${text}” is not a date.` } });
});

test('the number behind a date is told as what it is', () => {
  expect(readDate('46120', null)).toMatchObject({
    kind: 'wrong',
    said: { why: expect.stringContaining('2026-04-08') as string },
  });
});

test.each([
  ['03/04/2027', true, null],
  ['03/03/2027', false, null],
  ['13/04/2027', false, 'day first'],
  ['04/13/2027', false, 'month first'],
  ['2027-03-04', false, null],
  ['3 April 2027', false, null],
] as const)('%s: ambiguous %s, proves %s', (text, ambiguous, proves) => {
  expect(isAmbiguousDate(text)).toBe(ambiguous);
  expect(orderProvedBy(text)).toBe(proves);
});

test('a birth date with a short year lies in the past', () => {
  expect(isoOf(readBirthDate('23/07/88', null, isoDay('2027-03-01')))).toBe('1988-07-23');
  expect(isoOf(readBirthDate('23/07/05', null, isoDay('2027-03-01')))).toBe('2005-07-23');
  expect(isoOf(readBirthDate('23/07/2031', null, isoDay('2027-03-01')))).toBe('2031-07-23');
});

test.each([
  '2027-09-01 to 2027-09-20',
  '2027-09-01 – 2027-09-20',
  '2027-09-01/2027-09-20',
  '1 Sep 2027 - 20 Sep 2027',
  '2027-09-01..2027-09-20',
])('a range is two days: %s', (text) => {
  expect(readDateRange(text, null)).toEqual({
    kind: 'value',
    value: { from: isoDay('2027-09-01'), to: isoDay('2027-09-20') },
  });
});

const anyDay = fc.integer({ min: 11_000, max: 25_000 }).map((number) => number as Day);

test('a day written in any order is read back in that order', () => {
  fc.assert(
    fc.property(anyDay, fc.constantFrom('/', '-', '.'), (day, mark) => {
      const [year = '', month = '', date = ''] = isoOfDay(day).split('-');
      expect(readDate([date, month, year].join(mark), 'day first')).toEqual({ kind: 'value', value: day });
      expect(readDate([month, date, year].join(mark), 'month first')).toEqual({ kind: 'value', value: day });
      expect(readDate([year, month, date].join(mark), null)).toEqual({ kind: 'value', value: day });
    }),
  );
});

test('no text is read as a day that the calendar has not', () => {
  const impossible = (text: string): boolean => {
    const read = readDate(text, 'day first');
    return read.kind === 'value' && dayFromIso(isoOfDay(read.value)) !== read.value;
  };
  const looksLikeADate = fc.stringMatching(/^[0-9]{1,4}[-/. ][0-9]{1,2}[-/. ][0-9]{1,4}$/);
  fc.assert(
    fc.property(fc.oneof(looksLikeADate, fc.string({ maxLength: 14 })), (text) => {
      expect(impossible(text)).toBe(false);
    }),
  );
});
