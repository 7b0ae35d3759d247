import type { SheetColumn, SheetRow, SheetWindow } from '#contract/windows/sheet-window.ts';

/** One kind of day: its own sessions over its own exercises. Places count from the first head of the first block on. */
export interface SheetBlock {
  readonly label: string;
  /** Row of the heads; the exercises follow under it. */
  readonly top: number;
  readonly columns: readonly SheetColumn[];
  /** One cell a column of the block. */
  readonly rows: readonly SheetRow[];
  readonly leftOut: readonly string[];
  /** First column from today on; past the end where everything is past. */
  readonly today: number;
  /** Columns that stay empty on the left and on the right, so that today stands below today in every block. */
  readonly before: number;
  readonly after: number;
}

/** More columns than that are read for themselves: then today does not line up. */
const MOST_IN_LINE = 8;

/** Fewer columns than that would be wider than anything in them. */
const LEAST = 5;

type Bare = Omit<SheetBlock, 'top' | 'before' | 'after'>;

const bareBlock = ({ columns }: SheetWindow, { label, rows, leftOut }: SheetWindow['groups'][number]): Bare => {
  const held = columns.flatMap((column, at) => (column.title === label ? [at] : []));
  const own = held.flatMap((at) => columns[at] ?? []);
  const ahead = own.findIndex(({ past }) => !past);
  return {
    label,
    columns: own,
    rows: rows.map((row) => ({ ...row, cells: held.map((at) => row.cells[at] ?? null) })),
    leftOut,
    today: ahead < 0 ? own.length : ahead,
  };
};

const laidOut = (sheet: SheetWindow): readonly SheetBlock[] => {
  const bare = sheet.groups.map((group) => bareBlock(sheet, group));
  const [past, ahead] = [
    Math.max(0, ...bare.map(({ today }) => today)),
    Math.max(0, ...bare.map(({ today, columns }) => columns.length - today)),
  ];
  const isInLine = past + ahead <= MOST_IN_LINE;
  const toRight = Math.max(LEAST - past, ahead);
  let top = 0;
  return bare.map((block) => {
    const placed = {
      ...block,
      top,
      before: isInLine ? past - block.today : 0,
      after: isInLine ? toRight - (block.columns.length - block.today) : Math.max(0, LEAST - block.columns.length),
    };
    top += block.rows.length + 1;
    return placed;
  });
};

const laid = new WeakMap<SheetWindow, readonly SheetBlock[]>();

/** The blocks of a sheet in the order in which they stand, laid out once. */
export const blocksOf = (sheet: SheetWindow): readonly SheetBlock[] => {
  const known = laid.get(sheet);
  if (known) return known;
  const blocks = laidOut(sheet);
  laid.set(sheet, blocks);
  return blocks;
};

/** A lift may stand in a session twice, on two tracks. */
export const nameOfRow = ({ exercise, cells }: SheetRow): string =>
  `${exercise} ${cells.find((cell) => cell !== null)?.track ?? ''}`;

/** The block that a row stands in; null outside the sheet. */
export const blockAtRow = (sheet: SheetWindow, row: number): SheetBlock | null =>
  blocksOf(sheet).find(({ top, rows }) => row >= top && row <= top + rows.length) ?? null;

type Group = SheetWindow['groups'][number];

/** Does a kind of day come no more, while others do? */
const isOver = ({ columns }: SheetWindow, { label }: Group): boolean =>
  columns.some(({ past }) => !past) && columns.every(({ title, past }) => title !== label || past);

/** From the last session on: what stands neither in it nor in one ahead comes no more. */
const fromLast = ({ columns }: SheetWindow, { label }: Group): readonly number[] => {
  const own = columns.flatMap(({ title, past }, at) => (title === label ? [{ at, past }] : []));
  const last = own.findLastIndex(({ past }) => past);
  return own.slice(Math.max(0, last)).map(({ at }) => at);
};

export interface StillDone {
  readonly sheet: SheetWindow;
  /** What it leaves away, in words. */
  readonly over: readonly string[];
}

/** The sheet without the kinds of day that are over, and without exercises that their kind of day has given up. */
export const stillDone = (sheet: SheetWindow): StillDone => {
  const over: string[] = [];
  const groups = sheet.groups.flatMap((group): readonly Group[] => {
    if (isOver(sheet, group)) {
      over.push(group.label);
      return [];
    }
    const at = fromLast(sheet, group);
    const rows = group.rows.filter(({ cells }) => at.some((column) => cells[column]));
    const gone = group.rows.filter((row) => !rows.includes(row)).map(({ name }) => name.toLowerCase());
    if (gone.length > 0) over.push(`${gone.join(' and ')} on “${group.label}”`);
    return [{ ...group, rows }];
  });
  return { sheet: over.length === 0 ? sheet : { ...sheet, groups }, over };
};
