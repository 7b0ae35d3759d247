import { existsSync } from 'node:fs';
import { dirname, join, resolve, sep } from 'node:path';
import { ROOT, lineAt, visit, type Source } from './source.ts';

/** Looking for an installed browser, and for the system that could bring one, is looking outside. */
const MAY_LOOK_OUTSIDE = ['test/browser/find-browser.ts', 'scripts/ensure-browser.mjs'];

/** Devices, and what the kernel tells about processes, are on every such system. */
const OF_THE_SYSTEM = /^\/(dev|proc)\//;
const ABSOLUTE = /^(\/[^/\s]+\/[^\s]|[A-Za-z]:[\\/])/;

const isOutside = (path: string): boolean => !`${resolve(path)}${sep}`.startsWith(ROOT) && existsSync(path);

/** Whether a text of a program names a file or folder that is there and does not belong to the project. */
const leadsOutside = (source: Source, text: string): boolean => {
  if (OF_THE_SYSTEM.test(text)) return false;
  if (ABSOLUTE.test(text)) return isOutside(text);
  return text.startsWith('..') && [dirname(join(ROOT, source.path)), ROOT].every((from) => isOutside(join(from, text)));
};

/** Texts that name files outside the project: everything needed to build, run and test stands inside. */
export const outsideComplaints = (source: Source): readonly string[] => {
  if (MAY_LOOK_OUTSIDE.includes(source.path)) return [];
  const complaints: string[] = [];
  const look = (text: unknown, offset: number): void => {
    if (typeof text === 'string' && leadsOutside(source, text))
      complaints.push(`${source.path}:${lineAt(source.text, offset)} names ${text}, which is outside the project.`);
  };
  visit(source, {
    Literal: ({ value, start }) => look(value, start),
    TemplateElement: ({ value, start }) => look(value.cooked, start),
  });
  return complaints;
};
