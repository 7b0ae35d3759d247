import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { dataFile, dataFolder, prepareDataFolder, type Surroundings } from './data-folder.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ballast-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const on = (platform: NodeJS.Platform, environment: Surroundings['environment'] = {}): Surroundings => ({
  platform,
  environment,
  home: join('/', 'home', 'ingrid'),
  workingFolder: join('/', 'srv', 'work'),
});

test.each([
  { where: on('linux'), expected: ['home', 'ingrid', '.local', 'share', 'ballast'] },
  { where: on('linux', { XDG_DATA_HOME: '/srv/kept' }), expected: ['srv', 'kept', 'ballast'] },
  { where: on('linux', { XDG_DATA_HOME: 'kept' }), expected: ['home', 'ingrid', '.local', 'share', 'ballast'] },
  { where: on('linux', { XDG_DATA_HOME: '' }), expected: ['home', 'ingrid', '.local', 'share', 'ballast'] },
  { where: on('darwin'), expected: ['home', 'ingrid', 'Library', 'Application Support', 'Ballast'] },
  { where: on('win32', { LOCALAPPDATA: '/local' }), expected: ['local', 'Ballast'] },
  { where: on('win32'), expected: ['home', 'ingrid', 'AppData', 'Local', 'Ballast'] },
])('$where.platform with $where.environment keeps data in $expected', ({ where, expected }) => {
  expect(dataFolder(null, where)).toBe(join('/', ...expected));
});

test('a folder that is named is taken from where the command was typed', () => {
  expect(dataFolder('trial', on('linux', { XDG_DATA_HOME: '/srv/kept' }))).toBe(join('/', 'srv', 'work', 'trial'));
  expect(dataFolder('/srv/kept', on('linux'))).toBe('/srv/kept');
});

test('the scenario and the real people have files of their own', () => {
  expect(dataFile('/srv/kept', 'own')).toBe(join('/srv/kept', 'ballast.sqlite'));
  expect(dataFile('/srv/kept', 'scenario')).toBe(join('/srv/kept', 'invented-scenario.sqlite'));
});

test('a missing folder is made for the owner alone', () => {
  const inside = join(folder, 'a', 'b');
  expect(prepareDataFolder(inside)).toEqual({ kind: 'ready', folder: inside });
  expect(statSync(inside).mode & 0o777).toBe(0o700);
});

test('a folder under a file is refused in one sentence with a way out', () => {
  const file = join(folder, 'file');
  writeFileSync(file, '');
  const report = prepareDataFolder(join(file, 'inside'));
  expect(report).toMatchObject({
    kind: 'not writable',
    says: expect.stringContaining('name another with --data.') as string,
  });
});
