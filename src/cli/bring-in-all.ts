import type { BringInAnswers } from '#contract/bring-in.ts';
import type { SignerId } from '#domain/identity.ts';
import { bringInFile } from './bring-in-file.ts';
import type { Keeping, World } from './command.ts';

/** Tables lean on each other, some missions on people and some people on missions: each is taken as soon as it is ready. */
export const bringInAll = async (
  { workplace }: Keeping,
  world: World,
  asked: { readonly paths: readonly string[]; readonly signer: SignerId; readonly answers: BringInAnswers },
): Promise<{ readonly isAll: boolean; readonly says: readonly string[] }> => {
  const says: string[] = [];
  let waiting = asked.paths;
  while (waiting.length > 0) {
    const refused: string[] = [];
    const stillWaiting: string[] = [];
    for (const path of waiting) {
      const outcome = await bringInFile(workplace, world, { ...asked, path, take: true });
      if (outcome.kind === 'done') says.push(outcome.says);
      else {
        refused.push(outcome.says);
        stillWaiting.push(path);
      }
    }
    if (stillWaiting.length === waiting.length) return { isAll: false, says: [...says, ...refused] };
    waiting = stillWaiting;
  }
  return { isAll: true, says };
};
