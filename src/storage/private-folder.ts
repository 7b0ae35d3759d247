import { chmodSync, closeSync, mkdirSync, openSync } from 'node:fs';
import { messageOf, propertyOf } from './engine.ts';

/** Nobody but the owner reads what is kept here. */
const FOLDER_MODE = 0o700;
const FILE_MODE = 0o600;

export type Prepared = { readonly kind: 'ready' } | { readonly kind: 'not writable'; readonly says: string };

const attempt = (work: () => void): Prepared => {
  try {
    work();
    return { kind: 'ready' };
  } catch (error) {
    return { kind: 'not writable', says: messageOf(error) };
  }
};

/** Makes a folder, and those above it, where they are missing. A folder that is there is left as it is. */
export const preparePrivateFolder = (path: string): Prepared =>
  attempt(() => void mkdirSync(path, { recursive: true, mode: FOLDER_MODE }));

/** Makes an empty file for the owner alone, or takes others' rights from one that is there. It is never opened twice. */
export const preparePrivateFile = (path: string): Prepared =>
  attempt(() => {
    try {
      closeSync(openSync(path, 'wx', FILE_MODE));
    } catch (error) {
      if (propertyOf(error, 'code') !== 'EEXIST') throw error;
      chmodSync(path, FILE_MODE);
    }
  });
