/**
 * What a file may hold before it is refused with a sentence. A season of tests of sixty people stands far under all of
 * these; they keep a damaged or hostile file from filling the memory.
 */
export interface Limits {
  readonly bytes: number;
  readonly unpackedBytes: number;
  readonly entries: number;
  /** Rows of a sheet, with some room for titles above and summaries below the most tests in one file. */
  readonly rows: number;
  readonly columns: number;
  /** Filled cells of one sheet of a workbook. */
  readonly cells: number;
  readonly sheets: number;
  readonly charactersInCell: number;
}

const MEGABYTE = 1024 * 1024;
/** Rows below the header that one bring-in takes. */
export const MOST_ROWS = 10_000;
const ROOM_FOR_TITLES = 100;

export const LIMITS: Limits = {
  bytes: 50 * MEGABYTE,
  unpackedBytes: 50 * MEGABYTE,
  entries: 1000,
  rows: MOST_ROWS + ROOM_FOR_TITLES,
  columns: 200,
  cells: 1_000_000,
  sheets: 100,
  charactersInCell: 4000,
};

export const inMegabytes = (bytes: number): string => `${Math.ceil(bytes / MEGABYTE)} MB`;
export const inThousands = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, ',');
