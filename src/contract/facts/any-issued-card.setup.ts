import type { Card, CardBouts, CardDrill, CardLift } from '#domain/card.ts';
import { digestOf } from '#domain/digest.ts';
import type { Machine } from '#domain/catalogue.ts';
import type { Sequence } from '#domain/fact.ts';
import { idOf, instant } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { RAISE_CAUSES, type Raise } from '#domain/raise.ts';
import { isoDay } from '#units/day.ts';
import fc from 'fast-check';

/** One raise and one issued card in which every field is filled, invented throughout; some of them drawn. */
const RAISE: Raise = {
  track: idOf<'track'>('squat-heavy'),
  exercise: idOf<'exercise'>('back-squat'),
  exerciseName: 'Back squat',
  from: 265,
  to: 270,
  unit: 'lb',
  increment: '1',
  atTheBar: 0.03,
  trueFraction: { was: 0.72, is: 0.74 },
  effortStep: 1,
  shareStep: 2,
  cause: 'ramp step',
  because: [idOf<'fact'>('f-1')],
  cautions: ['Above what six repetitions allow.'],
  needsReason: false,
  proposal: idOf<'proposal'>('p-1'),
};

export const anyRaise: fc.Arbitrary<Raise> = fc
  .record({
    from: fc.option(fc.nat(600), { nil: null }),
    to: fc.nat(600),
    cause: fc.constantFrom(...RAISE_CAUSES),
    needsReason: fc.boolean(),
  })
  .map((drawn) => ({ ...RAISE, ...drawn, atTheBar: drawn.from === null ? null : 0.03, trueFraction: null }));

export const MACHINE: Machine = {
  id: idOf<'machine'>('resistive-aboard'),
  name: 'Resistive machine, Skerry Station',
  site: idOf<'site'>('skerry-station'),
  kind: 'resistive machine',
  gravity: '0 g',
  groundUnitOf: null,
  unit: 'lb',
  increment: '1',
  least: '10',
  ceiling: '600',
  mostWatts: null,
  mostSpeed: null,
  limits: [{ exercise: idOf<'exercise'>('curl'), attachment: 'cable', most: '150' }],
  minutes: { setUp: 6, stow: 4, changeExercise: 2, changeLoad: 0.5 },
  outOfService: { from: isoDay('2027-03-04'), until: null, reason: 'belt' },
};

const ITEM: CardLift = {
  kind: 'lift',
  item: idOf<'item'>('main-1-squat'),
  track: idOf<'track'>('squat-heavy'),
  leading: true,
  place: 0,
  exercise: idOf<'exercise'>('back-squat'),
  exerciseName: 'Back squat',
  carriedAtShoulders: true,
  machine: MACHINE.id,
  machineName: MACHINE.name,
  unit: 'lb',
  increment: '1',
  priority: 1,
  basis: 'fraction',
  asWritten: null,
  settings: [{ field: 'shoulder pad', value: '4', side: null }],
  last: 'day 20: 265 x 6 6 6 6, RPE 7',
  cues: ['Whole foot.'],
  sets: [
    { kind: 'warm-up', load: { kind: 'set', increments: 135 }, repetitions: 5, side: null, rest: 60 },
    { kind: 'work', load: { kind: 'start at', increments: 270, rpe: [6, 7] }, repetitions: 6, side: 'left', rest: 120 },
    {
      kind: 'work',
      load: { kind: 'set', increments: 270 },
      repetitions: 6,
      most: 8,
      orMore: true,
      optional: true,
      side: null,
      rest: 120,
    },
  ],
  tempo: [3, 1, 1],
  superset: { letter: 'A1', inTurnWith: [2] },
  reserve: 2,
  shouldFeel: [6, 7],
  ramp: { effort: 0.9, share: 0.8, effortStep: 2, shareStep: 2, steps: 5 },
  rule: {
    add: 5,
    rpeAtMost: 8,
    discomfortBelow: 3,
    neverOver: 300,
    takeOff: 20,
    says: 'Add 5 lb next time if all repetitions at RPE 8 or less.',
  },
  limits: [{ kind: 'ceiling', increments: 600, binds: false, says: 'The machine gives at most 600 lb.' }],
  raise: RAISE,
  row: 3,
  says: ['Should feel like 6 to 7.'],
};

const PIECE = {
  priority: 2,
  asWritten: null,
  settings: [],
  last: 'day 20: 4 of 4, 168/min, RPE 7',
  cues: ['Raise the load before the speed.'],
  shouldFeel: [7, 8],
  says: [],
  raises: [],
  row: 4,
} as const;

