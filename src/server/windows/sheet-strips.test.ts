import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import type { FactBody } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { derive } from '#planning/derive.ts';
import { LIFTS_ONLY } from '#planning/dose/counted-programme.setup.ts';
import { decided, inventedRoad, LAUNCH, PERSON, tested } from '#planning/invented-road.setup.ts';
import { sheetStrips } from './sheet-strips.ts';

/** Ten days into main flight. */
const TODAY = addDays(LAUNCH, 24);
const [FROM, TO] = [addDays(TODAY, -28), addDays(TODAY, 13)];

const FOLLOWS: readonly FactBody[] = [
  { kind: 'catalogued', entry: { kind: 'programme', version: LIFTS_ONLY } },
  decided({ kind: 'follow', person: PERSON, programme: LIFTS_ONLY.id, from: { from: 'launch', days: 0 } }),
  ...['back-squat', 'deadlift'].map((lift) => tested(addDays(LAUNCH, -40), lift)),
];

const said = (...more: readonly FactBody[]): Readonly<Record<string, readonly string[]>> => {
  const { known } = inventedRoad(...FOLLOWS, ...more);
  const strips = sheetStrips(known, derive(known, TODAY, TO), TODAY, { from: FROM, to: TO });
  return Object.fromEntries(
    strips.map(({ label, spans }) => [
      label,
      spans.map(({ from, to, says }) => `${from - TODAY} to ${to - TODAY}: ${says}`),
    ]),
  );
};

test('what takes days or asks for care is told with its days', () => {
  const strips = said(
    { kind: 'space walk', person: PERSON, day: addDays(TODAY, 5), text: '' },
    { kind: 'space walk', person: PERSON, day: addDays(TODAY, 9), text: 'Radiator' },
    {
      kind: 'set aside',
      person: PERSON,
      from: addDays(TODAY, 1),
      until: addDays(TODAY, 40),
      what: 'blackout',
      minutes: 30,
      text: 'No link.',
    },
    { kind: 'noted', person: PERSON, day: addDays(TODAY, -2), card: null, item: null, text: 'Strap slipped.' },
  );
  expect(strips['Space walk']).toEqual(['5 to 5: planned', '9 to 9: Radiator']);
  expect(strips['Set aside']).toEqual(['1 to 13: blackout, 30 min a day: No link.']);
  expect(strips['Unread notes']).toEqual(['-2 to -2: “Strap slipped.”']);
});

test('tests of a day are one mark, each kind once; what lies further back is not told', () => {
  const grip = (day: number, side: 'left' | 'right'): FactBody => ({
    kind: 'tested',
    person: PERSON,
    day: addDays(TODAY, day),
    test: { what: 'greatest grip', side, value: { text: '400', unit: 'N' } },
  });
  expect(said(grip(-3, 'left'), grip(-3, 'right'), grip(-60, 'left'))['Tests']).toEqual(['-3 to -3: greatest grip']);
});

test('the ramps ahead are told from the lift that is least far on to the one that is farthest', () => {
  const [only, ...others] = said()['Ramps'] ?? [];
  expect(others).toEqual([]);
  expect(only).toMatch(/^\d+ to 13: effort \d\.\d\d( to \d\.\d\d)?, body weight added back \d\.\d\d( to \d\.\d\d)?$/);
});

test('the same change to several tracks for the same reason is told once', () => {
  const hold = (track: string): FactBody =>
    decided({
      kind: 'adjust',
      person: PERSON,
      track: idOf<'track'>(track),
      change: { kind: 'hold' },
      from: TODAY,
      until: addDays(TODAY, 3),
      reason: 'slept badly',
    });
  expect(said(hold('squat heavy'), hold('squat light'))['Held or backed off']).toEqual([
    '0 to 3: squat heavy, squat light held: slept badly',
  ]);
});
