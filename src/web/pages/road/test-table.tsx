import type { RoadAsk, RoadDrawn } from '#contract/windows/road-window.ts';
import { dateWithYear, join, shortDate, Table } from '../../parts/parts.ts';
import { isoOfDay } from '#units/day.ts';
import { AskMark } from './test-lane.tsx';
import styles from './road-page.module.css';

/** The days about which practice asks for tests, and what became of them. */
export const TestTable = ({ road: { asks, tests, testsBefore } }: { readonly road: RoadDrawn }) => (
  <>
    <Table caption="Tests that the road asks for">
      <thead>
        <tr>
          <th scope="col">about</th>
          <th scope="col">when</th>
          <th scope="col">what became of it</th>
        </tr>
      </thead>
      <tbody>
        {asks.map((ask) => (
          <tr key={ask.day} className={join(ask.state === 'ahead' && 'on-screen')}>
            <th scope="row" className={styles['ask']}>
              <svg className={styles['askmark']} viewBox="-6 -6 12 12" aria-hidden="true">
                <AskMark state={ask.state} />
              </svg>
              {ask.missionDay}{' '}
              <span className="soft small">
                {shortDate(ask.day)} {isoOfDay(ask.day).slice(0, 4)}
              </span>
            </th>
            <td>{ask.occasion}</td>
            <td>{ask.state === 'due' ? <b>{ask.says}</b> : ask.says}</td>
          </tr>
        ))}
      </tbody>
    </Table>
    <Ahead asks={asks.filter(({ state }) => state === 'ahead')} />
    <p className={join('soft small', styles['note'])}>
      Practice, our own design: every 13 weeks before launch, the last a week before the taper; in flight from flight
      day 30 every 60 days, the last two weeks before the earliest landing; a week and a month after landing. Dots:{' '}
      {tests.length} {tests.length === 1 ? 'day' : 'days'} with recorded tests
      {testsBefore > 0 ? `, and ${testsBefore} before the road begins` : ''}.
    </p>
  </>
);

/** On paper what is only ahead takes a few lines and not one each. */
const Ahead = ({ asks }: { readonly asks: readonly RoadAsk[] }) =>
  asks.length === 0 ? null : (
    <p className={styles['ahead']}>
      <b>Ahead:</b> {asks.map(({ missionDay, day }) => `${missionDay} (${dateWithYear(day)})`).join('; ')}.
    </p>
  );
