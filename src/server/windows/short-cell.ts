import { showCount, showRepetitions } from '#domain/asked-sets.ts';
import type { CardBout, CardBouts, CardDrill, CardDrillSet, CardLift, CardSet } from '#domain/card.ts';
import { ratingOf } from '#domain/effort.ts';
import type { PieceResult } from '#domain/fact.ts';
import type { DrillWork } from '#domain/programme.ts';
import { showPiece, showPull, showSeconds } from '#domain/show-piece.ts';
import { showSetLoad, showWorkSets } from './set-runs.ts';

/*
 * What a cell of the sheet has room for. Everything that is left out here stands in the full text beside it.
 */

/** "3×8 L 190 R 180" where only the loads of the sides differ; else as it is shown everywhere. */
export const shortWorkSets = (item: CardLift): string => {
  const [left, right] = [oneLoadOf(item, 'left'), oneLoadOf(item, 'right')];
  return left && right && left.repeats === right.repeats && left.load !== right.load
    ? `${left.repeats} L ${left.load} R ${right.load}`
    : showWorkSets(item);
};

/** The sets of a side that are all alike; null where they are not. */
const oneLoadOf = (
  item: CardLift,
  side: NonNullable<CardSet['side']>,
): { readonly repeats: string; readonly load: string } | null => {
  const sets = item.sets.filter((set) => set.kind === 'work' && set.side === side);
  const alike = new Set(sets.map((set) => `${showRepetitions(set)} ${showSetLoad(item, set)}`));
  const [first] = sets;
  return first && alike.size === 1
    ? { repeats: `${showCount(sets)}×${showRepetitions(first)}`, load: showSetLoad(item, first) }
    : null;
};

export const shortPiece = (item: CardBouts | CardDrill): string =>
  item.kind === 'bouts' ? shortBouts(item) : shortDrill(item);

/** "6 × 2 min · 160–245 W · 137–184/min": over all bouts from the least to the greatest. */
const shortBouts = ({ bouts, harness }: CardBouts): string =>
  [
    `${bouts.length === 1 ? '' : `${bouts.length} × `}${spanOf(
      bouts.map(({ seconds }) => seconds),
      showSeconds,
    )}`,
    ...shortTargets(bouts),
    ...(harness ? [`harness ${showPull(harness)}`] : []),
  ].join(' · ');

const shortTargets = (bouts: readonly CardBout[]): readonly string[] => {
  const rates = known(bouts.map(({ heartRate }) => heartRate)).flat();
  const targets = [
    ...span(known(bouts.map(({ watts }) => watts)), 'W', ' '),
    ...span(known(bouts.map(({ speed }) => speed)), 'km/h', ' '),
    ...span(rates, '/min', ''),
  ];
  return targets.length > 0
    ? targets
    : span(
        bouts.flatMap(({ rpe }) => rpe),
        '',
        '',
      ).map((text) => `RPE ${text}`);
};

const known = <Value>(values: readonly (Value | null)[]): readonly Value[] =>
  values.flatMap((value) => (value === null ? [] : [value]));

const span = (values: readonly number[], unit: string, gap: string): readonly string[] =>
  values.length === 0 ? [] : [`${spanOf(values, String)}${gap}${unit}`];

/** "160–245"; one value where they are alike. */
const spanOf = (values: readonly number[], show: (value: number) => string): string => {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return least === most ? show(least) : `${show(least)}–${show(most)}`;
};

/** "2 × 12 each side", "4 × 8 × 7/3 s · L 150 R 160 N". */
const shortDrill = (item: CardDrill): string => {
  const { sets } = item;
  const sides = new Set(sets.map(({ side }) => side));
  const perSide = sets.length / sides.size;
  const works = [...new Set(sets.map(({ work }) => shortWork(work)))];
  const [work, ...others] = works;
  if (work === undefined || others.length > 0 || !Number.isInteger(perSide)) return showPiece(item);
  const forces = forcesOf(sets);
  return [
    `${perSide} × ${work}${sides.size > 1 && !forces?.startsWith('L ') ? ' each side' : ''}`,
    ...(forces === null ? [] : [forces]),
  ].join(' · ');
};

/** Seconds from which a hold, or a walk, is told in minutes. */
const LONG = 120;

const shortWork = (work: DrillWork): string => {
  switch (work.kind) {
    case 'repetitions':
      return String(work.count);
    case 'hold':
      return work.seconds < LONG ? `${work.seconds} s` : showSeconds(work.seconds);
    case 'pulses':
      return `${work.count} × ${work.on}/${work.off} s`;
  }
};

/** "345 N", "L 150 R 160 N"; null where no force is asked for. */
const forcesOf = (sets: readonly CardDrillSet[]): string | null => {
  const ofSide = (side: CardDrillSet['side']): readonly number[] =>
    known(sets.filter((set) => set.side === side).map(({ force }) => force));
  const all = known(sets.map(({ force }) => force));
  if (all.length === 0) return null;
  const [left, right] = [ofSide('left'), ofSide('right')];
  const [l, r] = [left, right].map((forces) => (forces.length === 0 ? '' : spanOf(forces, String)));
  return l !== r && l !== '' && r !== '' ? `L ${l} R ${r} N` : `${spanOf(all, String)} N`;
};

/** "175 W · 151/min · 6": how much was done only where it was not all, or where nothing else is known. */
export const shortPieceResult = (
  { done, minutes, watts, speed, heartRate, effort }: PieceResult,
  of: number,
): string => {
  const measured = [
    ...(watts === null ? [] : [`${watts} W`]),
    ...(speed === null ? [] : [`${speed} km/h`]),
    ...(heartRate === null ? [] : [`${heartRate}/min`]),
  ];
  const counted = done < of || measured.length === 0 ? [`${done} of ${of}`] : [];
  const timed = minutes !== null && watts === null && speed === null ? [`${minutes} min`] : [];
  return [...counted, ...timed, ...measured, ...(effort === null ? [] : [String(ratingOf(effort))])].join(' · ');
};
