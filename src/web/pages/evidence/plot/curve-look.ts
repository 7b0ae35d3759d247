import { symbol, symbolCircle, symbolCross, symbolDiamond, symbolSquare, symbolTriangle } from 'd3-shape';

/** Curves differ in dashes and points in shape, so that they are told apart without colour too. */

export const LOOKS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const;

export const lookOf = (place: number): (typeof LOOKS)[number] => LOOKS[place % LOOKS.length] ?? 'first';

const SHAPES = [symbolCircle, symbolTriangle, symbolSquare, symbolDiamond, symbolCross];
const SYMBOL_AREA = 34;

const paths = SHAPES.map((shape) => symbol(shape, SYMBOL_AREA)() ?? '');

export const shapeOf = (place: number): string => paths[place % paths.length] ?? '';
