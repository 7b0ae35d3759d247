import { useEffect, useRef, type CSSProperties, type DOMAttributes } from 'react';
import { Link } from 'wouter';
import type { SheetRow } from '#contract/windows/sheet-window.ts';
import { holds, type Block, type Place } from '../../parts/block/selection.ts';
import { join } from '../../parts/join.ts';
import { ColumnHead } from './column-head.tsx';
import { GridCell } from './grid-cell.tsx';
import { nameOfRow, type SheetBlock } from './sheet-blocks.ts';
import styles from './sheet.module.css';

interface Where {
  readonly block: SheetBlock;
  readonly cursor: Place;
  /** The range, where it is more than one cell. */
  readonly chosen: Block | null;
  /** In which the loads of the sheet are. */
  readonly unit: string;
}

const Margin = ({ row: { lastHere, estimate, rule } }: { readonly row: SheetRow }) => {
  const says = [lastHere, estimate]
    .filter((each) => each !== null)
    .join(' · ')
    .replace('flight day', 'day');
  return (
    <td className={styles['margin']}>
      <span className={styles['known']} title={says}>
        {says || <span className="faint">–</span>}
      </span>
      {rule ? (
        <span className={styles['signedrule']} title={rule}>
          {rule}
        </span>
      ) : null}
    </td>
  );
};

const isDrill = ({ cells }: SheetRow): boolean => cells.find((cell) => cell !== null)?.kind === 'drill';

const ExerciseRow = ({
  block,
  cursor,
  chosen,
  unit,
  row,
  at,
}: Where & { readonly row: SheetRow; readonly at: number }) => (
  <tr className={join(styles['row'], isDrill(row) && styles['drill'])}>
    <th scope="row" className={styles['exercise']}>
      <Link href={`/lift/${row.exercise}`} title={`${row.name}, all people`}>
        {row.name}
      </Link>
    </th>
    {block.columns.map((column, index) => (
      <GridCell
        key={`${column.day} ${column.card ?? ''}`}
        column={column}
        place={`${at}:${index}`}
        cell={row.cells[index] ?? null}
        name={row.name}
        unit={unit}
        isToday={index === block.today}
        isCursor={cursor.row === at && cursor.column === index}
        isChosen={chosen !== null && holds(chosen, { row: at, column: index })}
      />
    ))}
    <Margin row={row} />
  </tr>
);

const Heads = ({ block, cursor }: Where) => (
  <tr className={join(styles['row'], styles['heads'])}>
    <th scope="col" className={styles['corner']}>
      {block.label}
    </th>
    {block.columns.map((column, index) => (
      <ColumnHead
        key={`${column.day} ${column.card ?? ''}`}
        column={column}
        place={`${block.top}:${index}`}
        isToday={index === block.today}
        isCursor={cursor.row === block.top && cursor.column === index}
      />
    ))}
    <th scope="col" className={styles['marginhead']}>
      <span className={block.top === 0 ? undefined : 'unseen'}>last here · estimate · signed rule</span>
    </th>
  </tr>
);

/** What no session of the block holds, though its programme does. */
const LeftOut = ({ block }: { readonly block: SheetBlock }) =>
  block.leftOut.map((says) => (
    <tr key={says} className={styles['row']}>
      <td className={styles['leftout']}>{says}</td>
    </tr>
  ));

const slotsOf = ({ before, columns, after }: SheetBlock): number => before + columns.length + after;

/** Opens at today: three weeks back would fill a narrow screen. One session before it stays in sight. */
const useTodayInView = ({ today, columns }: SheetBlock) => {
  const frame = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const heads = frame.current?.querySelectorAll<HTMLElement>('th[data-place]') ?? [];
    const first = heads[Math.min(Math.max(0, today - 1), columns.length - 1)];
    const corner = frame.current?.querySelector('th');
    if (frame.current && first) frame.current.scrollLeft = first.offsetLeft - (corner?.offsetWidth ?? 0);
  }, [today, columns.length]);
  return frame;
};

export interface BlockTableProps extends Where {
  /** What keys, mouse and clipboard do. */
  readonly handlers: DOMAttributes<HTMLTableElement>;
}

/** One kind of day: its sessions as columns, its exercises as rows; wider than the page it moves sideways by itself. */
export const BlockTable = ({ handlers, ...where }: BlockTableProps) => {
  const { block } = where;
  const frame = useTodayInView(block);
  const laid = { '--sessions': slotsOf(block), '--before': block.before } as CSSProperties;
  return (
    <div className={styles['frame']} ref={frame}>
      {/* A table whose cells are walked by arrows is what the role "grid" means. */}
      <table
        role="grid" // oxlint-disable-line jsx-a11y/no-noninteractive-element-to-interactive-role -- as above
        aria-label={block.label}
        aria-multiselectable
        className={styles['block']}
        style={laid}
        {...handlers}
      >
        <tbody>
          <Heads {...where} />
          {block.rows.map((row, at) => (
            <ExerciseRow key={nameOfRow(row)} {...where} row={row} at={block.top + at + 1} />
          ))}
          <LeftOut block={block} />
        </tbody>
      </table>
    </div>
  );
};
