import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { liftsOf, workIncrements, type CardLift } from '#domain/card.ts';
import { idOf } from '#domain/identity.ts';
import { atTheTop, heavySquat, TOP } from './rehearsal/heavy-squat.ts';
import { onFlightDay, PERSON, type Rehearsal } from './rehearsal/rehearsal.ts';

const write = (rehearsal: Rehearsal, line: string, from: Day, until: Day | null = from): void => {
  rehearsal.add({
    kind: 'decided',
    answers: null,
    basis: rehearsal.end,
    decision: {
      kind: 'adjust',
      person: PERSON,
      track: idOf('squat heavy'),
      change: { kind: 'as written', line },
      from,
      until,
      reason: 'written on the sheet',
    },
  });
};

const NEXT = onFlightDay(TOP + 7);

let week: Rehearsal | null = null;

/** A heavy, a medium and a light day after the ramps reached their top: lived once, gone on with by each test. */
const weekLater = (): Rehearsal => {
  if (week === null) {
    week = atTheTop();
    week.live(TOP, TOP + 6);
  }
  return week.fork();
};

/** The heavy squat of the next heavy day, with this line written for it; 295 lb were done, 300 would come. */
const writtenSquat = (line: string): CardLift => {
  const rehearsal = weekLater();
  write(rehearsal, line, NEXT);
  return heavySquat(rehearsal, TOP + 7);
};

const workSets = (item: CardLift) => item.sets.filter((set) => set.kind === 'work');
const setsOf = (item: CardLift) => workSets(item).map((set) => [set.load.increments, set.repetitions, set.rest]);

test('sets and repetitions alone: the load stays as it would be', () => {
  const item = writtenSquat('3 × 5, rest 3:00');
  expect(setsOf(item)).toEqual([
    [300, 5, 180],
    [300, 5, 180],
    [300, 5, 180],
  ]);
  expect(item.asWritten).toBe('3 × 5, rest 3:00');
});

test('a load: it stands on the card, as a raise by hand where it is one', () => {
  expect(setsOf(writtenSquat('4 × 6 @ 280 lb')).map(([load]) => load)).toEqual([280, 280, 280, 280]);
  expect(writtenSquat('4 × 6 @ 280 lb').raise).toBeNull();
  expect(writtenSquat('310 x 5 @ 8').raise).toMatchObject({ from: 295, to: 310, cause: 'by hand', needsReason: false });
  expect(writtenSquat('4 × 6 @ 330 lb').raise).toMatchObject({ to: 330, needsReason: true });
});

test('a load as written is what the machine shows, whatever its calibration says that it delivers', () => {
  const rehearsal = weekLater();
  rehearsal.add({ kind: 'calibrated', machine: idOf('resistive-machine'), day: onFlightDay(TOP), factor: '1.04' });
  write(rehearsal, '4 × 6 @ 240 lb', NEXT);
  expect(workIncrements(heavySquat(rehearsal, TOP + 7))).toBe(240);
});

test('a percentage is one of the maximum, added back and rounded as ever', () => {
  // R 104.714 kg, W 71.4 kg, s 0.717, both ramps at the top: 0.6 R + s W = 114.02 kg = 251.4 lb.
  expect(workIncrements(writtenSquat('5 × 5 @ 60 %'))).toBe(250);
});

test('effort decides where the line says so', () => {
  const item = writtenSquat('3 × 8 @ 2 RIR');
  expect(workSets(item).map((set) => set.load)).toEqual(
    Array(3).fill({ kind: 'start at', increments: 295, rpe: [8, 8] }),
  );
  expect(item.shouldFeel).toEqual([8, 8]);
});

test('a top set, and lighter ones after it', () => {
  expect(setsOf(writtenSquat('top 4 @ 300 lb then 2 × 8 −10 %')).map(([load]) => load)).toEqual([300, 270, 270]);
});

