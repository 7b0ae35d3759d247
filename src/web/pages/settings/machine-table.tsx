import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { MachineSetting, SettingsWindow } from '#contract/windows/settings-window.ts';
import type { Machine } from '#domain/catalogue.ts';
import type { Day } from '#units/day.ts';
import { Button, dateWithYear, join, Table } from '../../parts/parts.ts';
import { MachineMore } from './machine-more.tsx';
import styles from './settings-page.module.css';
import type { MachineDoing } from './sites-and-machines.tsx';
import { isLoaded } from './typed-machine.ts';

interface MachineTableProps {
  readonly house: HouseWindow;
  readonly settings: SettingsWindow;
  readonly onDo: (doing: MachineDoing) => void;
}

/** What there is to train with, site by site. */
export function MachineTable({ house, settings, onDo }: MachineTableProps) {
  return (
    <Table caption="Machines by site" isCaptionHidden>
      <thead>
        <tr>
          <th scope="col">machine</th>
          <th scope="col">site</th>
          <th scope="col">gravity</th>
          <th scope="col" className="number">
            step
          </th>
          <th scope="col" className="number">
            least
          </th>
          <th scope="col" className="number">
            ceiling
          </th>
          <th scope="col">own limits</th>
          <th scope="col">minutes</th>
          <th scope="col">state</th>
          <th scope="col" className="on-screen">
            <span className="unseen">what can be done</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {settings.machines.map((setting) => (
          <MachineRow key={setting.machine.id} setting={setting} house={house} onDo={onDo} />
        ))}
      </tbody>
    </Table>
  );
}

interface MachineRowProps {
  readonly setting: MachineSetting;
  readonly house: HouseWindow;
  readonly onDo: (doing: MachineDoing) => void;
}

function MachineRow({ setting, house, onDo }: MachineRowProps) {
  const { machine } = setting;
  const { minutes, unit, limits, kind } = machine;
  const nameOf = (id: string): string => house.exercises.find((exercise) => exercise.id === id)?.name ?? id;
  return (
    <tr id={machine.id}>
      <th scope="row">
        {machine.name} <span className="soft small">{kind}</span>
        <MachineMore setting={setting} onDo={onDo} />
      </th>
      <td data-label="site">{house.sites.find(({ id }) => id === machine.site)?.name ?? machine.site}</td>
      <td data-label="gravity">{machine.gravity}</td>
      {(['increment', 'least', 'ceiling'] as const).map((of) => (
        <td key={of} data-label={of === 'increment' ? 'step' : of} className={join('number', styles['load'])}>
          {isLoaded(kind) ? (
            <>
              {machine[of]} <span className="soft">{unit}</span>
            </>
          ) : (
            '–'
          )}
        </td>
      ))}
      <td data-label="own limits" className="soft small">
        {[
          ...limits.map(
            ({ exercise, attachment, most }) =>
              `${nameOf(exercise)}${attachment === null ? '' : ` by the ${attachment}`} ${most} ${unit}`,
          ),
          ...mostOf(machine),
        ].join(', ') || '–'}
      </td>
      <td data-label="minutes" className="soft small">
        set-up {minutes.setUp}, stow {minutes.stow}, change of exercise {minutes.changeExercise}, of load{' '}
        {minutes.changeLoad}
      </td>
      <td data-label="state">{stateOf(machine, house.today)}</td>
      <td className="on-screen">
        <MachineActs setting={setting} today={house.today} onDo={onDo} />
      </td>
    </tr>
  );
}

const mostOf = ({ mostWatts, mostSpeed }: Machine): readonly string[] => [
  ...(mostWatts === null ? [] : [`${mostWatts} W`]),
  ...(mostSpeed === null ? [] : [`${mostSpeed} km/h`]),
];

/** An outage that is over is history; one that is or comes is the state. */
const isOver = ({ outOfService: out }: Machine, today: Day): boolean =>
  out === null || (out.until !== null && out.until < today);

function MachineActs({ setting, today, onDo }: Omit<MachineRowProps, 'house'> & { readonly today: Day }) {
  const { name } = setting.machine;
  const isIn = isOver(setting.machine, today);
  return (
    <span className={styles['doing']}>
      <Button kind="link" label={`Change ${name}`} onPress={() => onDo({ kind: 'change', of: setting })}>
        change
      </Button>
      {!isIn && (
        <Button
          kind="link"
          label={`${name} back in service`}
          onPress={() => onDo({ kind: 'back in service', of: setting })}
        >
          back in service
        </Button>
      )}
      <Button
        kind="link"
        label={isIn ? `${name} out of service` : `Outage of ${name}: change`}
        onPress={() => onDo({ kind: 'out of service', of: setting })}
      >
        {isIn ? 'out of service' : 'outage'}
      </Button>
      {isLoaded(setting.machine.kind) && (
        <Button kind="link" label={`Calibrate ${name}`} onPress={() => onDo({ kind: 'calibrate', of: setting })}>
          calibrate
        </Button>
      )}
    </span>
  );
}

function stateOf(machine: Machine, today: Day) {
  const { outOfService: out } = machine;
  if (out === null || isOver(machine, today)) return <span className={styles['load']}>in service</span>;
  const until = out.until === null ? 'until further notice' : `to ${dateWithYear(out.until)}`;
  return (
    <span className={styles['out']}>
      out of service from {dateWithYear(out.from)} {until}: {out.reason}
    </span>
  );
}
