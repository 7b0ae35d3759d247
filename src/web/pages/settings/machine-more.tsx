import type { MachineSetting } from '#contract/windows/settings-window.ts';
import { Button, dateWithYear } from '../../parts/parts.ts';
import { History } from './history.tsx';
import styles from './settings-page.module.css';
import type { MachineDoing } from './sites-and-machines.tsx';

interface MachineMoreProps {
  readonly setting: MachineSetting;
  readonly onDo: (doing: MachineDoing) => void;
}

/** What a machine was, and what it delivers of what is set: folded, where there is anything to say. */
export function MachineMore({ setting, onDo }: MachineMoreProps) {
  const { calibrations, history } = setting;
  if (calibrations.length === 0 && history.length < 2) return null;
  return (
    <details className={styles['more']}>
      <summary className="soft small">
        {[
          ...(calibrations[0] ? [`delivers ${calibrations[0].fact.factor} of what is set`] : []),
          ...(history.length > 1 ? ['how it came to stand'] : []),
        ].join('; ')}
      </summary>
      {calibrations.length > 0 && (
        <ul className={styles['history']}>
          {calibrations.map((calibration) => (
            <li key={calibration.fact.id}>
              from {dateWithYear(calibration.fact.day)}: {calibration.fact.factor}{' '}
              <span className="soft">{calibration.by}</span>{' '}
              <Button
                kind="link"
                label={`Correct the calibration of ${dateWithYear(calibration.fact.day)}`}
                onPress={() => onDo({ kind: 'correct calibration', of: setting, calibration })}
              >
                correct
              </Button>{' '}
              <Button
                kind="link"
                label={`Take back the calibration of ${dateWithYear(calibration.fact.day)}`}
                onPress={() => onDo({ kind: 'take back calibration', of: setting, calibration })}
              >
                take back
              </Button>
            </li>
          ))}
        </ul>
      )}
      {history.length > 1 && <History history={history} wordOf={(field) => MACHINE_FIELD_WORDS[field] ?? field} />}
    </details>
  );
}

const MACHINE_FIELD_WORDS: Readonly<Record<string, string>> = {
  groundUnitOf: 'ground unit of',
  mostWatts: 'most watts',
  mostSpeed: 'fastest',
  outOfService: 'service',
};
