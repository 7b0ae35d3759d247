import { addDays, isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { idOf, instant } from '#domain/identity.ts';
import { knownAt, type Known } from '#domain/known.ts';
import { endOfLog, enterInLog } from '#domain/log.ts';
import type { Fact, FactBody, Sequence } from '#domain/fact.ts';
import type { Test } from '#domain/tested.ts';
import { asIfDecided } from '#planning/as-if.ts';
import { derive } from '#planning/derive.ts';
import { roadEnds, roadLayout } from '#planning/road-layout.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { shippedFacts } from '#shipped/shipped-house.ts';
import { measure, present } from './measure.ts';

/** Two years before launch, a flight of half a year and the six weeks after it, for a team's sixty people. */
const LAUNCH = isoDay('2027-03-01');
const FIRST = addDays(LAUNCH, -730);
const LANDING = addDays(LAUNCH, 170);
const LAST = addDays(LANDING, 44);
const PEOPLE = 60;
const LIFTS = ['back-squat', 'deadlift', 'heel-raise', 'bench-press'];

const TESTED = addDays(FIRST, -7);

/** Tests from which heart rates, watts, belt speeds and forces of hands are reckoned. */
const testsOf = (place: number): readonly Test[] => [
  { what: 'greatest oxygen uptake', value: entered(String(38 + (place % 20)), 'mL/(kg min)'), how: 'measured' },
  { what: 'greatest heart rate', value: entered(String(172 + (place % 20)), '1/min') },
  { what: 'resting heart rate', value: entered(String(48 + (place % 12)), '1/min') },
  ...(['left', 'right'] as const).flatMap((side): readonly Test[] => [
    { what: 'greatest grip', side, value: entered(String(380 + place), 'N') },
    { what: 'critical force', side, value: entered(String(150 + place), 'N') },
  ]),
];

const factsOf = (place: number): readonly FactBody[] => {
  const person = idOf<'person'>(`p${place}`);
  const follow = (programme: typeof SET_PROGRAMME, days: number): FactBody => ({
    kind: 'decided',
    answers: null,
    basis: 0 as Sequence,
    decision: { kind: 'follow', person, programme: programme.id, from: { from: 'launch', days } },
  });
  return [
    {
      kind: 'introduced',
      person,
      name: `Person ${place}`,
      sex: place % 2 ? 'male' : 'female',
      birthDate: null,
      trainingAge: null,
    },
    { kind: 'assigned', person, mission: idOf('m'), role: 'prime', team: 'ours', spaceWalks: place % 3 === 0 },
    { kind: 'measured', person, day: TESTED, what: 'body mass', value: entered(String(55 + place), 'kg') },
    ...LIFTS.map((lift): FactBody => ({
      kind: 'lifted',
      person,
      day: TESTED,
      exercise: idOf(lift),
      machine: idOf('ground-free-bar'),
      load: entered(String(60 + place), 'kg'),
      repetitions: 5,
      effort: { kind: 'repetitions in reserve', value: 1 },
      side: null,
    })),
    ...testsOf(place).map((test): FactBody => ({ kind: 'tested', person, day: TESTED, test })),
    follow(SET_PROGRAMME, -730),
  ];
};

const bodies: readonly FactBody[] = [
  ...shippedFacts(),
  {
    kind: 'dated',
    mission: idOf('m'),
    name: 'A mission',
    site: idOf('aboard'),
    launch: LAUNCH,
    landing: { earliest: LANDING, latest: LANDING },
  },
  ...Array.from({ length: PEOPLE }, (_, place) => factsOf(place)).flat(),
];

const log: readonly Fact[] = bodies.map((body, place) =>
  enterInLog(
    { id: idOf(`f${place}`), body, recordedBy: idOf('s'), supersedes: null, reason: null },
    (place + 1) as Sequence,
    instant('2025-01-01T00:00:00.000Z'),
  ),
);

const people = Array.from({ length: PEOPLE }, (_, place) => knownAt(log, idOf(`p${place}`), endOfLog(log))).filter(
  (known) => known !== null,
);

/** Known anew, as after every entry: nothing that was read of it before is at hand. */
const anew = (known: Known): Known => ({ ...known, facts: [...known.facts] });

const first = people[0] as Known;
const roadOf = (known: Known) => derive(anew(known), FIRST, LAST);
const road = roadOf(first);
const kindsOf = new Set(
  road.cards.flatMap((each) => (each.state === 'issued' ? [] : each.card.items.map(({ kind }) => kind))),
);

/** One stroke of the keyboard on the sheet: what a line of shorthand makes of a day ahead. */
const lookAt = (known: Known, days: number) =>
  derive(
    asIfDecided(anew(known), {
      kind: 'adjust',
      person: known.person,
      track: idOf('general squat'),
      change: { kind: 'as written', line: '4 × 6 @ 75 %' },
      from: addDays(FIRST, days),
      until: addDays(FIRST, days),
      reason: 'looked at',
    }),
    FIRST,
    addDays(FIRST, days),
  );

const layOut = (known: Known) => roadLayout(known, derive(known, FIRST, roadEnds(known, FIRST)?.last ?? LAST), log);

/** A server has long been running. */
const WARM_UP = 15;

const title = `The whole road (${LAST - FIRST + 1} days, ${road.cards.length} sessions of ${[...kindsOf].join(', ')})`;
present(title, [
  await measure('one person', () => roadOf(first), { aimMilliseconds: 50, warmUp: WARM_UP }),
  await measure('one person, laid out with its dose', () => layOut(anew(first)), { warmUp: WARM_UP }),
  await measure('sixty people', () => people.map(roadOf), { aimMilliseconds: 50 * PEOPLE }),
  await measure('one stroke on the sheet, a week ahead', () => lookAt(first, 7), { aimMilliseconds: 16 }),
  await measure('one stroke on the sheet, four weeks ahead', () => lookAt(first, 28), { aimMilliseconds: 16 }),
]);
