import type { RoadBar, RoadDrawn, RoadWalk } from '#contract/windows/road-window.ts';
import { dateWithYear } from '../../parts/parts.ts';
import { Bars, Row } from './lane.tsx';

interface AsideLaneProps {
  readonly road: RoadDrawn;
  readonly label: string;
  readonly bars: readonly RoadBar[];
}

/** Days that something takes: travel, rest, hand-over, tests, holds. Not drawn where nothing does. */
export const AsideLane = ({ road, label, bars }: AsideLaneProps) =>
  bars.length === 0 ? null : (
    <Row label={label}>
      <Bars
        road={road}
        bars={bars.map((bar) => ({
          ...bar,
          label: bar.says.split(/[:,]/)[0] ?? bar.says,
          beside: 'right' as const,
          look: 'aside' as const,
          title: `${bar.says}, ${dateWithYear(bar.first)} to ${dateWithYear(bar.last)}`,
        }))}
      />
    </Row>
  );

export const WalkLane = ({ road }: { readonly road: RoadDrawn }) =>
  road.walks.length === 0 ? null : (
    <Row label="Space walks">
      <Bars
        road={road}
        bars={road.walks.map((walk) => ({
          first: walk.day,
          last: walk.day,
          label: `${MARKS[walk.state]} ${walk.missionDay.replace('flight ', '')}`,
          beside: 'right' as const,
          look: walk.state === 'ahead' || walk.state === 'sound' ? ('aside' as const) : ('caution' as const),
          title: `${walk.says}, ${dateWithYear(walk.day)}`,
          isOpen: false,
        }))}
      />
    </Row>
  );

/** A word stands in the title and in the sentences; here it is a mark. */
const MARKS: Readonly<Record<RoadWalk['state'], string>> = {
  ahead: '◇',
  'to be looked at': '▲ look due,',
  'not sound': '▲ not sound,',
  sound: '◆',
  'not in flight': '▲ on the ground,',
};
