import type { IssuedCardWindow } from '#contract/windows/card-window.ts';
import { dateWithYear } from '../../parts/dates.ts';
import { isoDay } from '#units/day.ts';
import { CardSheet } from './card-sheet.tsx';

const LENGTH_OF_A_DATE = 10;

const footOf = ({ document, code }: IssuedCardWindow): string => {
  const { issuedAt, issuedBy, card, validUntil } = document;
  const on = dateWithYear(isoDay(issuedAt.slice(0, LENGTH_OF_A_DATE)));
  const by = `${issuedBy.name}${issuedBy.signsFor ? ` for ${issuedBy.signsFor}` : ''}`;
  return `Issued ${on} by ${by} · ${card.programme.name}, version ${card.programme.number} · valid until ${dateWithYear(validUntil)} · card ${code}`;
};

const bandOf = ({ record }: IssuedCardWindow): string | null => {
  if (record.delivery === 'recalled') return `Recalled: do not train from this card. ${record.recall?.says ?? ''}`;
  if (record.delivery === 'superseded') return 'Replaced by a later card: do not train from this one.';
  return null;
};

/** A card as it was signed, made from its document alone. */
export const IssuedCardSheet = ({ window }: { readonly window: IssuedCardWindow }) => (
  <CardSheet
    card={window.document.card}
    personName={window.document.person.name}
    missionName={window.document.mission.name}
    band={bandOf(window)}
    foot={footOf(window)}
  />
);
