import type { SheetColumn, SheetStrip } from '#contract/windows/sheet-window.ts';

type Span = SheetStrip['spans'][number];

/** A span over whole columns: from `start` up to before `end`. */
export interface LaidSpan {
  readonly start: number;
  readonly end: number;
  readonly span: Span;
}

/** Lanes of one strip: spans in a lane do not overlap. */
export type Lane = readonly LaidSpan[];

/** First session on or after a day. */
const columnFrom = (columns: readonly SheetColumn[], day: number): number => {
  const at = columns.findIndex((column) => column.day >= day);
  return at < 0 ? columns.length : at;
};

/** The sessions that a span covers; what falls between two sessions stands at the later one. */
const lay = (columns: readonly SheetColumn[], span: Span): LaidSpan | null => {
  const first = columns[0];
  if (!first || span.to < first.day) return null;
  const start = columnFrom(columns, span.from);
  if (start >= columns.length) return null;
  const end = span.shape === 'mark' ? start + 1 : Math.max(start + 1, columnFrom(columns, span.to + 1));
  return { start, end, span };
};

const isAlike = (a: Span, b: Span): boolean =>
  a.from === b.from && a.to === b.to && a.tone === b.tone && a.shape === b.shape;

/** What holds over the same days is said in one breath: ten tracks held at once are one bar. */
const together = (spans: readonly Span[]): readonly Span[] =>
  spans.reduce<readonly Span[]>((kept, span) => {
    const at = kept.findIndex((other) => isAlike(other, span));
    return at < 0
      ? [...kept, span]
      : kept.map((other, i) => (i === at ? { ...other, says: `${other.says}; ${span.says}` } : other));
  }, []);

/** Lays the spans of a strip over the columns, in as many lanes as they need. */
export const stripLanes = (columns: readonly SheetColumn[], strip: SheetStrip): readonly Lane[] => {
  const laid = together(strip.spans)
    .flatMap((span) => lay(columns, span) ?? [])
    .toSorted((a, b) => a.start - b.start || a.end - b.end);
  return laid.reduce<readonly Lane[]>((lanes, each) => {
    const free = lanes.findIndex((lane) => (lane.at(-1)?.end ?? 0) <= each.start);
    return free < 0 ? [...lanes, [each]] : lanes.map((lane, at) => (at === free ? [...lane, each] : lane));
  }, []);
};

export interface LaneCell {
  readonly width: number;
  readonly laid: LaidSpan | null;
}

/** A lane as table cells that fill it from end to end. */
export const laneCells = (lane: Lane, columns: number): readonly LaneCell[] => {
  const cells = lane.flatMap((laid, at): readonly LaneCell[] => {
    const before = laid.start - (lane[at - 1]?.end ?? 0);
    return [...(before > 0 ? [{ width: before, laid: null }] : []), { width: laid.end - laid.start, laid }];
  });
  const rest = columns - (lane.at(-1)?.end ?? 0);
  return rest > 0 ? [...cells, { width: rest, laid: null }] : cells;
};
