import type { Problem } from '#contract/problem.ts';
import type { Fault } from './engine.ts';

const problem = (what: string, why: string, whatToDo: string): Problem => ({ what, why, whatToDo, field: null });

export const notWritable = (path: string, says: string): Problem =>
  problem(
    `${path} cannot be written.`,
    `Writing there failed: ${says}.`,
    'Choose another folder, or give yourself the right to write there.',
  );

export const locked = (path: string): Problem =>
  problem(
    `${path} is in use.`,
    'Another process has it open, and one process alone may write a log.',
    'Use the program that is already running, or end it first.',
  );

export const damaged = (path: string, why: string): Problem =>
  problem(`${path} is damaged.`, why, 'Restore the last backup; the damaged file is kept beside it.');

export const newerVersion = (path: string, steps: readonly string[]): Problem =>
  problem(
    `${path} was written by a newer version of this program.`,
    `It has steps that this version does not know: ${steps.join(', ')}.`,
    'Start the newer version, or restore a backup that was made before it.',
  );

export const notOurs = (path: string): Problem =>
  problem(
    `${path} is not a file of this program.`,
    'Another program made it.',
    'Choose another name or folder; nothing was changed in it.',
  );

const KIND_NAMES = { scenario: 'the invented scenario', own: 'your own people' } as const;

export const otherKind = (path: string, holds: 'scenario' | 'own'): Problem =>
  problem(
    `${path} holds ${KIND_NAMES[holds]}.`,
    'The invented scenario and real people never share a file.',
    `Open it as ${KIND_NAMES[holds]}, or choose another file.`,
  );

export const diskFull = (path: string): Problem =>
  problem(
    `Nothing was written to ${path}.`,
    'The disk is full.',
    'Free some space, then do it again: everything entered before is there.',
  );

/** What a fault of the database means to a person, where nothing more special is known. */
export const problemOfFault = (path: string, { kind, says }: Fault): Problem => {
  switch (kind) {
    case 'full':
      return diskFull(path);
    case 'locked':
      return locked(path);
    case 'read-only':
    case 'cannot be opened':
      return notWritable(path, says);
    case 'of another program':
      return notOurs(path);
    case 'damaged':
      return damaged(path, `The database says: ${says}.`);
    case 'superseded twice':
    case 'constraint':
      return problem(
        `Nothing was written to ${path}.`,
        `Another program changed it: ${says}.`,
        'Start this program again.',
      );
    case 'unknown':
      return problem(
        `Nothing was written to ${path}.`,
        `The database says: ${says}.`,
        'Do it again; if it fails again, make a backup and start anew.',
      );
  }
};
