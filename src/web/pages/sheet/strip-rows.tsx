import { Fragment } from 'react';
import type { SheetWindow } from '#contract/windows/sheet-window.ts';
import { join } from '../../parts/join.ts';
import { laneCells, stripLanes, type LaneCell } from './strip-lanes.ts';
import styles from './sheet.module.css';

const Span = ({ cell: { width, laid } }: { readonly cell: LaneCell }) => (
  <td colSpan={width} className={styles['lane']}>
    {laid ? (
      <span className={join(styles[laid.span.shape], styles[laid.span.tone])} title={laid.span.says}>
        <span className={styles['stripsays']}>
          {laid.span.tone === 'plain' ? null : (
            <span aria-hidden="true">{laid.span.tone === 'stop' ? '■ ' : '▲ '}</span>
          )}
          {laid.span.says}
        </span>
      </span>
    ) : null}
  </td>
);

/** Thin strips above the grid: ramps, restrictions, machines, tests. A strip that says nothing is not drawn. */
export const StripRows = ({ sheet }: { readonly sheet: SheetWindow }) =>
  sheet.strips.map((strip) => (
    <Fragment key={strip.label}>
      {stripLanes(sheet.columns, strip).map((lane, at) => (
        <tr key={`${strip.label} ${lane[0]?.start ?? ''} ${lane[0]?.span.says ?? ''}`} className={styles['strip']}>
          <th scope="row">{at === 0 ? strip.label : <span className="unseen">{strip.label}</span>}</th>
          {laneCells(lane, sheet.columns.length).map((cell, place) => (
            <Span key={`${cell.laid?.start ?? `before ${place}`}`} cell={cell} />
          ))}
          <td className={styles['margin']}>{null}</td>
        </tr>
      ))}
    </Fragment>
  ));
