import type { RoadSpan } from '#contract/windows/road-window.ts';
import { roadScale } from './road-scale.ts';

/** The narrowest that a road is drawn, and the widest that a letter is on it [px]: what fits there fits everywhere. */
export const NARROWEST = 1000;
const LETTER = 5.3;
const BESIDE = 8;

export type LabelPlace = 'inside' | 'right' | 'left';

export interface Labelled extends RoadSpan {
  readonly label: string;
  /** Where the label goes when it does not fit inside. */
  readonly beside: 'right' | 'left';
}

export interface Placed<Item extends Labelled> {
  readonly item: Item;
  readonly place: LabelPlace;
}

/** Rows of spans with their labels inside or beside them, none over another; as few rows as a first fit needs. */
export const laneRows = <Item extends Labelled>(
  items: readonly Item[],
  road: RoadSpan,
): readonly (readonly Placed<Item>[])[] => {
  const rows: { readonly placed: Placed<Item>[]; readonly taken: Extent[] }[] = [];
  for (const item of items) {
    const place = placeOf(item, road);
    const extent = extentOf(item, place, road);
    const row = rows.find(({ taken }) => taken.every((other) => other.to <= extent.from || other.from >= extent.to));
    if (row) {
      row.placed.push({ item, place });
      row.taken.push(extent);
    } else rows.push({ placed: [{ item, place }], taken: [extent] });
  }
  return rows.map(({ placed }) => placed);
};

interface Extent {
  readonly from: number;
  readonly to: number;
}

const labelWidth = ({ label }: Labelled): number => label.length * LETTER + BESIDE;

const barOf = (span: RoadSpan, road: RoadSpan): Extent => {
  const { at, width } = roadScale(road);
  const from = (at(span.first) * NARROWEST) / 100;
  return { from, to: from + (width(span) * NARROWEST) / 100 };
};

/** Inside where it fits; else beside it, on the side asked for unless the drawing ends there. */
const placeOf = (item: Labelled, road: RoadSpan): LabelPlace => {
  const { from, to } = barOf(item, road);
  const needs = labelWidth(item);
  if (to - from >= needs) return 'inside';
  const fits = { left: from - needs >= 0, right: to + needs <= NARROWEST };
  const other = item.beside === 'left' ? 'right' : 'left';
  return fits[item.beside] || !fits[other] ? item.beside : other;
};

const extentOf = (item: Labelled, place: LabelPlace, road: RoadSpan): Extent => {
  const bar = barOf(item, road);
  if (place === 'left') return { from: bar.from - labelWidth(item), to: bar.to };
  return place === 'right' ? { from: bar.from, to: bar.to + labelWidth(item) } : bar;
};
