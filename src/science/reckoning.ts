import { impossibilities, outsideValidRange } from './evaluate.ts';
import { callWith, type AnyFormula, type Formula } from './formula.ts';

/**
 * A reckoning is a named column of cells; each cell is a formula over givens or earlier cells. Filling it writes
 * one row of numbers, and that row *is* the complete working: it is spelled out only when somebody opens it.
 *
 * The names of the columns and the units of their values are checked by the compiler.
 */

/** Units of columns by name. */
export type Columns = Readonly<Record<string, number>>;

/** The column names whose quantity may stand in one argument of a formula. */
type NamesOf<Known extends Columns, Quantity extends number> = {
  [Name in keyof Known & string]: Known[Name] extends Quantity ? Name : never;
}[keyof Known & string];

type ArgumentNames<Known extends Columns, Given extends readonly number[]> = {
  readonly [Place in keyof Given]: Given[Place] extends number ? NamesOf<Known, Given[Place]> : never;
};

interface Cell {
  readonly name: string;
  readonly formula: AnyFormula;
  readonly of: readonly number[];
}

export interface SpelledCell {
  readonly name: string;
  readonly formula: string;
  readonly revision: number;
  readonly title: string;
  readonly equation: string;
  readonly unit: string;
  readonly of: readonly string[];
  readonly value: number;
  readonly outsideRange: readonly string[];
}

export class Reckoning<Given extends Columns, Known extends Columns> {
  readonly name: string;
  readonly givens: readonly (keyof Given & string)[];
  readonly columns: readonly string[];
  readonly #cells: readonly Cell[];

  private constructor(name: string, givens: readonly (keyof Given & string)[], cells: readonly Cell[]) {
    this.name = name;
    this.givens = givens;
    this.#cells = cells;
    this.columns = [...givens, ...cells.map((cell) => cell.name)];
  }

  static of<Given extends Columns>(name: string, givens: readonly (keyof Given & string)[]): Reckoning<Given, Given> {
    return new Reckoning<Given, Given>(name, givens, []);
  }

  /** Adds a cell computed by a formula from columns that stand before it. */
  cell<Name extends string, Arguments extends readonly number[], Result extends number>(
    name: Name,
    compute: Formula<Arguments, Result>,
    ...of: ArgumentNames<Known, Arguments>
  ): Reckoning<Given, Known & Readonly<Record<Name, Result>>> {
    const places = (of as readonly string[]).map((column) => this.place(column));
    const cells: readonly Cell[] = [...this.#cells, { name, formula: compute as unknown as AnyFormula, of: places }];
    return new Reckoning<Given, Known & Readonly<Record<Name, Result>>>(this.name, this.givens, cells);
  }

  /** Numbers that one filled row takes. */
  get width(): number {
    return this.columns.length;
  }

  /** Where a column stands in a row. */
  place(column: keyof Known & string): number {
    const found = this.columns.indexOf(column);
    if (found < 0) throw new RangeError(`Reckoning "${this.name}" has no column "${column}".`);
    return found;
  }

  /** Fills one row: the givens must already stand at `offset`; the cells are written behind them. */
  fill(rows: Float64Array, offset: number): void {
    let at = offset + this.givens.length;
    for (const { formula, of } of this.#cells) {
      rows[at] = evaluate(formula as unknown as Evaluate, of, rows, offset);
      at += 1;
    }
  }

  /** One filled row, for a single use outside a loop. */
  row(givens: Given): Float64Array {
    const row = new Float64Array(this.width);
    for (const [place, name] of this.givens.entries()) row[place] = givens[name] as number;
    this.fill(row, 0);
    return row;
  }

  /** One row as names and values. */
  reckon(givens: Given): Known {
    const row = this.row(givens);
    return Object.fromEntries(this.columns.map((column, place) => [column, row[place]])) as unknown as Known;
  }

  /** The cells of a filled row with their formulas, as they are shown and issued. */
  spell(rows: Float64Array, offset: number): readonly SpelledCell[] {
    return this.#cells.map(({ name, formula, of }, index) => {
      const { record } = formula;
      return {
        name,
        formula: record.id,
        revision: record.revision,
        title: record.title,
        equation: record.equation,
        unit: record.output.unit,
        of: of.map((place) => this.columns[place] as string),
        value: rows[offset + this.givens.length + index] as number,
        outsideRange: outsideValidRange(
          record,
          of.map((place) => rows[offset + place] as number),
        ),
      };
    });
  }

  /** Fills a row as far as its cells are possible; why it cannot be filled to its end, nothing where it is. */
  fillWithCare(rows: Float64Array, offset: number): readonly string[] {
    let at = offset + this.givens.length;
    for (const { formula, of } of this.#cells) {
      const given = of.map((place) => rows[offset + place] as number);
      const reasons = impossibilities(formula.record, given);
      if (reasons.length > 0) return reasons;
      rows[at] = callWith(formula, given);
      at += 1;
    }
    return [];
  }

  /** The formula that computes a cell; none for a given. */
  formulaOf(column: string): AnyFormula | null {
    return this.#cells.find(({ name }) => name === column)?.formula ?? null;
  }

  /** The formulas in use, each once. */
  get formulas(): readonly AnyFormula[] {
    return [...new Set(this.#cells.map((cell) => cell.formula))];
  }
}

type Evaluate = (...given: readonly number[]) => number;

/**
 * Spread calls cost more than the arithmetic: the usual numbers of arguments are written out, and no function is made on
 * the way. Places are taken by key: to take them in turn costs as much again. Places and rows hold what `cell` and `fill`
 * put there.
 */
const evaluate = (formula: Evaluate, of: readonly number[], rows: Float64Array, offset: number): number => {
  const { 0: a, 1: b, 2: c, 3: d } = of as readonly [number, number, number, number];
  switch (of.length) {
    case 1:
      return formula(rows[offset + a] as number);
    case 2:
      return formula(rows[offset + a] as number, rows[offset + b] as number);
    case 3:
      return formula(rows[offset + a] as number, rows[offset + b] as number, rows[offset + c] as number);
    case 4:
      return formula(
        rows[offset + a] as number,
        rows[offset + b] as number,
        rows[offset + c] as number,
        rows[offset + d] as number,
      );
    default:
      return formula(...of.map((place) => rows[offset + place] as number));
  }
};

/** Begins a reckoning from the names of its givens. */
export const reckoning = <Given extends Columns>(
  name: string,
  givens: readonly (keyof Given & string)[],
): Reckoning<Given, Given> => Reckoning.of<Given>(name, givens);
