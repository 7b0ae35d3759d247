import fc from 'fast-check';
import { expect, test } from 'vitest';
import { laySessions, type Asked, type WeekRoom } from './lay-sessions.ts';

const hours = (...days: readonly number[]): readonly Asked[] => days.map((day) => ({ day, minutes: 60 }));
const [MON, TUE, WED, THU, FRI, SAT] = [0, 1, 2, 3, 4, 5];

/** Minutes of the days that are named, and none on the others. */
const only = (...named: readonly (readonly [day: number, minutes: number])[]): WeekRoom =>
  Array.from({ length: 7 }, (_, day) => named.find(([each]) => each === day)?.[1] ?? 0);
const open = (...without: readonly number[]): WeekRoom =>
  Array.from({ length: 7 }, (_, day) => (without.includes(day) ? 0 : null));

test.each([
  { what: 'every day has time: as the programme means', room: open(), laid: [MON, WED, FRI] },
  { what: 'a day without time: the next one', room: open(WED), laid: [MON, THU, FRI] },
  {
    what: 'no time from Wednesday on: earlier, in order',
    room: open(WED, THU, FRI, SAT, 6),
    laid: [MON, TUE, null],
  },
  {
    what: 'four single hours: as many days',
    room: only([MON, 60], [TUE, 60], [THU, 60], [SAT, 60]),
    laid: [MON, THU, SAT],
  },
  {
    what: 'two blocks of two hours: two together on the later one',
    room: only([TUE, 120], [THU, 120]),
    laid: [TUE, THU, THU],
  },
  { what: 'ninety minutes hold no two hours', room: only([TUE, 90], [THU, 90]), laid: [TUE, THU, null] },
  { what: 'a day that is only free holds one', room: open(MON, TUE, WED, FRI, SAT, 6), laid: [THU, null, null] },
  { what: 'a week without time', room: only(), laid: [null, null, null] },
])('$what', ({ room, laid }) => {
  expect(laySessions(hours(MON, WED, FRI), room)).toEqual(laid);
});

test('a short day still takes a session: its block is cut to the day', () => {
  expect(laySessions(hours(WED), only([WED, 20]))).toEqual([WED]);
});

/** Every way to lay sessions on days in their order. */
const everyWay = (asked: readonly Asked[], room: WeekRoom, from = 0): readonly (readonly (number | null)[])[] => {
  const [, ...rest] = asked;
  if (asked.length === 0) return [[]];
  const places = room.flatMap((_, day) => (day >= from ? [day] : []));
  return [
    ...everyWay(rest, room, from).map((way) => [null, ...way]),
    ...places.flatMap((day) => everyWay(rest, room, day).map((way) => [day, ...way])),
  ];
};

const isAllowed = (asked: readonly Asked[], room: WeekRoom, way: readonly (number | null)[]): boolean =>
  room.every((minutes, day) => {
    const there = asked.filter((_, at) => way[at] === day);
    if (there.length <= 1) return there.length === 0 || minutes !== 0;
    return there.length === 2 && minutes !== null && there[0] !== undefined && sum(there) <= minutes;
  });

const sum = (some: readonly Asked[]): number => some.reduce((total, { minutes }) => total + minutes, 0);
const laidIn = (way: readonly (number | null)[]): number => way.filter((day) => day !== null).length;

const anyWeek = fc.tuple(
  fc
    .uniqueArray(fc.tuple(fc.nat(6), fc.constantFrom(45, 60, 90)), { maxLength: 4, selector: ([day]) => day })
    .map((days) => days.toSorted(([a], [b]) => a - b).map(([day, minutes]) => ({ day, minutes }))),
  fc.array(fc.constantFrom(0, 0, 45, 60, 120, 150, null), { minLength: 7, maxLength: 7 }),
);

test('no way in order lays more sessions, and what is laid is allowed', () => {
  fc.assert(
    fc.property(anyWeek, ([asked, room]) => {
      const laid = laySessions(asked, room);
      expect(isAllowed(asked, room, laid)).toBe(true);
      const most = Math.max(...everyWay(asked, room).map((way) => (isAllowed(asked, room, way) ? laidIn(way) : 0)));
      expect(laidIn(laid)).toBe(most);
      const days = laid.filter((day) => day !== null);
      expect(days).toEqual(days.toSorted((a, b) => a - b));
    }),
  );
});

test('with time on all the days that it means, a week stays as the programme means it', () => {
  fc.assert(
    fc.property(anyWeek, ([asked, room]) => {
      const given = room.map((minutes, day) => (asked.some((each) => each.day === day) ? null : minutes));
      expect(laySessions(asked, given)).toEqual(asked.map(({ day }) => day));
    }),
  );
});
