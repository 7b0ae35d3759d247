import { useEffect } from 'react';
import { ROUTES } from '#contract/routes.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { ProgrammesWindow } from '#contract/windows/programmes-window.ts';
import { Await, Page } from '../../parts/parts.ts';
import { useHouse, useWindow } from '../../windows.ts';
import { ExerciseList } from './exercise-list.tsx';
import { MachineTable } from './machine-table.tsx';
import { PolicyTable } from './policy-table.tsx';
import styles from './settings-page.module.css';
import { Signers } from './signers.tsx';

/** How this house works: who signs, which policies stand, what there is to lift with. */
export default function SettingsPage() {
  return (
    <Page title="Settings">
      <Await query={useHouse()}>{(house) => <Settings house={house} />}</Await>
    </Page>
  );
}

function Settings({ house }: { readonly house: HouseWindow }) {
  const programmes = useWindow<ProgrammesWindow>(ROUTES.programmes);
  useGoToAddress(programmes.data !== undefined);
  return (
    <div className={styles['settings']}>
      <Signers house={house} />
      <PolicyTable policies={house.policies} />
      <MachineTable house={house} />
      <Await query={programmes}>{({ exercises }) => <ExerciseList exercises={exercises} />}</Await>
    </div>
  );
}

/** An address such as settings#back-squat is drawn after the browser looked for it, and what it names is folded. */
const useGoToAddress = (isDrawn: boolean): void => {
  useEffect(() => {
    if (!isDrawn) return;
    goToAddress();
    addEventListener('hashchange', goToAddress);
    return () => {
      removeEventListener('hashchange', goToAddress);
    };
  }, [isDrawn]);
};

const goToAddress = (): void => {
  const named = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (named instanceof HTMLDetailsElement) named.open = true;
  named?.scrollIntoView();
};
