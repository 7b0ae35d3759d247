import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anyIssuedCard } from './any-issued-card.setup.ts';
import { issuedCard } from './issued-card.schema.ts';

/** Items of a card as the first program wrote them: bouts and drills told their sums in sentences. */
const asWrittenFirst = (items: readonly object[]): readonly object[] =>
  items.map((item) => {
    if (!('kind' in item) || item.kind === 'lift') return item;
    const { row, ...rest } = { row: null, ...item };
    const harness = 'harness' in rest && rest.harness ? withoutShare(rest.harness) : null;
    return { ...rest, ...('harness' in rest ? { harness } : {}), working: [`Sum ${row ?? 0}.`] };
  });

const withoutShare = (harness: object): object => {
  const { share, ...rest } = { share: null, ...harness };
  return share === undefined ? harness : rest;
};

test('a card of the first program that held bouts and drills is read, its sums as sentences', () => {
  fc.assert(
    fc.property(anyIssuedCard, (document) => {
      const first = { ...document, card: { ...document.card, items: asWrittenFirst(document.card.items) } };
      const read = issuedCard.parse(first);
      const pieces = read.card.items.flatMap((item) => (item.kind === 'lift' ? [] : [item]));
      expect(pieces.map(({ row }) => row)).toEqual(pieces.map(() => null));
      expect(pieces.every(({ says }) => says.some((each) => /^Sum \d+\.$/.test(each)))).toBe(true);
      expect(pieces.flatMap((item) => (item.kind === 'bouts' && item.harness ? [item.harness.share] : []))).toEqual([
        null,
      ]);
      expect(read.digest).toBe(document.digest);
    }),
  );
});

test('a card of today is read as it stands', () => {
  fc.assert(
    fc.property(anyIssuedCard, (document) => {
      expect(issuedCard.parse(document)).toEqual(document);
    }),
  );
});
