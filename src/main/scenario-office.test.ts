import { liftsOf, type CardBouts } from '#domain/card.ts';
import { parseDraft } from '#contract/facts/parse-fact.ts';
import type { Fact } from '#domain/fact.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { currentFacts, endOfLog, expectedDigest, factsOfKind } from '#domain/log.ts';
import type { InventedPerson } from '#scenario/invented-person.ts';
import { liveThrough } from '#scenario/live-through.ts';
import {
  ANSELM,
  DARIO,
  INES,
  INVENTED_PEOPLE,
  JOON_HO,
  KERTTU,
  NOOR,
  OONA,
  RAFAEL,
  TEUILA,
  TOMAS,
  WEN_LI,
} from '#scenario/people.ts';
import { TREADMILL } from '#scenario/skerry-station.ts';
import { addDays, flightDay, isoDay, isoOfDay, type Day } from '#units/day.ts';
import { expect, test } from 'vitest';
import { scenarioOffice } from './scenario-office.ts';

const TODAY = isoDay('2027-03-01');
const { log, writings, refused } = liveThrough(TODAY, scenarioOffice('ballast test'));
const current = currentFacts(log, endOfLog(log));
const decisions = factsOfKind(current, 'decided');
const documents = decisions.flatMap(({ decision }) => (decision.kind === 'issue' ? [decision.card] : []));

const cardsOf = (person: InventedPerson): readonly IssuedCard[] =>
  documents.filter((document) => document.person.id === person.id);
const onFlightDay = (person: InventedPerson, day: number): IssuedCard => {
  const found = cardsOf(person).find(({ card, mission }) => flightDay(mission.launch, card.day) === day);
  if (!found) throw new Error(`${person.name} has no card of flight day ${day}`);
  return found;
};
const resultOf = (document: IssuedCard): Fact<'trained'> | undefined =>
  factsOfKind(current, 'trained').find(({ card }) => card === document.id);
const resultsOf = (person: InventedPerson): readonly Fact<'trained'>[] =>
  factsOfKind(current, 'trained').filter((fact) => fact.person === person.id);
const squatLoad = ({ card }: IssuedCard): number | undefined =>
  liftsOf(card)
    .find(({ exercise }) => exercise === 'back-squat')
    ?.sets.findLast(({ kind }) => kind === 'work')?.load.increments;

test('everything was recorded before today, in order, and stands up to its digest', () => {
  const moments = log.map(({ recordedAt }) => recordedAt);
  expect(moments).toEqual(moments.toSorted());
  expect(moments.every((moment) => moment < isoOfDay(TODAY))).toBe(true);
  expect(log.every((fact) => fact.digest === expectedDigest(fact))).toBe(true);
});

test('every draft is one that the log takes', () => {
  const drafts = writings.flatMap((writing) => writing.drafts);
  expect(drafts.map((draft) => parseDraft(draft)).filter(({ kind }) => kind === 'refused')).toEqual([]);
  expect(new Set(drafts.map(({ id }) => id)).size).toBe(log.length);
});

test('it is the same every time', () => {
  expect(liveThrough(TODAY, scenarioOffice('ballast test')).log.at(-1)?.digest).toBe(log.at(-1)?.digest);
});

test('it can begin on any day', () => {
  const leapDay = isoDay('2028-02-29');
  const other = liveThrough(leapDay, scenarioOffice('ballast test'));
  expect(other.log.length).toBe(log.length);
  expect(other.log.every(({ recordedAt }) => recordedAt < isoOfDay(leapDay))).toBe(true);
});

test('cards are issued to those in flight, on every day from the second on, to one who prepares and to those home again', () => {
  const holders = new Set(documents.map(({ person }) => person.id));
  expect(holders).toEqual(new Set([INES, TOMAS, OONA, KERTTU, RAFAEL, WEN_LI, JOON_HO, NOOR].map(({ id }) => id)));
  expect([ANSELM, DARIO, TEUILA].flatMap((person) => cardsOf(person))).toEqual([]);
  expect(cardsOf(INES).map(({ card, mission }) => flightDay(mission.launch, card.day))).toEqual(
    Array.from({ length: 27 }, (_, place) => place + 2),
  );
});

