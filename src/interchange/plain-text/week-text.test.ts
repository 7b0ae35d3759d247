import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, isoDay } from '#units/day.ts';
import type { CardBouts, CardDrill, CardItem, CardLift, CardSet } from '#domain/card.ts';
import { cardCode } from '#domain/card-code.ts';
import { digestOf } from '#domain/digest.ts';
import type { Sequence } from '#domain/fact.ts';
import { idOf, instant } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { anyCharacter } from '#units/any-character.setup.ts';
import { MOST_BYTES, weekText } from './week-text.ts';

const LAUNCH = isoDay('2031-05-05');

const work = (increments: number, side: CardSet['side'] = null): CardSet => ({
  kind: 'work',
  load: { kind: 'set', increments },
  repetitions: 6,
  side,
  rest: 120,
});

const item = (more: Partial<CardLift> = {}): CardLift => ({
  kind: 'lift',
  item: idOf('squat-first'),
  track: idOf('squat heavy'),
  leading: true,
  place: 1,
  exercise: idOf('back-squat'),
  exerciseName: 'Back squat',
  carriedAtShoulders: true,
  machine: idOf('resistive-machine'),
  machineName: 'Resistive machine',
  unit: 'lb',
  increment: '1',
  priority: 1,
  basis: 'from last',
  asWritten: null,
  settings: [{ field: 'shoulder pads', value: '4', side: 'left' }],
  last: 'flight day 20: 265 × 6 6 6 6, RPE 7',
  cues: ['Brace before you move', 'Knees over the feet'],
  sets: [work(270), work(270), work(270), work(270)],
  tempo: null,
  superset: null,
  reserve: 2,
  shouldFeel: [7, 8],
  ramp: null,
  rule: { add: 5, rpeAtMost: 8, discomfortBelow: 3, neverOver: 300, takeOff: 20, says: 'add 5' },
  limits: [],
  raise: null,
  row: null,
  says: [],
  ...more,
});

const card = (items: readonly CardItem[], day = 3, name = 'Birte Økonkwo'): IssuedCard => {
  const content: Omit<IssuedCard, 'digest'> = {
    document: 'ballast issued card',
    version: 1,
    id: idOf(`card-${day}`),
    replaces: null,
    issuedAt: instant('2031-05-03T09:00:00.000Z'),
    issuedBy: { id: idOf('hanne'), name: 'Hanne Visser', signsFor: null },
    validUntil: addDays(LAUNCH, day + 7),
    person: { id: idOf('birte'), name },
    mission: { name: 'Tern 4', launch: LAUNCH },
    card: {
      person: idOf('birte'),
      day: addDays(LAUNCH, day),
      missionDay: `flight day ${day + 1}`,
      phase: 'main flight',
      week: 1,
      session: idOf('heavy'),
      title: 'Heavy day',
      deload: false,
      programme: { id: idOf('programme'), name: 'Flight, resistive part', number: 1 },
      items,
      leftOut: [],
      minutes: [{ label: 'sets', minutes: 70, overhead: false }],
      blockMinutes: 90,
      shortOfTime: [3, 2],
      machineDown: 'do not make up this heavy day.',
      breathing: 'exhale through the hard part',
    },
    sets: [],
    raises: [],
    workings: [],
    formulas: [],
    basis: {
      upTo: 1 as Sequence,
      facts: [],
      programme: idOf('programme'),
      estimates: [],
      machines: [],
      program: 'test',
    },
  };
  return { ...content, digest: digestOf(content) };
};

