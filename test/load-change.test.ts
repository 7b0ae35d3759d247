import { expect, test } from 'vitest';
import { idOf } from '#domain/identity.ts';
import { derive } from '#planning/derive.ts';
import { loadChange, type LoadChange } from '#planning/load-change.ts';
import { atTheTop, TOP } from './rehearsal/heavy-squat.ts';
import { onFlightDay, PERSON, type Rehearsal } from './rehearsal/rehearsal.ts';

const NEXT = onFlightDay(TOP + 7);

let week: Rehearsal | null = null;

const weekLater = (): Rehearsal => {
  if (week === null) {
    week = atTheTop();
    week.live(TOP, TOP + 6);
  }
  return week.fork();
};

/** What the heavy squat changes with this line written for the next heavy day: 295 lb are in use. */
const changed = (line: string): LoadChange | null => {
  const rehearsal = weekLater();
  rehearsal.add({
    kind: 'decided',
    answers: null,
    basis: rehearsal.end,
    decision: {
      kind: 'adjust',
      person: PERSON,
      track: idOf('squat heavy'),
      change: { kind: 'as written', line },
      from: NEXT,
      until: NEXT,
      reason: 'written on the sheet',
    },
  });
  const known = rehearsal.known();
  const road = derive(known, NEXT, NEXT);
  const planned = road.cards.find((card) => card.state === 'planned' && card.day === NEXT);
  const item = planned?.state === 'planned' ? planned.card.items.find(({ track }) => track === 'squat heavy') : null;
  if (item?.kind !== 'lift') throw new Error('The heavy squat is not planned.');
  return loadChange(known, road, item, NEXT);
};

test('less on the machine is more than that less at the bar: body weight is taken off first', () => {
  // 295 lb are 133.810 kg, s W = 0.717 × 71.4 = 51.19 kg stays with the body: 82.62 kg at the bar. 15 lb, 6.804 kg, off it
  // are 8.24 %. The share has three printed digits: half a unit moves the percentage by 0.004.
  const change = changed('4 × 6 @ 280 lb');
  expect([change?.from, change?.to]).toEqual([295, 280]);
  expect(100 * (change?.atTheBar ?? NaN)).toBeCloseTo(-8.24, 2);
});

test('up and down are measured alike: the bar goes by the load in equal steps', () => {
  const [up, down] = [changed('4 × 6 @ 305 lb'), changed('4 × 6 @ 285 lb')];
  expect([up?.to, down?.to]).toEqual([305, 285]);
  // The raise has its own reckoning; both are linear in the load.
  expect((up?.atTheBar ?? NaN) + (down?.atTheBar ?? NaN)).toBeCloseTo(0, 12);
});

test('the load in use changes nothing; effort sets no load to compare', () => {
  expect(changed('4 × 6 @ 295 lb')).toEqual({ from: 295, to: 295, atTheBar: 0 });
  expect(changed('3 × 8 @ 2 RIR')).toBeNull();
});
