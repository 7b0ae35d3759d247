import { liftsOf } from '#domain/card.ts';
import { addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { idOf, instant } from '#domain/identity.ts';
import { knownAt, type Known } from '#domain/known.ts';
import { endOfLog, enterInLog } from '#domain/log.ts';
import { takeUp, type ProgrammeItem } from '#domain/programme.ts';
import type { Fact, FactBody, Sequence } from '#domain/fact.ts';
import { derive } from '#planning/derive.ts';
import { issueDocuments } from '#planning/issue.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { catalogued, shippedFacts } from '#shipped/shipped-house.ts';
import { isoDay } from '#units/day.ts';
import { barEquivalent, barPart, bodyWeightAdded, machineTarget } from '#science/crossing/crossing.ts';
import { barLoad, fraction, kilograms } from '#units/quantity.ts';
import { roundedLoad } from '#units/rounding.ts';
import { compare, measure, present } from './measure.ts';

const LAUNCH = isoDay('2027-03-01');
const DAYS = 180;
const LIFTS = [
  'back-squat',
  'deadlift',
  'heel-raise',
  'bench-press',
  'romanian-deadlift',
  'split-squat',
  'biceps-curl',
  'lateral-raise',
];
const PEOPLE = 6;

/** Every day of flight eight exercises of four sets: more than anybody trains, the scope of the first prototype. */
const everyDay = takeUp({
  programme: idOf('bench'),
  name: 'Every day',
  number: 1,
  follows: null,
  phases: [
    {
      name: 'main flight',
      span: { first: { from: 'launch', days: 0 }, last: null },
      deload: null,
      source: 'a benchmark',
      sessions: [1, 2, 3, 4, 5, 6, 7].map((weekday) => ({
        id: idOf(`day-${weekday}`),
        title: 'Everything',
        weekday,
        blockMinutes: 600,
        items: LIFTS.map((lift, place): ProgrammeItem => ({
          id: idOf(`${lift}-${weekday}`),
          track: idOf(`${lift} ${weekday}`),
          leading: weekday === 1,
          exercise: idOf(lift),
          kind: 'lift',
          condition: 'everyone',
          machineKind: 'resistive machine',
          priority: place + 1,
          basis: { kind: 'fraction', of: 0.78 },
          warmUps: [],
          sets: Array.from({ length: 4 }, () => ({ repetitions: 6, rest: 150 })),
          tempo: null,
          superset: null,
          reserve: 2,
          shouldFeel: [7, 8],
          source: 'a benchmark',
        })),
      })),
    },
  ],
});

const logOf = (bodies: readonly FactBody[]): readonly Fact[] =>
  bodies.reduce<Fact[]>((log, body, place) => {
    const draft = {
      id: idOf<'fact'>(`f${place}`),
      body,
      recordedBy: idOf<'signer'>('s'),
      supersedes: null,
      reason: null,
    };
    log.push(enterInLog(draft, (place + 1) as Sequence, instant('2027-01-01T00:00:00.000Z')));
    return log;
  }, []);

const personFacts = (place: number, programme: typeof everyDay): readonly FactBody[] => {
  const person = idOf<'person'>(`p${place}`);
  return [
    {
      kind: 'introduced',
      person,
      name: `Person ${place}`,
      sex: place % 2 ? 'male' : 'female',
      birthDate: null,
      trainingAge: null,
    },
    { kind: 'assigned', person, mission: idOf('m'), role: 'prime', team: 'ours', spaceWalks: false },
    {
      kind: 'measured',
      person,
      day: addDays(LAUNCH, -7),
      what: 'body mass',
      value: entered(String(60 + 5 * place), 'kg'),
    },
    { kind: 'carried', person, day: addDays(LAUNCH, -7), load: entered('120', 'kg') },
    ...LIFTS.map((lift): FactBody => ({
      kind: 'lifted',
      person,
      day: addDays(LAUNCH, -60),
      exercise: idOf(lift),
      machine: idOf('ground-free-bar'),
      load: entered(String(60 + 4 * place), 'kg'),
      repetitions: 5,
      effort: { kind: 'repetitions in reserve', value: 1 },
      side: null,
    })),
    {
      kind: 'decided',
      answers: null,
      basis: 0 as Sequence,
      decision: { kind: 'follow', person, programme: programme.id, from: { from: 'launch', days: 0 } },
    },
  ];
};

const crew = (programme: typeof everyDay): readonly Known[] => {
  const log = logOf([
    ...shippedFacts(),
    catalogued({ kind: 'programme', version: programme }),
    { kind: 'dated', mission: idOf('m'), name: 'A mission', site: idOf('aboard'), launch: LAUNCH, landing: null },
    ...Array.from({ length: PEOPLE }, (_, place) => personFacts(place, programme)).flat(),
  ]);
  return Array.from({ length: PEOPLE }, (_, place) => knownAt(log, idOf(`p${place}`), endOfLog(log))).filter(
    (known) => known !== null,
  );
};

const [dense, real] = [crew(everyDay), crew(SET_PROGRAMME)];
const deriveAll = (people: readonly Known[]) => people.map((known) => derive(known, LAUNCH, addDays(LAUNCH, DAYS - 1)));
const sets = deriveAll(dense).reduce(
  (sum, road) =>
    sum +
    road.cards.reduce(
      (all, card) =>
        all + (card.state === 'issued' ? 0 : liftsOf(card.card).reduce((count, item) => count + item.sets.length, 0)),
      0,
    ),
  0,
);

/** The same crossing as bare calls, a set at a time, without a trace. */
const bareCalls = () => {
  let total = 0;
  for (let set = 0; set < sets; set += 1) {
    const target = machineTarget(
      barPart(fraction(0.9), fraction(0.78), barLoad(100 + (set % 7))),
      bodyWeightAdded(fraction(0.8), fraction(0.7175), kilograms(75)),
    );
    const steps = roundedLoad(target, [272.155, 230], 2.26796185, 9.07) ?? 0;
    total += barEquivalent((steps * 2.26796185) as typeof target, fraction(0.7175), kilograms(75));
  }
  return total;
};

const first = real[0] as Known;
const road = derive(first, LAUNCH, addDays(LAUNCH, 13));
const days = road.cards
  .filter((card) => card.state === 'planned')
  .map((card) => card.day)
  .slice(0, 3);
let ids = 0;
const issueWeek = () =>
  issueDocuments(first, road, days, {
    signer: { id: idOf('s'), name: 'Signer', role: 'specialist', signsFor: null, from: null, until: null },
    signsFor: null,
    issuedAt: instant('2027-03-01T08:00:00.000Z'),
    newId: () => `n${(ids += 1)}`,
    program: 'bench',
    reasons: {},
  });

present(`Planning (${sets} sets in the dense programme)`, [
  await measure('six people × 180 days × 8 exercises × 4 sets, every working kept', () => deriveAll(dense), {
    aimMilliseconds: 100,
  }),
  await measure('six people × 180 days of the shipped programme', () => deriveAll(real), { aimMilliseconds: 100 }),
  await measure(`issuing a week (${days.length} cards) with workings and digests`, issueWeek),
  await compare(
    'the dense derivation against bare calls of the same crossing',
    { name: 'derive', work: () => deriveAll(dense) },
    { name: 'bare calls', work: bareCalls },
  ),
]);
