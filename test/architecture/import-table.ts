/** What a folder under src may import beside its own files. */
export interface Allowed {
  readonly folders: readonly string[];
  /** Installed packages by name; 'any' is every dependency of the package file. */
  readonly packages: readonly string[] | 'any';
  /** Modules of Node itself. */
  readonly node: 'none' | 'without files and environment' | 'without environment' | 'any';
}

const PURE = ['units', 'science', 'domain', 'shipped', 'assessing', 'planning', 'following', 'scenario'];
const BELOW_SERVER = [...PURE, 'contract', 'storage', 'interchange', 'actions'];

const pure = (folders: readonly string[], packages: readonly string[] = []): Allowed => ({
  folders,
  packages,
  node: 'none',
});

/** The house, from the ground up: a folder knows only what stands under it. */
export const IMPORT_TABLE: Readonly<Record<string, Allowed>> = {
  units: pure([]),
  science: pure(['units']),
  domain: pure(['units'], ['@noble/hashes', 'canonicalize']),
  shipped: pure(['domain', 'units']),
  assessing: pure(['domain', 'science', 'units']),
  planning: pure(['assessing', 'domain', 'science', 'units']),
  following: pure(['planning', 'assessing', 'domain', 'science', 'units']),
  scenario: pure(['shipped', 'domain', 'units']),
  contract: pure(['domain', 'units'], ['zod']),
  storage: { folders: ['contract', 'domain', 'units'], packages: 'any', node: 'without environment' },
  interchange: { folders: ['contract', 'domain', 'units'], packages: 'any', node: 'without files and environment' },
  actions: {
    folders: [...PURE, 'contract', 'storage', 'interchange'],
    packages: 'any',
    node: 'without files and environment',
  },
  server: { folders: BELOW_SERVER, packages: 'any', node: 'without files and environment' },
  cli: { folders: BELOW_SERVER, packages: 'any', node: 'without files and environment' },
  web: { folders: ['contract', 'domain', 'units'], packages: 'any', node: 'none' },
  main: { folders: [...BELOW_SERVER, 'server', 'cli', 'web'], packages: 'any', node: 'any' },
};

/** The two places of the pages that recompute formulas before the reader's eyes. */
export const MAY_IMPORT_SCIENCE_TOO = /^src\/web\/(.*\/)?(evidence|body-figure)[^/]*(\/|\.tsx?$)/;

/** Folders that compile without a browser and without Node. */
export const PURE_FOLDERS: readonly string[] = PURE;

export const FILE_MODULES: readonly string[] = ['node:fs', 'node:fs/promises'];
export const ENVIRONMENT_MODULES: readonly string[] = [
  'node:process',
  'node:os',
  'node:child_process',
  'node:readline',
  'node:readline/promises',
];