const boutsOf = ({ card }: IssuedCard): readonly CardBouts[] =>
  card.items.filter((item): item is CardBouts => item.kind === 'bouts');

/** Bouts with their result, of everybody. */
const ridden = documents.flatMap((document) =>
  boutsOf(document).flatMap((item) => {
    const result = resultOf(document)?.pieces.find((each) => each.item === item.item);
    return result ? [{ document, item, result }] : [];
  }),
);

test('bouts come back with beats, watts or km/h and effort, as bodies have them', () => {
  expect(ridden.length).toBeGreaterThan(250);
  for (const { document, item, result } of ridden) {
    const person = INVENTED_PEOPLE.find(({ id }) => id === document.person.id);
    expect(result.heartRate).toBeGreaterThan((person?.stamina.restingRate ?? Infinity) + 10);
    expect(result.heartRate).toBeLessThanOrEqual(person?.stamina.greatestRate ?? 0);
    expect(result.done).toBeGreaterThan(0);
    expect(result.done).toBeLessThanOrEqual(item.bouts.length);
    if (result.watts !== null) expect(result.watts).toBeLessThan(800);
    if (result.speed !== null) expect(result.speed).toBeLessThan(16);
    expect(result.harness === null).toBe(item.harness === null);
  }
  expect(ridden.some(({ result }) => result.watts !== null)).toBe(true);
  expect(ridden.some(({ result }) => result.speed !== null)).toBe(true);
});

test('a plan from tests meets the body it was made for: the heart beats near what the card says, on average', () => {
  const steady = ridden.flatMap(({ item, result }) => {
    const [bout] = item.bouts;
    return item.bouts.length === 1 && bout?.heartRate && result.heartRate
      ? [result.heartRate - (bout.heartRate[0] + bout.heartRate[1]) / 2]
      : [];
  });
  expect(steady.length).toBeGreaterThan(60);
  const mean = steady.reduce((sum, each) => sum + each, 0) / steady.length;
  // Costs and curves of the invented bodies are not those of the plan; flight takes 4 to 8 % of their uptake.
  expect(Math.abs(mean)).toBeLessThan(15);
});

test('where nobody was tested effort leads, and what was set all the same is written down', () => {
  const byFeel = ridden.filter(({ document }) => document.person.id === OONA.id);
  expect(byFeel.length).toBeGreaterThan(10);
  for (const { item, result } of byFeel) {
    for (const { watts, speed } of item.bouts) expect([watts, speed]).toEqual([null, null]);
    expect(result.watts ?? result.speed).not.toBeNull();
  }
});

test('the harness begins at 65 % of body weight, and every step up was earned and signed', () => {
  const pulls = cardsOf(KERTTU).flatMap((document) =>
    boutsOf(document).flatMap(({ harness }) => (harness && !document.card.deload ? [harness.ofBodyWeight] : [])),
  );
  // In steps of 2 lb of some 146 lb.
  expect(Math.abs((pulls[0] ?? 0) - 0.65)).toBeLessThan(0.007);
  expect(Math.max(...pulls)).toBeGreaterThan(0.8);
  expect(Math.max(...pulls)).toBeLessThan(0.91);
  const steps = cardsOf(KERTTU).flatMap(({ raises }) =>
    raises.filter(({ exerciseName, cause }) => /harness/i.test(exerciseName) && cause === 'ramp step'),
  );
  expect(steps.length).toBeGreaterThan(4);
  for (const { because } of steps) expect(because.length).toBeGreaterThanOrEqual(2);
});

test('nothing on the treadmill is reported of the days on which it stands still', () => {
  const still = ridden.filter(({ item, result, document }) => {
    const day = resultOf(document)?.day ?? 0;
    return item.machine === TREADMILL.id && day >= addDays(TODAY, -5) && result.done > 0;
  });
  expect(still).toEqual([]);
  const told = documents.filter(
    ({ card, issuedAt }) =>
      issuedAt > isoOfDay(addDays(TODAY, -3)) && card.day <= addDays(TODAY, 3) && inFlight(card.day),
  );
  expect(told.length).toBeGreaterThan(3);
  expect(told.flatMap(boutsOf).filter(({ machine }) => machine === TREADMILL.id)).toEqual([]);
});

