import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { Machine } from '#domain/catalogue.ts';
import { dateWithYear, Empty, Table } from '../../parts/parts.ts';
import styles from './settings-page.module.css';

/** Sites, and what there is to lift with at each. */
export function MachineTable({ house }: { readonly house: HouseWindow }) {
  if (house.machines.length === 0) return <Empty>There is no machine in this data file.</Empty>;
  return (
    <section aria-label="Sites and machines">
      <h2>Sites and machines</h2>
      <Table caption="Machines by site" isCaptionHidden>
        <thead>
          <tr>
            <th scope="col">machine</th>
            <th scope="col">site</th>
            <th scope="col">gravity</th>
            <th scope="col" className="number">
              increment
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
          </tr>
        </thead>
        <tbody>
          {house.machines.map((machine) => (
            <MachineRow key={machine.id} machine={machine} house={house} />
          ))}
        </tbody>
      </Table>
    </section>
  );
}

function MachineRow({ machine, house }: { readonly machine: Machine; readonly house: HouseWindow }) {
  const { minutes, unit, limits } = machine;
  const lifts = machine.kind === 'resistive machine' || machine.kind === 'free bar';
  const nameOf = (id: string): string => house.exercises.find((exercise) => exercise.id === id)?.name ?? id;
  return (
    <tr id={machine.id}>
      <th scope="row">
        {machine.name} <span className="soft small">{machine.kind}</span>
      </th>
      <td>{house.sites.find(({ id }) => id === machine.site)?.name ?? machine.site}</td>
      <td>{machine.gravity}</td>
      {[machine.increment, machine.least, machine.ceiling].map((value, place) => (
        <td key={place} className="number">
          {lifts ? (
            <>
              {value} <span className="soft">{unit}</span>
            </>
          ) : (
            '–'
          )}
        </td>
      ))}
      <td className="soft">
        {limits.map((limit) => `${nameOf(limit.exercise)} ${limit.most} ${unit}`).join(', ') || '–'}
      </td>
      <td className="soft small">
        set-up {minutes.setUp}, stow {minutes.stow}, change of exercise {minutes.changeExercise}, of load{' '}
        {minutes.changeLoad}
      </td>
      <td>{stateOf(machine)}</td>
    </tr>
  );
}

function stateOf({ outOfService }: Machine) {
  if (outOfService === null) return 'in service';
  const until = outOfService.until === null ? 'until further notice' : `to ${dateWithYear(outOfService.until)}`;
  return (
    <span className={styles['out']}>
      out of service from {dateWithYear(outOfService.from)} {until}: {outOfService.reason}
    </span>
  );
}
