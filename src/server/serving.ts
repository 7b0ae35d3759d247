import type { Instant } from '#domain/identity.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import type { Workplace } from '#actions/workplace.ts';
import type { Problem } from '#contract/problem.ts';
import type { BackupReport } from '#storage/backup.ts';

export type About = 'scenario' | 'own';

/** A log that is open, with what is worked out from it. */
export interface OpenHouse {
  readonly workplace: Workplace;
  readonly snapshot: () => Snapshot;
  /** Writes a verified copy beside the data; the name is made by whoever knows the folder. */
  readonly backUp: () => Promise<BackupReport>;
}

/** What became of opening a data file. */
export type Opened =
  { readonly kind: 'open'; readonly house: OpenHouse } | { readonly kind: 'trouble'; readonly problem: Problem };

/** Files as they were built, handed over by whoever may read them. */
export interface Asset {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly type: string;
}

/** Everything that the server is handed: it takes no clock, chance, file or environment by itself. */
export interface Surroundings {
  readonly clock: () => Instant;
  /** Text that nobody can guess. */
  readonly newSecret: () => string;
  /** Such as http://127.0.0.1:4790; asked at each request, since the port is known only when the server listens. */
  readonly origin: () => string;
  /** Of this data folder: two programs on one machine do not take each other's cookie. */
  readonly cookieName: string;
  readonly existing: () => readonly About[];
  /** Opens a data file and makes it where there is none; the scenario is filled with what was lived through. */
  readonly open: (which: About) => Promise<Opened>;
  /** Lets a second start of the program ask the first for an address. */
  readonly startSecret: string;
  readonly page: () => string | null;
  readonly asset: (path: string) => Asset | null;
  /** Where faults are told. Never given what somebody typed. */
  readonly complain: (says: string) => void;
}

/** What the routes share. */
export interface Serving {
  readonly surroundings: Surroundings;
  readonly house: () => OpenHouse | null;
  readonly openHouse: (which: About) => Promise<Opened>;
}
