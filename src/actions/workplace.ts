import type { Day } from '#units/day.ts';
import type { LogStore } from '#storage/log-store.ts';

/** Where an action takes place: the log, today, and who makes new identities. Clock and chance come from outside. */
export interface Workplace {
  readonly store: LogStore;
  readonly today: () => Day;
  readonly newId: () => string;
  /** Name and version of the program, printed into issued documents. */
  readonly program: string;
}
