import { ROUTES } from '#contract/routes.ts';
import type { ProgrammesWindow } from '#contract/windows/programmes-window.ts';
import { Await, Empty, Page } from '../../parts/parts.ts';
import { useWindow } from '../../windows.ts';
import { ProgrammeSection } from './programme-section.tsx';

/** The set programmes, version by version, and who follows them. */
export default function ProgrammesPage() {
  return (
    <Page title="Programmes" lead="relative plans; each person’s cards make them absolute">
      <Await query={useWindow<ProgrammesWindow>(ROUTES.programmes)}>
        {(window) =>
          window.versions.length === 0 ? (
            <Empty>There is no programme in this data file. The shipped one comes with every new file.</Empty>
          ) : (
            window.versions.map((entry) => <ProgrammeSection key={entry.version.id} entry={entry} window={window} />)
          )
        }
      </Await>
    </Page>
  );
}
