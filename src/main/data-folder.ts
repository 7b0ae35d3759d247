import { isAbsolute, join, resolve } from 'node:path';
import { preparePrivateFolder } from '#storage/private-folder.ts';

/** What of its surroundings the choice of the data folder depends on. */
export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly home: string;
  readonly workingFolder: string;
}

/**
 * Where the data files live: the folder named by `--data`, else where this system keeps a user's data. On Linux and
 * other free systems after the XDG base directory specification 0.8, by which a relative path is no path.
 */
export const dataFolder = (chosen: string | null, surroundings: Surroundings): string =>
  chosen === null ? usualFolder(surroundings) : resolve(surroundings.workingFolder, chosen);

const usualFolder = ({ platform, environment, home }: Surroundings): string => {
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Ballast');
  if (platform === 'win32') return join(environment['LOCALAPPDATA'] ?? join(home, 'AppData', 'Local'), 'Ballast');
  const named = environment['XDG_DATA_HOME'];
  return join(named !== undefined && isAbsolute(named) ? named : join(home, '.local', 'share'), 'ballast');
};

const FILE_NAMES = { own: 'ballast.sqlite', scenario: 'invented-scenario.sqlite' } as const;

/** The two data files. The invented scenario and real people never share one. */
export const dataFile = (folder: string, kind: 'own' | 'scenario'): string => join(folder, FILE_NAMES[kind]);

export type FolderReport =
  { readonly kind: 'ready'; readonly folder: string } | { readonly kind: 'not writable'; readonly says: string };

/** Makes the folder where it is missing; where it cannot be made, one sentence for the terminal. */
export const prepareDataFolder = (folder: string): FolderReport => {
  const prepared = preparePrivateFolder(folder);
  return prepared.kind === 'ready'
    ? { kind: 'ready', folder }
    : {
        kind: 'not writable',
        says: `The data folder ${folder} cannot be used (${prepared.says}); name another with --data.`,
      };
};
