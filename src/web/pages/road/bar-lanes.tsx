import type { RoadBar, RoadDrawn, RoadPhase } from '#contract/windows/road-window.ts';
import { dateWithYear } from '../../parts/parts.ts';
import { datesInWords } from './dates-in-words.ts';
import { Bars, Row, type Bar } from './lane.tsx';

interface LaneProps {
  readonly road: RoadDrawn;
}

const daysOf = ({ first, last }: { readonly first: RoadPhase['first']; readonly last: RoadPhase['last'] }): string =>
  `${dateWithYear(first)} to ${dateWithYear(last)}`;

/** Flight that nobody has dated the end of goes on beyond the drawing. */
const isOpenEnded = (road: RoadDrawn, { side, last }: RoadPhase): boolean =>
  side === 'in flight' && road.landing === null && last === road.last;

export const PhaseLane = ({ road }: LaneProps) => (
  <Row label="Phases">
    <Bars road={road} bars={road.phases.flatMap((phase) => phaseBar(road, phase))} />
  </Row>
);

const phaseBar = (road: RoadDrawn, phase: RoadPhase): readonly Bar[] => {
  const { name, side, first, last } = phase;
  // What is past is past, and a day or two between phases is travel: neither is a gap that somebody must fill.
  if (name === null && !phase.isGap) return [];
  return [
    {
      first,
      last,
      label: name ?? 'no programme',
      beside: side === 'before launch' ? 'left' : 'right',
      look: name === null ? 'none' : 'phase',
      title: `${name ?? 'no programme'}, ${daysOf(phase)}, ${phase.from} to ${phase.to}`,
      isOpen: isOpenEnded(road, phase),
    },
  ];
};

/** Not drawn where somebody follows no programme at all: the lane of phases says that already. */
export const ProgrammeLane = ({ road }: LaneProps) => {
  const runs = programmesOf(road.phases);
  return runs.length === 0 ? null : (
    <Row label="Programme">
      <Bars
        road={road}
        bars={runs.map((run) => ({
          ...run,
          beside: 'right' as const,
          look: 'thin' as const,
          title: `${run.label}, ${daysOf(run)}`,
          isOpen: false,
        }))}
      />
    </Row>
  );
};

interface Run {
  readonly first: RoadPhase['first'];
  readonly last: RoadPhase['last'];
  readonly label: string;
}

/** Neighbouring phases of one version. */
const programmesOf = (phases: readonly RoadPhase[]): readonly Run[] =>
  phases.reduce<readonly Run[]>((runs, { first, last, programme }) => {
    if (programme === null) return runs;
    const run = runs.at(-1);
    return run?.label === programme
      ? [...runs.slice(0, -1), { ...run, last }]
      : [...runs, { first, last, label: programme }];
  }, []);

export const SiteLane = ({ road }: LaneProps) => (
  <Row label="Sites">
    <Bars
      road={road}
      bars={road.sites.map((site) => ({
        ...site,
        label: site.isSaid ? site.name : `${site.name}, assumed`,
        beside: 'right' as const,
        look: site.isSaid ? ('thin' as const) : ('assumed' as const),
        title: `${site.name}, ${daysOf(site)}${site.isSaid ? '' : ': nobody entered where this person stays'}`,
        isOpen: false,
      }))}
    />
  </Row>
);

export interface BarLaneProps extends LaneProps {
  readonly label: string;
  readonly bars: readonly RoadBar[];
  readonly tone: 'stop' | 'caution';
}

/** A lane that is not drawn where nothing lies on it. */
export const BarLane = ({ road, label, bars, tone }: BarLaneProps) =>
  bars.length === 0 ? null : (
    <Row label={label}>
      <Bars
        road={road}
        bars={bars.map((bar) => ({
          ...bar,
          label: `${tone === 'stop' ? '■' : '▲'} ${shortened(datesInWords(bar.says))}`,
          beside: 'right' as const,
          look: tone,
          title: `${datesInWords(bar.says)}, ${daysOf(bar)}`,
        }))}
      />
    </Row>
  );

const LONGEST = 56;

/** The whole of it stands in the bar's title and in the record. */
const shortened = (says: string): string => (says.length <= LONGEST ? says : `${says.slice(0, LONGEST - 1)}…`);
