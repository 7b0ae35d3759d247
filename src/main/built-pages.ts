import { readdirSync, readFileSync, statSync } from 'node:fs';
import { extname, join } from 'node:path';
import type { Asset } from '#server/serving.ts';
import { inProject } from './program.ts';

const WEB = inProject('dist/web');

const TYPES: Readonly<Record<string, string>> = {
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.webmanifest': 'application/manifest+json',
};

/** Addresses of the built files. Only what is listed here can be asked for: no address climbs out of the folder. */
const listed = (): ReadonlyMap<string, string> => {
  try {
    return new Map(
      readdirSync(WEB, { recursive: true, encoding: 'utf8' })
        .filter((path) => TYPES[extname(path)] !== undefined && statSync(join(WEB, path)).isFile())
        .map((path) => [`/${path.replaceAll('\\', '/')}`, join(WEB, path)]),
    );
  } catch {
    return new Map();
  }
};

export interface BuiltPages {
  readonly page: () => string | null;
  readonly asset: (path: string) => Asset | null;
}

/** The pages as they were built, read once. */
export const builtPages = (): BuiltPages => {
  const files = listed();
  const kept = new Map<string, Asset>();
  const page = readPage();
  return {
    page: () => page,
    asset: (path) => {
      const file = files.get(path);
      if (!file) return null;
      const found = kept.get(path) ?? {
        bytes: new Uint8Array(readFileSync(file)),
        type: TYPES[extname(file)] ?? 'application/octet-stream',
      };
      kept.set(path, found);
      return found;
    },
  };
};

const readPage = (): string | null => {
  try {
    return readFileSync(join(WEB, 'index.html'), 'utf8');
  } catch {
    return null;
  }
};
