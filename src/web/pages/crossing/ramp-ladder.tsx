import type { CrossingDetail } from '#contract/windows/crossing-window.ts';
import { showFraction, Table } from '../../parts/parts.ts';
import styles from './crossing-page.module.css';

const COLUMNS = ['effort', 'share', 'bar part', 'added', 'target', 'load', 'true fraction'];

/** Every step of the two ramps, worked alike: what lies ahead if each is earned and signed. */
export function RampLadder({ detail }: { readonly detail: CrossingDetail }) {
  if (detail.road.length === 0) return null;
  return (
    <section className={styles['ladder']}>
      <Table caption="The way up, step by step, kg">
        <thead>
          <tr>
            <th scope="col">step</th>
            {COLUMNS.map((column) => (
              <th key={column} scope="col" className="number">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {detail.road.map((step, place) => (
            <tr key={place} className={isNow(detail, place) ? styles['chosen'] : undefined}>
              <th scope="row">
                {place + 1}
                {isNow(detail, place) && <span className="small"> now</span>}
              </th>
              <td className="number">{showFraction(step.effort)}</td>
              <td className="number">{showFraction(step.share)}</td>
              <td className="number">{step.bar.toFixed(1)}</td>
              <td className="number">{step.added.toFixed(1)}</td>
              <td className="number">{step.target.toFixed(1)}</td>
              <td className="number">
                <b>{step.load}</b>
              </td>
              <td className="number">{showFraction(step.trueFraction)}</td>
            </tr>
          ))}
        </tbody>
      </Table>
      <p className="soft small">
        At the capacity and body mass of today. The two ramps climb apart; the row of a step takes both at that step.
      </p>
    </section>
  );
}

/** Only where both ramps stand on one step is that step’s row where the person is. */
const isNow = ({ effortStep, shareStep }: CrossingDetail, place: number): boolean =>
  effortStep === place && shareStep === place;
