import { instant } from '#domain/identity.ts';
import { isoDay } from '#units/day.ts';
import { openLogStore } from '#storage/open-log-store.ts';
import type { World } from './command.ts';

/** Tables as a stranger would have them, and a world that holds nothing but them. */
export const FILES: Readonly<Record<string, string>> = {
  'missions.csv': 'Mission,Site,Launch,Landing\nTern 4,Aboard,2031-05-05,2031-10-20\n',
  'people.csv':
    '\uFEFFName;Sex;Birth date;Date;Stature (cm);Body mass (kg);Training age (years);Mission;Role\n' +
    'Birte Økonkwo;female;1994-02-11;2031-04-14;172;71,5;6;Tern 4;prime\n' +
    'Sami Lindgren;male;1990-07-30;2031-04-14;181;84,2;10;Tern 4;prime\n',
  'tests.csv':
    'Strength tests, spring,,,,\n,,,,,\n' +
    'Name,Date,Back squat 5RM (lb),Deadlift 5RM (kg),Bench press 5RM (kg),Heel raise 12RM (kg)\n' +
    'Birte Økonkwo,2031-04-14,225,112.5,55,95\n' +
    'Sami Lindgren,2031-04-14,285,150,85,120\n' +
    'Average,,255,131,70,107\n',
  'answers.json': '{"machine of the table": "ground-free-bar"}',
};

export const world = (files: Readonly<Record<string, string>> = FILES): World => {
  let ids = 0;
  const never = (): never => {
    throw new Error('This command has no business there.');
  };
  return {
    readFile: (path) => {
      const text = files[path];
      return Promise.resolve(
        text === undefined
          ? { kind: 'unreadable', says: `${path} is not there.` }
          : { kind: 'file', bytes: new TextEncoder().encode(text) },
      );
    },
    writeFile: never,
    openInMemory: async (today) => {
      const clock = () => instant('2031-05-03T09:00:00.000Z');
      const opened = await openLogStore({ file: 'memory', clock, about: 'own' });
      if (opened.kind !== 'opened') return { kind: 'trouble', problem: opened.problem };
      const workplace = {
        store: opened.store,
        today: () => today ?? isoDay('2031-05-03'),
        newId: () => `id-${(ids += 1)}`,
        program: 'Ballast, in a test',
      };
      return { kind: 'open', keeping: { workplace, backUp: never } };
    },
    openData: never,
    restore: never,
    madeAt: never,
  };
};
