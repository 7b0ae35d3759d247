import { BODY_SITES } from '#domain/catalogue.ts';
import type { BodyOf } from './people.schema.ts';
import { SET_ASIDE, type FactBody } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { takeUp } from '#domain/programme.ts';
import { addDays, day } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { SQUAT_GATES, WAYS_OF_WATCHING } from '#domain/squat-gate.ts';
import { anyCharacter } from '#units/any-character.setup.ts';
import fc from 'fast-check';
import { anyIssuedCard, anyRaise } from './any-issued-card.setup.ts';
import { anyPiece, anyTest } from './any-test.setup.ts';

/** Drafts of facts of every kind, to be drawn by tests. */
export const anyId = <Kind extends string>() => fc.stringMatching(/^[a-z0-9-]{1,12}$/).map((text) => idOf<Kind>(text));
export const anyDay = fc.integer({ min: -25_567, max: 84_370 }).map(day);
export const anyText = fc
  .string({ minLength: 1, maxLength: 40, unit: anyCharacter })
  .filter((text) => text.trim() !== '' && !text.includes('\u0000'));
const anyDecimal = fc
  .tuple(fc.nat(9999), fc.option(fc.nat(99)))
  .map(([whole, part]) => (part === null ? `${whole + 1}` : `${whole + 1}.${part}`));
const anyUnit = fc.constantFrom('kg' as const, 'lb' as const);
export const anyLoad = fc.tuple(anyDecimal, anyUnit).map(([text, unit]) => entered(text, unit));
const orNull = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: null });
export const anySide = orNull(fc.constantFrom('left' as const, 'right' as const));
const anyEffort = orNull(
  fc.record({
    kind: fc.constantFrom('RPE' as const, 'repetitions in reserve' as const),
    value: fc.integer({ min: 2, max: 20 }).map((halves) => halves / 2),
  }),
);
const anySite = fc.constantFrom(...BODY_SITES);
const anyRepetitions = fc.nat(50);

const person = anyId<'person'>();

type AnyBody = { readonly [Kind in FactBody['kind']]: fc.Arbitrary<BodyOf<Kind>> };

const kind = <Kind extends FactBody['kind']>(word: Kind) => fc.constant(word);

