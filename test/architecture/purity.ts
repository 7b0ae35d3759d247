import { PURE_FOLDERS } from './import-table.ts';
import { layerOf, lineAt, visit, type Source } from './source.ts';

/** What only main may touch, and what is said where somebody else does. */
const OF_MAIN: Readonly<Record<string, string>> = {
  'Date.now': 'the clock is an argument',
  'new Date()': 'the clock is an argument',
  'Date()': 'the clock is an argument',
  'performance.now': 'the clock is an argument',
  'Math.random': 'chance is an argument',
  process: 'environment and arguments are handed over by main',
  'import.meta.env': 'environment and arguments are handed over by main',
  console: 'printing is handed over by main',
};

/** Beyond the clock, what a pure folder does not know. Much of it the compiler refuses already. */
const OF_NOBODY_PURE: Readonly<Record<string, string>> = {
  crypto: 'chance is an argument',
  fetch: 'a pure folder reaches no network',
  setTimeout: 'a pure folder does not wait',
  globalThis: 'a pure folder has no surroundings',
  window: 'a pure folder has no surroundings',
};

interface Use {
  readonly name: string;
  readonly offset: number;
}

/** Uses of ambient things as `object.property`, `object`, `new Date()` and `Date()`. */
const usesOf = (source: Source): readonly Use[] => {
  const uses: Use[] = [];
  const take = (name: string, offset: number): void => void uses.push({ name, offset });
  visit(source, {
    MemberExpression: ({ object, property, start }) => {
      if (object.type === 'Identifier') {
        take(object.name, start);
        if (property.type === 'Identifier') take(`${object.name}.${property.name}`, start);
      }
      if (object.type === 'MetaProperty' && property.type === 'Identifier') take(`import.meta.${property.name}`, start);
    },
    VariableDeclarator: ({ init }) => {
      if (init?.type === 'Identifier') take(init.name, init.start);
    },
    NewExpression: ({ callee, arguments: given, start }) => {
      if (callee.type === 'Identifier' && given.length === 0) take(`new ${callee.name}()`, start);
    },
    CallExpression: ({ callee, start }) => {
      if (callee.type !== 'Identifier') return;
      take(callee.name, start);
      take(`${callee.name}()`, start);
    },
  });
  return uses;
};

const reasonFor = (layer: string, name: string): string | undefined => {
  const ofMain = Object.hasOwn(OF_MAIN, name) ? OF_MAIN[name] : undefined;
  const ofNobody = Object.hasOwn(OF_NOBODY_PURE, name) ? OF_NOBODY_PURE[name] : undefined;
  return ofMain ?? (PURE_FOLDERS.includes(layer) ? ofNobody : undefined);
};

/** Where a file outside main takes clock, chance, environment or printer by itself, each as a sentence. */
export const purityComplaints = (source: Source): readonly string[] => {
  const layer = layerOf(source.path);
  if (layer === 'main') return [];
  return usesOf(source).flatMap(({ name, offset }) => {
    const reason = reasonFor(layer, name);
    return reason ? [`${source.path}:${lineAt(source.text, offset)} uses ${name}; ${reason}.`] : [];
  });
};
