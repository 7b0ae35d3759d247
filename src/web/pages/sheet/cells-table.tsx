import type { CellLooked, CellsWindow, SessionLooked } from '#contract/windows/cells-window.ts';
import { shortDate } from '../../parts/dates.ts';
import { Table } from '../../parts/table.tsx';
import { barChangeText, fractionText, shouldersText, timeText } from './outcome-text.ts';
import styles from './cells-table.module.css';

const writtenText = ({ change }: CellLooked): string => {
  if (change.kind === 'as written') return change.line;
  return change.kind === 'leave out' ? 'leave out' : 'as the programme has it';
};

const comesTo = ({ outcome, problems }: CellLooked): string => {
  if (problems.length > 0) return 'cannot be written';
  if (outcome) return `${outcome.cell.planned} ${outcome.cell.unit}`;
  return 'left out';
};

/** What a signer has to know of one cell beside its load. */
const remarksOf = ({ outcome, isUnchanged }: CellLooked): readonly string[] => [
  ...(isUnchanged ? ['says so already: nothing is written'] : []),
  ...(outcome
    ? [
        ...fractionText(outcome.cell),
        ...outcome.cell.limits.filter(({ binds }) => binds).map(({ says }) => `held by ${says}`),
        ...(outcome.cell.ceilingLeft ? [`ceiling left ${outcome.cell.ceilingLeft}`] : []),
        ...shouldersText(outcome.shoulders),
        ...(outcome.cell.raise?.needsReason ? ['asks for a reason when it is issued'] : []),
        ...outcome.cell.says.filter((says) => !says.startsWith('held by ')),
      ]
    : []),
];

const Row = ({ cell }: { readonly cell: CellLooked }) => {
  const { name, was, outcome, problems } = cell;
  return (
    <tr className={problems.length > 0 ? styles['wrong'] : undefined}>
      <th scope="row">{name}</th>
      <td className={styles['line']}>{writtenText(cell)}</td>
      <td className={styles['load']}>
        {was === null ? null : <span className="soft">{was} → </span>}
        <strong>{comesTo(cell)}</strong>
        {outcome?.cell.raise ? ' ↑' : ''}
      </td>
      <td className={styles['against']}>{outcome ? barChangeText(outcome.change, outcome.cell) : '–'}</td>
      <td className={`${styles['know'] ?? ''} small`}>{remarksOf(cell).join('; ')}</td>
    </tr>
  );
};

const SessionRows = ({ looked, session }: { readonly looked: CellsWindow; readonly session: SessionLooked }) => (
  <tbody>
    <tr className={styles['session']}>
      <th scope="rowgroup" colSpan={5}>
        {shortDate(session.day)}, {session.missionDay} <span className="soft">{session.title}</span>{' '}
        <span className={session.minutes.is > session.minutes.block ? styles['over'] : undefined}>
          {timeText(session.minutes)}
        </span>
        {session.leavesOut.map((says) => (
          <span key={says} className={styles['over']}>
            {' '}
            · no time for {says}
          </span>
        ))}
      </th>
    </tr>
    {looked.cells
      .filter(({ day }) => day === session.day)
      .map((cell) => (
        <Row key={cell.track} cell={cell} />
      ))}
  </tbody>
);

/** Cells on days without a session that could be written; their problems stand above. */
const withoutSession = ({ cells, sessions }: CellsWindow): readonly CellLooked[] =>
  cells.filter(({ day }) => !sessions.some((session) => session.day === day));

/** Cell by cell: what was typed, what it comes to, what it changes, what holds it; session by session the minutes. */
export const CellsTable = ({ looked }: { readonly looked: CellsWindow }) => (
  <Table caption="What would be written" isCaptionHidden>
    <thead>
      <tr>
        <th scope="col">lift</th>
        <th scope="col">written</th>
        <th scope="col">was → is</th>
        <th scope="col">against the load in use</th>
        <th scope="col">to know</th>
      </tr>
    </thead>
    {looked.sessions.map((session) => (
      <SessionRows key={session.day} looked={looked} session={session} />
    ))}
    {withoutSession(looked).length > 0 ? (
      <tbody>
        {withoutSession(looked).map((cell) => (
          <Row key={`${cell.day} ${cell.track}`} cell={cell} />
        ))}
      </tbody>
    ) : null}
  </Table>
);