export const ANY_BODY: AnyBody = {
  introduced: fc.record({
    kind: kind('introduced'),
    person,
    name: anyText,
    sex: fc.constantFrom('female' as const, 'male' as const),
    birthDate: orNull(anyDay),
    trainingAge: orNull(anyDecimal.map((text) => entered(text, 'years' as const))),
  }),
  measured: fc.oneof(
    fc.record({ kind: kind('measured'), person, day: anyDay, what: fc.constant('body mass' as const), value: anyLoad }),
    fc.record({
      kind: kind('measured'),
      person,
      day: anyDay,
      what: fc.constant('stature' as const),
      value: anyDecimal.map((text) => entered(text, 'cm' as const)),
    }),
  ),
  dated: fc
    .tuple(fc.array(anyDay, { minLength: 3, maxLength: 3 }), anyId<'mission'>(), anyText, anyId<'site'>(), fc.boolean())
    .map(([days, mission, name, site, known]) => {
      const [launch = day(0), earliest = launch, latest = earliest] = days.sort((a, b) => a - b);
      return { kind: 'dated', mission, name, site, launch, landing: known ? { earliest, latest } : null };
    }),
  assigned: fc.record({
    kind: kind('assigned'),
    person,
    mission: anyId<'mission'>(),
    role: fc.constantFrom('prime' as const, 'backup' as const),
    team: fc.constantFrom('ours' as const, 'another team' as const),
    spaceWalks: fc.boolean(),
  }),
  lifted: fc.record({
    kind: kind('lifted'),
    person,
    day: anyDay,
    exercise: anyId<'exercise'>(),
    machine: anyId<'machine'>(),
    load: anyLoad,
    repetitions: anyRepetitions,
    effort: anyEffort,
    side: anySide,
  }),
  stays: fc
    .record({ kind: kind('stays'), person, site: anyId<'site'>(), from: anyDay, until: fc.option(anyDay) })
    .map((stay) => ({ ...stay, until: stay.until === null || stay.until < stay.from ? null : stay.until })),
  judged: fc.record({
    kind: kind('judged'),
    person,
    day: anyDay,
    gate: fc.constantFrom(...SQUAT_GATES),
    passed: fc.boolean(),
    observedBy: fc.constantFrom('Maud Arkwright', 'a colleague'),
    watched: fc.constantFrom(...WAYS_OF_WATCHING),
  }),
  'looked at': fc.record({
    kind: kind('looked at'),
    person,
    day: anyDay,
    what: fc.constant('hands and shoulders' as const),
    passed: fc.boolean(),
    observedBy: fc.constantFrom('Maud Arkwright', 'a colleague'),
  }),
  available: fc.record({
    kind: kind('available'),
    person,
    from: anyDay,
    until: fc.constant(null),
    minutes: fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 7, maxLength: 7 }),
  }),
  'set aside': fc
    .tuple(
      fc.integer({ min: -25_567, max: 84_000 }).map(day),
      fc.nat(60),
      fc.constantFrom(...SET_ASIDE),
      anyText,
      person,
    )
    .map(([from, days, what, text, who]) => ({
      kind: 'set aside',
      person: who,
      from,
      until: addDays(from, days),
      what,
      minutes: 60,
      text,
    })),
  'space walk': fc.record({ kind: kind('space walk'), person, day: anyDay, text: anyText }),
  'road holds': fc.record({
    kind: kind('road holds'),
    person,
    from: anyDay,
    until: fc.constant(null),
    text: anyText,
  }),
  tested: fc.record({ kind: kind('tested'), person, day: anyDay, test: anyTest }),
  carried: fc.record({ kind: kind('carried'), person, day: anyDay, load: anyLoad }),
  trained: fc.record({
    kind: kind('trained'),
    person,
    day: anyDay,
    card: anyId<'card'>(),
    sets: fc.array(
      fc.record({
        set: anyId<'set'>(),
        repetitions: anyRepetitions,
        load: anyLoad,
        effort: anyEffort,
        side: anySide,
      }),
      { maxLength: 4 },
    ),
    pieces: fc.array(anyPiece, { maxLength: 2 }),
    sessionRpe: orNull(fc.nat(10)),
    minutes: orNull(fc.nat(150)),
  }),
  hurt: fc.record({
    kind: kind('hurt'),
    person,
    day: anyDay,
    card: orNull(anyId<'card'>()),
    item: orNull(anyId<'item'>()),
    site: anySite,
    side: anySide,
    score: fc.nat(10),
    when: fc.constantFrom('during' as const, 'next morning' as const),
  }),
  noted: fc.record({
    kind: kind('noted'),
    person,
    day: anyDay,
    card: orNull(anyId<'card'>()),
    item: orNull(anyId<'item'>()),
    text: anyText,
  }),
  read: fc.record({ kind: kind('read'), person, note: anyId<'fact'>() }),
  'called off': fc.record({
    kind: kind('called off'),
    person,
    day: anyDay,
    card: orNull(anyId<'card'>()),
    cause: fc.constantFrom('medical' as const, 'machine', 'operations', 'travel', 'rest by agreement'),
    text: anyText,
  }),
  missed: fc.record({ kind: kind('missed'), person, day: anyDay, card: anyId<'card'>() }),
  received: fc.record({
    kind: kind('received'),
    person,
    card: anyId<'card'>(),
    what: fc.constantFrom('card' as const, 'recall' as const),
    how: anyText,
    on: anyDay,
  }),
  restricted: fc.record({
    kind: kind('restricted'),
    person,
    restriction: fc.record({
      scope: fc.oneof(
        fc.constant({ kind: 'all' as const }),
        fc.record({ kind: fc.constant('exercise' as const), exercise: anyId<'exercise'>() }),
        fc.record({ kind: fc.constant('pattern' as const), pattern: fc.constantFrom('squat' as const, 'trunk') }),
        fc.record({ kind: fc.constant('site' as const), site: anySite, side: anySide }),
      ),
      limit: fc.oneof(
        fc.constant({ kind: 'forbidden' as const }),
        fc.constant({ kind: 'no straining' as const }),
        fc.record({ kind: fc.constant('load at most' as const), load: anyLoad }),
        fc.constant({ kind: 'fraction at most' as const, of: 0.5 }),
        fc.constant({ kind: 'RPE at most' as const, rpe: 6 }),
      ),
      toldBy: anyText,
      toldOn: anyDay,
      confirmed: fc.boolean(),
      from: anyDay,
      reviewOn: orNull(anyDay),
    }),
    medicalReason: orNull(anyText),
  }),
  'restriction lifted': fc.record({
    kind: kind('restriction lifted'),
    person,
    restriction: anyId<'fact'>(),
    toldBy: anyText,
    on: anyDay,
  }),
  'breathing set': fc.record({
    kind: kind('breathing set'),
    person,
    rule: fc.constantFrom('exhale through the hard part' as const, 'no straining at all'),
    toldBy: anyText,
  }),
  signs: fc.record({
    kind: kind('signs'),
    signer: fc.record({
      id: anyId<'signer'>(),
      name: anyText,
      role: fc.constantFrom('specialist' as const, 'physician', 'deputy'),
      signsFor: orNull(anyId<'signer'>()),
      from: orNull(anyDay),
      until: orNull(anyDay),
    }),
  }),
  catalogued: fc.record({
    kind: kind('catalogued'),
    entry: fc.oneof(
      fc.record({
        kind: fc.constant('site' as const),
        site: fc.record({ id: anyId<'site'>(), name: anyText, place: fc.constantFrom('ground' as const, 'aboard') }),
      }),
      fc
        .record({ programme: anyId<'programme'>(), name: anyText, number: fc.integer({ min: 1, max: 99 }) })
        .map((head) => ({
          kind: 'programme' as const,
          version: takeUp({ ...head, follows: null, phases: [] }),
        })),
    ),
  }),
  calibrated: fc.record({
    kind: kind('calibrated'),
    machine: anyId<'machine'>(),
    day: anyDay,
    factor: anyDecimal,
  }),
  'set up': fc.record({
    kind: kind('set up'),
    person,
    machine: anyId<'machine'>(),
    exercise: anyId<'exercise'>(),
    settings: fc.array(fc.record({ field: anyText, value: anyText, side: anySide }), { maxLength: 3 }),
  }),
  'policies set': fc.record({
    kind: kind('policies set'),
    policies: fc.record(
      { horizonDays: fc.integer({ min: 1, max: 28 }), backOff: fc.constant(0.1) },
      { requiredKeys: [] },
    ),
  }),
  decided: fc.record({
    kind: kind('decided'),
    decision: fc.oneof(
      fc.record({
        kind: fc.constant('follow' as const),
        person,
        programme: anyId<'programme version'>(),
        from: fc.oneof(
          fc.record({ on: anyDay }),
          fc.record({ from: fc.constantFrom('launch' as const, 'landing'), days: fc.integer({ min: -99, max: 99 }) }),
        ),
      }),
      fc.record({
        kind: fc.constant('raise' as const),
        person,
        from: anyDay,
        raises: fc.array(anyRaise, { maxLength: 2 }),
      }),
      fc.record({
        kind: fc.constant('issue' as const),
        person,
        card: anyIssuedCard,
        raises: fc.array(anyRaise, { maxLength: 2 }),
      }),
      fc.record({
        kind: fc.constant('re-make' as const),
        person,
        day: anyDay,
        session: anyId<'session'>(),
        here: fc.subarray(['dumbbells' as const, 'band' as const, 'treadmill' as const]),
        minutes: fc.integer({ min: 10, max: 120 }),
        hurts: fc.array(fc.record({ site: anySite, side: anySide, score: fc.nat(10) }), { maxLength: 2 }),
        reason: anyText,
      }),
      fc.record({
        kind: fc.constant('recall' as const),
        person,
        card: anyId<'card'>(),
        because: anyId<'fact'>(),
        says: anyText,
      }),
    ),
    answers: orNull(anyId<'proposal'>()),
    basis: fc.nat(9999).map((place) => place as BodyOf<'decided'>['basis']),
  }),
  retracted: fc.record({ kind: kind('retracted') }),
};

export const anyFactBody: fc.Arbitrary<FactBody> = fc.oneof(...Object.values<fc.Arbitrary<FactBody>>(ANY_BODY));
