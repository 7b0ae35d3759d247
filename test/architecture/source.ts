import { readFileSync, readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Visitor, parseSync, type ESTree, type VisitorObject } from 'vite';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** A file of the project: its path from the root with forward slashes, and its text. */
export interface Source {
  readonly path: string;
  readonly text: string;
}

/** The files under some folders whose name ends as asked, in a fixed order. */
export const sourcesIn = (folders: readonly string[], ending: RegExp): readonly Source[] =>
  folders
    .flatMap((folder) => readdirSync(join(ROOT, folder), { withFileTypes: true, recursive: true }))
    .filter((entry) => entry.isFile() && ending.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((file) => ({ path: relative(ROOT, file).split(sep).join('/'), text: readFileSync(file, 'utf8') }));

export const isTest = ({ path }: Source): boolean => /\.(test|bench|setup)\.tsx?$/.test(path);

/** The first folder under src, or '' elsewhere. */
export const layerOf = (path: string): string => /^src\/([^/]+)\//.exec(path)?.[1] ?? '';

interface Parsed {
  readonly text: string;
  readonly program: ESTree.Program;
}

/** By path: several tests read the same file, and each of them asks for its syntax many times. */
const parsed = new Map<string, Parsed>();

/** The syntax of a file. */
export const programOf = ({ path, text }: Source): ESTree.Program => {
  const known = parsed.get(path);
  if (known?.text === text) return known.program;
  const { program, errors } = parseSync(path, text);
  const [first] = errors;
  if (first) throw new SyntaxError(`${path}: ${first.message}`);
  parsed.set(path, { text, program });
  return program;
};

/** Calls the visitor for every node of a file's syntax. */
export const visit = (source: Source, visitor: VisitorObject): void => new Visitor(visitor).visit(programOf(source));

/** The line, counted from one, on which a character stands. */
export const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;
