import type { Day } from '#units/day.ts';
import type { Known } from '#domain/known.ts';
import type { PhaseName } from '#domain/programme.ts';
import type { Road, RoadCard } from '#domain/road.ts';
import { fractionalSets } from '#science/dose/weekly-sets.ts';
import { MOST_SETS } from '#science/dose/weekly-dose.ts';
import type { DaySpan, PhaseSpan } from '../road-spans.ts';
import { cardDoses, type CardDose } from './card-dose.ts';
import {
  ENDURANCE_FLOOR,
  loadingFloor,
  PHASES_WITH_FLOORS,
  PHASES_WITH_LOADING_FLOORS,
  roleIn,
  SETS_LINES,
  VIGOROUS_COUNTS,
  type SetsLine,
} from './dose-lines.ts';
import type { ItemDose } from './item-dose.ts';

/** What a week holds of one thing. */
export interface DoseWeek extends DaySpan {
  /** Of all cards of the week, done or ahead. */
  readonly planned: number;
  /** Of what was recorded; null where nothing was. */
  readonly done: number | null;
  /** What the week should at least hold; null where it is meant to hold less, or nobody says. */
  readonly floor: number | null;
}

/** One thing that is counted week by week along the road. */
export interface DoseLine {
  readonly id: string;
  readonly label: string;
  readonly unit: 'sets' | 'min' | 'steps' | 'kg';
  /** More than this in a week is worth a look; null where nobody says. */
  readonly most: number | null;
  readonly weeks: readonly DoseWeek[];
}

export interface DoseAlong {
  readonly lines: readonly DoseLine[];
  /** Minutes of endurance of every week by zone. */
  readonly zones: readonly ItemDose['minutes'][];
}

/** The dose of every week of a road, from its cards. */
export const roadDose = (
  known: Known,
  road: Road,
  weeks: readonly DaySpan[],
  phases: readonly PhaseSpan[],
  cards: readonly RoadCard[],
): DoseAlong => {
  const doses = cardDoses(known, road, cards);
  const own = weeksWithDoses(weeks, phases, doses);
  return {
    lines: [
      ...SETS_LINES.map((line) => setsLine(known, line, own)),
      enduranceLine(own),
      ...loadingLines(own),
      ...volumeLines(own),
    ].filter(({ weeks: each }) => each.some(({ planned, floor }) => planned > 0 || floor !== null)),
    zones: own.map((week) => minutesOf(week.planned)),
  };
};

interface WeekOfDoses extends DaySpan {
  /** Phases of its days; null where one of them lies in none. */
  readonly phases: readonly (PhaseName | null)[];
  /** All its cards are easier ones: it holds less on purpose. */
  readonly isEasier: boolean;
  readonly planned: readonly ItemDose[];
  readonly done: readonly ItemDose[] | null;
}

const weeksWithDoses = (
  weeks: readonly DaySpan[],
  phases: readonly PhaseSpan[],
  doses: readonly CardDose[],
): readonly WeekOfDoses[] => {
  const first = weeks[0]?.first ?? (0 as Day);
  const byWeek = new Map<number, CardDose[]>();
  for (const dose of doses) {
    const week = Math.floor((dose.day - first) / DAYS_OF_WEEK);
    byWeek.set(week, [...(byWeek.get(week) ?? []), dose]);
  }
  return weeks.map(({ first: from, last }, place) => {
    const own = byWeek.get(place) ?? [];
    const recorded = own.filter(({ done }) => done !== null);
    return {
      first: from,
      last,
      phases: phases
        .filter((span) => span.first <= last && span.last >= from)
        .map(({ held }) => held?.phase.name ?? null),
      isEasier: own.length > 0 && own.every(({ isEasier }) => isEasier),
      planned: own.flatMap(({ planned }) => planned),
      done: recorded.length === 0 ? null : recorded.flatMap(({ done }) => done ?? []),
    };
  });
};

const DAYS_OF_WEEK = 7;

