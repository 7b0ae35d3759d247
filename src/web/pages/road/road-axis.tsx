import type { RoadDrawn, RoadSpan } from '#contract/windows/road-window.ts';
import type { Day } from '#units/day.ts';
import { dateWithYear, join, shortDate } from '../../parts/parts.ts';
import { Row } from './lane.tsx';
import { laneRows, type Labelled } from './lane-rows.ts';
import { monthsOf, percent, roadScale, yearsOf } from './road-scale.ts';
import styles from './road-chart.module.css';

interface AxisProps {
  readonly road: RoadDrawn;
  readonly today: Day;
}

/** Years, months with a tick for every week, and the mission's own calendar. */
export function RoadAxis({ road, today }: AxisProps) {
  const { at, width } = roadScale(road);
  return (
    <>
      <Row label="">
        <div className={styles['years']} aria-hidden="true">
          {yearsOf(road).map((year) => (
            <span key={year.says} style={{ left: percent(at(year.first)) }}>
              {width(year) > 4 ? year.says : ''}
            </span>
          ))}
        </div>
      </Row>
      <Row label="Weeks">
        <div className={styles['months']} aria-hidden="true">
          {monthsOf(road).map((month) => (
            <span key={month.first} style={{ left: percent(at(month.first)) }}>
              {width(month) > ROOM_FOR_MONTH ? month.says : ''}
            </span>
          ))}
          <svg className={styles['ticks']}>
            {road.weeks.map(({ first }) => (
              <line key={first} x1={percent(at(first))} x2={percent(at(first))} y1={0} y2="100%" />
            ))}
          </svg>
        </div>
      </Row>
      <Row label="Mission day">
        <div className={styles['marks']} aria-hidden="true">
          {road.marks
            .filter(({ day }) => at(day) < LAST_MARK)
            .map(({ day, says }) => (
              <span key={day} style={{ left: percent(at(day)) }}>
                {says}
              </span>
            ))}
        </div>
      </Row>
      <Events road={road} today={today} />
    </>
  );
}

/** In hundredths of the width: a month that is cut shorter stays unnamed. */
const ROOM_FOR_MONTH = 2.3;
/** In hundredths of the width: a mark beyond has no room for its words. */
const LAST_MARK = 95;

type Event = Labelled & { readonly kind: 'today' | 'edge' };

function Events({ road, today }: AxisProps) {
  const { at } = roadScale(road);
  const rows = laneRows(eventsOf(road, today), road);
  return (
    <Row label="">
      <ul className={styles['rows']}>
        {rows.flatMap((row, line) =>
          row.map(({ item, place }) => (
            <li
              key={item.label}
              className={join(styles['event'], styles[`event-${place}`], styles[item.kind])}
              style={{ left: percent(at(item.first)), gridRow: line + 1 }}
            >
              <span>{item.label}</span>
            </li>
          )),
        )}
      </ul>
    </Row>
  );
}

const eventsOf = ({ launch, landing }: RoadDrawn, today: Day): readonly Event[] => [
  { ...on(launch), label: `launch ${dateWithYear(launch)}`, beside: 'right', kind: 'edge' },
  ...(landing ? [{ ...on(landing.latest), label: landingSays(landing), beside: 'left', kind: 'edge' } as const] : []),
  { ...on(today), label: `today ${shortDate(today)}`, beside: 'right', kind: 'today' },
];

const landingSays = ({ earliest, latest }: NonNullable<RoadDrawn['landing']>): string =>
  earliest === latest
    ? `landing ${dateWithYear(latest)}`
    : `landing ${shortDate(earliest).slice(4)} to ${dateWithYear(latest)}`;

const on = (day: Day): RoadSpan => ({ first: day, last: day });

/** Lines through all lanes: months, launch, landing and what lies between its two days, today, the week that is read. */
export function RoadLines({ road, today, week }: AxisProps & { readonly week: RoadSpan | null }) {
  const { at, width } = roadScale(road);
  const { launch, landing } = road;
  return (
    <div className={styles['lines']} aria-hidden="true">
      {monthsOf(road).map(({ first }, place) =>
        place === 0 ? null : <i key={first} className={styles['month']} style={{ left: percent(at(first)) }} />,
      )}
      {week && (
        <i
          className={join(styles['week'], 'on-screen')}
          style={{ left: percent(at(week.first)), width: percent(width(week)) }}
        />
      )}
      <i className={styles['launch']} style={{ left: percent(at(launch)) }} />
      {landing && (
        <i
          className={styles['landing']}
          style={{
            left: percent(at(landing.earliest)),
            width: percent(width({ first: landing.earliest, last: landing.latest })),
          }}
        />
      )}
      <i className={styles['now']} style={{ left: percent(at(today)) }} />
    </div>
  );
}
