import fc from 'fast-check';
import { afterEach, expect, test, vi } from 'vitest';
import {
  addDays,
  ageInYears,
  day,
  dayFromIso,
  dayOfDate,
  daysBetween,
  flightDay,
  isoDay,
  isoOfDay,
  weekdayOf,
} from './day.ts';

afterEach(() => void vi.unstubAllEnvs());

const anyDay = fc.integer({ min: -25_567, max: 84_370 }).map(day);

test.each([
  { iso: '1970-01-01', number: 0 },
  { iso: '1969-12-31', number: -1 },
  { iso: '2000-02-29', number: 11_016 }, // 30 years, 7 leap days before 2000, 31 + 28 days: 10950 + 7 + 59
  { iso: '1900-01-01', number: -25_567 }, // 70 years with the leap days of 1904 to 1968, 17: 25550 + 17
  { iso: '2200-12-31', number: 84_370 }, // 231 years with 56 leap days, none in 2100 and 2200, less one
])('$iso is day $number', ({ iso, number }) => {
  expect(isoDay(iso)).toBe(number);
  expect(isoOfDay(day(number))).toBe(iso);
});

test('a day is read back from what is written', () => {
  fc.assert(
    fc.property(anyDay, (on) => {
      expect(isoDay(isoOfDay(on))).toBe(on);
    }),
  );
});

test.each(['2027-02-31', '2027-02-29', '1900-02-29', '2027-13-01', '2027-00-10', '2027-01-00', '2027-04-31'])(
  'the calendar has no %s',
  (iso) => {
    expect(dayFromIso(iso)).toBeNull();
    expect(() => isoDay(iso)).toThrow(`"${iso}" is not a calendar date such as 2027-03-01.`);
  },
);

test.each(['', '2027-3-1', '01/03/2027', '2027-03-01T00:00', ' 2027-03-01', '20270301', '99999-01-01'])(
  '"%s" is no date',
  (text) => {
    expect(dayFromIso(text)).toBeNull();
  },
);

test('leap years are those of the Gregorian calendar', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1900, max: 2200 }), (year) => {
      const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
      expect(dayOfDate(year, 2, 29) !== null).toBe(isLeap);
    }),
  );
});

test('a day has no fraction', () => {
  expect(() => day(1.5)).toThrow('A day is a whole number; it is 1.5.');
  expect(() => day(NaN)).toThrow('A day is a whole number');
});

test.each([
  { iso: '1970-01-01', weekday: 3 }, // Thursday
  { iso: '1969-07-20', weekday: 6 }, // Sunday
  { iso: '2000-01-01', weekday: 5 }, // Saturday
  { iso: '2027-03-01', weekday: 0 }, // Monday
])('$iso is weekday $weekday, Monday being 0', ({ iso, weekday }) => {
  expect(weekdayOf(isoDay(iso))).toBe(weekday);
});

test('days are added and counted, and weekdays follow one another', () => {
  fc.assert(
    fc.property(anyDay, fc.integer({ min: -1000, max: 1000 }), (on, days) => {
      expect(daysBetween(on, addDays(on, days))).toBe(days);
      expect(weekdayOf(addDays(on, 1))).toBe((weekdayOf(on) + 1) % 7);
    }),
  );
});

test.each([
  { birth: '1991-05-03', on: '2027-05-02', age: 35 },
  { birth: '1991-05-03', on: '2027-05-03', age: 36 },
  { birth: '1992-02-29', on: '2027-02-28', age: 34 },
  { birth: '1992-02-29', on: '2027-03-01', age: 35 },
  { birth: '1992-02-29', on: '2028-02-29', age: 36 },
])('born on $birth, $age years old on $on', ({ birth, on, age }) => {
  expect(ageInYears(isoDay(birth), isoDay(on))).toBe(age);
});

test('launch day is flight day 1', () => {
  expect(flightDay(isoDay('2027-02-08'), isoDay('2027-02-08'))).toBe(1);
  expect(flightDay(isoDay('2027-02-08'), isoDay('2027-03-02'))).toBe(23);
});

// Minutes behind UTC in March 2027: fourteen hours ahead, none, and two and a half behind (summer time from 14 March).
test.each([
  { zone: 'Pacific/Kiritimati', behind: -840 },
  { zone: 'UTC', behind: 0 },
  { zone: 'America/St_Johns', behind: 150 },
])('a day is the same day in $zone', ({ zone, behind }) => {
  vi.stubEnv('TZ', zone);
  expect(new Date(Date.UTC(2027, 2, 20)).getTimezoneOffset()).toBe(behind);
  expect(isoOfDay(isoDay('2027-03-14'))).toBe('2027-03-14');
  expect(weekdayOf(isoDay('2027-03-14'))).toBe(6);
  expect(daysBetween(isoDay('2027-03-13'), isoDay('2027-03-15'))).toBe(2);
  expect(ageInYears(isoDay('1991-03-14'), isoDay('2027-03-14'))).toBe(36);
});
