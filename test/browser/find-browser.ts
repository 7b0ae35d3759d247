import { existsSync } from 'node:fs';
import { chromium, type Browser, type LaunchOptions } from 'playwright-core';

/** Where browsers of this family are installed by their own installers and by distributions. */
const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];

/** Found by name on Windows and wherever else their installers put them. */
const CHANNELS = ['chrome', 'msedge', 'chromium'];

/** Containers have little shared memory, and a test reaches no address but its own server. */
const ARGUMENTS = ['--disable-dev-shm-usage', '--disable-component-update', '--no-proxy-server', '--no-pings'];

interface Candidate {
  readonly name: string;
  readonly options: () => Promise<LaunchOptions>;
}

const atPlace = (path: string): Candidate => ({
  name: path,
  options: () => Promise.resolve({ executablePath: path }),
});

const byChannel = (channel: string): Candidate => ({
  name: `the installed ${channel}`,
  options: () => Promise.resolve({ channel }),
});

/** A browser that comes as an optional package; it unpacks itself to the temporary folder. Linux on x64 only. */
const fromPackage: Candidate = {
  name: 'the packaged browser',
  options: async () => {
    const { default: packaged } = await import('@sparticuz/chromium');
    return { executablePath: await packaged.executablePath(), args: packaged.args };
  },
};

const candidates = (chosen: string | undefined): readonly Candidate[] => {
  if (chosen) return [atPlace(chosen)];
  const packaged = process.platform === 'linux' && process.arch === 'x64' ? [fromPackage] : [];
  return [...USUAL_PLACES.filter((place) => existsSync(place)).map(atPlace), ...CHANNELS.map(byChannel), ...packaged];
};

export type FoundBrowser =
  | { readonly kind: 'found'; readonly name: string; readonly browser: Browser }
  | { readonly kind: 'none'; readonly tried: readonly string[] };

const firstLine = (reason: unknown): string =>
  (reason instanceof Error ? reason.message : String(reason)).split('\n')[0] ?? '';

/** Starts the first browser that starts: the one named by BALLAST_BROWSER and no other, else what is installed. */
export const findBrowser = async (): Promise<FoundBrowser> => {
  const tried: string[] = [];
  for (const { name, options } of candidates(process.env['BALLAST_BROWSER'])) {
    try {
      const { args = [], ...rest } = await options();
      const browser = await chromium.launch({ ...rest, args: [...args, ...ARGUMENTS] });
      return { kind: 'found', name, browser };
    } catch (reason) {
      tried.push(`${name}: ${firstLine(reason)}`);
    }
  }
  return { kind: 'none', tried };
};

export const NO_BROWSER =
  'No browser could be started for the browser tests: install Chromium or Chrome, or set BALLAST_BROWSER to the path of one.';

/** As above, and an error with the two remedies where there is none. */
export const startBrowser = async (): Promise<Browser> => {
  const found = await findBrowser();
  if (found.kind === 'found') return found.browser;
  throw new Error([NO_BROWSER, ...found.tried].join('\n  '));
};
