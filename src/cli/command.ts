import type { Day } from '#units/day.ts';
import type { Problem } from '#contract/problem.ts';
import type { Workplace } from '#actions/workplace.ts';
import type { BackupReport } from '#storage/backup.ts';
import type { RestoreReport } from '#storage/restore.ts';

export interface Option {
  readonly name: string;
  /** What stands for its value in the help; null: the option is a switch. */
  readonly value: string | null;
  readonly help: string;
  readonly needed: boolean;
}

/** Options as they were given: a text, or "yes" for a switch. */
export type Given = Readonly<Record<string, string | undefined>>;

export type Outcome =
  { readonly kind: 'done'; readonly says: string } | { readonly kind: 'failed'; readonly says: string };

export const done = (...lines: readonly string[]): Outcome => ({ kind: 'done', says: lines.join('\n') });
export const failed = (...lines: readonly string[]): Outcome => ({ kind: 'failed', says: lines.join('\n') });

export type Reading =
  | { readonly kind: 'file'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly kind: 'unreadable'; readonly says: string };

export interface Keeping {
  readonly workplace: Workplace;
  readonly backUp: (to: string | null) => Promise<BackupReport>;
}

export type Opening =
  { readonly kind: 'open'; readonly keeping: Keeping } | { readonly kind: 'trouble'; readonly problem: Problem };

/** What the commands are handed: files, data and days come from the program's one place that may touch them. */
export interface World {
  readonly readFile: (path: string) => Promise<Reading>;
  readonly writeFile: (path: string, text: string) => Promise<Reading>;
  /** A log that lives as long as the command. */
  readonly openInMemory: (today: Day | null) => Promise<Opening>;
  /** The data file that the common options name. */
  readonly openData: (given: Given) => Promise<Opening>;
  readonly restore: (given: Given, from: string) => Promise<RestoreReport>;
  readonly madeAt: () => string;
}

/** One thing to do from the command line. Its help is printed from it. */
export interface Command {
  readonly name: string;
  readonly summary: string;
  readonly options: readonly Option[];
  readonly run: (given: Given, world: World) => Promise<Outcome>;
}

export const needed = (name: string, value: string, help: string): Option => ({ name, value, help, needed: true });
export const optional = (name: string, value: string | null, help: string): Option => ({
  name,
  value,
  help,
  needed: false,
});

/** Which data a command works on. */
export const DATA_OPTIONS: readonly Option[] = [
  optional('data', 'FOLDER', 'folder with the data files; else where this system keeps a user’s data'),
  optional('scenario', null, 'the invented scenario instead of your own data'),
  optional('today', 'YYYY-MM-DD', 'the day it is; else today'),
];
