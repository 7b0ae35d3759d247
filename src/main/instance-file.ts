import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import { z } from 'zod';
import { SECOND_START, SECRET_HEADER } from '#server/routes/second-start.ts';

const instance = z.object({ port: z.number().int().min(1).max(65_535), secret: z.string().min(16) });

/** What a running program leaves for a second start; only its owner can read it. */
export type Instance = z.infer<typeof instance>;

const fileIn = (folder: string): string => join(folder, 'running.json');

export const writeInstance = (folder: string, running: Instance): void => {
  rmSync(fileIn(folder), { force: true });
  writeFileSync(fileIn(folder), JSON.stringify(running), { mode: 0o600, flag: 'wx' });
};

export const removeInstance = (folder: string): void => rmSync(fileIn(folder), { force: true });

const readInstance = (folder: string): Instance | null => {
  try {
    return instance.parse(JSON.parse(readFileSync(fileIn(folder), 'utf8')));
  } catch {
    return null;
  }
};

const PATIENCE = 2000;

/** A fresh address from the program that runs on this folder already; null where none answers. */
export const addressOfRunning = async (folder: string): Promise<string | null> => {
  const running = readInstance(folder);
  if (!running) return null;
  const answer = await ask(running);
  const reading = z.object({ address: z.url() }).safeParse(answer);
  return reading.success ? reading.data.address : null;
};

const ask = ({ port, secret }: Instance): Promise<unknown> =>
  new Promise((resolve) => {
    const asking = request(
      {
        host: '127.0.0.1',
        port,
        path: SECOND_START,
        method: 'POST',
        headers: { [SECRET_HEADER]: secret, origin: `http://127.0.0.1:${port}` },
        timeout: PATIENCE,
      },
      (answer) => {
        let text = '';
        answer.setEncoding('utf8');
        answer.on('data', (part: string) => (text += part));
        answer.on('end', () => resolve(jsonOrNull(text)));
      },
    );
    asking.on('timeout', () => asking.destroy());
    asking.on('error', () => resolve(null));
    asking.end();
  });

const jsonOrNull = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
};