const inFlight = (day: Day): boolean => day > addDays(TODAY, -5);

test('hands are trained by who works outside alone, with the force of their own tests', () => {
  const grip = documents.flatMap(({ person, card }) =>
    card.items.flatMap((item) => (item.kind === 'drill' && item.exercise === 'grip-pulses' ? [{ person, item }] : [])),
  );
  expect(new Set(grip.map(({ person }) => person.id))).toEqual(
    new Set([KERTTU, RAFAEL, INES, WEN_LI].map(({ id }) => id)),
  );
  expect(grip.filter(({ item }) => item.sets.some(({ force }) => force !== null)).length).toBeGreaterThan(20);
});

test('who landed comes back by stages: no bar, no bouts in the first; back to the bar in the third, watched before', () => {
  const stages = (person: InventedPerson) => new Set(cardsOf(person).map(({ card }) => card.phase));
  expect(stages(JOON_HO)).toEqual(new Set(['first return stage', 'second return stage']));
  expect(stages(NOOR)).toEqual(new Set(['first return stage', 'second return stage', 'third return stage']));
  const first = [...cardsOf(JOON_HO), ...cardsOf(NOOR)].filter(({ card }) => card.phase === 'first return stage');
  expect(first.flatMap(boutsOf)).toEqual([]);
  for (const { card } of first) for (const { exercise } of liftsOf(card)) expect(exercise).not.toBe('back-squat');
  const squats = cardsOf(NOOR).flatMap(({ card }) => liftsOf(card).filter(({ exercise }) => exercise === 'back-squat'));
  expect(squats.length).toBeGreaterThan(0);
});

// 104.7 kg, 71.4 kg, share 0.717, 0.78 of the maximum, heaviest bar 102.5 kg: 0.80 and 0.60 on the ramps give 96.06 kg,
// 0.85 and 0.70 give 105.26 kg, capped at the heaviest bar carried; in steps of 5 lb.
test('the first heavy squats are 210 lb, then held at the shoulders by what the machine delivers that day', () => {
  // 102.5 kg are 226 lb; since its calibration the machine pulls 4 % more than it is set to: 217, down to 215.
  expect([4, 11].map((day) => squatLoad(onFlightDay(INES, day)))).toEqual([210, 215]);
  const squat = liftsOf(onFlightDay(INES, 11).card).find(({ exercise }) => exercise === 'back-squat');
  expect(squat?.limits.find(({ binds }) => binds)?.kind).toBe('shoulder rule');
});

test('a first week is cut by sickness and a docking', () => {
  const causes = [4, 6].map(
    (day) => factsOfKind(current, 'called off').find(({ card }) => card === onFlightDay(TOMAS, day).id)?.cause,
  );
  expect(causes).toEqual(['medical', 'operations']);
});

test('the results of four sessions arrive on one morning, out of order, and one of them a second time', () => {
  const results = [13, 15, 18, 20].map((day) => resultOf(onFlightDay(TOMAS, day)));
  const moments = results.map((fact) => fact?.recordedAt ?? '');
  expect(new Set(moments.map((moment) => moment.slice(0, 10)))).toEqual(new Set(['2027-02-28']));
  expect(moments).not.toEqual(moments.toSorted());
  expect(refused.map(({ person, card }) => [person, card])).toEqual([[TOMAS.id, onFlightDay(TOMAS, 15).id]]);
});

test('effort is blank in half the sets of one, and 7 in all of another', () => {
  const late = resultsOf(TOMAS).filter(({ day }) => flightDay(onFlightDay(TOMAS, 4).mission.launch, day) >= 13);
  const efforts = late.flatMap(({ sets }) => sets.map(({ effort }) => effort));
  const blank = efforts.filter((effort) => effort === null).length / efforts.length;
  // Two or four sets: exactly half; three: a third.
  expect(blank).toBeGreaterThan(0.33);
  expect(blank).toBeLessThan(0.51);
  const sevens = resultsOf(KERTTU).flatMap(({ sets }) => sets.map(({ effort }) => effort));
  expect(sevens.length).toBeGreaterThan(100);
  expect(sevens.every((effort) => effort?.kind === 'RPE' && effort.value === 7)).toBe(true);
});

