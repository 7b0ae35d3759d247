import { Link } from 'wouter';
import type { CrossingLift, CrossingWindow } from '#contract/windows/crossing-window.ts';
import { join } from '../../parts/parts.ts';
import styles from './crossing-page.module.css';

/** Every lift of the programme with what it brings to the crossing. */
export function LiftTable({ crossing }: { readonly crossing: CrossingWindow }) {
  const { machine } = crossing;
  return (
    <section aria-label="Lifts">
      <table className={styles['lifts']}>
        <caption className="unseen">
          Lifts with capacity, body weight added back and what the ceiling leaves, in kg
        </caption>
        <thead>
          <tr>
            <th scope="col">Lift</th>
            <th scope="col" className="number">
              1RM, 1 g
            </th>
            <th scope="col" className="number">
              back
            </th>
            <th scope="col" className="number">
              ceiling left
            </th>
          </tr>
        </thead>
        <tbody>
          {crossing.lifts.map((lift) => (
            <LiftRow key={lift.exercise} lift={lift} isChosen={lift.exercise === crossing.detail?.exercise} />
          ))}
        </tbody>
      </table>
      <p className="soft small">
        kg. Back: body weight added back at the full share. Ceiling left: {machine.ceiling} {machine.unit} of the{' '}
        {machine.name}, less the full load of the heavy day. A dash: the lift runs on effort.
      </p>
    </section>
  );
}

function LiftRow({ lift, isChosen }: { readonly lift: CrossingLift; readonly isChosen: boolean }) {
  return (
    <tr className={join(isChosen && styles['chosen'])}>
      <th scope="row">
        <Link href={`?exercise=${encodeURIComponent(lift.exercise)}`} aria-current={isChosen ? 'true' : undefined}>
          {lift.name}
        </Link>
      </th>
      {[lift.capacity, lift.addedBack, lift.ceilingLeft].map((value, place) => (
        <td key={place} className={join('number', place === 2 && value !== null && value < 0 && styles['over'])}>
          {value === null ? '–' : Math.round(value).toString().replace('-', '−')}
        </td>
      ))}
    </tr>
  );
}
