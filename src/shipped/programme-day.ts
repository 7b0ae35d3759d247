import { idOf } from '#domain/identity.ts';
import type { ProgrammeItem, ProgrammeSession } from '#domain/programme.ts';
import { boutsItem, drillItem, type BoutsLine, type DrillLine } from './piece-line.ts';

/** A line of endurance or a drill with how long it is kept when time is short: 1 is kept longest. */
export interface Piece {
  readonly line: BoutsLine | DrillLine;
  readonly priority: number;
}

/** Lines of one priority, in their order. */
export const pieces = (priority: number, ...lines: readonly Piece['line'][]): readonly Piece[] =>
  lines.map((line) => ({ line, priority }));

export interface ProgrammeDay {
  /** Unique in its phase; with the phase it names session and items. */
  readonly name: string;
  readonly title: string;
  readonly weekday: number;
  readonly blockMinutes: number;
  /** In the order in which they are done. Lifts have their identities already. */
  readonly work: readonly (ProgrammeItem | Piece)[];
}

/** The sessions of a phase, in the order of the week. */
export const sessionsOf = (phase: string, days: readonly ProgrammeDay[]): readonly ProgrammeSession[] =>
  days.toSorted((one, other) => one.weekday - other.weekday).map(sessionOf(phase));

const sessionOf =
  (phase: string) =>
  ({ name, title, weekday, blockMinutes, work }: ProgrammeDay): ProgrammeSession => ({
    id: idOf(`${name}-${phase}`),
    title,
    weekday,
    blockMinutes,
    items: work.map((each) => ('line' in each ? itemOfPiece(each, `${name}-${phase}`) : each)),
  });

const itemOfPiece = ({ line, priority }: Piece, phase: string): ProgrammeItem =>
  'bouts' in line ? boutsItem(line, { phase, priority }) : drillItem(line, { phase, priority });
