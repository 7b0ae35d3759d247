import { Link, useParams } from 'wouter';
import { Await } from '../../parts/await.tsx';
import { Empty } from '../../parts/page.tsx';
import { PersonFrame } from '../../parts/person-frame.tsx';
import { useSheet } from '../../windows.ts';
import { Sheet } from './sheet.tsx';

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
            <Sheet key={sheet.person.id} sheet={sheet} />
          )}
        </PersonFrame>
      )}
    </Await>
  );
};
