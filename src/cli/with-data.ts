import type { Problem } from '#contract/problem.ts';
import { snapshotOf, type Snapshot } from '#actions/snapshot.ts';
import { failed, type Given, type Keeping, type Opening, type Outcome, type World } from './command.ts';

export const problemLines = (problems: readonly Problem[]): readonly string[] =>
  problems.map(({ what, why, whatToDo }) => `${what} ${why} ${whatToDo}`);

/** Runs on the data that the options name, and lets go of it whatever happens. */
export const withData = async (
  given: Given,
  world: World,
  work: (keeping: Keeping) => Promise<Outcome>,
): Promise<Outcome> => inOpening(await world.openData(given), work);

export const inOpening = async (opening: Opening, work: (keeping: Keeping) => Promise<Outcome>): Promise<Outcome> => {
  if (opening.kind === 'trouble') return failed(...problemLines([opening.problem]));
  try {
    return await work(opening.keeping);
  } finally {
    await opening.keeping.workplace.store.close();
  }
};

export const snapshotNow = ({ workplace }: Keeping): Snapshot => snapshotOf(workplace.store.facts(), workplace.today());