/** A floor holds for weeks that lie whole in phases that have it, and are no easier ones. */
const floorIn = (week: WeekOfDoses, among: ReadonlySet<PhaseName>, floor: number): number | null =>
  !week.isEasier && week.phases.length > 0 && week.phases.every((phase) => phase !== null && among.has(phase))
    ? floor
    : null;

const lineOf = (
  weeks: readonly WeekOfDoses[],
  amount: (doses: readonly ItemDose[]) => number,
  floor: (week: WeekOfDoses) => number | null,
): readonly DoseWeek[] =>
  weeks.map((week) => ({
    first: week.first,
    last: week.last,
    planned: amount(week.planned),
    done: week.done && amount(week.done),
    floor: floor(week),
  }));

const sum = (doses: readonly ItemDose[], of: (dose: ItemDose) => number): number =>
  doses.reduce((total, dose) => total + of(dose), 0);

const setsLine = ({ assignment }: Known, line: SetsLine, weeks: readonly WeekOfDoses[]): DoseLine => {
  const setsIn = (doses: readonly ItemDose[], role: 'direct' | 'indirect'): number =>
    sum(
      doses.filter(({ exercise }) => roleIn(line, exercise) === role),
      ({ sets }) => sets,
    );
  const isMeant = line.isFor === 'everyone' || assignment?.spaceWalks === true;
  return {
    id: line.id,
    label: line.label,
    unit: 'sets',
    most: MOST_SETS,
    weeks: lineOf(
      weeks,
      (doses) => fractionalSets(setsIn(doses, 'direct'), setsIn(doses, 'indirect')),
      (week) => (isMeant ? floorIn(week, PHASES_WITH_FLOORS, line.floor) : null),
    ),
  };
};

const minutesOf = (doses: readonly ItemDose[]): ItemDose['minutes'] => ({
  light: sum(doses, ({ minutes }) => minutes.light),
  moderate: sum(doses, ({ minutes }) => minutes.moderate),
  vigorous: sum(doses, ({ minutes }) => minutes.vigorous),
});

const enduranceLine = (weeks: readonly WeekOfDoses[]): DoseLine => ({
  id: 'endurance',
  label: 'Endurance',
  unit: 'min',
  most: null,
  weeks: lineOf(
    weeks,
    (doses) => sum(doses, ({ minutes }) => minutes.moderate + VIGOROUS_COUNTS * minutes.vigorous),
    (week) => floorIn(week, PHASES_WITH_FLOORS, ENDURANCE_FLOOR),
  ),
});

const loadingLines = (weeks: readonly WeekOfDoses[]): readonly DoseLine[] => {
  const loading = (
    { id, label, unit }: Pick<DoseLine, 'id' | 'label' | 'unit'>,
    floor: number,
    of: (dose: ItemDose) => number,
  ): DoseLine => ({
    id,
    label,
    unit,
    most: null,
    weeks: lineOf(
      weeks,
      (doses) => sum(doses, of),
      (week) => floorIn(week, PHASES_WITH_LOADING_FLOORS, floor),
    ),
  });
  return [
    loading(
      { id: 'heavy sets', label: 'Heavy leg sets', unit: 'sets' },
      loadingFloor('heavy sets'),
      (d) => d.heavySets,
    ),
    loading(
      { id: 'loaded minutes', label: 'Loaded time', unit: 'min' },
      loadingFloor('loaded minutes'),
      (d) => d.loadedMinutes,
    ),
    loading({ id: 'steps', label: 'Steps, loaded', unit: 'steps' }, loadingFloor('steps'), (d) => d.steps),
  ];
};

/** Loads of different machines are different things: a line for each. */
const volumeLines = (weeks: readonly WeekOfDoses[]): readonly DoseLine[] => {
  const machines = new Set(weeks.flatMap(({ planned }) => planned.flatMap(({ volume }) => volume?.machine ?? [])));
  return [...machines].map((machine) => ({
    id: `volume ${machine}`,
    label: `Volume, ${machine.toLowerCase()}`,
    unit: 'kg',
    most: null,
    weeks: lineOf(
      weeks,
      (doses) => sum(doses, ({ volume }) => (volume?.machine === machine ? volume.kilograms : 0)),
      () => null,
    ),
  }));
};
