import { useEffect, useState } from 'react';
import { ROUTES } from '#contract/routes.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { SettingsWindow } from '#contract/windows/settings-window.ts';
import { Await, Page } from '../../parts/parts.ts';
import { useHouse, useWindow } from '../../windows.ts';
import { ExerciseList } from './exercise-list.tsx';
import { goToAddress } from './go-to-address.ts';
import { PolicyTable } from './policy-table.tsx';
import styles from './settings-page.module.css';
import { Signers } from './signers.tsx';
import { SitesAndMachines } from './sites-and-machines.tsx';

/** How this house works: who signs, which policies stand, what there is to train with. */
export default function SettingsPage() {
  const house = useHouse();
  const settings = useWindow<SettingsWindow>(ROUTES.settings);
  return (
    <Page title="Settings" lead={<Contents />}>
      <Await query={house}>
        {(shown) => <Await query={settings}>{(window) => <Settings house={shown} settings={window} />}</Await>}
      </Await>
    </Page>
  );
}

const Contents = () => (
  <nav aria-label="On this page" className={`${styles['contents'] ?? ''} on-screen`}>
    <a href="#signers">Signers</a>
    <a href="#policies">Policies</a>
    <a href="#machines">Sites and machines</a>
    <a href="#exercises">Exercises</a>
  </nav>
);

interface SettingsProps {
  readonly house: HouseWindow;
  readonly settings: SettingsWindow;
}

function Settings({ house, settings }: SettingsProps) {
  const [said, setSaid] = useState<string | null>(null);
  useGoToAddress();
  return (
    <div className={styles['settings']}>
      <output className={said === null ? undefined : styles['said']}>{said}</output>
      <Signers settings={settings} today={house.today} onSaid={setSaid} />
      <PolicyTable settings={settings} onSaid={setSaid} />
      <SitesAndMachines house={house} settings={settings} onSaid={setSaid} />
      <ExerciseList settings={settings} onSaid={setSaid} />
    </div>
  );
}

const useGoToAddress = (): void => {
  useEffect(() => {
    goToAddress();
    addEventListener('hashchange', goToAddress);
    return () => {
      removeEventListener('hashchange', goToAddress);
    };
  }, []);
};
