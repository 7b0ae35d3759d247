import type { Day } from '#units/day.ts';
import { BODY_SITES, LOOSE_KINDS, MACHINE_KINDS } from '#domain/catalogue.ts';
import { raisesOf, type Card } from '#domain/card.ts';
import { instant } from '#domain/identity.ts';
import { knownAt, type Known } from '#domain/known.ts';
import { endOfLog } from '#domain/log.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { Road } from '#domain/road.ts';
import { derive } from '#planning/derive.ts';
import { planIssue } from '#planning/issue.ts';
import { isInFlight, machinesOn, siteOn } from '#planning/machine-on.ts';
import { isMachineOut, planContext } from '#planning/plan-context.ts';
import { painGaps } from '#planning/re-made.ts';
import { placeOnRoad } from '#planning/time/place-on-road.ts';
import { shortText } from '#interchange/plain-text/short-text.ts';
import type { ReMadeWindow, ReMakeWindow } from '#contract/windows/re-make-window.ts';
import { draftOf, logWith } from '#actions/drafts.ts';
import { reMakingFacts, reMakingProblems, type ReMaking } from '#actions/re-make-session.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import { personHead } from './person-head.ts';

export const reMakeWindow = (snapshot: Snapshot, known: Known, road: Road, day: Day): ReMakeWindow => ({
  person: personHead(snapshot, known),
  upTo: road.upTo,
  day,
  missionDay: known.mission ? showMissionDay(known.mission, day) : '',
  site: known.house.sites.get(siteOn(known, day) ?? ('' as never))?.name ?? null,
  sessions: sessionsToMake(known, road, day),
  gear: gearOn(known, day),
  bodySites: BODY_SITES,
  isIssued: road.cards.some((card) => card.day === day && card.state === 'issued'),
});

/** Sessions of the phase that holds the day, the day's own first. */
const sessionsToMake = (known: Known, road: Road, day: Day): ReMakeWindow['sessions'] => {
  const place = placeOnRoad(planContext(known), day);
  const own = road.cards.find((card) => card.day === day);
  const ofDay = own && (own.state === 'issued' ? own.record.document.card : own.card).session;
  return (place?.phase.sessions ?? [])
    .map(({ id, title, blockMinutes }) => ({ id, title, blockMinutes, isOfDay: id === ofDay }))
    .toSorted((a, b) => Number(b.isOfDay) - Number(a.isOfDay));
};

/** Gear by what is entered for the place; small gear that nobody enters is said by whoever is there. */
const gearOn = (known: Known, day: Day): ReMakeWindow['gear'] => {
  const machines = machinesOn(known, day).filter((machine) => !isMachineOut(machine, day));
  const hasWeight = !isInFlight(known, day);
  return [...MACHINE_KINDS, ...LOOSE_KINDS.filter((kind) => kind !== 'no gear')].map((kind) => {
    const machine = machines.find((each) => each.kind === kind);
    return {
      kind,
      isHere: machine !== undefined || (kind === 'body weight' && hasWeight),
      name: machine?.name ?? null,
    };
  });
};

/** What a session would be if it were made anew so. */
export const reMadeWindow = (snapshot: Snapshot, known: Known, asked: ReMaking): ReMadeWindow => {
  const problems = reMakingProblems(known, asked, snapshot.today);
  if (problems.length > 0) return { ...NOTHING, problems };
  const then = knownIfReMade(snapshot, known, asked);
  const road = derive(then, snapshot.today, asked.day);
  const plan = planIssue(then, road, [asked.day]);
  const hurtsTooMuch = painGaps(planContext(then, snapshot.today), asked.day).length > 0;
  const card = plan.cards[0]?.card ?? plannedOn(road, asked.day);
  if (!card) return { ...NOTHING, gaps: plan.refusals, hurtsTooMuch };
  const { text, messages } = shortText(card, null);
  return { problems: [], card, gaps: plan.refusals, hurtsTooMuch, raises: raisesOf(card), text, messages };
};

const NOTHING: ReMadeWindow = {
  problems: [],
  card: null,
  gaps: [],
  hurtsTooMuch: false,
  raises: [],
  text: '',
  messages: 0,
};

const plannedOn = (road: Road, day: Day): Card | null => {
  const found = road.cards.find((card) => card.day === day && card.state !== 'issued');
  return found && found.state !== 'issued' ? found.card : null;
};

const NEVER = instant('1970-01-01T00:00:00.000Z');

const knownIfReMade = ({ log, house, today }: Snapshot, known: Known, asked: ReMaking): Known => {
  const [signer] = house.signers.keys();
  if (!signer) return known;
  const drafts = reMakingFacts(known.person, asked, { today, reason: 'looked at', basis: known.house.upTo }).map(
    (body, place) => draftOf(() => `looked at ${place}`, signer, body),
  );
  const ahead = logWith(log, drafts, NEVER);
  return knownAt(ahead, known.person, endOfLog(ahead)) ?? known;
};
