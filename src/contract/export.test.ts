import { AUDIENCES, type Draft, type Fact, type FactBody, type Sequence } from '#domain/fact.ts';
import { idOf, instant } from '#domain/identity.ts';
import { enterInLog } from '#domain/log.ts';
import { isoDay } from '#units/day.ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exportFor, exportReveals } from './export.ts';
import { anyFactBody } from './facts/any-fact.setup.ts';

const MADE_AT = instant('2027-03-01T10:00:00.000Z');
const DATABASE = { id: 'd-1', kind: 'own' as const };

const logOf = (bodies: readonly FactBody[], corrects: Readonly<Record<number, number>> = {}): readonly Fact[] =>
  bodies.map((body, place) => {
    const corrected = corrects[place];
    const draft: Draft = {
      id: idOf<'fact'>(`f-${place}`),
      body,
      recordedBy: idOf<'signer'>('s-1'),
      supersedes: corrected === undefined ? null : idOf<'fact'>(`f-${corrected}`),
      reason: corrected === undefined ? null : 'mistyped',
    };
    return enterInLog(draft, (place + 1) as Sequence, MADE_AT);
  });

const PERSON = idOf<'person'>('marit-lund');
const RESTRICTED: FactBody = {
  kind: 'restricted',
  person: PERSON,
  restriction: {
    scope: { kind: 'site', site: 'low back', side: null },
    limit: { kind: 'forbidden' },
    toldBy: 'Dr Ana Ferreira',
    toldOn: isoDay('2027-02-20'),
    confirmed: false,
    from: isoDay('2027-02-20'),
    reviewOn: null,
  },
  medicalReason: 'disc, L4/5',
};
const DATED: FactBody = {
  kind: 'dated',
  mission: idOf<'mission'>('skerry-4'),
  name: 'Skerry 4',
  site: idOf<'site'>('skerry-station'),
  launch: isoDay('2027-02-08'),
  landing: null,
};

test('a medical reason goes to the physician alone, the limit to those who train', () => {
  const log = logOf([RESTRICTED]);
  const textFor = (audience: (typeof AUDIENCES)[number]): string =>
    JSON.stringify(exportFor(log, { audience, madeAt: MADE_AT, database: DATABASE }).facts);
  expect(textFor('physician')).toContain('disc, L4/5');
  expect(textFor('person and specialist')).toContain('forbidden');
  for (const audience of AUDIENCES.filter((each) => each !== 'physician'))
    expect(textFor(audience)).not.toContain('disc');
  for (const audience of ['team', 'planners', 'management'] as const) expect(textFor(audience)).toBe('[]');
});

test('what was cut out is said', () => {
  expect(exportReveals(logOf([RESTRICTED]), 'person and specialist')).toEqual({
    audience: 'person and specialist',
    counts: [{ kind: 'restricted', facts: 1 }],
    withheld: 0,
    cut: 1,
    people: 1,
  });
  expect(exportReveals(logOf([RESTRICTED]), 'physician').cut).toBe(0);
  expect(exportReveals(logOf([{ ...RESTRICTED, medicalReason: null }]), 'person and specialist').cut).toBe(0);
});

test('a fact that was taken back stands no longer, even for those who may not see who took it back', () => {
  const log = logOf([DATED, { kind: 'retracted' }, DATED], { 1: 0 });
  const { facts } = exportFor(log, { audience: 'planners', madeAt: MADE_AT, database: DATABASE });
  expect(facts.map(({ sequence, stands }) => ({ sequence, stands }))).toEqual([
    { sequence: 1, stands: false },
    { sequence: 3, stands: true },
  ]);
});

test('an export holds the facts whose audience it is made for, in order, as many as it announces', () => {
  fc.assert(
    fc.property(fc.array(anyFactBody, { maxLength: 12 }), fc.constantFrom(...AUDIENCES), (bodies, audience) => {
      const log = logOf(bodies);
      const { facts, reveals } = exportFor(log, { audience, madeAt: MADE_AT, database: DATABASE });
      expect(facts.map(({ id }) => id)).toEqual(
        log.filter((fact) => fact.audience.includes(audience)).map(({ id }) => id),
      );
      expect(reveals).toEqual(exportReveals(log, audience));
      expect(reveals.counts.reduce((sum, count) => sum + count.facts, 0) + reveals.withheld).toBe(log.length);
    }),
  );
});

test('where nothing is cut out, body and envelope put together are the fact', () => {
  fc.assert(
    fc.property(fc.array(anyFactBody, { maxLength: 5 }), (bodies) => {
      const log = logOf(bodies);
      const { facts } = exportFor(log, { audience: 'physician', madeAt: MADE_AT, database: DATABASE });
      const together = facts.map(({ body, cut: _cut, stands: _stands, ...envelope }) => ({ ...body, ...envelope }));
      expect(together).toEqual(log.filter((fact) => fact.audience.includes('physician')));
    }),
  );
});

test('management is shown nothing', () => {
  fc.assert(
    fc.property(fc.array(anyFactBody, { maxLength: 12 }), (bodies) => {
      expect(exportReveals(logOf(bodies), 'management').counts).toEqual([]);
    }),
  );
});
