import { idOf } from '#domain/identity.ts';
import { takeUp, type ProgrammeItem, type ProgrammePhase, type ProgrammeSession } from '#domain/programme.ts';
import { itemForFirstWeeks, itemForMainFlight, type ProgrammeLine } from './programme-line.ts';
import { HEAVY_DAY, LIGHT_DAY, MEDIUM_DAY } from './programme-lines.ts';

/**
 * Of a day with two and a half hours of exercise, 90 minutes go to the resistive part and 60 to the aerobic one, set-up and
 * stowing included in both (common practice).
 */
const BLOCK_MINUTES = 90;

interface TrainingDay {
  readonly name: string;
  readonly title: string;
  readonly weekday: number;
  readonly lines: readonly ProgrammeLine[];
}

/**
 * Flight days 4, 11, 18 … are heavy: the first day on which anything resistive is done begins with the leading tracks,
 * still low on both ramps. Two nights at least lie between any two of the three days.
 */
const DAYS: readonly TrainingDay[] = [
  { name: 'medium', title: 'Medium day', weekday: 1, lines: MEDIUM_DAY },
  { name: 'heavy', title: 'Heavy day', weekday: 4, lines: HEAVY_DAY },
  { name: 'light', title: 'Light day', weekday: 6, lines: LIGHT_DAY },
];

const sessionsOf = (phase: string, itemOf: (line: ProgrammeLine) => ProgrammeItem): readonly ProgrammeSession[] =>
  DAYS.map((day) => ({
    id: idOf(`${day.name}-${phase}`),
    title: day.title,
    weekday: day.weekday,
    blockMinutes: BLOCK_MINUTES,
    items: day.lines.map(itemOf),
  }));

const FIRST_FLIGHT_WEEKS: ProgrammePhase = {
  name: 'first flight weeks',
  span: { first: { from: 'launch', days: 0 }, last: { from: 'launch', days: 13 } },
  deload: null,
  sessions: sessionsOf('first', itemForFirstWeeks),
  source:
    'Flight days 1 to 14, nothing resistive before day 4: the body is still finding its place and back pain is common (Kerstman 2012, Aviat Space Environ Med 83:2–7, from memory); the days are common practice and a policy.',
};

const MAIN_FLIGHT: ProgrammePhase = {
  name: 'main flight',
  span: { first: { from: 'launch', days: 14 }, last: null },
  deload: { everyWeeks: 5, fewerSets: 1, loadBy: 0.9 },
  sessions: sessionsOf('main', itemForMainFlight),
  source:
    'Three days of different weight: English 2020, npj Microgravity 6:21 (seen). An easier week every 4 to 6 with less volume and effort: interviews with specialists, sportRxiv 208 (seen); every fifth, one set less and 10 % off: our own design.',
};

/** The resistive part of the flight programme that ships. */
export const SET_PROGRAMME = takeUp({
  programme: idOf('flight-resistive'),
  name: 'Flight, resistive part',
  number: 1,
  follows: null,
  phases: [FIRST_FLIGHT_WEEKS, MAIN_FLIGHT],
});
