import { useState } from 'react';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { MachineSetting, SettingsWindow } from '#contract/windows/settings-window.ts';
import { Button, Empty } from '../../parts/parts.ts';
import { GuardedDialog } from './guarded-dialog.tsx';
import { CalibrationForm } from './calibration-form.tsx';
import { MachineForm } from './machine-form.tsx';
import { MachineTable } from './machine-table.tsx';
import { BackInServiceForm, OutOfServiceForm } from './outage-form.tsx';
import { SiteForm } from './site-form.tsx';
import { TakeBackCalibrationForm } from './take-back-calibration-form.tsx';
import { SITE_PLACES } from './machine-fields.tsx';
import styles from './settings-page.module.css';

/** What is done to a site or a machine. */
export type MachineDoing =
  | { readonly kind: 'new site' }
  | { readonly kind: 'rename site'; readonly of: SettingsWindow['sites'][number] }
  | { readonly kind: 'new machine' }
  | { readonly kind: 'change' | 'out of service' | 'back in service' | 'calibrate'; readonly of: MachineSetting }
  | {
      readonly kind: 'correct calibration' | 'take back calibration';
      readonly of: MachineSetting;
      readonly calibration: MachineSetting['calibrations'][number];
    };

interface SitesAndMachinesProps {
  readonly house: HouseWindow;
  readonly settings: SettingsWindow;
  readonly onSaid: (said: string | null) => void;
}

/** Sites, and what there is to train with at each. */
export function SitesAndMachines({ house, settings, onSaid }: SitesAndMachinesProps) {
  const [doing, setDoing] = useState<MachineDoing | null>(null);
  const done = (said: string | null): void => {
    setDoing(null);
    onSaid(said);
  };
  return (
    <section aria-label="Sites and machines" id="machines" className={styles['stacks']}>
      <h2>Sites and machines</h2>
      <ul className={styles['sites']}>
        {settings.sites.map((each) => (
          <li key={each.site.id}>
            {each.site.name} <span className="soft small">{SITE_PLACES[each.site.place]}</span>{' '}
            <Button
              kind="link"
              label={`Rename ${each.site.name}`}
              onPress={() => setDoing({ kind: 'rename site', of: each })}
            >
              rename
            </Button>
          </li>
        ))}
      </ul>
      {settings.machines.length === 0 ? (
        <Empty>There is no machine in this data file.</Empty>
      ) : (
        <MachineTable house={house} settings={settings} onDo={setDoing} />
      )}
      <div className={styles['acts']}>
        <Button onPress={() => setDoing({ kind: 'new machine' })}>New machine</Button>
        <Button onPress={() => setDoing({ kind: 'new site' })}>New site</Button>
      </div>
      {doing !== null && (
        <GuardedDialog title={titleOf(doing)} onClose={() => setDoing(null)} place={placeOf(doing)}>
          <FormFor doing={doing} house={house} onDone={done} />
        </GuardedDialog>
      )}
    </section>
  );
}

/** What has rows of its own takes the middle of the page. */
const placeOf = ({ kind }: MachineDoing): 'middle' | 'side' =>
  kind === 'new machine' || kind === 'change' ? 'middle' : 'side';

const titleOf = (doing: MachineDoing): string => {
  switch (doing.kind) {
    case 'new site':
      return 'New site';
    case 'rename site':
      return `Rename ${doing.of.site.name}`;
    case 'new machine':
      return 'New machine';
    case 'change':
      return `Change ${doing.of.machine.name}`;
    case 'out of service':
      return `${doing.of.machine.name} out of service`;
    case 'back in service':
      return `${doing.of.machine.name} back in service`;
    case 'calibrate':
      return `Calibration of ${doing.of.machine.name}`;
    case 'take back calibration':
      return `Take back a calibration of ${doing.of.machine.name}`;
    case 'correct calibration':
      return `Correct a calibration of ${doing.of.machine.name}`;
  }
};

interface FormForProps {
  readonly doing: MachineDoing;
  readonly house: HouseWindow;
  readonly onDone: (said: string | null) => void;
}

function FormFor({ doing, house, onDone }: FormForProps) {
  const { today } = house;
  switch (doing.kind) {
    case 'new site':
      return <SiteForm of={null} onDone={onDone} />;
    case 'rename site':
      return <SiteForm of={doing.of} onDone={onDone} />;
    case 'new machine':
      return <MachineForm of={null} house={house} onDone={onDone} />;
    case 'change':
      return <MachineForm of={doing.of} house={house} onDone={onDone} />;
    case 'out of service':
      return <OutOfServiceForm of={doing.of} today={today} onDone={onDone} />;
    case 'back in service':
      return <BackInServiceForm of={doing.of} today={today} onDone={onDone} />;
    case 'calibrate':
      return <CalibrationForm of={doing.of} correcting={null} today={today} onDone={onDone} />;
    case 'take back calibration':
      return <TakeBackCalibrationForm calibration={doing.calibration} onDone={onDone} />;
    case 'correct calibration':
      return <CalibrationForm of={doing.of} correcting={doing.calibration} today={today} onDone={onDone} />;
  }
}
