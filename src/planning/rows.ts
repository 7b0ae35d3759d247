import type { Machine } from '#domain/catalogue.ts';
import { FLIGHT_SET, FLIGHT_SET_PLACES } from './flight-set.ts';
import { GROUND_SET, GROUND_SET_PLACES } from './ground-set.ts';

/** The reckoning of a work set on a machine, and where the cells that planning reads stand in its row. */
export const setReckoning = ({ gravity }: Pick<Machine, 'gravity'>) =>
  gravity === '0 g'
    ? {
        reckoning: FLIGHT_SET,
        target: FLIGHT_SET_PLACES.target,
        load: FLIGHT_SET_PLACES.load,
        trueFraction: FLIGHT_SET_PLACES.trueFraction,
      }
    : {
        reckoning: GROUND_SET,
        target: GROUND_SET_PLACES.bar,
        load: GROUND_SET_PLACES.load,
        trueFraction: GROUND_SET_PLACES.trueFraction,
      };

/** Rows are as wide as the widest reckoning: one block of numbers, an index for each row. */
export const ROW_WIDTH = Math.max(FLIGHT_SET.width, GROUND_SET.width);

/** Rows of a growing sheet of reckonings. */
export class Rows {
  #numbers = new Float64Array(512 * ROW_WIDTH);
  #count = 0;

  /** Fills a row of a machine's reckoning from its givens, in order of the columns, and answers its index. */
  add(machine: Pick<Machine, 'gravity'>, givens: readonly number[]): number {
    const offset = this.#count * ROW_WIDTH;
    if (offset + ROW_WIDTH > this.#numbers.length) this.#grow();
    this.#numbers.set(givens, offset);
    setReckoning(machine).reckoning.fill(this.#numbers, offset);
    this.#count += 1;
    return this.#count - 1;
  }

  /** Fills a row once more, now that its load was chosen. */
  setLoad(machine: Pick<Machine, 'gravity'>, row: number, load: number): void {
    const { reckoning, load: place } = setReckoning(machine);
    this.#numbers[row * ROW_WIDTH + place] = load;
    reckoning.fill(this.#numbers, row * ROW_WIDTH);
  }

  get count(): number {
    return this.#count;
  }

  /** Adds rows once more, as they stand. */
  repeat(first: number, end: number): void {
    while ((this.#count + end - first) * ROW_WIDTH > this.#numbers.length) this.#grow();
    this.#numbers.copyWithin(this.#count * ROW_WIDTH, first * ROW_WIDTH, end * ROW_WIDTH);
    this.#count += end - first;
  }

  at(row: number, place: number): number {
    return this.#numbers[row * ROW_WIDTH + place] as number;
  }

  numbers(): Float64Array {
    return this.#numbers.slice(0, this.#count * ROW_WIDTH);
  }

  #grow(): void {
    const wider = new Float64Array(this.#numbers.length * 2);
    wider.set(this.#numbers);
    this.#numbers = wider;
  }
}
