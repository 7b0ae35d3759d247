import { Fragment } from 'react';
import type { RoadAsk, RoadDrawn } from '#contract/windows/road-window.ts';
import { Row } from './lane.tsx';
import { percent, roadScale } from './road-scale.ts';
import styles from './marks.module.css';

const MARK = 10;

/** Tests that were recorded, and the days about which practice asks for one. */
export const TestLane = ({ road }: { readonly road: RoadDrawn }) => {
  const { at } = roadScale(road);
  return (
    <Row label="Tests" hint="dots: recorded">
      <svg className={styles['tests']} role="img" aria-label={saysOf(road)}>
        {road.asks.map((ask) => (
          <svg key={ask.day} x={percent(at(ask.day))} y="9" overflow="visible">
            <title>{`${ask.missionDay}, ${ask.occasion}: ${ask.says}`}</title>
            <AskMark state={ask.state} />
          </svg>
        ))}
        {road.tests.map(({ day, missionDay, lifts }) => (
          <circle key={day} className={styles['tested']} cx={percent(at(day))} cy="22" r={MARK / 2.6}>
            <title>{`${missionDay}: ${lifts.join(', ')}`}</title>
          </circle>
        ))}
      </svg>
    </Row>
  );
};

const HALF = MARK / 2;
const DIAMOND = `M0,${-HALF}L${HALF},0L0,${HALF}L${-HALF},0Z`;

/** A diamond: full where it was kept, half where only some lifts were tested, barred where it passed, heavy where it is due, open where it is ahead. */
export const AskMark = ({ state }: { readonly state: RoadAsk['state'] }) => (
  <Fragment>
    <path className={styles[MARK_LOOK[state]]} d={DIAMOND} />
    {state === 'part tested' && <path className={styles['half']} d={`M0,${-HALF}L0,${HALF}L${-HALF},0Z`} />}
    {state === 'not tested' && <path className={styles['cross']} d={`M${-HALF},${HALF}L${HALF},${-HALF}`} />}
  </Fragment>
);

const MARK_LOOK: Readonly<Record<RoadAsk['state'], string>> = {
  tested: 'kept',
  'part tested': 'ahead',
  due: 'due',
  'not tested': 'passed',
  ahead: 'ahead',
};

const saysOf = ({ tests, asks }: RoadDrawn): string =>
  [
    `${tests.length} ${tests.length === 1 ? 'day' : 'days'} with recorded tests`,
    ...asks.map((ask) => `asked for at ${ask.missionDay}: ${ask.says}`),
  ].join('; ');
