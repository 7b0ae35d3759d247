import type { Exercise, Pattern } from '#domain/catalogue.ts';
import type { PhaseName } from '#domain/programme.ts';
import { LOADING_FLOORS, type Loading } from '#science/bone/loading-floors.ts';

/* What a week is counted in, and what it should at least hold. */

export interface SetsLine {
  readonly id: string;
  readonly label: string;
  /** A set of these counts whole, a set of the others trains it on the way and counts half. */
  readonly direct: readonly Pattern[];
  readonly onTheWay: readonly Pattern[];
  /** Fewest sets a week. */
  readonly floor: number;
  /** Whom the floor is for. */
  readonly isFor: 'everyone' | 'space-walk crew';
}

/**
 * Weekly sets: lower body and calf 8 to 12, upper body, trunk and grip 6 to 10 (our own design, after the counting of
 * Pelland 2024 and the dose of Ralston 2017). Which patterns train which on the way is our own reading.
 */
export const SETS_LINES: readonly SetsLine[] = [
  line('squat', 'Squat', ['squat'], ['hip hinge', 'leg'], 8),
  line('hinge', 'Hip hinge', ['hip hinge'], ['squat', 'leg'], 8),
  line('calf', 'Calf', ['heel raise'], [], 8),
  line('press', 'Press', ['horizontal press', 'vertical press'], [], 6),
  line('pull', 'Pull', ['horizontal pull', 'vertical pull'], [], 6),
  line('trunk', 'Trunk', ['trunk'], ['carry'], 6),
  { ...line('grip', 'Grip', ['grip', 'carry'], ['horizontal pull', 'vertical pull'], 6), isFor: 'space-walk crew' },
];

function line(
  id: string,
  label: string,
  direct: readonly Pattern[],
  onTheWay: readonly Pattern[],
  floor: number,
): SetsLine {
  return { id, label, direct, onTheWay, floor, isFor: 'everyone' };
}

export const roleIn = ({ direct, onTheWay }: SetsLine, { pattern }: Exercise): 'direct' | 'indirect' | null => {
  if (direct.includes(pattern)) return 'direct';
  return onTheWay.includes(pattern) ? 'indirect' : null;
};

/**
 * Of moderate minutes, a vigorous one counting for two: at least 150 a week (Garber 2011, Med Sci Sports Exerc
 * 43(7):1334–1359, seen).
 */
export const ENDURANCE_FLOOR = 150;
export const VIGOROUS_COUNTS = 2;

export const loadingFloor = (loading: Loading): number =>
  LOADING_FLOORS.rows.find((row) => row.loading === loading)?.least ?? 0;

/** Steps of both feet in a minute: walking as the floor of steps counts them, running by common practice, no source. */
export const STEPS_A_MINUTE = { walking: 110, running: 160 } as const;

/** Of the maximum, the body's share taken off: from here on a set of the lower body is a heavy one; our own reading. */
export const HEAVY_FROM = 0.75;

/** Phases that are meant to build or to keep; others hold less on purpose. */
export const PHASES_WITH_FLOORS: ReadonlySet<PhaseName> = new Set([
  'general preparation',
  'flight-specific preparation',
  'main flight',
  'last flight weeks',
]);
/** The ground loads the skeleton all day. */
export const PHASES_WITH_LOADING_FLOORS: ReadonlySet<PhaseName> = new Set(['main flight', 'last flight weeks']);