test('a note says other loads than the ones typed beside it, and nobody has read it yet', () => {
  const [note] = factsOfKind(current, 'noted').filter(({ person }) => person === TOMAS.id);
  const said = Number(/last two at (\d+)/.exec(note?.text ?? '')?.[1]);
  const typed = resultOf(onFlightDay(TOMAS, 20))?.sets.map(({ load }) => Number(load.text)) ?? [];
  expect(said).toBeGreaterThan(0);
  expect(typed).not.toContain(said);
  expect(factsOfKind(current, 'read').some((read) => read.note === note?.id)).toBe(false);
});

test('a heavy and a light card were swapped: each result lies on the other day', () => {
  const days = [60, 62].map((day) => {
    const document = onFlightDay(RAFAEL, day);
    return flightDay(document.mission.launch, resultOf(document)?.day ?? document.card.day);
  });
  expect(days).toEqual([62, 60]);
});

test('one stands at the ceiling of the machine', () => {
  const loads = cardsOf(RAFAEL).flatMap(({ card }) =>
    liftsOf(card).flatMap(({ sets }) => sets.map((set) => set.load.increments)),
  );
  expect(Math.max(...loads)).toBe(600);
});

test('one whose shoulders complain of 4 or more stays at the foot of both ramps', () => {
  const scores = factsOfKind(current, 'hurt').filter(({ person, when }) => person === OONA.id && when === 'during');
  expect(scores.length).toBeGreaterThan(1);
  expect(Math.min(...scores.map(({ score }) => score))).toBeGreaterThanOrEqual(4);
  const last = cardsOf(OONA)
    .flatMap(({ card }) => liftsOf(card))
    .findLast(({ exercise }) => exercise === 'heel-raise');
  expect([last?.ramp?.effort, last?.ramp?.share]).toEqual([0.8, 0.6]);
});

test('a limit recalls the cards that it forbids in the same writing, and their receipt is still out', () => {
  const moment = writings.find(({ drafts }) =>
    drafts.some(({ body }) => body.kind === 'restricted' && body.person === OONA.id),
  );
  expect(moment?.drafts.map(({ body }) => (body.kind === 'decided' ? body.decision.kind : body.kind))).toEqual([
    'restricted',
    'recall',
    'recall',
  ]);
  const acknowledged = factsOfKind(current, 'received').filter(({ what }) => what === 'recall');
  expect(acknowledged.filter(({ person }) => person === OONA.id)).toEqual([]);
  expect(acknowledged.some(({ person }) => person === KERTTU.id)).toBe(true);
});

test('a deputy signs for the specialist while she is away', () => {
  const standIn = documents.filter(({ issuedBy }) => issuedBy.signsFor !== null);
  expect(standIn.length).toBeGreaterThan(0);
  expect(new Set(standIn.map(({ issuedBy }) => issuedBy.signsFor))).toEqual(new Set(['Maud Arkwright']));
});

test('every card but the silent ones has an answer before the last review', () => {
  const silent = [onFlightDay(KERTTU, 48), onFlightDay(RAFAEL, 34)].map(({ id }) => id);
  const recalled = decisions.flatMap(({ decision }) => (decision.kind === 'recall' ? [decision.card] : []));
  const answered = new Set(
    current.flatMap((fact) =>
      'card' in fact && (fact.kind === 'trained' || fact.kind === 'called off' || fact.kind === 'missed')
        ? [fact.card]
        : [],
    ),
  );
  const unanswered = documents.filter(
    ({ id, card }) => card.day < TODAY - 4 && !answered.has(id) && !recalled.includes(id),
  );
  expect(new Set(unanswered.map(({ id }) => id))).toEqual(new Set(silent));
});
