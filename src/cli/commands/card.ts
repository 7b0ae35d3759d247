import { cardCode, readCardCode } from '#domain/card-code.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import { cardText } from '#interchange/plain-text/card-text.ts';
import { DATA_OPTIONS, done, failed, needed, type Command } from '../command.ts';
import { snapshotNow, withData } from '../with-data.ts';

export const card: Command = {
  name: 'card',
  summary: 'Prints an issued card as text, found by the code that stands on it.',
  options: [needed('code', 'CODE', 'such as K7QF-2M9X'), ...DATA_OPTIONS],
  run: (given, world) =>
    withData(given, world, async (keeping) => {
      const reading = readCardCode(given['code'] ?? '');
      if (reading.kind !== 'code') return failed(reading.says);
      const found = issuedCards(snapshotNow(keeping)).find(
        ({ document }) => cardCode(document.digest) === reading.code,
      );
      if (!found) return failed(`No issued card has the code ${reading.code}.`);
      const withdrawn = found.delivery === 'recalled' || found.delivery === 'superseded';
      return done(
        ...(withdrawn ? [`THIS CARD IS ${found.delivery.toUpperCase()}: do not train from it.`] : []),
        cardText(found.document),
      );
    }),
};

const issuedCards = (snapshot: Snapshot): readonly { readonly document: IssuedCard; readonly delivery: string }[] =>
  snapshot.people.flatMap((person) =>
    (snapshot.road(person)?.cards ?? []).flatMap((each) => (each.state === 'issued' ? [each.record] : [])),
  );
