import { addDays, isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { idOf } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import type { FactBody } from '#domain/fact.ts';
import type { Test } from '#domain/tested.ts';
import { asIfDecided } from '#planning/as-if.ts';
import { derive } from '#planning/derive.ts';
import { roadEnds, roadLayout } from '#planning/road-layout.ts';
import { measure, present } from './measure.ts';
import { PEOPLE, sixtyPeople } from './sixty-people.ts';

/** Two years before launch, a flight of half a year and the six weeks after it, for a team's sixty people. */
const LAUNCH = isoDay('2027-03-01');
const FIRST = addDays(LAUNCH, -730);
const LANDING = addDays(LAUNCH, 170);
const LAST = addDays(LANDING, 44);

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

const { log, people } = sixtyPeople({
  launch: LAUNCH,
  landing: LANDING,
  tested: TESTED,
  followedFrom: -730,
  walks: (place) => place % 3 === 0,
  more: (place) =>
    testsOf(place).map((test): FactBody => ({ kind: 'tested', person: idOf(`p${place}`), day: TESTED, test })),
});

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
