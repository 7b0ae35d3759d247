import { expect, test } from 'vitest';
import { COMMANDS } from './commands.ts';
import { FILES, world } from './invented-world.setup.ts';
import { runCommand } from './run-command.ts';

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
  const { kind, says } = await runCommand(COMMANDS, typed('--days', '3', '--answers', 'answers.json'), world());
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
  expect(says).toContain('CARDS of Birte Okonkwo, Tern 4: FD 2 (2031-05-06) to FD 4 (2031-05-08).');
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
