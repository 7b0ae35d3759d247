import type { AnyTable, Cell } from '#science/sourced-table.ts';
import { join } from '#web/parts/parts.ts';
import { Prose } from '../equation/prose.tsx';
import { shownNumber, shownUnit } from '../shown-number.ts';
import { EntryFrame } from './entry-frame.tsx';
import styles from './entry.module.css';

/** Published figures as they were printed. */
export function TableEntry({ table: { record, columns, shown } }: { readonly table: AnyTable }) {
  const numeric = columns.map((_, place) => shown.every((row) => typeof row[place] !== 'string'));
  const classOf = (place: number): string | undefined => (numeric[place] ? 'number' : undefined);
  return (
    <EntryFrame record={record} kind="Table">
      <section className={styles['scroll']} aria-label={record.title}>
        <table className={join(styles['printed'], columns.length > ROOMY && styles['crowded'])}>
          <thead>
            <tr>
              {columns.map(({ name, unit }, place) => (
                <th scope="col" key={place} className={classOf(place)}>
                  <Prose text={name} />
                  {shownUnit(unit) && <span className={styles['unit']}> {shownUnit(unit)}</span>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((row, at) => (
              <tr key={at}>
                {row.map((cell, place) => (
                  <td key={place} className={classOf(place) ?? lengthClass(cell)}>
                    <CellText cell={cell} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </EntryFrame>
  );
}

/** So many columns stand beside each other on a small sheet. */
const ROOMY = 7;

/** "112 to 196" stays on one line. */
const LONGEST_SHORT = 14;

const lengthClass = (cell: Cell): string | undefined =>
  typeof cell === 'string' && cell.length <= LONGEST_SHORT ? styles['short'] : undefined;

function CellText({ cell }: { readonly cell: Cell }) {
  if (cell === null) return <span className="faint">–</span>;
  return typeof cell === 'number' ? shownNumber(cell) : <Prose text={cell} />;
}