test('a session in plain text says what a hand needs', () => {
  const document = card([item()]);
  const { text, bytes, cut } = weekText([document]);
  expect(cut).toEqual([]);
  expect(bytes).toBe(Buffer.byteLength(text));
  for (const part of [
    'CARDS of Birte Okonkwo, Tern 4: FD 4 (2031-05-08).',
    'STOP for chest discomfort',
    'Breathe out through the hard part.',
    `Code ${cardCode(document.digest)}. 70 of 90 min. Valid until FD 11.`,
    '1 Back squat, lb. Set: shoulder pads left 4',
    'last FD 20: 265 x 6 6 6 6, RPE 7',
    'WORK 4x6 270 | rest 120 s | feel 7-8',
    'rule +5, max 300, -20',
    'no discomfort of 3 or more, once a week; never over 300;',
    'Brace before you move; Knees over the feet',
    'Short of time: leave out 3, then 2.',
    'Machine down: do not make up this session.',
  ])
    expect(text).toContain(part);
});

test('loads stand as the machine shows them, sides and efforts with them', () => {
  const start: CardSet = { ...work(34), load: { kind: 'start at', increments: 34, rpe: [6, 8] } };
  const text = weekText([
    card([
      item({ increment: '2.5', unit: 'kg', sets: [work(33)] }),
      item({ place: 2, sets: [work(85, 'left'), work(85, 'right'), work(85, 'left'), work(85, 'right')] }),
      item({ place: 3, sets: [start, start] }),
    ]),
  ]).text;
  expect(text).toContain('WORK 1x6 82.5 ');
  expect(text).toContain('WORK 2x6 85 each side');
  expect(text).toContain('WORK 2x6 start 34 RPE 6-8');
});

test('ranges, sets that go on, a tempo and a superset stand in the text, with a line that explains them', () => {
  const range: CardSet = { ...work(270), most: 8 };
  const items = [
    item({ sets: [range, range, { ...range, optional: true }], tempo: [3, 1, 1] }),
    item({ place: 2, sets: [work(200), { ...work(200), orMore: true }], superset: { letter: 'A', inTurnWith: [3] } }),
  ];
  const text = weekText([card(items)]).text;
  expect(text).toContain('WORK 2-3x6-8 270 | tempo 3-1-1 | rest');
  expect(text).toContain('WORK 1x6 200 1x6+ 200 | A in turn with 3 | rest');
  expect(text).toContain('3-4x6-8: the last set');
  expect(weekText([card([item()])]).text).not.toContain('3-4x6-8');
});

test('a rule without room for a whole step stays, and unusual terms stand with their rule', () => {
  const rule = { add: 5, rpeAtMost: 8, discomfortBelow: 3, neverOver: 272, takeOff: 20, says: 'stay at 270' };
  const text = weekText([card([item({ rule }), item({ rule: { ...rule, neverOver: 300, rpeAtMost: 7 } })])]).text;
  expect(text).toContain('rule stay at 270, -20');
  expect(text).toContain('rule +5, max 300, -20 (RPE <=7, discomfort <3)');
});

test('common lines stand once a week', () => {
  const { text } = weekText([card([item()], 3), card([item()], 5), card([item()], 7)]);
  expect(text.match(/STOP for/g)).toHaveLength(1);
  expect(text.match(/Breathe out/g)).toHaveLength(1);
  expect(text.match(/^== /gm)).toHaveLength(3);
  expect(text.match(/Machine down:/g)).toHaveLength(1);
  expect(text.match(/Brace before you move/g)).toHaveLength(1);
});

test('what to do when the machine is down stands with its session where it differs', () => {
  const other = card([item()], 5);
  const rides = { ...other, card: { ...other.card, machineDown: 'ride the cycle.' } };
  const { text } = weekText([card([item()], 3), rides]);
  expect(text.match(/^Machine down: .*$/gm)).toEqual([
    'Machine down: do not make up this heavy day.',
    'Machine down: ride the cycle.',
  ]);
});

test.each([
  { items: 4, cut: [] as readonly string[] },
  { items: 6, cut: ['cues'] },
  { items: 8, cut: ['cues'] },
  { items: 16, cut: ['cues', 'last time'] },
])('three sessions of $items exercises give up $cut, and say so', ({ items, cut }) => {
  const many = (day: number) =>
    Array.from({ length: items }, (_, place) =>
      item({ place: place + 1, sets: [work(200 + place + day)], cues: [`${place} long cue `.repeat(9)] }),
    );
  const week = weekText([3, 5, 7].map((day) => card(many(day), day)));
  expect(week.cut).toEqual(cut);
  if (cut.length > 0) expect(week.text).toContain(`Cut to fit 4096 bytes: ${cut.join(', ')}`);
});

