import { Link, useParams } from 'wouter';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { Await } from '../../parts/await.tsx';
import { Empty } from '../../parts/page.tsx';
import { PersonFrame } from '../../parts/person-frame.tsx';
import { useIsPrinting } from '../../parts/printing.ts';
import { useSheet } from '../../windows.ts';
import { PrintedSheet } from './printed-sheet.tsx';
import { Sheet } from './sheet.tsx';

const OnScreenOrPaper = ({ sheet }: { readonly sheet: SheetWindow }) => {
  const isPrinting = useIsPrinting();
  return (
    <>
      <div className="on-screen">
        <Sheet key={sheet.person.id} sheet={sheet} />
      </div>
      {isPrinting ? <PrintedSheet sheet={sheet} /> : null}
    </>
  );
};

/** The page that is open all day: what was planned and done, and what comes. */
export const SheetPage = () => {
  const { person } = useParams<{ person: string }>();
  return (
    <Await query={useSheet(person)}>
      {(sheet) => (
        <PersonFrame person={sheet.person} active="Sheet">
          {sheet.columns.length === 0 ? (
            <Empty>
              {sheet.empty ?? 'There is no session yet.'} <Link href={`/people/${person}/record`}>Open the record</Link>{' '}
              or <Link href="/programmes">choose a programme to follow</Link>.
            </Empty>
          ) : (
            <OnScreenOrPaper sheet={sheet} />
          )}
        </PersonFrame>
      )}
    </Await>
  );
};
