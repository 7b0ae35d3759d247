import { pathToFileURL } from 'node:url';
import { ensureBuilt } from './ensure-built.mjs';
import { ensureInstalled } from './ensure-installed.mjs';

/**
 * Brings packages and build up to date and goes over to a built program, which reads the same arguments and
 * environment. Names of files mean what they mean where the command was typed: npm moves to the package folder and
 * leaves that place in INIT_CWD.
 * @param {string} program
 */
export const runBuilt = async (program) => {
  await ensureInstalled();
  await ensureBuilt();
  if (process.env.INIT_CWD) process.chdir(process.env.INIT_CWD);
  process.setSourceMapsEnabled(true);
  await import(pathToFileURL(program).href);
};
