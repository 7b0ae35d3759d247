import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';

/** What the browser fetches before the first page stands, compressed; pages that need more load it themselves. */
const MOST_KILOBYTES = 300;
const BYTES_PER_KILOBYTE = 1000;

interface Chunk {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly imports?: readonly string[];
  readonly css?: readonly string[];
}

const WEB = new URL('../../dist/web/', import.meta.url);
const manifest = JSON.parse(readFileSync(new URL('.vite/manifest.json', WEB), 'utf8')) as Readonly<
  Record<string, Chunk>
>;

/** A chunk with all that it imports, each once. */
const withImports = (key: string, seen = new Set<string>()): ReadonlySet<string> => {
  if (seen.has(key)) return seen;
  seen.add(key);
  for (const next of manifest[key]?.imports ?? []) withImports(next, seen);
  return seen;
};

test(`the first page weighs at most ${MOST_KILOBYTES} kB`, () => {
  const entries = Object.keys(manifest).filter((key) => manifest[key]?.isEntry);
  expect(entries).toHaveLength(1);
  const chunks = [...withImports(entries[0] ?? '')].map((key) => manifest[key]);
  const files = new Set(chunks.flatMap((chunk) => (chunk ? [chunk.file, ...(chunk.css ?? [])] : [])));
  const weight = [...files].reduce((sum, file) => sum + gzipSync(readFileSync(new URL(file, WEB))).length, 0);
  expect(weight / BYTES_PER_KILOBYTE).toBeLessThanOrEqual(MOST_KILOBYTES);
});
