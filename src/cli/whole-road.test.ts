import { expect, test } from 'vitest';
import { COMMANDS } from './commands.ts';
import { FILES, world } from './invented-world.setup.ts';
import { runCommand } from './run-command.ts';

const typed = (today: string): readonly string[] =>
  [
    'whole-road --missions missions.csv --people people.csv --tests tests.csv --answers answers.json'.split(' '),
    ['--person', 'birte økonkwo', '--signer', 'Hanne Visser', '--today', today],
  ].flat();

/** Two tests, a good two years before launch. */
const EARLY = {
  ...FILES,
  'people.csv': (FILES['people.csv'] ?? '').replaceAll('2031-04-14', '2029-04-14'),
  'tests.csv': (FILES['tests.csv'] ?? '').replaceAll('2031-04-14', '2029-04-14'),
};

test('two tests of a stranger become a road of two and a half years and a signed first week', async () => {
  const { kind, says } = await runCommand(COMMANDS, typed('2029-05-07'), world(EARLY));
  expect({ kind, says }).toMatchObject({ kind: 'done' });
  const [, weeks] = /^Road of Birte Økonkwo, .*: (\d+) weeks,/m.exec(says) ?? [];
  expect(Number(weeks)).toBeGreaterThan(2.4 * 52);
  for (const phase of ['general preparation', 'flight-specific preparation', 'taper', 'quarantine'])
    expect(says).toContain(phase);
  expect(says).toMatch(/L−21 \(2031-04-14\): last before launch, ahead/);
  expect(says).toMatch(/^CARDS of Birte Okonkwo, Tern 4: L-728 \(2029-05-07\)/m);
  expect(says.match(/^== .* [0-9A-Z]{4}-[0-9A-Z]{4}, \d+\/\d+ min/gm)?.length).toBeGreaterThanOrEqual(3);
});

test('whoever has no mission has no road, and that is said', async () => {
  const people = (EARLY['people.csv'] ?? '').replaceAll(';Tern 4;prime', ';;');
  const { kind, says } = await runCommand(COMMANDS, typed('2029-05-07'), world({ ...EARLY, 'people.csv': people }));
  expect(kind).toBe('failed');
  expect(says).toContain('has no mission');
});
