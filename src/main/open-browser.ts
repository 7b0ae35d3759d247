import { spawn } from 'node:child_process';

const OPENERS: Readonly<Partial<Record<NodeJS.Platform, readonly [string, ...string[]]>>> = {
  darwin: ['open'],
  win32: ['cmd', '/c', 'start', ''],
};

/** Is somebody sitting here, at a screen? */
export const hasDisplayAndTerminal = (): boolean =>
  process.stdout.isTTY &&
  (process.platform === 'darwin' ||
    process.platform === 'win32' ||
    Boolean(process.env['DISPLAY'] ?? process.env['WAYLAND_DISPLAY']));

/** Opens the address; where there is no browser the printed line is enough. */
export const openBrowser = (address: string): void => {
  const [opener, ...given] = OPENERS[process.platform] ?? ['xdg-open'];
  const child = spawn(opener, [...given, address], { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
};