const run = (place: number, seconds: number): CardBouts => ({
  kind: 'bouts',
  item: idOf('run'),
  track: idOf('run'),
  place,
  exercise: idOf('treadmill-run'),
  exerciseName: 'Treadmill run',
  priority: 3,
  asWritten: null,
  settings: [{ field: 'harness strap', value: '6', side: null }],
  last: 'day 20: 4 of 4, 12.3 km/h, 168/min, RPE 8',
  cues: ['Short quick steps, feet under the hips.', 'Numbness, pain that spreads, hard breathing in it: stop.'],
  shouldFeel: [7, 8],
  says: [],
  machine: idOf('treadmill'),
  machineName: 'Harness treadmill',
  warmUpSeconds: 300,
  bouts: Array.from({ length: 4 }, () => ({
    seconds,
    easy: 180,
    heartRate: [161, 175],
    watts: null,
    speed: 12.5,
    rpe: [7, 8],
  })),
  coolDownSeconds: 300,
  harness: { increments: 122, unit: 'lb', increment: '1', ofBodyWeight: 0.65, share: 0.65 },
  raises: [],
  row: null,
});

const drill = (place: number, exerciseName: string, work: CardDrill['sets'][number]['work']): CardDrill => ({
  kind: 'drill',
  item: idOf(exerciseName),
  track: idOf(exerciseName),
  place,
  exercise: idOf(exerciseName),
  exerciseName,
  priority: 5,
  asWritten: null,
  settings: [],
  last: null,
  cues: ['Slowly.'],
  shouldFeel: [5, 6],
  says: [],
  means: 'hand gear',
  sets: (['left', 'right', 'left', 'right'] as const).map((side) => ({
    work,
    side,
    rest: 30,
    force: work.kind === 'pulses' ? (side === 'left' ? 135 : 145) : null,
  })),
  raises: [],
  row: null,
});

const LIFTS = ['Back squat', 'Deadlift', 'Single-leg heel raise', 'Shoulder press', 'Bent-over row', 'Bench press'];

/** Six lifts with their own loads, a run and three drills: as full as a day is. */
const fullDay = (day: number): readonly CardItem[] => [
  ...LIFTS.map((exerciseName, place) => {
    const load = 150 + 20 * place + 7 * day;
    return item({
      place: place + 1,
      exerciseName,
      settings: [{ field: 'bar stop', value: String(10 + place), side: null }],
      says: ['limited by the physician', `on the way up: ${40 + day} % of your maximum at the bar`],
      sets: [
        ...[0.6, 0.8].map((part) => ({ ...work(Math.round(load * part)), kind: 'warm-up' as const })),
        ...[1, 2, 3, 4].map(() => work(load)),
      ],
      rule: { add: 5, rpeAtMost: 8, discomfortBelow: 3, neverOver: load + 30, takeOff: 15, says: '' },
    });
  }),
  run(7, 180 + 10 * day),
  drill(8, 'Grip pulses', { kind: 'pulses', count: 24, on: 3, off: 2 }),
  drill(9, 'Hip flexor stretch', { kind: 'hold', seconds: 40 }),
  drill(10, 'External rotation', { kind: 'repetitions', count: 12 }),
];

/** As long as the sentence is that the planner writes. */
const MACHINE_DOWN =
  'no resistive work today: note it, use the time on the cycle or treadmill as usual, do not make up this heavy day by doubling the next.';

const fullCard = (day: number): IssuedCard => {
  const document = card(fullDay(day), day);
  return { ...document, card: { ...document.card, machineDown: MACHINE_DOWN } };
};

const fullWeek = () => weekText([3, 4, 5, 6, 7, 8, 9].map(fullCard));

