import { addDays } from '#units/day.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import { doseGaps, type DoseGap } from '#planning/dose/dose-gaps.ts';
import type { DoseAlong, DoseLine } from '#planning/dose/road-dose.ts';
import type { RoadLayout } from '#planning/road-layout.ts';
import type { RoadDose, RoadDoseLine, RoadSentence } from '#contract/windows/road-window.ts';
import { weeksSay } from './road-day-sentences.ts';

export const doseOf = ({ lines, zones }: DoseAlong): RoadDose => ({
  lines: lines.map(lineOf),
  zones: zones.map(({ light, moderate, vigorous }) => [Math.round(light), Math.round(moderate), Math.round(vigorous)]),
});

const lineOf = ({ id, label, unit, weeks }: DoseLine): RoadDoseLine => ({
  id,
  label,
  unit,
  planned: weeks.map(({ planned }) => rounded(unit, planned)),
  done: weeks.flatMap(({ done }, place) => (done === null ? [] : [[place, rounded(unit, done)] as const])),
  floors: weeks.reduce<readonly FloorRun[]>((runs, { floor }, place) => {
    if (floor === null) return runs;
    const run = runs.at(-1);
    return run?.[1] === place - 1 && run[2] === floor
      ? [...runs.slice(0, -1), [run[0], place, floor]]
      : [...runs, [place, place, floor]];
  }, []),
});

type FloorRun = RoadDoseLine['floors'][number];

/** Halves of sets are told, the rest in whole numbers. */
const rounded = (unit: DoseLine['unit'], value: number): number =>
  unit === 'sets' ? Math.round(value * 2) / 2 : Math.round(value);

/** What is said of one thing, and then no more: the plots show the rest. */
const MOST_OF_ONE = 2;

/** "Calf 4 sets a week, floor 8: 3 weeks, from that of 2027-03-01 to that of 2027-03-15 (L−96 to L−76)." */
export const doseSentences = (layout: RoadLayout): readonly RoadSentence[] => {
  const gaps = doseGaps(layout.dose, layout.today);
  return layout.dose.lines.flatMap((line) => {
    const own = gaps.filter((gap) => gap.line.id === line.id);
    const more = own.length - MOST_OF_ONE;
    return own.slice(0, MOST_OF_ONE).map((gap, place) => ({
      kind: 'dose' as const,
      says: `${gapSays(layout, gap)}${place === MOST_OF_ONE - 1 && more > 0 ? ` And ${more === 1 ? 'once' : `${more} times`} more later.` : ''}`,
      link: { to: 'programmes' as const, says: 'Look at the programme' },
    }));
  });
};

const gapSays = ({ mission }: RoadLayout, gap: DoseGap): string => {
  const { line, kind, bound, first, last, weeks } = gap;
  const [least, most] = [rounded(line.unit, gap.least), rounded(line.unit, gap.most)];
  const amount = least === most ? `${least}` : `${least} to ${most}`;
  const limit = kind === 'too little' ? `floor ${bound}` : `over ${bound}`;
  const days = `${showMissionDay(mission, first)} to ${showMissionDay(mission, last)}`;
  return `${line.label} ${amount} ${line.unit} a week, ${limit}: ${weeksSay(first, addDays(last, -6), weeks)} (${days}).`;
};
