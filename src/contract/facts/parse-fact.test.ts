import type { FactBody } from '#domain/fact.ts';
import { enterInLog } from '#domain/log.ts';
import type { Sequence } from '#domain/fact.ts';
import { idOf, instant } from '#domain/identity.ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ANY_BODY, anyFactBody } from './any-fact.setup.ts';
import { ISSUED_CARD } from './any-issued-card.setup.ts';
import { FACT_KINDS } from './fact-body.schema.ts';
import { parseFact, parseFactBody } from './parse-fact.ts';

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
type Path = readonly (string | number)[];

/** Every place inside a value that holds what is asked for. */
const placesOf = (value: Json, is: (value: Json) => boolean, path: Path = []): readonly Path[] => [
  ...(is(value) ? [path] : []),
  ...(typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, inner]) =>
        placesOf(inner, is, [...path, Array.isArray(value) ? Number(key) : key]),
      )
    : []),
];

const at = (value: Json, path: Path): Json =>
  path.reduce<Json>((inner, key) => (inner as Readonly<Record<string, Json>>)[key] ?? null, value);

/** The value with something else at one place. */
const changed = (value: unknown, [key, ...rest]: Path, change: (old: unknown) => unknown): unknown => {
  if (key === undefined) return change(value);
  const put = (old: unknown): unknown => changed(old, rest, change);
  if (Array.isArray(value)) return value.map((inner: unknown, place) => (place === key ? put(inner) : inner));
  const fields = value as Readonly<Record<string, unknown>>;
  return { ...fields, [key]: put(fields[key]) };
};

const isRecord = (value: Json): boolean => typeof value === 'object' && value !== null && !Array.isArray(value);
const isText = (value: Json): boolean => typeof value === 'string';
const isNumber = (value: Json): boolean => typeof value === 'number';

/** A body and one of the places in it that holds what is asked for. */
const bodyWithPlace = (is: (value: Json) => boolean) =>
  anyFactBody
    .map((body) => ({ body, places: placesOf(body as unknown as Json, is) }))
    .filter(({ places }) => places.length > 0)
    .chain(({ body, places }) => fc.record({ body: fc.constant(body), path: fc.constantFrom(...places) }));

const issuesOf = (json: unknown) => {
  const reading = parseFactBody(json);
  return reading.kind === 'refused' ? reading.issues : [];
};

test('there is a schema for every kind of fact, and facts of every kind are drawn here', () => {
  expect(Object.keys(ANY_BODY).sort()).toEqual([...FACT_KINDS].sort());
});

test.each(FACT_KINDS)('a fact of kind "%s" comes back as it was', (kind) => {
  fc.assert(
    fc.property(ANY_BODY[kind] as fc.Arbitrary<FactBody>, (body) => {
      expect(parseFactBody(body)).toEqual({ kind: 'body', body });
    }),
  );
});

test('a field that nobody knows is refused wherever it stands, by its name', () => {
  fc.assert(
    fc.property(bodyWithPlace(isRecord), ({ body, path }) => {
      const issues = issuesOf(changed(body, path, (old) => ({ ...(old as object), surplus: 1 })));
      expect(issues.length).toBeGreaterThan(0);
    }),
  );
  expect(issuesOf({ kind: 'retracted', surplus: 1 })).toEqual([
    {
      path: ['surplus'],
      what: 'surplus is no field of this fact.',
      why: 'What is not understood is not kept.',
      whatToDo: 'Leave it out, or correct its name.',
    },
  ]);
});

/** What the first program did not ask for, and reads on without. */
const LATER_FIELDS = ['spaceWalks', 'pieces'];

test('a field that is missing is refused wherever it is, policies and later fields apart', () => {
  fc.assert(
    fc.property(
      bodyWithPlace(isRecord).filter(({ body, path }) => !(body.kind === 'policies set' && path.includes('policies'))),
      fc.nat(),
      ({ body, path }, which) => {
        const keys = Object.keys(at(body as unknown as Json, path) as object).filter(
          (key) => !LATER_FIELDS.includes(key),
        );
        const gone = keys[which % keys.length];
        const issues = issuesOf(
          changed(body, path, (old) =>
            Object.fromEntries(Object.entries(old as object).filter(([key]) => key !== gone)),
          ),
        );
        expect(issues.length, `${path.join('.')} without ${gone}`).toBeGreaterThan(0);
      },
    ),
  );
});

test.each(['a\u0000b', 'a\ud800b', '\udc00'])(
  'a text that cannot be stored (%j) is refused wherever it stands',
  (text) => {
    fc.assert(
      fc.property(bodyWithPlace(isText), ({ body, path }) => {
        expect(issuesOf(changed(body, path, () => text)).length).toBeGreaterThan(0);
      }),
    );
  },
);

test.each([NaN, Infinity, -Infinity, '1', true])('%s where a number belongs is refused', (value) => {
  fc.assert(
    fc.property(bodyWithPlace(isNumber), ({ body, path }) => {
      expect(issuesOf(changed(body, path, () => value)).length).toBeGreaterThan(0);
    }),
  );
});

