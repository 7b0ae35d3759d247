import { addDays, day, isoDay } from '#units/day.ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayOfAnchor, showMissionDay, type MissionDates } from './mission-day.ts';

const LAUNCH = isoDay('2027-02-08');
const DATES: MissionDates = {
  launch: LAUNCH,
  landing: { earliest: isoDay('2027-08-05'), latest: isoDay('2027-08-07') },
};

test.each([
  { on: '2027-01-27', shown: 'L−12' },
  { on: '2027-02-07', shown: 'L−1' },
  { on: '2027-02-08', shown: 'flight day 1' },
  { on: '2027-03-02', shown: 'flight day 23' },
  { on: '2027-08-07', shown: 'flight day 181' },
  { on: '2027-08-08', shown: 'R+1' },
  { on: '2027-08-16', shown: 'R+9' },
])('$on is $shown', ({ on, shown }) => {
  expect(showMissionDay(DATES, isoDay(on))).toBe(shown);
});

const anyDates = fc
  .tuple(fc.integer({ min: 0, max: 40_000 }), fc.nat(400), fc.nat(20), fc.boolean())
  .map(([launch, flight, range, known]): MissionDates => {
    const [earliest, latest] = [day(launch + flight), day(launch + flight + range)];
    return { launch: day(launch), landing: known ? { earliest, latest } : null };
  });

/** Counted by the days from launch and the length of the flight. */
const expectedShown = (dates: MissionDates, offset: number): string => {
  if (offset < 0) return `L−${-offset}`;
  const flightDays = dates.landing === null ? Infinity : dates.landing.latest - dates.launch + 1;
  return offset < flightDays ? `flight day ${offset + 1}` : `R+${offset - flightDays + 1}`;
};

test('there is no flight day 0: L−1 is followed by flight day 1, the last flight day by R+1', () => {
  fc.assert(
    fc.property(anyDates, fc.integer({ min: -500, max: 900 }), (dates, offset) => {
      expect(showMissionDay(dates, addDays(dates.launch, offset))).toBe(expectedShown(dates, offset));
    }),
  );
});

test('a flight without a known landing goes on', () => {
  expect(showMissionDay({ launch: LAUNCH, landing: null }, addDays(LAUNCH, 999))).toBe('flight day 1000');
});

test.each([
  { anchor: { on: isoDay('2027-03-01') }, expected: '2027-03-01' },
  { anchor: { from: 'launch', days: -12 }, expected: '2027-01-27' },
  { anchor: { from: 'launch', days: 0 }, expected: '2027-02-08' },
  { anchor: { from: 'landing', days: 9 }, expected: '2027-08-16' },
] as const)('$anchor stands on $expected', ({ anchor, expected }) => {
  expect(dayOfAnchor(anchor, DATES)).toBe(isoDay(expected));
});

test('an anchor on what is not known stands nowhere; a day stands without a mission', () => {
  expect(dayOfAnchor({ from: 'landing', days: 9 }, { launch: LAUNCH, landing: null })).toBeNull();
  expect(dayOfAnchor({ from: 'launch', days: 0 }, null)).toBeNull();
  expect(dayOfAnchor({ on: LAUNCH }, null)).toBe(LAUNCH);
});

test('when launch moves, what is anchored to it moves as far, and a day does not', () => {
  fc.assert(
    fc.property(anyDates, fc.integer({ min: -60, max: 60 }), fc.integer({ min: -30, max: 30 }), (dates, slip, days) => {
      const slipped = { ...dates, launch: addDays(dates.launch, slip) };
      const anchor = { from: 'launch', days } as const;
      expect(dayOfAnchor(anchor, slipped)).toBe((dayOfAnchor(anchor, dates) ?? NaN) + slip);
      expect(dayOfAnchor({ on: LAUNCH }, slipped)).toBe(LAUNCH);
    }),
  );
});