test('a range of sets and of repetitions, sets that go on, a tempo', () => {
  const ranged = writtenSquat('3–4 × 6–8, tempo 3-1-1');
  const asked = { repetitions: 6, most: 8 };
  expect(workSets(ranged)).toMatchObject([asked, asked, asked, { ...asked, optional: true }]);
  expect(ranged.tempo).toEqual([3, 1, 1]);
  expect(workSets(writtenSquat('6, 6, 6+')).map(({ orMore }) => orMore ?? false)).toEqual([false, false, true]);
});

test('warm-ups as written', () => {
  const warmUps = writtenSquat('w 2 × 5 @ 40 %, 4 × 6 @ 80 %').sets.filter((set) => set.kind === 'warm-up');
  expect(warmUps.map((set) => set.repetitions)).toEqual([5, 5]);
});

test('the ceiling binds whatever is written', () => {
  const item = writtenSquat('4 × 6 @ 700 lb');
  expect(workIncrements(item)).toBe(600);
  expect(item.limits.find(({ binds }) => binds)?.kind).toBe('ceiling');
});

test("a physician's limit binds whatever is written", () => {
  const rehearsal = atTheTop();
  write(rehearsal, '4 × 6 @ 320 lb', NEXT);
  rehearsal.restrict({
    kind: 'restricted',
    person: PERSON,
    medicalReason: null,
    restriction: {
      scope: { kind: 'exercise', exercise: idOf('back-squat') },
      limit: { kind: 'load at most', load: entered('200', 'lb') },
      toldBy: 'Dr. A. Lowe',
      toldOn: onFlightDay(TOP),
      confirmed: true,
      from: onFlightDay(TOP),
      reviewOn: null,
    },
  });
  rehearsal.live(TOP, TOP + 6);
  expect(workIncrements(heavySquat(rehearsal, TOP + 7))).toBe(200);
});

test('a session as written moves no load: the week after goes on from the week before', () => {
  const rehearsal = weekLater();
  write(rehearsal, '3 × 8 @ 200 lb', NEXT);
  const [light] = rehearsal.live(TOP + 7, TOP + 7);
  rehearsal.live(TOP + 8, TOP + 13);
  expect(light && liftsOf(light.card).find((item) => item.track === 'squat heavy')?.asWritten).toBe('3 × 8 @ 200 lb');
  // That week is an easier one: ten percent off 295, not off 200.
  expect(workIncrements(heavySquat(rehearsal, TOP + 14))).toBe(265);
});

test('only its own days', () => {
  const rehearsal = weekLater();
  write(rehearsal, '3 × 5', addDays(NEXT, 1), null);
  expect(workSets(heavySquat(rehearsal, TOP + 7))).toHaveLength(4);
  const later = weekLater();
  write(later, '3 × 5', addDays(NEXT, -1), null);
  expect(workSets(heavySquat(later, TOP + 7))).toHaveLength(3);
});

test('written over a hold it needs a reason, and says so', () => {
  const rehearsal = weekLater();
  rehearsal.add({
    kind: 'decided',
    answers: null,
    basis: rehearsal.end,
    decision: {
      kind: 'adjust',
      person: PERSON,
      track: idOf('squat heavy'),
      change: { kind: 'hold' },
      from: NEXT,
      until: null,
      reason: 'slept badly',
    },
  });
  write(rehearsal, '4 × 6 @ 300 lb', NEXT);
  expect(heavySquat(rehearsal, TOP + 7).raise).toMatchObject({
    needsReason: true,
    cautions: [expect.stringContaining('Written over a signed hold')],
  });
});

test.each([
  ['w 2–3 × 5, 4 × 6', /warm-up says one number/],
  ['4 × 30 s', /counts repetitions/],
  ['30 min @ 130 W', /Bouts of endurance/],
  ['4 × 6/side', /has no sides/],
  ['top 6 @ RPE 8 then 2 × 8 @ RPE 7', /measured from the first/],
  ['4 × 6 @ 60 %, 2 × 3 @ 80 %', /heaviest set first/],
])('“%s” cannot be planned, and the card says why', (line, says) => {
  const rehearsal = weekLater();
  write(rehearsal, line, NEXT);
  const planned = rehearsal.road(NEXT, 1).cards.find((card) => card.day === NEXT);
  expect(planned?.state === 'planned' ? planned.gaps.join(' ') : '').toMatch(says);
});
