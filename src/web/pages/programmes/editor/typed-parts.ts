import type { Entered } from '#units/entered.ts';
import type { RoadEdge, WarmUpSet } from '#domain/programme.ts';
import { asTyped } from '#web/parts/loads.ts';

/** What is typed beside the grid, read into parts of a programme; null where it is none. */

/** Decimal point or comma. */
export const numberFrom = (text: string, least: number, most: number): number | null => {
  if (!/^\s*\d+([.,]\d+)?\s*$/.test(text)) return null;
  const value = Number(asTyped(text));
  return value >= least && value <= most ? value : null;
};

export const wholeFrom = (text: string, least: number, most: number): number | null => {
  const value = numberFrom(text, least, most);
  return value !== null && Number.isInteger(value) ? value : null;
};

const RATING = [1, 10] as const;

/** "7", "7 to 8", "7–8". */
export const bandFrom = (text: string): readonly [number, number] | null => {
  const parts = text.split(/\s*(?:to|–|-)\s*/);
  if (parts.length > 2) return null;
  const [least, most] = [parts[0] ?? '', parts[1] ?? parts[0] ?? ''].map((part) => numberFrom(part, ...RATING));
  return least !== null && least !== undefined && most !== null && most !== undefined && least <= most
    ? [least, most]
    : null;
};

const WARM_UP = /^\s*(\d+(?:[.,]\d+)?)\s*%\s*[×x*]\s*(\d+)\s*$/i;
const PERCENT = 100;
const MOST_REPETITIONS = 100;

/** "60 % × 6, 80 % × 4": percent of the work load. */
export const warmUpsFrom = (text: string): readonly WarmUpSet[] | null => {
  if (text.trim() === '') return [];
  const sets = text.split(/;|(?<=[×x*]\s*\d+\s*),/i).map((part): WarmUpSet | null => {
    const [, of, repetitions] = WARM_UP.exec(part) ?? [];
    if (of === undefined || repetitions === undefined) return null;
    const percent = numberFrom(of, 1, PERCENT);
    const count = wholeFrom(repetitions, 1, MOST_REPETITIONS);
    return percent !== null && count !== null ? { of: percent / PERCENT, repetitions: count } : null;
  });
  return sets.every((set) => set !== null) ? sets : null;
};

export const warmUpsText = (sets: readonly WarmUpSet[]): string =>
  sets.map(({ of, repetitions }) => `${Number((of * PERCENT).toPrecision(9))} % × ${repetitions}`).join(', ');

/** An added load, such as 2.5: kept as it was typed. */
export const decimalFrom = (text: string): Entered['text'] | null =>
  numberFrom(text, 0.01, 500) === null ? null : asTyped(text);

export const EDGE_KINDS = ['before launch', 'flight day', 'before landing', 'after landing'] as const;
export type EdgeKind = (typeof EDGE_KINDS)[number];

/** A day as the trade says it: 180 days before launch, flight day 15, 14 days before landing, 3 days after it. */
export const edgeInWords = ({ from, days }: RoadEdge): { readonly kind: EdgeKind; readonly count: number } => {
  if (from === 'launch')
    return days < 0 ? { kind: 'before launch', count: -days } : { kind: 'flight day', count: days + 1 };
  return days < 0 ? { kind: 'before landing', count: -days } : { kind: 'after landing', count: days };
};

export const edgeFrom = (kind: EdgeKind, count: number): RoadEdge => {
  switch (kind) {
    case 'before launch':
      return { from: 'launch', days: -count };
    case 'flight day':
      return { from: 'launch', days: count - 1 };
    case 'before landing':
      return { from: 'landing', days: -count };
    case 'after landing':
      return { from: 'landing', days: count };
  }
};

/** The least count of each kind: landing day itself is day 0 after landing. */
export const leastCount = (kind: EdgeKind): number => (kind === 'after landing' ? 0 : 1);
