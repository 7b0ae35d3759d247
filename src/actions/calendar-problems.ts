import { addDays, daysBetween, isoOfDay, type Day } from '#units/day.ts';
import type { Problem } from '#contract/problem.ts';
import type { Fact, FactBody } from '#domain/fact.ts';
import type { CheckedEntry } from './entry.ts';
import { unlikely } from './plausible.ts';

type BodyOf<Kind extends FactBody['kind']> = Extract<FactBody, { readonly kind: Kind }>;

/** What stands against a person's own calendar: weekly minutes, days set aside, space walks, holds of the road. */
export const calendarProblems = (
  { body, supersedes }: CheckedEntry,
  entries: readonly CheckedEntry[],
  current: readonly Fact[],
  today: Day,
): readonly Problem[] => {
  const others: readonly FactBody[] = [
    ...current.filter(({ id }) => id !== supersedes),
    ...entries.map((entry) => entry.body).filter((other) => other !== body),
  ];
  if (body.kind === 'available') return [...minutesProblems(body.minutes), ...farAway(body.from, 'from', today)];
  if (body.kind === 'set aside') return [...asideProblems(body), ...farAway(body.from, 'from', today)];
  if (body.kind === 'road holds') return [...holdTwice(body, others), ...farAway(body.from, 'from', today)];
  return body.kind === 'space walk' ? spaceWalkProblems(body, others) : [];
};

/** Ten years either way: nobody's mission is planned longer before. */
const FARTHEST = 3653;

const farAway = (day: Day, field: string, today: Day): readonly Problem[] =>
  Math.abs(daysBetween(today, day)) <= FARTHEST
    ? []
    : [
        {
          what: `${isoOfDay(day)} is more than ten years away.`,
          why: 'Most likely a year was mistyped.',
          whatToDo: 'Correct the day.',
          field,
        },
      ];

/** Two and a half hours a day are usual aboard, set-up and stow with it (common practice): twice that is asked about. */
const MANY_MINUTES = 300;
/** Up to this a whole week reads like hours; our own design. */
const LIKE_HOURS = 6;

const minutesProblems = (minutes: readonly number[]): readonly Problem[] => {
  const most = Math.max(...minutes);
  const many = minutes.flatMap((each, place) => (each > MANY_MINUTES ? [tooMany(each, `minutes.${place}`)] : []));
  return most > 0 && most <= LIKE_HOURS
    ? [unlikely(`At most ${most} minutes a day are left.`, 'They read like hours.', 'minutes.0')]
    : many;
};

const tooMany = (minutes: number, field: string): Problem =>
  unlikely(
    `${minutes} minutes of training on one day are more than ${MANY_MINUTES}.`,
    'Set-up, hook-up and stow are part of them, and nobody trains for so long day after day.',
    field,
  );

/** A season: longer than that, the week itself has changed; our own design. */
const LONG_ASIDE = 92;

const asideProblems = ({ from, until, minutes }: BodyOf<'set aside'>): readonly Problem[] => [
  ...(minutes > MANY_MINUTES ? [tooMany(minutes, 'minutes')] : []),
  ...(daysBetween(from, until) > LONG_ASIDE
    ? [
        unlikely(
          `${daysBetween(from, until) + 1} days are set aside at once.`,
          'What lasts longer than a season is a change of the weekly minutes.',
          'until',
        ),
      ]
    : []),
];

const spaceWalkProblems = (body: BodyOf<'space walk'>, others: readonly FactBody[]): readonly Problem[] => {
  const assigned = others.findLast(
    (other): other is BodyOf<'assigned'> => other.kind === 'assigned' && other.person === body.person,
  );
  if (!assigned) return [noMission()];
  const mission = others.findLast(
    (other): other is BodyOf<'dated'> => other.kind === 'dated' && other.mission === assigned.mission,
  );
  const twice = others.some(
    (other) => other.kind === 'space walk' && other.person === body.person && other.day === body.day,
  );
  return [
    ...(mission && !isInFlight(mission, body.day) ? [notInFlight(mission)] : []),
    ...(twice ? [walkTwice(body.day)] : []),
    ...(assigned.spaceWalks ? [] : [notPrepared()]),
  ];
};

/** The day of launch and the day of landing hold no work outside. */
const isInFlight = ({ launch, landing }: BodyOf<'dated'>, day: Day): boolean =>
  day > launch && (landing === null || day < landing.latest);

const noMission = (): Problem => ({
  what: 'This person has no mission.',
  why: 'A space walk lies between a launch and a landing.',
  whatToDo: 'Record the mission dates first.',
  field: 'day',
});

const notInFlight = ({ launch, landing }: BodyOf<'dated'>): Problem => ({
  what: 'The space walk does not lie in the flight.',
  why: `The flight is from ${isoOfDay(launch)}${landing ? ` to ${isoOfDay(landing.latest)}` : ''}.`,
  whatToDo: `Give a day from ${isoOfDay(addDays(launch, 1))}${landing ? ` to ${isoOfDay(addDays(landing.latest, -1))}` : ''}, or move the mission first.`,
  field: 'day',
});

const walkTwice = (day: Day): Problem => ({
  what: `A space walk of this person stands on ${isoOfDay(day)} already.`,
  why: 'Hands would be rested for it twice.',
  whatToDo: 'Correct the one that is there.',
  field: 'day',
});

const notPrepared = (): Problem =>
  unlikely(
    'This person is not recorded as preparing for space walks.',
    'Training of the hands and their rest before the walk hang on that.',
    'day',
  );

const holdTwice = (body: BodyOf<'road holds'>, others: readonly FactBody[]): readonly Problem[] =>
  others.some((other) => other.kind === 'road holds' && other.person === body.person && overlaps(other, body))
    ? [
        {
          what: 'The road holds already on some of these days.',
          why: 'Two holds of the same days would be counted twice.',
          whatToDo: 'Correct the one that is there.',
          field: 'from',
        },
      ]
    : [];

interface Span {
  readonly from: Day;
  readonly until: Day | null;
}

const overlaps = (one: Span, other: Span): boolean =>
  (other.until === null || one.from <= other.until) && (one.until === null || other.from <= one.until);
