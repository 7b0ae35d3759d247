import { isoOfDay, type Day } from '#units/day.ts';
import type { Fact } from '#domain/fact.ts';
import type { PersonId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import { datesOverTime } from '#planning/mission-dates.ts';
import type { ProgrammeItem } from '#domain/programme.ts';
import type { RoadLayout } from '#planning/road-layout.ts';
import type { PhaseSpan } from '#planning/road-spans.ts';
import { holdSentences, seatSentences, unlaidSentences, walkSentences, windowSentences } from './road-day-sentences.ts';
import { doseSentences } from './road-dose-window.ts';
import { showFirstDay } from './road-marks.ts';
import type { RoadSentence } from '#contract/windows/road-window.ts';

const WEEK = 7;

/** What the road says that needs a word: moved dates, an open landing, what nobody planned, tests due, time. */
export const roadSentences = (layout: RoadLayout, log: readonly Fact[], known: Known): readonly RoadSentence[] => [
  ...movedDates(layout, log, known.person),
  ...landingSentences(layout),
  ...seatSentences(known, log),
  ...holdSentences(layout),
  ...walkSentences(layout),
  ...layout.gaps.map((gap) => gapSentence(layout, gap)),
  ...testSentences(layout),
  ...windowSentences(layout),
  ...unlaidSentences(layout),
  ...timeSentences(layout),
  ...doseSentences(layout),
];

const movedDates = ({ mission }: RoadLayout, log: readonly Fact[], person: PersonId): readonly RoadSentence[] => {
  const over = datesOverTime(log, person);
  return over.flatMap(({ since, mission: to }, place) => {
    const from = over[place - 1]?.mission;
    if (!from || !to || from.id !== to.id || to.id !== mission.id) return [];
    const moves = [
      movedBy('Launch', from.launch, to.launch),
      movedBy('Landing', from.landing?.latest ?? null, to.landing?.latest ?? null),
    ].flatMap((move) => move ?? []);
    if (moves.length === 0) return [];
    const why = since.reason === null || since.reason === '' ? '' : ` Reason given: ${since.reason}`;
    return [{ kind: 'dates', says: `${moves.join(' ')}${why}`, link: null } as const];
  });
};

const movedBy = (what: string, from: Day | null, to: Day | null): string | null => {
  if (from === to || to === null) return from === to ? null : `${what} is not dated any more.`;
  if (from === null) return `${what} was dated: ${isoOfDay(to)}.`;
  const days = Math.abs(to - from);
  return `${what} moved by ${days} ${days === 1 ? 'day' : 'days'}, from ${isoOfDay(from)} to ${isoOfDay(to)}.`;
};

const landingSentences = ({ mission: { landing } }: RoadLayout): readonly RoadSentence[] => {
  if (landing === null)
    return [
      {
        kind: 'dates',
        says: 'Landing is not dated: half a year of flight is drawn and left open, and nothing that counts from landing has a day.',
        link: { to: 'mission dates', says: 'Date it' },
      },
    ];
  return landing.earliest === landing.latest
    ? []
    : [
        {
          kind: 'dates',
          says: `Landing lies between ${isoOfDay(landing.earliest)} and ${isoOfDay(landing.latest)}: the flight is planned to the latest day.`,
          link: null,
        },
      ];
};

const gapSentence = ({ mission }: RoadLayout, { first, last, side }: PhaseSpan): RoadSentence => {
  const weeks = Math.round((last - first + 1) / WEEK);
  const where = `${showFirstDay(mission, first, side)} to ${showMissionDay(mission, last)}`;
  const what = side === 'after landing' ? 'Practice there is a session a day for about six weeks.' : '';
  return {
    kind: 'gap',
    says: `No programme holds from ${isoOfDay(first)} to ${isoOfDay(last)} (${where}): ${weeks} ${weeks === 1 ? 'week' : 'weeks'} ${side}. ${what}`.trim(),
    link: { to: 'programmes', says: 'Choose one' },
  };
};

const testSentences = ({ asked, mission }: RoadLayout): readonly RoadSentence[] =>
  asked
    .filter(({ state }) => state === 'due')
    .map(({ day, until, setAsideOn }) => ({
      kind: 'test',
      says: `Tests are due about ${showMissionDay(mission, day)}, ${isoOfDay(day)}, and until ${showMissionDay(mission, until)}.${setAsideOn === null ? ' Set a day aside for them, and the two days before it are light.' : ''}`,
      link: { to: 'test', says: 'Type them in' },
    }));

/** One sentence over all phases whose programme holds less than practice asks for. */
const timeSentences = ({ phases }: RoadLayout): readonly RoadSentence[] => {
  const short = phases.filter(
    ({ held, time }) => held !== null && time.practiceAWeek !== null && time.reservedAWeek < time.practiceAWeek,
  );
  if (short.length === 0) return [];
  const parts = short.map(
    ({ held, time }) => `${held?.phase.name ?? ''} ${time.reservedAWeek} of ${time.practiceAWeek}`,
  );
  const without = short.filter(({ held }) => !held?.phase.sessions.some(({ items }) => items.some(isBouts)));
  const why =
    without.length === 0
      ? ''
      : ` Their programmes hold no endurance: ${without.map(({ held }) => held?.phase.name ?? '').join(', ')}.`;
  return [
    {
      kind: 'time',
      says: `Minutes a week that are reserved, of those that practice asks for: ${parts.join('; ')}.${why}`,
      link: { to: 'programmes', says: 'Look at them' },
    },
  ];
};

const isBouts = ({ kind }: ProgrammeItem): boolean => kind === 'bouts';
