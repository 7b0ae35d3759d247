import { chmodSync, closeSync, mkdirSync, openSync } from 'node:fs';
import { messageOf, propertyOf } from './engine.ts';

/** Nobody but the owner reads what is kept here. */
const FOLDER_MODE = 0o700;
const FILE_MODE = 0o600;

export type Prepared = { readonly kind: 'ready' } | { readonly kind: 'not writable'; readonly says: string };

/** What the system's codes mean to a person. */
const REASONS: Readonly<Record<string, string>> = {
  EEXIST: 'a part of this path is a file, not a folder',
  ENOTDIR: 'a part of this path is a file, not a folder',
  EACCES: 'you have no right to write there',
  EPERM: 'you have no right to write there',
  EROFS: 'this disk can only be read',
  ENOSPC: 'the disk is full',
};

const attempt = (work: () => void): Prepared => {
  try {
    work();
    return { kind: 'ready' };
  } catch (error) {
    return { kind: 'not writable', says: REASONS[String(propertyOf(error, 'code'))] ?? messageOf(error) };
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
