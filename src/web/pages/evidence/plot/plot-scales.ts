import { scaleLinear, type ScaleLinear } from 'd3-scale';
import type { Curve } from '#science/plot.ts';
import { labelLines } from './plot-labels.ts';

/** Where everything of a plot stands, in units of its drawing. */
export interface PlotFrame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface PlotScales {
  readonly frame: PlotFrame;
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

export const LINE_HEIGHT = 14;
const LETTER_WIDTH = 6.4;
const SAMPLE_WIDTH = 34;
const TICKS = 6;

/** A frame that holds every point and band, and has room for the names of its curves. */
export const plotScales = (curves: readonly Curve[]): PlotScales => {
  const frame = frameFor(curves);
  const xs = curves.flatMap(({ points }) => points.map(([x]) => x));
  const ys = curves.flatMap(({ points, band = [] }) => [...points.map(([, y]) => y), ...band.flat()]);
  return {
    frame,
    x: scaleLinear(extent(xs), [frame.left, frame.width - frame.right]),
    y: scaleLinear(extent(ys), [frame.height - frame.bottom, frame.top]).nice(TICKS),
  };
};

export const ticksOf = (scale: ScaleLinear<number, number>): readonly number[] => scale.ticks(TICKS);

const frameFor = (curves: readonly Curve[]): PlotFrame => {
  const lines = curves.flatMap(({ label }) => labelLines(label));
  const longest = Math.max(0, ...lines.map(({ length }) => length));
  const height = Math.max(290, lines.length * LINE_HEIGHT + 90);
  const right = SAMPLE_WIDTH + Math.ceil(longest * LETTER_WIDTH) + 6;
  return { width: 500 + right, height, left: 58, right, top: 30, bottom: 46 };
};

/** From least to greatest; where both are one number, a little around it. */
const extent = (values: readonly number[]): readonly [number, number] => {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return low < high ? [low, high] : [low - Math.max(Math.abs(low) * 0.1, 1), high + Math.max(Math.abs(high) * 0.1, 1)];
};
