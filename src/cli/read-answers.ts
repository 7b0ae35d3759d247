import { bringInAnswers, type BringInAnswers } from '#contract/bring-in.ts';
import type { World } from './command.ts';

export type AnswersReading =
  { readonly kind: 'answers'; readonly answers: BringInAnswers } | { readonly kind: 'wrong'; readonly says: string };

/** Answers to the questions of a bring-in, from a JSON file; none where no file is named. */
export const readAnswers = async (path: string | undefined, world: World): Promise<AnswersReading> => {
  if (path === undefined) return { kind: 'answers', answers: {} };
  const file = await world.readFile(path);
  if (file.kind === 'unreadable') return { kind: 'wrong', says: file.says };
  const reading = bringInAnswers.safeParse(jsonOf(file.bytes));
  return reading.success
    ? { kind: 'answers', answers: reading.data }
    : { kind: 'wrong', says: `${path} is no JSON object of answers such as {"date order": "day first"}.` };
};

const jsonOf = (bytes: Uint8Array): unknown => {
  try {
    return JSON.parse(new TextDecoder().decode(bytes));
  } catch {
    return undefined;
  }
};
