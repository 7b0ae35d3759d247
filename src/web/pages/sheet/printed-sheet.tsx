import type { SheetCell, SheetColumn, SheetRow, SheetStrip, SheetWindow } from '#contract/windows/sheet-window.ts';
import { shortDate } from '../../parts/dates.ts';
import { join } from '../../parts/join.ts';
import { sessionState } from '../../parts/session-state.ts';
import { Content } from './grid-cell.tsx';
import { blocksOf, nameOfRow, type SheetBlock } from './sheet-blocks.ts';
import styles from './printed-sheet.module.css';

const StripLine = ({ strip: { label, spans } }: { readonly strip: SheetStrip }) => (
  <p className={styles['strip']}>
    <b>{label}</b>{' '}
    {spans.map(({ from, to, says }, place) => (
      <span key={`${from} ${says}`}>
        {place === 0 ? '' : '; '}
        {from === to ? shortDate(from) : `${shortDate(from)} to ${shortDate(to)}`}: {says}
      </span>
    ))}
  </p>
);

interface CellProps {
  readonly column: SheetColumn;
  readonly cell: SheetCell | null;
  readonly unit: string;
}

const Cell = ({ column, cell, unit }: CellProps) => (
  <td className={join(styles['cell'], column.outcome === 'called off' && styles['calledoff'])}>
    {cell ? <Content column={column} cell={cell} unit={unit} isInFull /> : null}
  </td>
);

const Margin = ({ row: { lastHere, estimate, rule } }: { readonly row: SheetRow }) => (
  <td className={styles['margin']}>
    {[lastHere, estimate].filter((says) => says !== null).join(' · ')}
    {rule ? <span className={styles['rule']}>{rule}</span> : null}
  </td>
);

interface PrintedGroupProps {
  readonly block: SheetBlock;
  readonly unit: string;
}

const PrintedGroup = ({ block: { label, columns, rows, leftOut }, unit }: PrintedGroupProps) => (
  <table className={styles['group']}>
    <thead>
      <tr>
        <th scope="col" className={styles['label']}>
          {label}
        </th>
        {columns.map((column) => (
          <th key={`${column.day} ${column.card ?? ''}`} scope="col">
            <b>{shortDate(column.day)}</b> {column.missionDay}
            <span className={styles['state']}>
              {sessionState(column)}
              {column.deload ? ', deload' : ''}
              {column.calledOff ? `, ${column.calledOff}` : ''}
            </span>
          </th>
        ))}
        <th scope="col" className={styles['marginhead']}>
          last here · estimate · signed rule
        </th>
      </tr>
    </thead>
    <tbody>
      {rows.map((row) => (
        <tr key={nameOfRow(row)}>
          <th scope="row">{row.name}</th>
          {columns.map((column, at) => (
            <Cell key={`${column.day} ${column.card ?? ''}`} column={column} cell={row.cells[at] ?? null} unit={unit} />
          ))}
          <Margin row={row} />
        </tr>
      ))}
      {leftOut.map((says) => (
        <tr key={says}>
          <td colSpan={columns.length + 2}>{says}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

/** The sheet on paper: A4, lying; a kind of day stays on one side. */
export const PrintedSheet = ({ sheet }: { readonly sheet: SheetWindow }) => (
  <div className={styles['sheet']}>
    {sheet.strips.map((strip) => (
      <StripLine key={strip.label} strip={strip} />
    ))}
    {blocksOf(sheet).map((block) => (
      <PrintedGroup key={block.label} block={block} unit={sheet.unit} />
    ))}
    <p className={styles['legend']}>
      Loads in {sheet.unit} as the machine shows them. Planned over done; after the point, effort as RPE; ● unread note,
      ○ read; hurt: discomfort of 10, with its side; ↑ goes up when it is signed; ⊤ is held by a limit.
    </p>
  </div>
);
