import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import type { FactBody } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { takeUp } from '#domain/programme.ts';
import { derive } from '../derive.ts';
import { decided, inventedRoad, LAUNCH, PERSON, tested } from '../invented-road.setup.ts';
import { planContext } from '../plan-context.ts';
import { phaseSpans } from '../road-spans.ts';
import { standingCards } from '../road-weeks.ts';
import { COUNTED, GROUND_CYCLE } from './counted-programme.setup.ts';
import { doseGaps } from './dose-gaps.ts';
import { roadDose, type DoseAlong, type DoseLine } from './road-dose.ts';

/** A Monday in general preparation. */
const MONDAY = addDays(LAUNCH, -364);
const WEEKS = 4;

const along = (today: Day, ...more: readonly FactBody[]): DoseAlong => {
  const { known } = inventedRoad(
    ...['back-squat', 'deadlift', 'bench-press'].map((lift) => tested(addDays(LAUNCH, -400), lift)),
    { kind: 'catalogued', entry: { kind: 'machine', machine: GROUND_CYCLE } },
    { kind: 'catalogued', entry: { kind: 'programme', version: COUNTED } },
    ...[-730, 0].map((days) =>
      decided({ kind: 'follow', person: PERSON, programme: COUNTED.id, from: { from: 'launch', days } }),
    ),
    ...more,
  );
  const weeks = Array.from({ length: WEEKS }, (_, place) => ({
    first: addDays(today, 7 * place),
    last: addDays(today, 7 * place + 6),
  }));
  const road = derive(known, today, addDays(today, 7 * WEEKS - 1));
  const phases = phaseSpans(planContext(known), { first: today, last: addDays(today, 7 * WEEKS - 1) });
  return roadDose(known, road, weeks, phases, standingCards(road));
};

const planned = ({ lines }: DoseAlong, id: string): readonly number[] | undefined =>
  lines.find((line) => line.id === id)?.weeks.map((week) => Math.round(week.planned * 100) / 100);

test('direct sets count whole, sets that train it on the way half, sides of one exercise once', () => {
  const dose = along(MONDAY);
  // A week: 4 squats, 3 hinges, 2 single-leg heel raises, 3 rows, 2 half minutes of squeezing.
  expect(planned(dose, 'squat')?.[0]).toBe(4 + 3 / 2);
  expect(planned(dose, 'hinge')?.[0]).toBe(3 + 4 / 2);
  expect(planned(dose, 'calf')?.[0]).toBe(2);
  expect(planned(dose, 'pull')?.[0]).toBe(3);
  expect(planned(dose, 'grip')?.[0]).toBe(2 + 3 / 2);
});

test('a vigorous minute counts for two, an easy one for none; zones are told by effort where no heart rate is known', () => {
  const dose = along(MONDAY);
  // 4 × 4 min hard with 3 min easy between, and 30 min steady; 5 min before and after each.
  expect(dose.zones[0]).toEqual({ light: 3 * 3 + 4 * 5, moderate: 30, vigorous: 16 });
  expect(planned(dose, 'endurance')?.[0]).toBe(30 + 2 * 16);
});

test('loads of machines are told apart, in kilograms times repetitions', () => {
  const dose = along(MONDAY);
  const volumes = dose.lines.filter(({ id }) => id.startsWith('volume'));
  expect(volumes.map(({ id }) => id)).toEqual(['volume Free bar']);
  expect(volumes[0]?.weeks[0]?.planned).toBeGreaterThan(1000);
});

test('weeks under a floor are one gap, with the least and the most of them', () => {
  const gaps = doseGaps(along(MONDAY), MONDAY);
  expect(gaps.find(({ line }) => line.id === 'calf')).toMatchObject({
    kind: 'too little',
    first: MONDAY,
    last: addDays(MONDAY, 7 * WEEKS - 1),
    weeks: WEEKS,
    least: 2,
    most: 2,
    bound: 8,
  });
  expect(gaps.some(({ line }) => line.id === 'grip')).toBe(false);
});

test('an easier week holds less on purpose: no floor holds for it', () => {
  const easier = takeUp({
    ...COUNTED,
    programme: idOf('counted-with-easier-weeks'),
    phases: COUNTED.phases.map((phase) => ({ ...phase, deload: { everyWeeks: 2, fewerSets: 1, loadBy: 0.9 } })),
  });
  const dose = along(
    MONDAY,
    { kind: 'catalogued', entry: { kind: 'programme', version: easier } },
    decided({ kind: 'follow', person: PERSON, programme: easier.id, from: { from: 'launch', days: -730 } }),
  );
  const floors = dose.lines.find(({ id }) => id === 'squat')?.weeks.map(({ floor }) => floor);
  expect(floors?.filter((floor) => floor === null)).toHaveLength(WEEKS / 2);
});

test('the floor of grip is for who walks in space', () => {
  const walker: FactBody = {
    kind: 'assigned',
    person: PERSON,
    mission: idOf('tern-4'),
    role: 'prime',
    team: 'ours',
    spaceWalks: true,
  };
  expect(doseGaps(along(MONDAY, walker), MONDAY).find(({ line }) => line.id === 'grip')?.bound).toBe(6);
});

const line = (amounts: readonly (readonly [number, number | null])[], most: number | null = 20): DoseLine => ({
  id: 'x',
  label: 'X',
  unit: 'sets',
  most,
  weeks: amounts.map(([amount, floor], place) => ({
    first: addDays(MONDAY, 7 * place),
    last: addDays(MONDAY, 7 * place + 6),
    planned: amount,
    done: null,
    floor,
  })),
});

test('a gap ends where a week is full, where no floor holds, and begins anew; too much is told apart', () => {
  const gaps = doseGaps(
    {
      lines: [
        line([
          [4, 8],
          [6, 8],
          [8, 8],
          [5, 8],
          [5, null],
          [0, 8],
          [21, 8],
        ]),
      ],
      zones: [],
    },
    MONDAY,
  );
  expect(gaps.map(({ kind, weeks, least, most }) => [kind, weeks, least, most])).toEqual([
    ['too little', 2, 4, 6],
    ['too little', 1, 5, 5],
    ['too little', 1, 0, 0],
    ['too much', 1, 21, 21],
  ]);
  const past = doseGaps(
    {
      lines: [
        line([
          [1, 8],
          [8, 8],
        ]),
      ],
      zones: [],
    },
    addDays(MONDAY, 7),
  );
  expect(past).toEqual([]);
});
