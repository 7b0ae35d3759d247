import { useMemo, useState } from 'react';
import { Link, useLocation, useParams } from 'wouter';
import type { ProgrammesWindow } from '#contract/windows/programmes-window.ts';
import { ROUTES } from '#contract/routes.ts';
import { Await, Empty, Page } from '#web/parts/parts.ts';
import { useHouse, useWindow } from '#web/windows.ts';
import { draftOf, EMPTY_DRAFT, type Draft } from './draft.ts';
import { Editor } from './editor.tsx';

/** The address of a draft that begins with nothing. */
const NEW = 'new';

/** A draft of the next version of a programme, or of a new one. */
export default function EditorPage() {
  const { version } = useParams<{ version: string }>();
  const house = useHouse().data;
  return (
    <Await query={useWindow<ProgrammesWindow>(ROUTES.programmes)}>
      {(window) => {
        const base = window.versions.find((entry) => entry.version.id === version) ?? null;
        if (!base && version !== NEW) return <NoSuchVersion />;
        return house ? <Started key={version} from={version} window={window} today={house.today} /> : null;
      }}
    </Await>
  );
}

const NoSuchVersion = () => (
  <Page title="There is no such version">
    <Empty>
      The address may have been mistyped, or belongs to another data file.{' '}
      <Link href="/programmes">All programmes.</Link>
    </Empty>
  </Page>
);

interface StartedProps {
  readonly from: string;
  readonly window: ProgrammesWindow;
  readonly today: NonNullable<ReturnType<typeof useHouse>['data']>['today'];
}

const Started = ({ from, window, today }: StartedProps) => {
  const [, navigate] = useLocation();
  const [base] = useState(() => window.versions.find((entry) => entry.version.id === from)?.version ?? null);
  const start = useMemo((): Draft => (base ? draftOf(base) : EMPTY_DRAFT), [base]);
  return (
    <Editor
      from={from}
      base={base}
      start={start}
      window={window}
      today={today}
      onTaken={({ version }) => navigate(`/programmes#${version}`)}
    />
  );
};
