import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { importComplaints } from './architecture/imports.ts';
import { IMPORT_TABLE } from './architecture/import-table.ts';
import { nameComplaints } from './architecture/names.ts';
import { outsideComplaints } from './architecture/outside.ts';
import { purityComplaints } from './architecture/purity.ts';
import { ROOT, isTest, layerOf, sourcesIn, type Source } from './architecture/source.ts';

const PROGRAM = /\.(tsx?|mjs)$/;
const ours = sourcesIn(['src'], PROGRAM);
const ship = ours.filter((source) => !isTest(source));
const everything = sourcesIn(['src', 'test', 'bench', 'scripts'], PROGRAM);

const { dependencies } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
  readonly dependencies: Readonly<Record<string, string>>;
};

test('a folder imports only what stands under it', () => {
  expect(ship.flatMap((source) => importComplaints(source, Object.keys(dependencies)))).toEqual([]);
});

test('clock, chance, environment and printer are taken by main alone', () => {
  expect(ours.flatMap(purityComplaints)).toEqual([]);
});

test('names say what a thing is', () => {
  expect([...everything, ...sourcesIn(['src'], /\.(css|html)$/)].flatMap(nameComplaints)).toEqual([]);
});

test('nothing outside the project is named', () => {
  expect(everything.flatMap(outsideComplaints)).toEqual([]);
});

test('every folder of the sources is in the import table, and the table goes only upwards', () => {
  const folders = new Set(ours.map(({ path }) => layerOf(path)));
  expect([...folders].filter((folder) => !Object.hasOwn(IMPORT_TABLE, folder))).toEqual([]);
  for (const [folder, { folders: under }] of Object.entries(IMPORT_TABLE))
    for (const lower of under) expect(IMPORT_TABLE[lower]?.folders, `${folder} and ${lower}`).not.toContain(folder);
});

const seeded = (path: string, text: string): Source => ({ path, text });

test.each([
  {
    source: seeded('src/planning/derive.ts', "import { log } from '#storage/log.ts';"),
    says: 'planning/derive.ts imports storage/log.ts; planning may import assessing, domain, science, units.',
  },
  {
    source: seeded('src/units/mass.ts', "import type { Fact } from '#domain/fact.ts';"),
    says: 'units/mass.ts imports domain/fact.ts; units may import nothing.',
  },
  {
    source: seeded('src/science/a.ts', "export { b } from '../units/b.ts';"),
    says: 'science/a.ts reaches another folder by ../units/b.ts; write #units/b.ts.',
  },
  {
    source: seeded('src/science/a.ts', "const { z } = await import('zod');"),
    says: 'science/a.ts imports zod; of installed packages science may import nothing.',
  },
  {
    source: seeded('src/web/sheet/sheet.tsx', "type F = import('#science/formula.ts').Check;"),
    says: 'web/sheet/sheet.tsx imports science/formula.ts; web may import contract, domain, units.',
  },
  {
    source: seeded('src/server/app.ts', "import { readFileSync } from 'node:fs';"),
    says: 'server/app.ts imports node:fs; files, environment and clock are handed to server by main.',
  },
  {
    source: seeded('src/storage/a.ts', "import left from 'left-pad';"),
    says: 'storage/a.ts imports left-pad, which is no dependency of the package.',
  },
  {
    source: seeded('src/oddments/a.ts', "import './b.ts';"),
    says: 'oddments/a.ts stands in no folder of the import table.',
  },
])('a breach is told in a sentence: $says', ({ source, says }) => {
  expect(importComplaints(source, Object.keys(dependencies))).toEqual([says]);
});

test.each([
  { path: 'src/web/evidence/evidence.tsx', imports: '#science/formula.ts' },
  { path: 'src/web/body-figure/posture.ts', imports: '#science/formula.ts' },
  { path: 'src/web/crossing/body-figure.tsx', imports: '#science/formula.ts' },
  { path: 'src/storage/backup.ts', imports: 'node:fs' },
  { path: 'src/domain/digest.ts', imports: '@noble/hashes/sha2.js' },
  { path: 'src/main/serve.ts', imports: '#server/app.ts' },
])('$path may import $imports', ({ path, imports }) => {
  expect(importComplaints(seeded(path, `import '${imports}';`), Object.keys(dependencies))).toEqual([]);
});

test.each([
  { text: 'const t = Date.now();', says: 'src/science/a.ts:1 uses Date.now; the clock is an argument.' },
  { text: '\nconst t = new Date();', says: 'src/science/a.ts:2 uses new Date(); the clock is an argument.' },
  { text: 'const t = Date();', says: 'src/science/a.ts:1 uses Date(); the clock is an argument.' },
  { text: 'const r = Math.random();', says: 'src/science/a.ts:1 uses Math.random; chance is an argument.' },
  { text: 'console.log(1);', says: 'src/science/a.ts:1 uses console; printing is handed over by main.' },
  {
    text: 'const { env } = process;',
    says: 'src/science/a.ts:1 uses process; environment and arguments are handed over by main.',
  },
  { text: 'fetch("/");', says: 'src/science/a.ts:1 uses fetch; a pure folder reaches no network.' },
])('$text in a pure folder is told', ({ text, says }) => {
  expect(purityComplaints(seeded('src/science/a.ts', text))).toEqual([says]);
});

test('a date made of a number, and a clock in main, are no breach', () => {
  expect(purityComplaints(seeded('src/units/day.ts', 'const d = new Date(0); d.getTime();'))).toEqual([]);
  expect(purityComplaints(seeded('src/main/serve.ts', 'const now = () => Date.now();'))).toEqual([]);
  expect(purityComplaints(seeded('src/server/app.ts', 'const now = () => Date.now();'))).toHaveLength(1);
});

test.each([
  { path: 'src/planning/date-utils.ts', text: '', complaints: 1 },
  { path: 'src/helpers/a.ts', text: '', complaints: 1 },
  { path: 'src/domain/data.ts', text: '', complaints: 1 },
  { path: 'src/domain/CardCode.ts', text: '', complaints: 1 },
  { path: 'src/domain/card.ts', text: 'export class CardManager {}', complaints: 1 },
  { path: 'src/domain/card-code.table.ts', text: 'export const serviceLoad = 1;', complaints: 0 },
])('$path with "$text" gets $complaints complaints about names', ({ path, text, complaints }) => {
  expect(nameComplaints(seeded(path, text))).toHaveLength(complaints);
});

test('a file outside the project is found by its absolute path and by climbing', () => {
  const node = JSON.stringify(process.execPath);
  const climbing = JSON.stringify('../'.repeat(40) + process.execPath.replace(/^\/|^[A-Za-z]:[\\/]/, ''));
  expect(outsideComplaints(seeded('test/a.ts', `read(${node});`))).toHaveLength(1);
  expect(outsideComplaints(seeded('test/a.ts', `read(${climbing});`))).toHaveLength(1);
  expect(outsideComplaints(seeded('test/a.ts', "read('../src/units/mass.ts', '/api/windows/desk');"))).toEqual([]);
});
