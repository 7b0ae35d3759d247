import { posix } from 'node:path';
import {
  ENVIRONMENT_MODULES,
  FILE_MODULES,
  IMPORT_TABLE,
  MAY_IMPORT_SCIENCE_TOO,
  type Allowed,
} from './import-table.ts';
import { layerOf, visit, type Source } from './source.ts';

/** Everything a file imports or re-exports, types included, as it is written. */
export const importsOf = (source: Source): readonly string[] => {
  const found: string[] = [];
  const take = (node: { readonly type: string } | null): void => {
    if (node && 'value' in node && typeof node.value === 'string') found.push(node.value);
  };
  visit(source, {
    ImportDeclaration: (node) => take(node.source),
    ExportNamedDeclaration: (node) => take(node.source),
    ExportAllDeclaration: (node) => take(node.source),
    ImportExpression: (node) => take(node.source),
    TSImportType: (node) => take(node.source),
  });
  return found;
};

/** Where an import leads: a file of ours from the root, or the name of something from outside. */
const targetOf = (path: string, specifier: string): string => {
  if (specifier.startsWith('#')) return `src/${specifier.slice(1)}`;
  return specifier.startsWith('.') ? posix.join(posix.dirname(path), specifier) : specifier;
};

const short = (path: string): string => path.replace(/^src\//, '');

const packageOf = (specifier: string): string =>
  specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');

const list = (names: readonly string[]): string => (names.length > 0 ? names.join(', ') : 'nothing');

const foldersFor = (path: string, allowed: Allowed): readonly string[] =>
  MAY_IMPORT_SCIENCE_TOO.test(path) ? [...allowed.folders, 'science'] : allowed.folders;

const forbiddenModules = ({ node }: Allowed): readonly string[] => {
  if (node === 'any') return [];
  return node === 'without environment' ? ENVIRONMENT_MODULES : [...FILE_MODULES, ...ENVIRONMENT_MODULES];
};

const complaintAboutModule = (path: string, specifier: string, allowed: Allowed): string | null => {
  const refused = allowed.node === 'none' || forbiddenModules(allowed).includes(specifier);
  return refused
    ? `${short(path)} imports ${specifier}; files, environment and clock are handed to ${layerOf(path)} by main.`
    : null;
};

const complaintAboutPackage = (
  path: string,
  specifier: string,
  allowed: Allowed,
  dependencies: readonly string[],
): string | null => {
  const may = allowed.packages === 'any' ? dependencies : allowed.packages;
  if (may.includes(packageOf(specifier))) return null;
  return allowed.packages === 'any'
    ? `${short(path)} imports ${specifier}, which is no dependency of the package.`
    : `${short(path)} imports ${specifier}; of installed packages ${layerOf(path)} may import ${list(may)}.`;
};

const complaintAboutFolder = (path: string, specifier: string, allowed: Allowed): string | null => {
  const target = targetOf(path, specifier);
  const [from, to] = [layerOf(path), layerOf(target)];
  if (to === from)
    return specifier.startsWith('#') || !/(\.\.\/){3}/.test(specifier)
      ? null
      : `${short(path)} climbs with ${specifier}; write #${short(target)}.`;
  if (!foldersFor(path, allowed).includes(to))
    return `${short(path)} imports ${short(target)}; ${from} may import ${list(foldersFor(path, allowed))}.`;
  return specifier.startsWith('#')
    ? null
    : `${short(path)} reaches another folder by ${specifier}; write #${short(target)}.`;
};

const complaintAbout = (path: string, specifier: string, dependencies: readonly string[]): string | null => {
  const allowed = IMPORT_TABLE[layerOf(path)];
  if (!allowed) return `${short(path)} stands in no folder of the import table.`;
  if (/^[#.]/.test(specifier)) return complaintAboutFolder(path, specifier, allowed);
  if (specifier.startsWith('node:')) return complaintAboutModule(path, specifier, allowed);
  return complaintAboutPackage(path, specifier, allowed, dependencies);
};

/** What is wrong with the imports of a file, each as a sentence. */
export const importComplaints = (source: Source, dependencies: readonly string[]): readonly string[] =>
  importsOf(source)
    .map((specifier) => complaintAbout(source.path, specifier, dependencies))
    .filter((complaint) => complaint !== null);
