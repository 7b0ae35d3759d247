import type { ReactNode } from 'react';
import { Link } from 'wouter';
import type { CardWindow } from '#contract/windows/card-window.ts';
import { Button } from '../../parts/button.tsx';
import { shortDate } from '../../parts/dates.ts';
import { Actions } from '../../parts/dialog.tsx';
import { useTitle } from '../../parts/page.tsx';
import { CardSheet } from './card-sheet.tsx';
import { IssuedCardSheet } from './issued-card-sheet.tsx';
import { PlainText } from './plain-text.tsx';
import styles from './card.module.css';

export const UNSIGNED = 'Not signed: cannot be trained from.';

const Bar = ({
  card,
  person,
  children,
}: {
  readonly card: { readonly title: string; readonly missionDay: string; readonly day: number };
  readonly person: { readonly id: string; readonly name: string };
  readonly children?: ReactNode;
}) => {
  useTitle(`${person.name}, ${card.missionDay}`);
  return (
    <div className="on-screen">
      <h1 className={styles['pagetitle']}>
        Card of {person.name}, {card.missionDay}
      </h1>
      <Actions>
        <Link href={`/people/${person.id}`}>Back to the sheet</Link>
        <Button kind="main" onPress={() => window.print()}>
          Print
        </Button>
        {children}
      </Actions>
    </div>
  );
};

/** A card, signed or only planned, with what can be done with it. */
export const CardWindowView = ({ card: found }: { readonly card: CardWindow }) => {
  if (found.kind === 'planned') {
    const { card, personName, missionName, gaps } = found;
    return (
      <>
        <Bar card={card} person={{ id: card.person, name: personName }}>
          <Link href={`/people/${card.person}/re-make/${card.day}`}>Make it anew for what is there</Link>
        </Bar>
        {gaps.map((gap) => (
          <p className={styles['gap']} key={gap}>
            {gap}
          </p>
        ))}
        <CardSheet
          card={card}
          personName={personName}
          missionName={missionName}
          band={UNSIGNED}
          foot={`Planned · ${card.programme.name}, version ${card.programme.number} · not signed`}
        />
      </>
    );
  }
  const { document, record, code, plainText } = found;
  const { card, person } = document;
  return (
    <>
      <Bar card={card} person={person}>
        <span className="soft">
          {shortDate(card.day)} · card {code} · {record.delivery}
          {record.outcome === 'none' ? '' : ` · ${record.outcome}`}
        </span>
      </Bar>
      <IssuedCardSheet window={found} />
      <PlainText text={plainText} />
    </>
  );
};