const LIFTED = {
  kind: 'lifted',
  person: 'p',
  day: 20_000,
  exercise: 'back-squat',
  machine: 'bar',
  load: { text: '102.5', unit: 'kg' },
  repetitions: 3,
  effort: null,
  side: null,
};

test.each([
  { path: ['load', 'text'], value: '1e9' },
  { path: ['load', 'text'], value: '102,5' },
  { path: ['load', 'text'], value: 'NaN' },
  { path: ['load', 'text'], value: '-5' },
  { path: ['load', 'text'], value: '=1+1' },
  { path: ['load', 'unit'], value: 'stone' },
  { path: ['day'], value: 20_000.5 },
  { path: ['day'], value: -25_568 },
  { path: ['day'], value: 84_371 },
  { path: ['repetitions'], value: 2.5 },
  { path: ['repetitions'], value: -1 },
  { path: ['person'], value: '' },
  { path: ['person'], value: 'x'.repeat(201) },
  { path: ['side'], value: 'both' },
  { path: ['effort'], value: { kind: 'RPE', value: 11 } },
  { path: ['effort'], value: { kind: 'feeling', value: 5 } },
  { path: ['effort'], value: 8 },
])('$path may not be $value, and the issue stands at its place', ({ path, value }) => {
  const issues = issuesOf(changed(LIFTED, path, () => value));
  expect(issues).toHaveLength(1);
  expect(issues[0]?.path.slice(0, path.length)).toEqual(path);
});

test('the first and the last day that a fact may have', () => {
  expect(issuesOf({ ...LIFTED, day: -25_567 })).toEqual([]); // 1900-01-01
  expect(issuesOf({ ...LIFTED, day: 84_370 })).toEqual([]); // 2200-12-31
});

test('everything that is wrong is said at once, in sentences', () => {
  const { machine: _, ...rest } = LIFTED;
  expect(issuesOf({ ...rest, day: 1.5, load: { text: '12,5', unit: 'kg' } })).toEqual([
    {
      path: ['day'],
      what: 'day is 1.5.',
      why: 'It must be a day from 1900-01-01 to 2200-12-31, counted from 1970-01-01.',
      whatToDo: 'Correct it.',
    },
    {
      path: ['machine'],
      what: 'machine is missing.',
      why: 'It must be an identity of 1 to 200 characters.',
      whatToDo: 'Add it.',
    },
    {
      path: ['load', 'text'],
      what: 'load, text is "12,5".',
      why: 'It must be a decimal number such as 102.5, 0 or more.',
      whatToDo: 'Correct it.',
    },
  ]);
});

test.each([null, 7, 'lifted', [], undefined])('%j is no fact', (json) => {
  expect(parseFactBody(json).kind).toBe('refused');
  expect(parseFact(json).kind).toBe('refused');
});

test('an unknown kind is named with those that are known', () => {
  const [issue] = issuesOf({ kind: 'guessed' });
  expect(issue?.what).toBe('kind is "guessed".');
  expect(issue?.why).toContain('"lifted"');
});

test('a landing before launch, and a range that ends before it begins, are refused', () => {
  const dated = { kind: 'dated', mission: 'm', name: 'Skerry 4', site: 's', launch: 100 };
  expect(issuesOf({ ...dated, landing: { earliest: 100, latest: 100 } })).toEqual([]);
  expect(issuesOf({ ...dated, landing: { earliest: 99, latest: 120 } })[0]?.path).toEqual(['landing']);
  expect(issuesOf({ ...dated, landing: { earliest: 120, latest: 119 } })[0]?.path).toEqual(['landing']);
});

test('a document that was changed after it was signed is refused', () => {
  const issue = (card: object) => ({
    kind: 'decided',
    decision: { kind: 'issue', person: 'p', card, raises: [] },
    answers: null,
    basis: 1,
  });
  expect(issuesOf(issue(ISSUED_CARD))).toEqual([]);
  const [found] = issuesOf(issue({ ...ISSUED_CARD, validUntil: ISSUED_CARD.validUntil + 1 }));
  expect(found?.path).toEqual(['decision', 'card', 'digest']);
});

test('a whole fact is its envelope and its body, and both are looked at', () => {
  fc.assert(
    fc.property(anyFactBody, (body) => {
      const draft = { id: idOf<'fact'>('f'), body, recordedBy: idOf<'signer'>('s'), supersedes: null, reason: null };
      const fact = enterInLog(draft, 7 as Sequence, instant('2027-03-01T10:00:00.000Z'));
      expect(parseFact(fact)).toEqual({ kind: 'fact', fact });
      expect(parseFact({ ...fact, audience: ['everybody'], surplus: 1 })).toMatchObject({
        kind: 'refused',
        issues: [{ path: ['audience', 0] }, { path: ['surplus'] }],
      });
    }),
  );
});

test.each(['2027-13-01T10:00:00.000Z', '2027-03-01 10:00', '2027-03-01T10:00:00Z'])('%s is no moment', (recordedAt) => {
  const envelope = { id: 'f', sequence: 1, recordedBy: 's', audience: [], supersedes: null, reason: null };
  const digest = '0'.repeat(64);
  expect(parseFact({ kind: 'retracted', ...envelope, digest, recordedAt })).toMatchObject({
    issues: [{ path: ['recordedAt'] }],
  });
});
