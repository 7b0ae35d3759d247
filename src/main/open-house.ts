import { randomUUID } from 'node:crypto';
import { existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { isoDay, isoOfDay, type Day } from '#units/day.ts';
import type { Instant } from '#domain/identity.ts';
import { snapshotReader } from '#actions/snapshot.ts';
import type { Workplace } from '#actions/workplace.ts';
import { openLogStore } from '#storage/open-log-store.ts';
import type { LogStore } from '#storage/log-store.ts';
import type { About, Opened } from '#server/serving.ts';
import { localToday, now, nowOn } from './clock.ts';
import { dataFile } from './data-folder.ts';
import { fillWithScenario } from './live-through-scenario.ts';
import { PROGRAM } from './program.ts';

export interface Chosen {
  readonly folder: string;
  /** Chosen for trials and for the scenario; else the day it is. */
  readonly today: Day | null;
}

/** The day on which the invented scenario stands unless another is asked for. */
export const SCENARIO_TODAY = '2027-03-01';

export const workplaceOn = (store: LogStore, today: () => Day): Workplace => ({
  store,
  today,
  newId: randomUUID,
  program: PROGRAM,
});

/** Opens one of the two data files. The scenario is lived through into a file beside it and only then takes its name. */
export const openHouse = async (
  which: About,
  chosen: Chosen,
  today: () => Day,
  clock: () => Instant,
): Promise<Opened> => {
  const path = dataFile(chosen.folder, which);
  if (which === 'scenario' && !existsSync(path)) {
    const trouble = await makeScenario(path, today());
    if (trouble) return trouble;
  }
  const opened = await openLogStore({ file: { path }, clock, about: which });
  if (opened.kind !== 'opened') return { kind: 'trouble', problem: opened.problem };
  const { store } = opened;
  return {
    kind: 'open',
    house: {
      workplace: workplaceOn(store, today),
      snapshot: snapshotReader(store.facts, today),
      backUp: () => store.backUpTo(join(chosen.folder, backupName(which))),
    },
  };
};

const backupName = (which: About): string => `backup-${which}-${now().slice(0, 19).replace(/[:T]/g, '-')}.sqlite`;

/** What day it is, and what time: a chosen day keeps the hour. */
export const timeFor = (which: About, chosen: Chosen): { readonly today: () => Day; readonly clock: () => Instant } => {
  const fixed = chosen.today === null ? (which === 'scenario' ? SCENARIO_TODAY : null) : isoOfDay(chosen.today);
  if (fixed === null) return { today: localToday, clock: now };
  const day = chosen.today ?? isoDay(fixed);
  return { today: () => day, clock: nowOn(fixed) };
};

const makeScenario = async (path: string, today: Day): Promise<Opened | null> => {
  const unfinished = `${path}.unfinished`;
  for (const journal of ['', '-wal', '-shm']) rmSync(unfinished + journal, { force: true });
  const trouble = await fillWithScenario(unfinished, today);
  if (trouble) return { kind: 'trouble', problem: trouble };
  renameSync(unfinished, path);
  return null;
};
