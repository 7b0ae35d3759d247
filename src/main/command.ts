import { readFile, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { resolve } from 'node:path';
import { dayFromIso, isoOfDay, type Day } from '#units/day.ts';
import { COMMANDS } from '#cli/commands.ts';
import { runCommand } from '#cli/run-command.ts';
import type { Given, Opening, Reading, World } from '#cli/command.ts';
import { openLogStore } from '#storage/open-log-store.ts';
import { restoreFrom } from '#storage/restore.ts';
import type { About } from '#server/serving.ts';
import { localToday, now, nowOn } from './clock.ts';
import { dataFile, dataFolder } from './data-folder.ts';
import { endWith } from './end-with.ts';
import { openHouse, timeFor, workplaceOn, type Chosen } from './open-house.ts';

/** What the system's codes mean to a person. */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EEXIST: 'there is a file of that name already, and nothing is written over',
  EACCES: 'you have no right to it',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of the path is a file',
  ENOSPC: 'the disk is full',
};

const unreadable = (path: string, error: unknown): Reading => {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return { kind: 'unreadable', says: `${path} cannot be used: ${REASONS[code] ?? String(error)}.` };
};

const folderOf = (given: Given): string =>
  dataFolder(given['data'] ?? null, {
    platform: process.platform,
    environment: process.env,
    home: homedir(),
    workingFolder: process.cwd(),
  });

const whichOf = (given: Given): About => (given['scenario'] === undefined ? 'own' : 'scenario');

const dayOf = (given: Given): Day | null => {
  const typed = given['today'];
  if (typed === undefined) return null;
  return dayFromIso(typed) ?? endWith(`"${typed}" is no day such as 2027-03-01.`);
};

const openData = async (given: Given): Promise<Opening> => {
  const which = whichOf(given);
  const chosen: Chosen = { folder: folderOf(given), today: dayOf(given) };
  const { today, clock } = timeFor(which, chosen);
  const opened = await openHouse(which, chosen, today, clock);
  if (opened.kind === 'trouble') return opened;
  const { workplace, backUp } = opened.house;
  return {
    kind: 'open',
    keeping: { workplace, backUp: (to) => (to === null ? backUp() : workplace.store.backUpTo(resolve(to))) },
  };
};

const openInMemory = async (chosen: Day | null): Promise<Opening> => {
  const clock = chosen === null ? now : nowOn(isoOfDay(chosen));
  const opened = await openLogStore({ file: 'memory', clock, about: 'own' });
  if (opened.kind !== 'opened') return { kind: 'trouble', problem: opened.problem };
  const { store } = opened;
  const workplace = workplaceOn(store, () => chosen ?? localToday());
  return { kind: 'open', keeping: { workplace, backUp: (to) => store.backUpTo(to ?? 'backup.sqlite') } };
};

const world: World = {
  readFile: async (path) => {
    try {
      return { kind: 'file', bytes: new Uint8Array(await readFile(path)) };
    } catch (error) {
      return unreadable(path, error);
    }
  },
  writeFile: async (path, text) => {
    try {
      await writeFile(path, text, { flag: 'wx', mode: 0o600 });
      return { kind: 'file', bytes: new Uint8Array() };
    } catch (error) {
      return unreadable(path, error);
    }
  },
  openInMemory,
  openData,
  restore: (given, from) =>
    restoreFrom({ backup: from, target: dataFile(folderOf(given), whichOf(given)), about: whichOf(given), now: now() }),
  madeAt: now,
};

const outcome = await runCommand(COMMANDS, process.argv.slice(2), world);
if (outcome.kind === 'done') console.log(outcome.says);
else {
  console.error(outcome.says);
  process.exitCode = 1;
}
