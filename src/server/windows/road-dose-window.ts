import { addDays } from '#units/day.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import { doseGaps, type DoseGap } from '#planning/dose/dose-gaps.ts';
import type { DoseAlong, DoseLine } from '#planning/dose/road-dose.ts';
import type { RoadLayout } from '#planning/road-layout.ts';
import type { RoadDose, RoadDoseLine, RoadSentence } from '#contract/windows/road-window.ts';
import { nextTold, weeksSay } from './road-day-sentences.ts';

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

/** What weeks hold too little of, the next ones: the plots show them all; what they hold very much of, in one sentence. */
export const doseSentences = (layout: RoadLayout): readonly RoadSentence[] => {
  const gaps = doseGaps(layout.dose, layout.today);
  const spans = bySpan(gaps.filter(({ kind }) => kind === 'too little'));
  return [
    ...nextTold(spans.map((each) => spanSays(layout, each))),
    ...tooMuchSays(gaps.filter(({ kind }) => kind === 'too much')),
  ].map((says) => ({ kind: 'dose', says, link: { to: 'programmes', says: 'Look at the programme' } }));
};

/** "Worth a look: squat up to 24 sets a week, over 20, in 9 weeks; …" */
const tooMuchSays = (gaps: readonly DoseGap[]): readonly string[] => {
  const parts = [...new Set(gaps.map(({ line }) => line))].map((line) => {
    const own = gaps.filter((gap) => gap.line === line);
    const weeks = own.reduce((sum, gap) => sum + gap.weeks, 0);
    const most = rounded(line.unit, Math.max(...own.map((gap) => gap.most)));
    const bound = own[0]?.bound ?? most;
    return `${line.label.toLowerCase()} up to ${most} ${line.unit} a week, over ${bound}, in ${weeks === 1 ? '1 week' : `${weeks} weeks`}`;
  });
  return parts.length === 0 ? [] : [`Worth a look: ${parts.join('; ')}.`];
};

/** What is short over the same weeks stands together. */
const bySpan = (gaps: readonly DoseGap[]): readonly (readonly DoseGap[])[] => {
  const spans = new Map<string, DoseGap[]>();
  for (const gap of gaps) {
    const name = `${gap.first} ${gap.last}`;
    spans.set(name, [...(spans.get(name) ?? []), gap]);
  }
  return [...spans.values()];
};

const spanSays = ({ mission }: RoadLayout, gaps: readonly DoseGap[]): string => {
  const [any] = gaps;
  if (!any) return '';
  const { first, last, weeks } = any;
  const days = `${showMissionDay(mission, first)} to ${showMissionDay(mission, last)}`;
  const when = weeksSay(first, addDays(last, -6), weeks);
  return `${when.charAt(0).toUpperCase()}${when.slice(1)} (${days}): ${gaps.map(gapSays).join('; ')}.`;
};

/** "calf 0 to 2 of at least 8 sets a week" */
const gapSays = ({ line, bound, ...gap }: DoseGap): string => {
  const [least, most] = [rounded(line.unit, gap.least), rounded(line.unit, gap.most)];
  return `${line.label.toLowerCase()} ${least === most ? least : `${least} to ${most}`} of at least ${bound} ${line.unit} a week`;
};
