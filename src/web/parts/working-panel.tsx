import { Link } from 'wouter';
import type { Working, WorkingCell } from '#domain/working.ts';
import { Figure } from './figure.tsx';
import styles from './working-panel.module.css';

/** Figures enough to follow a sum by hand. */
const SIGNIFICANT = 5;

const show = (value: number): string =>
  Number.isInteger(value) ? String(value) : String(Number(value.toPrecision(SIGNIFICANT)));

const Cell = ({ cell }: { readonly cell: WorkingCell }) => (
  <tr>
    <th scope="row">{cell.name}</th>
    <td>
      <div>
        <Link href={`/evidence#${cell.formula}`}>{cell.title}</Link>{' '}
        <span className="faint small">revision {cell.revision}</span>
      </div>
      <div className={styles['equation']}>{cell.equation}</div>
      {cell.of.length > 0 ? <div className="soft small">of {cell.of.join(', ')}</div> : null}
      {cell.outsideRange.map((says) => (
        <div className={styles['outside']} key={says}>
          Outside the range it was made for: {says}
        </div>
      ))}
    </td>
    <td className="number">
      <Figure value={show(cell.value)} unit={cell.unit} />
    </td>
  </tr>
);

/** The reckoning that made a number: what was given and where it comes from, then each step. */
export const WorkingPanel = ({ working }: { readonly working: Working }) => (
  <section className={styles['working']} aria-label={working.reckoning}>
    <h3>{working.reckoning}</h3>
    <table>
      <caption className="unseen">What was given</caption>
      <thead>
        <tr>
          <th scope="col">given</th>
          <th scope="col">where it comes from</th>
          <th scope="col" className="number">
            value
          </th>
        </tr>
      </thead>
      <tbody>
        {working.given.map(({ name, value, from }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>
              {from.says} <span className="faint small">{from.kind}</span>
            </td>
            <td className="number">{show(value)}</td>
          </tr>
        ))}
      </tbody>
    </table>
    <table>
      <caption className="unseen">Step by step</caption>
      <thead>
        <tr>
          <th scope="col">step</th>
          <th scope="col">formula</th>
          <th scope="col" className="number">
            value
          </th>
        </tr>
      </thead>
      <tbody>
        {working.cells.map((cell) => (
          <Cell key={cell.name} cell={cell} />
        ))}
      </tbody>
    </table>
  </section>
);
