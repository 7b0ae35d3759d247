import { createHash, randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import type { AddressInfo } from 'node:net';
import { createAdaptorServer } from '@hono/node-server';
import { makeApp, type App } from '#server/app.ts';
import type { About } from '#server/serving.ts';
import { builtPages } from './built-pages.ts';
import { now } from './clock.ts';
import { dataFile, dataFolder, prepareDataFolder } from './data-folder.ts';
import { endWith, inOneLine } from './end-with.ts';
import { addressOfRunning, removeInstance, writeInstance } from './instance-file.ts';
import { hasDisplayAndTerminal, openBrowser } from './open-browser.ts';
import { openHouse, timeFor } from './open-house.ts';
import { PROGRAM } from './program.ts';
import { readServeOptions, type ServeOptions } from './serve-options.ts';

const SECRET_BYTES = 24;
const newSecret = (): string => randomBytes(SECRET_BYTES).toString('base64url');

const readOptions = (): ServeOptions => {
  const reading = readServeOptions(process.argv.slice(2));
  return reading.kind === 'options' ? reading.options : endWith(reading.says);
};

const folderFor = (options: ServeOptions): string => {
  const folder = dataFolder(options.folder, {
    platform: process.platform,
    environment: process.env,
    home: homedir(),
    workingFolder: process.cwd(),
  });
  const prepared = prepareDataFolder(folder);
  return prepared.kind === 'ready' ? folder : endWith(prepared.says);
};

const options = readOptions();
const folder = folderFor(options);
const show = (address: string, says: string): void => {
  console.log(`${says} ${address}`);
  if (options.mayOpenBrowser && hasDisplayAndTerminal()) openBrowser(address);
};

const appOn = (origin: () => string, startSecret: string): App =>
  makeApp({
    clock: now,
    newSecret,
    startSecret,
    origin,
    cookieName: `ballast-${createHash('sha256').update(folder).digest('hex').slice(0, 12)}`,
    existing: () => (['scenario', 'own'] as const).filter((which) => existsSync(dataFile(folder, which))),
    open: (which: About) => {
      const chosen = { folder, today: options.today };
      const { today, clock } = timeFor(which, chosen);
      return openHouse(which, chosen, today, clock);
    },
    ...builtPages(),
    complain: (says) => console.error(says),
  });

const start = async (): Promise<void> => {
  let port = options.port;
  const startSecret = newSecret();
  const app = appOn(() => `http://127.0.0.1:${port}`, startSecret);
  if (options.which !== null) {
    const opened = await app.openHouse(options.which);
    if (opened.kind === 'trouble') endWith(inOneLine(opened.problem));
  }
  const server = createAdaptorServer({ fetch: app.fetch });
  server.on('error', (error: NodeJS.ErrnoException) =>
    endWith(
      error.code === 'EADDRINUSE'
        ? `Port ${port} is taken by another program: choose another with --port.`
        : `The program cannot listen on port ${port} (${error.code ?? error.message}): choose another with --port.`,
    ),
  );
  server.listen(port, '127.0.0.1', () => {
    port = (server.address() as AddressInfo).port;
    try {
      writeInstance(folder, { port, secret: startSecret });
    } catch (error) {
      endWith(`The data folder ${folder} cannot be written (${String(error)}): choose another with --data.`);
    }
    show(app.newAddress(), `${PROGRAM} is at`);
  });
  const stop = (): void => void closeAll(app);
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, stop);
};

/** Lets what is being written finish, says who was turned away, and leaves. */
const closeAll = async (app: App): Promise<void> => {
  removeInstance(folder);
  await app.house()?.workplace.store.close();
  const turnedAway = Object.entries(app.refusals()).map(([cause, count]) => `${cause} ${count}`);
  if (turnedAway.length > 0) console.log(`Turned away: ${turnedAway.join(', ')}.`);
  process.exit(0);
};

const running = await addressOfRunning(folder);
if (running === null)
  await start().catch((error: unknown) => endWith(`The program could not start: ${String(error)}.`));
else show(running, `${PROGRAM} is running already, at`);
