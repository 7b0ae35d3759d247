import { useQueries } from '@tanstack/react-query';
import { Link, useParams } from 'wouter';
import { ROUTES } from '#contract/routes.ts';
import type { CardWindow, WeekTextWindow } from '#contract/windows/card-window.ts';
import type { SheetColumn, SheetWindow } from '#contract/windows/sheet-window.ts';
import { day as dayOf } from '#units/day.ts';
import { getWindow, problemsOf } from '../../api.ts';
import { Await } from '../../parts/await.tsx';
import { Button } from '../../parts/button.tsx';
import { shortDate } from '../../parts/dates.ts';
import { Actions } from '../../parts/dialog.tsx';
import { Empty, Page } from '../../parts/page.tsx';
import { Problems } from '../../parts/problems.tsx';
import { useSheet, useWeekText } from '../../windows.ts';
import { IssuedCardSheet } from './issued-card-sheet.tsx';
import { PlainText } from './plain-text.tsx';
import styles from './card.module.css';

const DAYS_OF_A_WEEK = 7;

/** Issued cards of seven days that stand. */
const issuedIn = ({ columns }: SheetWindow, from: number): readonly SheetColumn[] =>
  columns.filter(
    ({ day, card, delivery }) =>
      card !== null &&
      day >= from &&
      day < from + DAYS_OF_A_WEEK &&
      delivery !== 'recalled' &&
      delivery !== 'superseded',
  );

const cutSays = ({ bytes, cut }: WeekTextWindow): string =>
  `${bytes} bytes${cut.length > 0 ? `; to fit, these went: ${cut.join(', then ')}` : ''}.`;

const WeekText = ({ person, from }: { readonly person: string; readonly from: number }) => (
  <Await query={useWeekText(person, from)}>{(week) => <PlainText text={week.text} about={cutSays(week)} />}</Await>
);

const Cards = ({ columns }: { readonly columns: readonly SheetColumn[] }) => {
  const found = useQueries({
    queries: columns.map(({ card }) => {
      const path = ROUTES.card(card ?? '');
      return { queryKey: [path], queryFn: () => getWindow<CardWindow>(path) };
    }),
  });
  const problems = found.flatMap(({ error }) => problemsOf(error));
  return (
    <>
      <Problems problems={problems} />
      {found.map(({ data }) =>
        data?.kind === 'issued' ? (
          <div className={styles['onepage']} key={data.document.id}>
            <IssuedCardSheet window={data} />
          </div>
        ) : null,
      )}
    </>
  );
};

const Week = ({ sheet, from }: { readonly sheet: SheetWindow; readonly from: number }) => {
  const columns = issuedIn(sheet, from);
  const [first, last] = [dayOf(from), dayOf(from + DAYS_OF_A_WEEK - 1)];
  const title = `Cards of ${sheet.person.name}, ${shortDate(first)} to ${shortDate(last)}`;
  return (
    <>
      <div className="on-screen">
        <Page title={title} lead={columns.length === 1 ? 'one card' : `${columns.length} cards`}>
          <Actions>
            <Link href={`/people/${sheet.person.id}`}>Back to the sheet</Link>
            {columns.length > 0 ? (
              <Button kind="main" onPress={() => window.print()}>
                Print
              </Button>
            ) : null}
            <Link href={`/people/${sheet.person.id}/print/${from - DAYS_OF_A_WEEK}`}>the week before</Link>
            <Link href={`/people/${sheet.person.id}/print/${from + DAYS_OF_A_WEEK}`}>the week after</Link>
          </Actions>
        </Page>
        {columns.length > 0 ? (
          <WeekText person={sheet.person.id} from={from} />
        ) : (
          <Empty>No card is issued in these seven days. Cards are issued on the sheet.</Empty>
        )}
      </div>
      <Cards columns={columns} />
    </>
  );
};

/** The signed cards of one week, a page each. */
export const PrintWeekPage = () => {
  const { person, from } = useParams<{ person: string; from: string }>();
  return <Await query={useSheet(person)}>{(sheet) => <Week sheet={sheet} from={Number(from)} />}</Await>;
};