test('a week of seven full sessions fits one message with every load of every day in it', () => {
  const { text, bytes, cut } = fullWeek();
  expect(bytes).toBeLessThanOrEqual(MOST_BYTES);
  expect(cut).not.toContain('sessions');
  expect(text.match(/^== /gm)).toHaveLength(7);
  for (const day of [3, 4, 5, 6, 7, 8, 9])
    for (const place of LIFTS.keys()) expect(text).toContain(`4x6 ${150 + 20 * place + 7 * day}`);
});

test('what a session shares with an earlier one is pointed to, whole neighbours together', () => {
  const { text } = fullWeek();
  expect(text.match(/^8-10 as FD 4$/gm)).toHaveLength(6);
  expect(text).toContain('8 Grip pulses 2x24x(3 s on, 2 s off) L 135 R 145 N');
  expect(text.match(/bar stop 10/g)).toHaveLength(1);
  expect(text.match(/^Back squat, Deadlift, .*, Bench press: limited by the physician$/gm)).toHaveLength(1);
  expect(text.match(/limited by the physician/g)).toHaveLength(1);
});

test('what is said of an exercise on some days only stands once, with a letter where it holds', () => {
  const limited = (day: number, says: readonly string[]) =>
    card(
      fullDay(day).map((each) => (each.place === 1 ? { ...each, says } : each)),
      day,
    );
  const says = 'held by the ceiling';
  const week = weekText([limited(3, [says]), limited(4, [says]), ...[5, 6, 7, 8, 9].map((day) => limited(day, []))]);
  expect(week.text.match(/^\(a\) held by the ceiling$/gm)).toHaveLength(1);
  expect(week.text.match(/^1 Back squat .* \(a\)$/gm)).toHaveLength(2);
});

test('rest and feeling are named again after a line that only points', () => {
  const later = card([...fullDay(3).slice(0, 2), ...fullDay(4).slice(2)], 4);
  const week = weekText([card(fullDay(3), 3), later, ...[5, 6, 7, 8, 9].map((day) => card(fullDay(day), day))]);
  expect(week.text).toMatch(/^1-2 as FD 4\n3 Single-leg heel raise .*4x6 218 r120 f7-8/m);
});

test('bouts stand with everything that is set and held, and no share of body weight', () => {
  const { text } = weekText([card([run(1, 240)])]);
  expect(text).toContain(
    'warm 5 min | WORK 4 x 4 min, 3 min easy - 12.5 km/h - 161-175/min - harness 122 lb | cool 5 min | feel 7-8',
  );
  expect(text).toContain('Heart rate and effort govern');
  expect(text).not.toContain('% of body weight');
});

const anyItem = fc
  .record({
    exerciseName: fc.string({ unit: anyCharacter, maxLength: 300 }),
    last: fc.option(fc.string({ unit: anyCharacter, maxLength: 300 })),
    cues: fc.array(fc.string({ unit: anyCharacter, maxLength: 300 }), { maxLength: 6 }),
    says: fc.array(fc.string({ unit: anyCharacter, maxLength: 300 }), { maxLength: 3 }),
    sets: fc.array(
      fc.integer({ min: 1, max: 9999 }).map((increments) => work(increments)),
      { maxLength: 12 },
    ),
  })
  .map((more) => item(more));

test('whatever is on the cards, the text is printable ASCII and never longer than a message', () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(anyItem, { maxLength: 12 }), { maxLength: 7 }),
      fc.string({ unit: anyCharacter, maxLength: 400 }),
      (sessions, name) => {
        const documents = sessions.map((items, place) => card(items, place + 3, name));
        const { text, bytes, cut } = weekText(documents);
        expect(text).toMatch(/^[\x20-\x7E\n]*$/);
        expect(bytes).toBe(Buffer.byteLength(text));
        expect(bytes).toBeLessThanOrEqual(MOST_BYTES);
        expect(text.includes('NOT IN THIS TEXT')).toBe(cut.includes('sessions'));
      },
    ),
  );
});
