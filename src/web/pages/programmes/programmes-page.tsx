import { Link } from 'wouter';
import { ROUTES } from '#contract/routes.ts';
import type { ProgrammesWindow } from '#contract/windows/programmes-window.ts';
import { Await, Empty, Page } from '../../parts/parts.ts';
import { useWindow } from '../../windows.ts';
import { ProgrammeSection, type VersionEntry } from './programme-section.tsx';

/** The set programmes, each with its newest version open and the older ones under it. */
export default function ProgrammesPage() {
  return (
    <Page
      title="Programmes"
      lead="relative plans; each person’s cards make them absolute"
      aside={
        <Link className="on-screen" href="/programmes/new/edit">
          Write a new programme
        </Link>
      }
    >
      <Await query={useWindow<ProgrammesWindow>(ROUTES.programmes)}>
        {(window) =>
          window.versions.length === 0 ? (
            <Empty>There is no programme in this data file. The shipped one comes with every new file.</Empty>
          ) : (
            programmesOf(window).map(([newest, ...older]) => (
              <ProgrammeSection key={newest.version.id} newest={newest} older={older} window={window} />
            ))
          )
        }
      </Await>
    </Page>
  );
}

/** Versions of one programme together, the newest first; programmes as they were first entered. */
const programmesOf = ({ versions }: ProgrammesWindow): readonly (readonly [VersionEntry, ...VersionEntry[]])[] => {
  const programmes = [...new Set(versions.map(({ version }) => version.programme))];
  return programmes.flatMap((programme) => {
    const [newest, ...older] = versions
      .filter(({ version }) => version.programme === programme)
      .toSorted((a, b) => b.version.number - a.version.number);
    return newest ? [[newest, ...older] as const] : [];
  });
};
