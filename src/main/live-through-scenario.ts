import type { Day } from '#units/day.ts';
import { instant } from '#domain/identity.ts';
import type { Problem } from '#contract/problem.ts';
import { liveThrough } from '#scenario/live-through.ts';
import { openLogStore } from '#storage/open-log-store.ts';
import { PROGRAM } from './program.ts';
import { scenarioOffice } from './scenario-office.ts';

/**
 * Writes the invented past into a new file, each moment as its own transaction at its own time. Null where it is all
 * there; else what went wrong.
 */
export const fillWithScenario = async (path: string, today: Day): Promise<Problem | null> => {
  const { writings } = liveThrough(today, scenarioOffice(PROGRAM));
  let at = instant('2000-01-01T00:00:00.000Z');
  const opened = await openLogStore({ file: { path }, clock: () => at, about: 'scenario' });
  if (opened.kind !== 'opened') return opened.problem;
  const { store } = opened;
  try {
    for (const writing of writings) {
      at = writing.at;
      const written = await store.transact(() => ({ kind: 'drafts', drafts: writing.drafts, result: null }));
      if (written.kind === 'not written') return written.problem;
      if (written.kind === 'refused') return written.problems[0] ?? unexplained();
    }
    return null;
  } finally {
    await store.close();
  }
};

const unexplained = (): Problem => ({
  what: 'The scenario does not fit into a log.',
  why: 'Its script and the log disagree.',
  whatToDo: 'Start empty instead.',
  field: null,
});
