import { addDays, isoOfDay, type Day } from '#units/day.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { Road } from '#domain/road.ts';
import { askedTests } from '#planning/asked-tests.ts';
import { planContext, type PlanContext } from '#planning/plan-context.ts';
import { roadEnds } from '#planning/road-layout.ts';
import { phaseSpans } from '#planning/road-spans.ts';
import { mondayOf, standingCards } from '#planning/road-weeks.ts';
import { leftOutBehind, nextGate } from '#planning/squat-gates.ts';
import { roomOn } from '#planning/time/day-room.ts';
import { shortWeeks } from '#planning/time/short-weeks.ts';
import { walksOfRoad } from '#planning/time/walks-of-road.ts';
import type { DeskAsk, DeskLine, DeskLink } from '#contract/windows/desk-window.ts';
import { followedBy } from './person-head.ts';
import { shortSays } from './road-day-sentences.ts';
import { restrictionsOf } from './sheet-strips.ts';
import { daysToIssue } from './sheet-window.ts';

/** What the road of a person asks for next: kept with the road, which is kept until something about it changes. */
export const roadLines = (known: Known, road: Road): readonly DeskLine[] => {
  const kept = linesOfRoad.get(road) ?? linesOf({ known, road, context: planContext(known, road.today) });
  linesOfRoad.set(road, kept);
  return kept;
};

const linesOfRoad = new WeakMap<Road, readonly DeskLine[]>();

interface At {
  readonly known: Known;
  readonly road: Road;
  readonly context: PlanContext;
}

const linesOf = (at: At): readonly DeskLine[] => [
  ...handsToBeLookedAt(at),
  ...cardsOnDaysSetAside(at),
  ...reviewsDue(at),
  ...gateToJudge(at),
  ...testsDue(at),
  ...cardsToIssue(at),
  ...outsideTheWindows(at),
  ...cannotBeIssued(at),
];

const ask = ({ known: { person, name } }: At, kind: DeskAsk, says: string, to: DeskLink, link: string): DeskLine => ({
  kind,
  person,
  name,
  says,
  link: { to, says: link },
});

const show = ({ known: { mission } }: At, day: Day): string => (mission ? showMissionDay(mission, day) : isoOfDay(day));

const handsToBeLookedAt = (at: At): readonly DeskLine[] => {
  const { known, road, context } = at;
  const last = walksOfRoad(context, road.today).findLast(({ fact }) => fact.day <= road.today);
  if (!last || (last.state !== 'to be looked at' && last.state !== 'not sound')) return [];
  const before =
    last.state === 'not sound' && last.look
      ? `not sound on ${show(at, last.look.day)}; look again`
      : 'nobody has looked at hands and shoulders yet: have them looked at';
  return [
    {
      kind: 'hands to be looked at',
      person: known.person,
      name: known.name,
      walk: last.fact.day,
      says: `After the space walk of ${show(at, last.fact.day)} grip and pressing wait; ${before}.`,
    },
  ];
};

/** A card stands as it was issued, also where its day was taken since. */
const cardsOnDaysSetAside = (at: At): readonly DeskLine[] =>
  standingCards(at.road).flatMap((card) => {
    if (card.state !== 'issued' || card.day < at.road.today || card.record.outcome !== 'none') return [];
    const { minutes, taken } = roomOn(at.context, card.day);
    if (minutes !== 0) return [];
    const why = taken === null ? 'has no minutes in this person’s week' : `is taken by ${WHAT[taken] ?? taken}`;
    return [
      ask(
        at,
        'card on a day set aside',
        `A card is issued for ${show(at, card.day)}, which ${why}: call it off.`,
        'sheet',
        'Open the sheet',
      ),
    ];
  });

const WHAT: Readonly<Partial<Record<string, string>>> = {
  'space walk': 'a space walk',
  blackout: 'a blackout',
  test: 'tests',
};

/** A week ahead: a physician is not asked the same morning. */
const REVIEW_AHEAD = 7;

