import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT } from './architecture/source.ts';
import { anchorsOf, deadLinks, documents, linksOf, scriptsNamedIn } from './documents/document.ts';

const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
  readonly scripts: Readonly<Record<string, string>>;
};

test('every link and picture of the documents is there', () => {
  expect(documents().flatMap(deadLinks)).toEqual([]);
});

test('every command the documents name exists', () => {
  const unknown = documents().flatMap((document) =>
    scriptsNamedIn(document)
      .filter((script) => !Object.hasOwn(scripts, script))
      .map((script) => `${document.path} names npm run ${script}, which is not in the package file.`),
  );
  expect(unknown).toEqual([]);
});

test('dead links, headings and commands are found', () => {
  const text =
    '# A day\n\n[a](nowhere.md) [b](#a-day) [c](#another) ![d](https://example.org/x.png)\n`[e](f)` npm run fly';
  const document = { path: 'README.md', text };
  expect(linksOf(document)).toEqual(['nowhere.md', '#a-day', '#another']);
  expect(deadLinks(document)).toEqual([
    'README.md links to nowhere.md, which is not there.',
    'README.md links to #another, where there is no such heading.',
  ]);
  expect(scriptsNamedIn(document)).toEqual(['fly']);
  expect(anchorsOf('## Bring in: a file (CSV)')).toEqual(['bring-in-a-file-csv']);
});
