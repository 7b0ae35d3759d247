import { anyFactBody } from '#contract/facts/any-fact.setup.ts';
import { isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { FactBody } from './fact.ts';
import { idOf, instant } from './identity.ts';
import { logOf, upTo } from './invented-log.setup.ts';
import { currentFacts, endOfLog, enterInLog, expectedDigest, factsOfKind } from './log.ts';

const weighing = (kilograms: string): FactBody => ({
  kind: 'measured',
  person: idOf<'person'>('marit-lund'),
  day: isoDay('2027-02-20'),
  what: 'body mass',
  value: entered(kilograms, 'kg'),
});

const RETRACTED: FactBody = { kind: 'retracted' };

test('a draft keeps what it says and gets place, moment, audience and digest', () => {
  const draft = {
    id: idOf<'fact'>('f-9'),
    body: weighing('61.4'),
    recordedBy: idOf<'signer'>('ingrid'),
    supersedes: idOf<'fact'>('f-2'),
    reason: 'digits swapped',
  };
  const fact = enterInLog(draft, upTo(9), instant('2027-03-01T10:00:00.000Z'));
  expect(fact).toEqual({
    ...draft.body,
    id: 'f-9',
    sequence: 9,
    recordedAt: '2027-03-01T10:00:00.000Z',
    recordedBy: 'ingrid',
    audience: ['person and specialist', 'physician'],
    supersedes: 'f-2',
    reason: 'digits swapped',
    digest: expectedDigest(fact),
  });
});

test('a body of whatever kind goes into its fact whole', () => {
  fc.assert(
    fc.property(anyFactBody, (body) => {
      expect(logOf(body)[0]).toMatchObject(body);
    }),
  );
});

test('nothing in a fact can change without its digest', () => {
  fc.assert(
    fc.property(anyFactBody, fc.nat(), (body, which) => {
      const [fact] = logOf(body);
      const keys = Object.keys(fact ?? {}).filter((key) => key !== 'digest');
      const changed = { ...fact, [keys[which % keys.length] ?? '']: 'otherwise' } as NonNullable<typeof fact>;
      expect(expectedDigest(changed)).not.toBe(fact?.digest);
    }),
  );
});

test('a corrected fact is no longer current, nor is what takes it back', () => {
  const log = logOf(
    weighing('16.4'),
    weighing('70'),
    { corrects: 1, by: weighing('61.4') },
    { corrects: 2, by: RETRACTED },
  );
  expect(currentFacts(log, upTo(4)).map(({ id }) => id)).toEqual(['f-3']);
});

test('what was corrected later stood in the log before', () => {
  const log = logOf(weighing('16.4'), { corrects: 1, by: weighing('61.4') }, { corrects: 2, by: RETRACTED });
  const idsUpTo = [0, 1, 2, 3].map((place) => currentFacts(log, upTo(place)).map(({ id }) => id));
  expect(idsUpTo).toEqual([[], ['f-1'], ['f-2'], []]);
});

test('current facts are those of the log that no other names, in their order', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(anyFactBody, fc.option(fc.nat(20))), { maxLength: 20 }), (lines) => {
      const log = logOf(
        ...lines.map(([body, corrected], place) =>
          corrected !== null && corrected < place ? { corrects: corrected + 1, by: body } : body,
        ),
      );
      const named = new Set(log.map(({ supersedes }) => supersedes));
      const expected = log.filter(({ id, kind }) => !named.has(id) && kind !== 'retracted');
      expect(currentFacts(log, endOfLog(log))).toEqual(expected);
    }),
  );
});

test('the end of a log is its last place, and 0 where it is empty', () => {
  expect(endOfLog([])).toBe(0);
  expect(endOfLog(logOf(weighing('60'), weighing('61')))).toBe(2);
});

test('facts of a kind are found in their order', () => {
  const note: FactBody = { kind: 'read', person: idOf<'person'>('marit-lund'), note: idOf<'fact'>('f-1') };
  expect(factsOfKind(logOf(weighing('60'), note, weighing('61')), 'measured').map(({ sequence }) => sequence)).toEqual([
    1, 3,
  ]);
});
