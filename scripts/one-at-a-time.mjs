import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { ROOT, giveUp, inProject } from './project.mjs';

/** Names the process that is installing or building; another one waits for its end. */
const HOLDER = inProject('dist', 'being-prepared-by');
const MILLISECONDS_BETWEEN_LOOKS = 200;

/** @param {number} pid whether such a process is there, whoever owns it */
const isRunning = (pid) => {
  try {
    return process.kill(pid, 0);
  } catch (reason) {
    return reason instanceof Error && 'code' in reason && reason.code === 'EPERM';
  }
};

/** Takes the right to prepare, unless a living process has it. What a dead one left behind is put away. */
const takeTurn = () => {
  try {
    writeFileSync(HOLDER, String(process.pid), { flag: 'wx' });
    return true;
  } catch (reason) {
    if (!(reason instanceof Error && 'code' in reason && reason.code === 'EEXIST')) throw reason;
    if (!isRunning(Number(readFileSync(HOLDER, 'utf8')))) rmSync(HOLDER, { force: true });
    return false;
  }
};

/**
 * Does work that two processes must not do at the same time in the same checkout.
 * @param {() => void | Promise<void>} work
 */
export const oneAtATime = async (work) => {
  try {
    mkdirSync(inProject('dist'), { recursive: true });
  } catch (reason) {
    giveUp(`Nothing can be written into ${ROOT} (${String(reason)}): free space there or allow it, and try again.`);
  }
  while (!takeTurn()) await pause(MILLISECONDS_BETWEEN_LOOKS);
  try {
    await work();
  } finally {
    rmSync(HOLDER, { force: true });
  }
};
