import { useEffect, useRef, useState } from 'react';
import type { RoadDrawn } from '#contract/windows/road-window.ts';
import type { Day } from '#units/day.ts';
import { datesInWords } from './dates-in-words.ts';
import { Legend } from './legend.tsx';
import { RoadAxis, RoadLines } from './road-axis.tsx';
import { BarLane, PhaseLane, ProgrammeLane, SiteLane } from './bar-lanes.tsx';
import { AsideLane, WalkLane } from './day-lanes.tsx';
import { DoseLanes } from './dose-lanes.tsx';
import { doseInWords } from './dose-paths.ts';
import { MinutesLane } from './minutes-lane.tsx';
import { roadScale } from './road-scale.ts';
import { TestLane } from './test-lane.tsx';
import styles from './road-chart.module.css';

interface RoadChartProps {
  readonly road: RoadDrawn;
  readonly today: Day;
}

/** The road along its weeks; a ruler over it reads out any one of them. */
export function RoadChart({ road, today }: RoadChartProps) {
  const now = Math.max(
    0,
    road.weeks.findLastIndex(({ first }) => first <= today),
  );
  const [at, setAt] = useState(now);
  const week = road.weeks[Math.min(at, road.weeks.length - 1)];
  const scroller = useScrolledTo(roadScale(road).at(today));
  return (
    <div className={styles['chart']}>
      {/* Scrolls on its own where the page is narrow, so the keyboard must get to it. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex */}
      <section className={styles['scrolls']} ref={scroller} tabIndex={0} aria-label="Road along its weeks">
        <div className={styles['lanes']}>
          <RoadLines road={road} today={today} week={week ?? null} />
          <RoadAxis road={road} today={today} />
          <PhaseLane road={road} />
          <ProgrammeLane road={road} />
          <SiteLane road={road} />
          <AsideLane road={road} label="Holds" bars={road.holds} />
          <AsideLane road={road} label="Set aside" bars={road.setAside} />
          <WalkLane road={road} />
          <TestLane road={road} />
          <BarLane road={road} label="Restrictions" bars={road.restrictions} tone="stop" />
          <BarLane road={road} label="Adjustments" bars={road.adjustments} tone="caution" />
          <MinutesLane road={road} />
          <DoseLanes road={road} />
          <div className={`${styles['lane'] ?? ''} on-screen`}>
            <label className={styles['label']} htmlFor="road-week">
              Read a week
            </label>
            <input
              id="road-week"
              className={styles['ruler']}
              type="range"
              min={0}
              max={road.weeks.length - 1}
              value={at}
              aria-valuetext={week && datesInWords(week.says)}
              onChange={(event) => setAt(Number(event.currentTarget.value))}
            />
          </div>
        </div>
      </section>
      <p className={`${styles['reading'] ?? ''} on-screen`}>
        {week && datesInWords(week.says)} {doseSays(road, Math.min(at, road.weeks.length - 1))}
      </p>
      <Legend />
    </div>
  );
}

const doseSays = ({ dose }: RoadDrawn, week: number): string => {
  const words = doseInWords(dose.lines, week);
  const [light, moderate, vigorous] = dose.zones[week] ?? [0, 0, 0];
  const zones =
    light + moderate + vigorous === 0
      ? ''
      : ` Endurance by zone: ${light} min light, ${moderate} moderate, ${vigorous} vigorous.`;
  return words === '' ? zones.trim() : `Dose: ${words}.${zones}`;
};

/** A third of the way in, where the road is wider than the page. */
const useScrolledTo = (hundredths: number) => {
  const scroller = useRef<HTMLElement>(null);
  useEffect(() => {
    const { current } = scroller;
    if (current) current.scrollLeft = (current.scrollWidth * hundredths) / 100 - current.clientWidth / 3;
  }, [hundredths]);
  return scroller;
};
