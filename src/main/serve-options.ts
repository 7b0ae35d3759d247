import { parseArgs } from 'node:util';
import { dayFromIso, type Day } from '#units/day.ts';
import type { About } from '#server/serving.ts';

export interface ServeOptions {
  /** What to open at once; null: the first page asks. */
  readonly which: About | null;
  readonly folder: string | null;
  readonly port: number;
  readonly mayOpenBrowser: boolean;
  readonly today: Day | null;
}

export type OptionsReading =
  { readonly kind: 'options'; readonly options: ServeOptions } | { readonly kind: 'wrong'; readonly says: string };

const USUAL_PORT = 4790;
const LAST_PORT = 65_535;

const USAGE =
  'Usage: npm start -- [--scenario | --empty] [--data FOLDER] [--port NUMBER] [--no-open] [--today YYYY-MM-DD]';

const wrong = (says: string): OptionsReading => ({ kind: 'wrong', says: `${says} ${USAGE}` });

export const readServeOptions = (given: readonly string[]): OptionsReading => {
  const values = parsed(given);
  if (typeof values === 'string') return wrong(values);
  const port = values.port === undefined ? USUAL_PORT : Number(values.port);
  const today = values.today === undefined ? null : dayFromIso(values.today);
  if (values.scenario && values.empty) return wrong('Either --scenario or --empty, not both.');
  if (!Number.isInteger(port) || port < 0 || port > LAST_PORT)
    return wrong(`"${values.port}" is no port: a whole number up to ${LAST_PORT}.`);
  if (values.today !== undefined && today === null) return wrong(`"${values.today}" is no day such as 2027-03-01.`);
  return {
    kind: 'options',
    options: {
      which: values.scenario ? 'scenario' : values.empty ? 'own' : null,
      folder: values.data ?? null,
      port,
      mayOpenBrowser: !values['no-open'],
      today,
    },
  };
};

const parsed = (given: readonly string[]) => {
  try {
    return parseArgs({
      args: [...given],
      options: {
        scenario: { type: 'boolean' },
        empty: { type: 'boolean' },
        data: { type: 'string' },
        port: { type: 'string' },
        'no-open': { type: 'boolean' },
        today: { type: 'string' },
      },
    }).values;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
};
