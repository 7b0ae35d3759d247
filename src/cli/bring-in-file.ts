import type { BringInAnswers } from '#contract/bring-in.ts';
import type { SignerId } from '#domain/identity.ts';
import { bringIn, lookThrough } from '#actions/bring-in.ts';
import type { Workplace } from '#actions/workplace.ts';
import { readTable } from '#interchange/reading/read-table.ts';
import { bringInLines } from './bring-in-lines.ts';
import { done, failed, type Outcome, type World } from './command.ts';
import { problemLines } from './with-data.ts';

/** Brings one file in: all of it, or nothing and everything that stands against it. */
export const bringInFile = async (
  workplace: Workplace,
  world: World,
  asked: { readonly path: string; readonly signer: SignerId; readonly answers: BringInAnswers; readonly take: boolean },
): Promise<Outcome> => {
  const file = await world.readFile(asked.path);
  if (file.kind === 'unreadable') return failed(file.says);
  const bring = { table: await readTable(file.bytes, asked.path), matching: null, answers: asked.answers };
  const plan = lookThrough(workplace.store.facts(), workplace.today(), bring);
  const lines = bringInLines(asked.path, plan);
  if (!plan.ready) return failed(...lines, '  Nothing was recorded.');
  if (!asked.take) return done(...lines, '  Add --take to record.');
  const answer = await bringIn(workplace, asked.signer, bring);
  return answer.kind === 'done' ? done(...lines) : failed(...lines, ...problemLines(answer.problems));
};
