import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { ROOT } from '../architecture/source.ts';

/** A document of the project: its path from the root, and its text. */
export interface Document {
  readonly path: string;
  readonly text: string;
}

const markdownIn = (folder: string, recursive: boolean): readonly string[] =>
  existsSync(folder)
    ? readdirSync(folder, { withFileTypes: true, recursive })
        .filter((entry) => entry.isFile() && entry.name.endsWith('.md'))
        .map((entry) => join(entry.parentPath, entry.name))
    : [];

/** The documents a reader is meant to read. */
export const documents = (): readonly Document[] =>
  [...markdownIn(ROOT, false), ...markdownIn(join(ROOT, 'docs'), true)]
    .sort()
    .map((file) => ({ path: relative(ROOT, file), text: readFileSync(file, 'utf8') }));

const withoutCode = (text: string): string => text.replace(/^```[\s\S]*?^```/gm, '').replace(/`[^`\n]*`/g, '');

/** Where the links and pictures of a document lead, without those to other sites. */
export const linksOf = ({ text }: Document): readonly string[] =>
  [...withoutCode(text).matchAll(/\]\(([^)\s]+)(?:\s+"[^"]*")?\)/g)]
    .map(([, target]) => target ?? '')
    .filter((target) => !/^[a-z]+:/.test(target));

/** The anchors that the headings of a document make. */
export const anchorsOf = (text: string): readonly string[] =>
  [...text.replace(/^```[\s\S]*?^```/gm, '').matchAll(/^#{1,6}\s+(.+)$/gm)].map(([, heading]) =>
    (heading ?? '')
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s-]/gu, '')
      .trim()
      .replace(/\s/g, '-'),
  );

/** Links that lead nowhere, each as a sentence. */
export const deadLinks = (document: Document): readonly string[] =>
  linksOf(document).flatMap((link) => {
    const [file = '', anchor] = link.split('#');
    const target = join(ROOT, dirname(document.path), decodeURI(file));
    if (file !== '' && !existsSync(target)) return [`${document.path} links to ${link}, which is not there.`];
    if (anchor === undefined) return [];
    const text = file === '' ? document.text : readFileSync(target, 'utf8');
    return anchorsOf(text).includes(anchor)
      ? []
      : [`${document.path} links to ${link}, where there is no such heading.`];
  });

/** The scripts of the package that a document tells its reader to run. */
export const scriptsNamedIn = ({ text }: Document): readonly string[] => [
  ...new Set([...text.matchAll(/\bnpm (?:run ([a-z-]+)|(start|test))\b/g)].map(([, run, short]) => run ?? short ?? '')),
];
