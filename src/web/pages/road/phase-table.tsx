import { ROAD_CARD_STATES, type RoadPhase } from '#contract/windows/road-window.ts';
import { dateWithYear, join, Table } from '../../parts/parts.ts';
import styles from './road-page.module.css';

const WEEK = 7;

/** The same road in numbers: what each phase holds, and what practice asks of it. */
export const PhaseTable = ({ phases }: { readonly phases: readonly RoadPhase[] }) => (
  <>
    <Table caption="Phases">
      <thead>
        <tr>
          <th scope="col">phase</th>
          <th scope="col">days</th>
          <th scope="col" className="number">
            length
          </th>
          <th scope="col" className="number">
            sessions
          </th>
          <th scope="col" className="number">
            reserved
          </th>
          <th scope="col" className="number">
            cards take
          </th>
          <th scope="col" className="number">
            practice asks
          </th>
          <th scope="col" className={styles['cards']}>
            cards
          </th>
        </tr>
      </thead>
      <tbody>
        {phases
          .filter((phase) => phase.name !== null || phase.isGap)
          .map((phase, place, shown) => (
            <PhaseRow
              key={phase.first}
              phase={phase}
              isNewProgramme={phase.programme !== null && phase.programme !== shown[place - 1]?.programme}
            />
          ))}
      </tbody>
    </Table>
    <p className={join('soft small', styles['note'])}>
      Sessions and minutes are a week’s. Reserved: the programme’s blocks. Cards take: true minutes with set-up, rests
      and stowing. Practice asks of all exercise: before launch two blocks of two hours or four single hours a week, in
      flight 150 minutes a day; a taper and the quarantine are meant to hold less.
    </p>
  </>
);

interface PhaseRowProps {
  readonly phase: RoadPhase;
  readonly isNewProgramme: boolean;
}

const PhaseRow = ({ phase, isNewProgramme }: PhaseRowProps) => (
  <tr>
    <th scope="row" className={styles['phase']}>
      {phase.name ?? <i className="soft">no programme, {phase.side}</i>}
      {isNewProgramme && <span className="soft small">{phase.programme}</span>}
    </th>
    <td className={styles['days']}>
      {phase.from} to {phase.to}
      <span className="soft small">
        {dateWithYear(phase.first)} to {dateWithYear(phase.last)}
      </span>
    </td>
    <td className={join('number', styles['weeks'])}>{weeksOf(phase)}</td>
    <td className="number">{phase.name === null ? '–' : phase.sessionsAWeek}</td>
    <td className="number">{phase.name === null ? '–' : minutes(phase.reservedAWeek)}</td>
    <td className="number">{minutes(phase.trueAWeek)}</td>
    <td className="number">{minutes(phase.practiceAWeek)}</td>
    <td className={styles['cards']}>{cardsOf(phase)}</td>
  </tr>
);

/** Whole weeks, and the days over. */
const weeksOf = ({ first, last }: RoadPhase): string => {
  const days = last - first + 1;
  const [weeks, over] = [Math.floor(days / WEEK), days % WEEK];
  return [...(weeks > 0 ? [`${weeks} w`] : []), ...(over > 0 ? [`${over} d`] : [])].join(' ');
};

const minutes = (value: number | null): string => (value === null ? '–' : `${Math.round(value)}`);

const cardsOf = ({ cards }: RoadPhase): string => {
  const parts = ROAD_CARD_STATES.flatMap((state) => (cards[state] > 0 ? [`${cards[state]} ${state}`] : []));
  return parts.length === 0 ? 'none' : parts.join(', ');
};
