import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { Effort, Side } from '#domain/effort.ts';
import type { Day } from '#units/day.ts';
import { kilogramsOf } from '#units/entered.ts';
import type { MassUnit } from '#units/mass.ts';
import type { Column, Row } from '../layout/sheet-layout.ts';
import type { Someone } from './someone.ts';

/** A test as the file tells it, with everything settled that had to be asked. */
export interface TestReading {
  readonly row: Row;
  /** Where the load stands. */
  readonly column: Column;
  readonly someone: Someone;
  readonly day: Day;
  readonly exercise: Exercise;
  readonly machine: Machine;
  /** The cell of the load, letter for letter. */
  readonly typed: string;
  readonly number: string;
  readonly unit: MassUnit;
  readonly repetitions: number;
  readonly effort: Effort | null;
  readonly side: Side | null;
  /** What answers and the header made of what was typed, in words. */
  readonly changes: readonly string[];
}

export const kilogramsIn = ({ number, unit }: Pick<TestReading, 'number' | 'unit'>): number =>
  kilogramsOf({ text: number, unit });
