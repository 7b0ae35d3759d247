import type { RoadMoved } from '#contract/windows/road-window.ts';
import { Table } from '../../parts/parts.ts';
import { datesInWords } from './dates-in-words.ts';
import styles from './road-page.module.css';

/** Signed days stay where they are when a date moves: those that now lie elsewhere are to be looked at. */
export const MovedTable = ({ moved }: { readonly moved: readonly RoadMoved[] }) =>
  moved.length === 0 ? null : (
    <Table caption="Signed for another place on the road">
      <thead>
        <tr>
          <th scope="col">what was signed</th>
          <th scope="col">its day</th>
          <th scope="col">lay in</th>
          <th scope="col">lies in now</th>
        </tr>
      </thead>
      <tbody>
        {factsOf(moved).map((days) =>
          days.map(({ fact, which, says, was, now }, place) => (
            <tr key={`${fact} ${which}`}>
              {place === 0 && (
                <th scope="rowgroup" rowSpan={days.length} className={styles['moved']}>
                  <span aria-hidden="true">▲ </span>
                  {datesInWords(says)}
                </th>
              )}
              <td className={styles['whole']}>{datesInWords(which)}</td>
              <td>{was}</td>
              <td>
                <b>{now}</b>
              </td>
            </tr>
          )),
        )}
      </tbody>
    </Table>
  );

/** The days of one decision stand together. */
const factsOf = (moved: readonly RoadMoved[]): readonly (readonly RoadMoved[])[] =>
  [...new Set(moved.map(({ fact }) => fact))].map((fact) => moved.filter((each) => each.fact === fact));