const reviewsDue = (at: At): readonly DeskLine[] =>
  restrictionsOf(at.known).flatMap(({ fact: { restriction }, says, liftedOn }) => {
    const { reviewOn } = restriction;
    if (liftedOn !== null || reviewOn === null || reviewOn > addDays(at.road.today, REVIEW_AHEAD)) return [];
    const when = reviewOn < at.road.today ? `was due on ${show(at, reviewOn)}` : `is due on ${show(at, reviewOn)}`;
    return [
      ask(
        at,
        'restriction to review',
        `${says}: its review ${when}. It binds on; ask the physician.`,
        'record',
        'Open the record',
      ),
    ];
  });

/** Lifts that a card ahead leaves out because their gate was not passed. */
const gateToJudge = (at: At): readonly DeskLine[] => {
  const { known, road } = at;
  const gate = nextGate(known, road.today);
  const waits = road.cards.some(
    (card) => card.state === 'planned' && card.card.leftOut.some(({ says }) => says === leftOutBehind(gate)),
  );
  return gate !== null && waits
    ? [
        ask(
          at,
          'gate to judge',
          `No bar for squat or hip hinge yet: the ${gate} is to be watched and judged.`,
          'squat gate',
          'Judge it',
        ),
      ]
    : [];
};

const testsDue = (at: At): readonly DeskLine[] => {
  const { known, road, context } = at;
  const ends = roadEnds(known, road.today);
  if (!ends || followedBy(known).length === 0) return [];
  return askedTests(known, phaseSpans(context, ends), ends, road.today)
    .filter(({ state }) => state === 'due')
    .map(({ until, tested, lifts, setAsideOn }) => {
      const kept = tested.length === 0 ? '' : `, ${tested.length} of ${lifts.length} lifts done`;
      const aside = setAsideOn === null || setAsideOn < road.today ? '' : `, ${show(at, setAsideOn)} is set aside`;
      return ask(
        at,
        'tests due',
        `Tests are due until ${show(at, until)}${kept}${aside}: test and type in.`,
        'test',
        'Type in',
      );
    });
};

const cardsToIssue = (at: At): readonly DeskLine[] => {
  const { road } = at;
  const days = daysToIssue(road);
  const [next, last] = [days[0], days.at(-1)];
  if (next === undefined || last === undefined) return [];
  const covered = standingCards(road).findLast(({ state, day }) => state === 'issued' && day >= road.today)?.day;
  const ahead = coverSays(at, covered ?? null);
  const count = days.length === 1 ? '1 session' : `${days.length} sessions`;
  return [
    ask(at, 'cards to issue', `${ahead}; ${count} up to ${show(at, last)} can be: issue.`, 'sheet', 'Open the sheet'),
  ];
};

const coverSays = (at: At, covered: Day | null): string => {
  if (covered === null) return 'No card ahead is issued';
  return covered === at.road.today
    ? 'Only today’s card is issued'
    : `Cards cover ${inDays(covered - at.road.today)} ahead, to ${show(at, covered)}`;
};

const inDays = (days: number): string => (days === 1 ? '1 day' : `${days} days`);

/** As far ahead as the road is derived. */
const outsideTheWindows = (at: At): readonly DeskLine[] => {
  const { road, context, known } = at;
  if (followedBy(known).length === 0) return [];
  const short = shortWeeks(context, mondayOf(road.today), road.until).map(shortSays);
  const says = [...short, ...road.unlaid.map((each) => each.says)];
  const [first] = says;
  if (first === undefined) return [];
  const more = says.length > 1 ? ` And ${says.length - 1} more on the road.` : '';
  return [
    ask(
      at,
      'outside the windows',
      `${first}${more} Find time.`,
      says.length > 1 ? 'road' : 'weekly minutes',
      says.length > 1 ? 'Open the road' : 'Change the minutes',
    ),
  ];
};

const cannotBeIssued = (at: At): readonly DeskLine[] => {
  const { known, road } = at;
  if (!known.mission || followedBy(known).length === 0) return [];
  const gaps = [...new Set(road.gaps.map(({ says }) => says))];
  return gaps.map((says) => ask(at, 'cannot be issued', `${says} Enter what is missing.`, 'record', 'Open the record'));
};