const RUN: CardBouts = {
  ...PIECE,
  kind: 'bouts',
  item: idOf<'item'>('run-intervals'),
  track: idOf<'track'>('run intervals'),
  place: 1,
  exercise: idOf<'exercise'>('treadmill-run'),
  exerciseName: 'Running',
  machine: idOf<'machine'>('treadmill'),
  machineName: 'Harness treadmill',
  warmUpSeconds: 300,
  bouts: [{ seconds: 240, easy: 180, heartRate: [163, 173], watts: null, speed: 11.4, rpe: [7, 8] }],
  coolDownSeconds: 300,
  harness: { increments: 102, unit: 'lb', increment: '1', ofBodyWeight: 0.651, share: 0.65 },
};

const GRIP: CardDrill = {
  ...PIECE,
  kind: 'drill',
  item: idOf<'item'>('grip-pulses'),
  track: idOf<'track'>('grip pulses'),
  place: 2,
  exercise: idOf<'exercise'>('grip-pulses'),
  exerciseName: 'Grip in pulses',
  means: 'hand gear',
  sets: [{ work: { kind: 'pulses', count: 8, on: 7, off: 3 }, side: 'left', rest: 150, force: 180 }],
};

const CARD: Card = {
  person: idOf<'person'>('marit-lund'),
  day: isoDay('2027-03-02'),
  missionDay: 'flight day 23',
  phase: 'first flight weeks',
  week: 4,
  session: idOf<'session'>('first-a'),
  title: 'Lower body, heavy',
  deload: false,
  programme: { id: idOf<'programme version'>('v-1'), name: 'Flight', number: 1 },
  items: [ITEM, RUN, GRIP],
  leftOut: [{ item: idOf<'item'>('main-1-curl'), exerciseName: 'Curl', says: 'Restricted.' }],
  minutes: [{ label: 'set up', minutes: 6, overhead: true }],
  blockMinutes: 75,
  shortOfTime: [0],
  machineDown: 'Do the bands.',
  breathing: 'exhale through the hard part',
};

const DOCUMENT: Omit<IssuedCard, 'digest'> = {
  document: 'ballast issued card',
  version: 1,
  id: idOf<'card'>('card-1'),
  replaces: null,
  issuedAt: instant('2027-03-01T10:00:00.000Z'),
  issuedBy: { id: idOf<'signer'>('s-1'), name: 'Ingrid Solberg', signsFor: 'Tomas Vance' },
  validUntil: isoDay('2027-03-09'),
  person: { id: idOf<'person'>('marit-lund'), name: 'Marit Lund' },
  mission: { name: 'Skerry 4', launch: isoDay('2027-02-08') },
  card: CARD,
  sets: [{ id: idOf<'set'>('card-1-1'), item: ITEM.item, place: 0 }],
  raises: [RAISE],
  workings: [
    {
      reckoning: 'flight set',
      item: ITEM.item,
      given: [
        {
          name: 'capacity',
          value: 104.714,
          from: { kind: 'estimate', exercise: 'Back squat', facts: [idOf<'fact'>('f-1')], says: 'three tests' },
        },
        { name: 'share', value: 0.72, from: { kind: 'model', formula: 'squat share', says: 'segment model' } },
      ],
      cells: [
        {
          name: 'bar',
          formula: 'crossing/bar-part',
          revision: 1,
          title: 'Bar part [kg]',
          equation: 'f R',
          unit: 'kg',
          of: ['capacity', 'fraction'],
          value: 85.866,
          outsideRange: [],
        },
      ],
    },
  ],
  formulas: [
    {
      id: 'crossing/bar-part',
      revision: 1,
      title: 'Bar part [kg]',
      equation: 'f R',
      source: 'common practice',
      status: 'common practice',
      doesNotKnow: '',
    },
  ],
  basis: {
    upTo: 12 as Sequence,
    facts: [idOf<'fact'>('f-1')],
    programme: idOf<'programme version'>('v-1'),
    estimates: [
      {
        key: { exercise: idOf<'exercise'>('back-squat'), gravity: '1 g', machine: 'free bar' },
        day: isoDay('2027-01-20'),
        median: 104.714,
        logSd: 0.03,
        of: 1,
        newest: isoDay('2027-01-20'),
        observations: 3,
        basis: 'carried over from 1 g',
        facts: [idOf<'fact'>('f-1')],
      },
    ],
    machines: [MACHINE],
    program: 'ballast 0.1.0',
  },
};

const signed = (document: Omit<IssuedCard, 'digest'>): IssuedCard => ({ ...document, digest: digestOf(document) });

export const ISSUED_CARD: IssuedCard = signed(DOCUMENT);

export const anyIssuedCard: fc.Arbitrary<IssuedCard> = fc
  .record({ median: fc.double({ min: 1, max: 400, noNaN: true }), row: fc.option(fc.nat(99), { nil: null }) })
  .map(({ median, row }) =>
    signed({
      ...DOCUMENT,
      card: { ...CARD, items: [{ ...ITEM, row }, RUN, GRIP] },
      basis: { ...DOCUMENT.basis, estimates: DOCUMENT.basis.estimates.map((estimate) => ({ ...estimate, median })) },
    }),
  );
