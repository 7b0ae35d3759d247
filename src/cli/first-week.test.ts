import { expect, test } from 'vitest';
import { instant } from '#domain/identity.ts';
import { isoDay } from '#units/day.ts';
import { openLogStore } from '#storage/open-log-store.ts';
import type { World } from './command.ts';
import { COMMANDS } from './commands.ts';
import { runCommand } from './run-command.ts';

const FILES: Readonly<Record<string, string>> = {
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

const world = (files: Readonly<Record<string, string>> = FILES): World => {
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

const USUAL = {
  missions: 'missions.csv',
  people: 'people.csv',
  tests: 'tests.csv',
  person: 'birte økonkwo',
  signer: 'Hanne Visser',
  today: '2031-05-03',
};

const typed = (...more: readonly string[]): readonly string[] => [
  'first-week',
  ...Object.entries(USUAL).flatMap(([name, value]) => [`--${name}`, value]),
  ...more,
];

test('tables of a stranger come out as signed cards, by way of capacity and crossing', async () => {
  const { kind, says } = await runCommand(COMMANDS, typed('--answers', 'answers.json'), world());
  expect({ kind, says }).toMatchObject({ kind: 'done' });
  // Five repetitions of 225 lb (102.1 kg) lie between Brzycki's and Epley's 1RM: 114.8 and 119.1 kg.
  const squat = Number(/Back squat: 1RM ([\d.]+) kg/.exec(says)?.[1]);
  expect(squat).toBeGreaterThan(114.7);
  expect(squat).toBeLessThan(119.2);
  // The sum stands in the open: bar and body weight added back make the target.
  const [, bar, added, target] =
    /Deadlift: bar ([\d.]+) kg .* body weight ([\d.]+) kg .* = ([\d.]+) kg/.exec(says) ?? [];
  expect(Number(bar) + Number(added)).toBeCloseTo(Number(target), 0);
  expect(says).toContain('Back squat: 225 lb, first load');
  expect(says).toContain('CARDS of Birte Okonkwo, Tern 4: FD 4 (2031-05-08) to FD 8 (2031-05-12).');
  expect(says.match(/^== FD \d+ .* Code [0-9A-Z]{4}-[0-9A-Z]{4}\./gm)).toHaveLength(3);
});

test('what the file does not say is asked, and nothing is guessed', async () => {
  const { kind, says } = await runCommand(COMMANDS, typed(), world());
  expect(kind).toBe('failed');
  expect(says).toContain('Question "machine of the table"');
  expect(says).toContain('Nothing was recorded.');
  expect(says).not.toContain('CARDS of');
});

test('a file that is wrong is refused with its place, and one that is missing by its name', async () => {
  const tests = `${FILES['tests.csv']}Sami Lindgren,2031-02-31,285,NaN,85,120\n`;
  const wrong = await runCommand(COMMANDS, typed('--answers', 'answers.json'), world({ ...FILES, 'tests.csv': tests }));
  expect(wrong.kind).toBe('failed');
  expect(wrong.says).toMatch(/Refused, row 7, column B/);
  expect(wrong.says).toMatch(/Refused, row 7, column D/);
  const missing = await runCommand(COMMANDS, typed('--answers', 'none.json'), world());
  expect(missing).toEqual({ kind: 'failed', says: 'none.json is not there.' });
});

test('a mistyped command line is told with the help of its command', async () => {
  const unknown = await runCommand(COMMANDS, typed('--colour', 'red'), world());
  expect(unknown.kind).toBe('failed');
  expect(unknown.says).toContain('--answers FILE');
  const missing = await runCommand(COMMANDS, ['first-week', '--people', 'people.csv'], world());
  expect(missing.says).toContain('Missing: --tests, --person, --signer, --today.');
  expect((await runCommand(COMMANDS, ['firstweek'], world())).says).toContain('bring-in');
});

test.each(COMMANDS.map((command) => ({ command })))('help of $command.name names every option', async ({ command }) => {
  const { kind, says } = await runCommand(COMMANDS, ['help', command.name], world());
  expect(kind).toBe('done');
  for (const { name } of command.options) expect(says).toContain(`--${name}`);
});
