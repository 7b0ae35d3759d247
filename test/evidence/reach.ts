import { posix } from 'node:path';
import type { Source } from '../architecture/source.ts';
import { moduleOf, type Declaration, type Module, type Named } from './declarations.ts';

/** A declaration by its file and its name there. */
export interface Place {
  readonly path: string;
  readonly name: string;
}

export interface Program {
  readonly modules: ReadonlyMap<string, Module>;
  readonly at: (place: Place) => Declaration | undefined;
  /** What a name means in a file; null where it is neither declared nor imported from a file of ours. */
  readonly meaning: (path: string, name: string) => Place | null;
}

export const programOf = (sources: readonly Source[]): Program => {
  const modules = new Map(sources.map((source) => [source.path, moduleOf(source)] as const));
  const exported = (path: string, name: string, hops = 0): Place | null => {
    const found = modules.get(path)?.exports.get(name);
    if (found === undefined || hops > 9) return null;
    if (typeof found !== 'string') return imported(path, found, hops);
    return modules.get(path)?.declarations.has(found) ? { path, name: found } : meaning(path, found, hops);
  };
  const imported = (path: string, { from, name }: Named, hops: number): Place | null =>
    /^[#.]/.test(from) ? exported(targetOf(path, from), name, hops + 1) : null;
  const meaning = (path: string, name: string, hops = 0): Place | null => {
    const module = modules.get(path);
    if (module?.declarations.has(name)) return { path, name };
    const found = module?.imports.get(name);
    return found ? imported(path, found, hops) : null;
  };
  return { modules, meaning, at: ({ path, name }) => modules.get(path)?.declarations.get(name) };
};

const targetOf = (path: string, specifier: string): string =>
  specifier.startsWith('#') ? `src/${specifier.slice(1)}` : posix.join(posix.dirname(path), specifier);

/** Everything that can be reached from some places, step by step. */
export const reachedFrom = (from: readonly Place[], stepsOf: (place: Place) => readonly Place[]): readonly Place[] => {
  const reached = new Map<string, Place>();
  const open = [...from];
  for (let place = open.pop(); place; place = open.pop()) {
    const key = `${place.path} ${place.name}`;
    if (reached.has(key)) continue;
    reached.set(key, place);
    open.push(...stepsOf(place));
  }
  return [...reached.values()];
};
