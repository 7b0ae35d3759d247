import { idOf } from '#domain/identity.ts';
import { takeUp, type ProgrammePhase, type ProgrammeSession } from '#domain/programme.ts';
import {
  GENERAL_FIRST,
  GENERAL_SECOND,
  GENERAL_THIRD,
  QUARANTINE_DAY,
  TAPER_FIRST,
  TAPER_SECOND,
} from './preparation-lines.ts';
import { itemOnGround, type ProgrammeLine } from './programme-line.ts';
import { HEAVY_DAY, LIGHT_DAY, MEDIUM_DAY } from './programme-lines.ts';

/**
 * Four to five single hours a week before launch, or two blocks of two (common practice): three of the hours are strength,
 * each inside its own block so that a busy week can lay two of them together.
 */
const HOUR = 60;
/** The rehearsal of the flight's own days, as long as their resistive part in flight. */
const FLIGHT_LIKE = 90;

const MONDAY = 1;
const WEDNESDAY = 3;
const THURSDAY = 4;
const FRIDAY = 5;

interface GroundDay {
  readonly name: string;
  readonly title: string;
  readonly weekday: number;
  readonly blockMinutes: number;
  readonly lines: readonly ProgrammeLine[];
}

const sessionOf =
  (phase: string) =>
  ({ name, title, weekday, blockMinutes, lines }: GroundDay): ProgrammeSession => ({
    id: idOf(`${name}-${phase}`),
    title,
    weekday,
    blockMinutes,
    items: lines.map((line) => itemOnGround(line, phase)),
  });

const GENERAL: ProgrammePhase = {
  name: 'general preparation',
  span: { first: { from: 'launch', days: -730 }, last: { from: 'launch', days: -181 } },
  deload: { everyWeeks: 5, fewerSets: 1, loadBy: 0.9 },
  sessions: [
    { name: 'first', title: 'First day', weekday: MONDAY, blockMinutes: HOUR, lines: GENERAL_FIRST },
    { name: 'second', title: 'Second day', weekday: WEDNESDAY, blockMinutes: HOUR, lines: GENERAL_SECOND },
    { name: 'third', title: 'Third day', weekday: FRIDAY, blockMinutes: HOUR, lines: GENERAL_THIRD },
  ].map(sessionOf('general')),
  source:
    'Whole body, two to three days a week, 8 to 12 repetitions: Ratamess 2009, Med Sci Sports Exerc 41(3):687–708 (seen). About two years before launch, an easier week every fifth: common practice and our own design.',
};

const FLIGHT_SPECIFIC: ProgrammePhase = {
  name: 'flight-specific preparation',
  span: { first: { from: 'launch', days: -180 }, last: { from: 'launch', days: -15 } },
  deload: { everyWeeks: 5, fewerSets: 1, loadBy: 0.9 },
  sessions: [
    { name: 'heavy', title: 'Heavy day', weekday: MONDAY, blockMinutes: FLIGHT_LIKE, lines: HEAVY_DAY },
    { name: 'medium', title: 'Medium day', weekday: WEDNESDAY, blockMinutes: FLIGHT_LIKE, lines: MEDIUM_DAY },
    { name: 'light', title: 'Light day', weekday: FRIDAY, blockMinutes: FLIGHT_LIKE, lines: LIGHT_DAY },
  ].map((day) =>
    sessionOf('specific')({ ...day, lines: day.lines.filter((line) => line.exercise.name !== 'Pull-down') }),
  ),
  source:
    'The heavy, medium and light days of the flight, under a bar, in the last half year: our own design after common practice, general first, then specific.',
};

const TAPER: ProgrammePhase = {
  name: 'taper',
  span: { first: { from: 'launch', days: -14 }, last: { from: 'launch', days: -8 } },
  deload: null,
  sessions: [
    { name: 'first', title: 'First taper day', weekday: MONDAY, blockMinutes: HOUR, lines: TAPER_FIRST },
    { name: 'second', title: 'Second taper day', weekday: THURSDAY, blockMinutes: HOUR, lines: TAPER_SECOND },
  ].map(sessionOf('taper')),
  source:
    'One to three weeks, 30 to 70 % less volume, load kept: Travis 2020, Sports 8(9):125 (title seen, numbers from memory).',
};

const QUARANTINE: ProgrammePhase = {
  name: 'quarantine',
  span: { first: { from: 'launch', days: -7 }, last: { from: 'launch', days: -2 } },
  deload: null,
  sessions: [
    { name: 'first', title: 'Light whole body', weekday: MONDAY, blockMinutes: HOUR, lines: QUARANTINE_DAY },
    {
      name: 'second',
      title: 'Light whole body',
      weekday: THURSDAY,
      blockMinutes: HOUR,
      lines: QUARANTINE_DAY.map((line) => ({ ...line, name: `${line.name}-second` })),
    },
  ].map(sessionOf('quarantine')),
  source: 'Light and unhurried in the last week, nothing new: common practice, no source.',
};

/** The resistive part of two years before launch. */
export const PREPARATION_PROGRAMME = takeUp({
  programme: idOf('preparation-resistive'),
  name: 'Preparation, resistive part',
  number: 1,
  follows: null,
  phases: [GENERAL, FLIGHT_SPECIFIC, TAPER, QUARANTINE],
});
