import { useId } from 'react';
import { ROAD_CARD_STATES, type RoadCardState, type RoadDrawn, type RoadSpan } from '#contract/windows/road-window.ts';
import { Hatch } from './hatch.tsx';
import { Row } from './lane.tsx';
import { percent, roadScale } from './road-scale.ts';
import styles from './marks.module.css';

/** Above the highest line, so that it is seen whole. */
const HEADROOM = 1.06;

const LOOKS: Readonly<Record<RoadCardState, string>> = {
  issued: 'issued',
  'can be issued': 'issuable',
  waiting: 'waiting',
  expected: 'expected',
};

/** True minutes of the cards of each week, under the time that practice asks for. */
export const MinutesLane = ({ road }: { readonly road: RoadDrawn }) => {
  const hatch = useId();
  const most =
    HEADROOM * Math.max(1, ...road.weeks.flatMap(({ minutes, practice }) => [totalOf(minutes), practice ?? 0]));
  return (
    <Row label="Minutes a week" hint="of cards; line: practice">
      <svg className={styles['minutes']} role="img" aria-label={saysOf(road)}>
        <Hatch id={hatch} />
        {road.weeks.map((week) => (
          <WeekBar key={week.first} road={road} week={week} most={most} hatch={hatch} />
        ))}
        <PracticeLine road={road} most={most} />
        <line className={styles['floor']} x1="0" x2="100%" y1="100%" y2="100%" />
      </svg>
    </Row>
  );
};

type Week = RoadDrawn['weeks'][number];

interface WeekBarProps {
  readonly road: RoadDrawn;
  readonly week: Week;
  readonly most: number;
  readonly hatch: string;
}

const WeekBar = ({ road, week, most, hatch }: WeekBarProps) => {
  const { at, width } = roadScale(road);
  return ROAD_CARD_STATES.map((state, place) => {
    const below = ROAD_CARD_STATES.slice(0, place).reduce((sum, each) => sum + week.minutes[each], 0);
    const height = (week.minutes[state] / most) * 100;
    if (height === 0) return null;
    return (
      <rect
        key={state}
        className={styles[LOOKS[state]]}
        {...(state === 'expected' || state === 'waiting' ? { fill: `url(#${hatch})` } : {})}
        x={percent(at(week.first) + width(week) * 0.12)}
        width={percent(width(week) * 0.76)}
        y={percent(100 - height - (below / most) * 100)}
        height={percent(height)}
      >
        <title>{week.says}</title>
      </rect>
    );
  });
};

/** What practice asks for changes with the phases: neighbours that are asked for the same are one line. */
const PracticeLine = ({ road, most }: { readonly road: RoadDrawn; readonly most: number }) => {
  const { at, width } = roadScale(road);
  return (
    <g className={styles['practice']}>
      {practiceRuns(road).map((run) => {
        const [x, y] = [at(run.first), 100 - (run.practice / most) * 100];
        return (
          <g key={run.first}>
            <line x1={percent(x)} x2={percent(x + width(run))} y1={percent(y)} y2={percent(y)} />
            {width(run) > WIDE_ENOUGH && (
              <text x={percent(x)} dx="3" y={percent(y)} dy={y < NEAR_TOP ? LETTER_HEIGHT : -3}>
                {Math.round(run.practice)}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
};

const practiceRuns = ({ phases }: RoadDrawn): readonly (RoadSpan & { readonly practice: number })[] =>
  phases.reduce<readonly (RoadSpan & { readonly practice: number })[]>((runs, { first, last, practiceAWeek }) => {
    if (practiceAWeek === null) return runs;
    const run = runs.at(-1);
    return run?.practice === practiceAWeek && run.last + 1 === first
      ? [...runs.slice(0, -1), { ...run, last }]
      : [...runs, { first, last, practice: practiceAWeek }];
  }, []);

/** Of the drawing's width, in hundredths: room for a number. */
const WIDE_ENOUGH = 3;
/** Of the lane's height, in hundredths: no room for a number above the line. */
const NEAR_TOP = 20;
/** [px] */
const LETTER_HEIGHT = 13;

const totalOf = (minutes: Week['minutes']): number => ROAD_CARD_STATES.reduce((sum, state) => sum + minutes[state], 0);

const saysOf = ({ weeks }: RoadDrawn): string => {
  const counts = ROAD_CARD_STATES.map((state) => {
    const cards = weeks.reduce((sum, week) => sum + week.cards[state], 0);
    return `${cards} ${state}`;
  });
  return `Minutes of the cards of ${weeks.length} weeks; cards: ${counts.join(', ')}. The table of phases says the same in numbers.`;
};
