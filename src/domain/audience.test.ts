import { ANY_BODY, anyFactBody } from '#contract/facts/any-fact.setup.ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bodySeenBy, defaultAudience } from './audience.ts';
import { AUDIENCES, type FactBody, type FactKind } from './fact.ts';
import { logOf } from './invented-log.setup.ts';

/** Names, dates and machines are for team and planners too. */
const FOR_PLANNERS: readonly FactKind[] = [
  'introduced',
  'dated',
  'assigned',
  'stays',
  'available',
  'set aside',
  'space walk',
  'road holds',
  'signs',
  'catalogued',
  'calibrated',
  'policies set',
];

test.each(Object.keys(ANY_BODY) as FactKind[])('who may see a fact of kind "%s"', (kind) => {
  fc.assert(
    fc.property(ANY_BODY[kind] as fc.Arbitrary<FactBody>, (body) => {
      const audience = defaultAudience(body);
      expect(audience).toEqual(expect.arrayContaining(['person and specialist', 'physician']));
      expect(audience).not.toContain('management');
      expect(audience.includes('planners')).toBe(FOR_PLANNERS.includes(kind));
      expect(audience.includes('team')).toBe(FOR_PLANNERS.includes(kind) || kind === 'set up');
    }),
  );
});

test('whoever is not of the audience sees nothing of a fact', () => {
  fc.assert(
    fc.property(anyFactBody, fc.constantFrom(...AUDIENCES), (body, audience) => {
      const [fact] = logOf(body);
      const seen = fact && bodySeenBy(fact, audience);
      expect(seen === null).toBe(!fact?.audience.includes(audience));
    }),
  );
});

test('of a restriction everybody but the physician sees the limit without its medical reason', () => {
  fc.assert(
    fc.property(ANY_BODY.restricted, (body) => {
      const [fact] = logOf({ ...body, medicalReason: 'disc, L4/5' });
      expect(fact && bodySeenBy(fact, 'physician')).toMatchObject({ medicalReason: 'disc, L4/5' });
      expect(fact && bodySeenBy(fact, 'person and specialist')).toMatchObject({
        restriction: body.restriction,
        medicalReason: null,
      });
      for (const audience of AUDIENCES.filter((each) => each !== 'physician'))
        expect(JSON.stringify(fact && bodySeenBy(fact, audience))).not.toContain('disc');
    }),
  );
});
