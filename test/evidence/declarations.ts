import { programOf, type Source } from '../architecture/source.ts';

/** What a file declares at its top, and what each of these names in turn. */

export interface Declaration {
  /** Names that are used as values. */
  readonly values: ReadonlySet<string>;
  /** Names that are used as types. */
  readonly types: ReadonlySet<string>;
  /** Types that a function states as its result. */
  readonly gives: ReadonlySet<string>;
}

export interface Named {
  /** As it is written: "#science/formula.ts" or "./check.ts". */
  readonly from: string;
  readonly name: string;
}

export interface Module {
  readonly declarations: ReadonlyMap<string, Declaration>;
  /** Local name → where it comes from. */
  readonly imports: ReadonlyMap<string, Named>;
  /** Exported name → local name, or another module's. */
  readonly exports: ReadonlyMap<string, string | Named>;
}

/** A node of the syntax, seen only by its keys. */
type Node = Readonly<Record<string, unknown>>;

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';

const childrenOf = (node: Node): readonly (readonly [key: string, child: Node])[] =>
  Object.entries(node).flatMap(([key, value]) =>
    (Array.isArray(value) ? value : [value]).filter(isNode).map((child) => [key, child] as const),
  );

const nameOf = (value: unknown): string =>
  isNode(value) && typeof value['name'] === 'string' ? value['name'] : literalOf(value);

const literalOf = (value: unknown): string =>
  isNode(value) && typeof value['value'] === 'string' ? value['value'] : '';

/** Parts of a record that say something about other entries, but compute nothing with them. */
const ASIDE = new Set(['plot', 'restsOn']);
const TYPE_KEYS = new Set(['typeAnnotation', 'returnType', 'typeArguments', 'typeParameters', 'superTypeArguments']);

const isAside = (node: Node): boolean => node['type'] === 'Property' && ASIDE.has(nameOf(node['key']));

/** "log" in `console.log` and in `{ log: 1 }` is no name of ours. */
const isMereKey = (parent: Node, key: string): boolean =>
  parent['computed'] !== true &&
  ((parent['type'] === 'MemberExpression' && key === 'property') ||
    (parent['type'] === 'Property' && key === 'key' && parent['shorthand'] !== true));

interface Growing {
  readonly values: Set<string>;
  readonly types: Set<string>;
  readonly gives: Set<string>;
}

const collect = (node: Node, into: Growing, inType: boolean): void => {
  if (isAside(node)) return;
  if (node['type'] === 'Identifier' || node['type'] === 'JSXIdentifier')
    (inType ? into.types : into.values).add(nameOf(node));
  for (const [key, child] of childrenOf(node)) {
    if (isMereKey(node, key)) continue;
    const isType = inType || TYPE_KEYS.has(key) || String(child['type']).startsWith('TSInterface');
    collect(child, into, isType && child['type'] !== 'TSTypeQuery');
  }
};

const declarationOf = (node: Node): Declaration => {
  const growing: Growing = { values: new Set(), types: new Set(), gives: new Set() };
  const isType = node['type'] === 'TSInterfaceDeclaration' || node['type'] === 'TSTypeAliasDeclaration';
  collect(node, growing, isType);
  const result = resultTypeOf(node);
  if (result) collect(result, { values: new Set(), types: growing.gives, gives: new Set() }, true);
  return growing;
};

/** The stated result of a function, or of the function that a constant is. */
const resultTypeOf = (node: Node): Node | null => {
  const { returnType, init } = node as { readonly returnType?: unknown; readonly init?: unknown };
  if (isNode(returnType)) return returnType;
  return isNode(init) ? resultTypeOf(init) : null;
};

/** The statement itself, its declarators one by one. */
const declared = (statement: Node): readonly (readonly [name: string, node: Node])[] =>
  statement['type'] === 'VariableDeclaration'
    ? childrenOf(statement).flatMap(([, declarator]) =>
        boundNames(declarator['id']).map((name) => [name, declarator] as const),
      )
    : nameOf(statement['id']) === ''
      ? []
      : [[nameOf(statement['id']), statement]];

const boundNames = (pattern: unknown): readonly string[] => {
  if (!isNode(pattern)) return [];
  if (pattern['type'] === 'Identifier') return [nameOf(pattern)];
  return childrenOf(pattern).flatMap(([key, child]) => (key === 'key' ? [] : boundNames(child['value'] ?? child)));
};

export const moduleOf = (source: Source): Module => {
  const declarations = new Map<string, Declaration>();
  const imports = new Map<string, Named>();
  const exports = new Map<string, string | Named>();
  const take = (node: Node, isExported: boolean): void => {
    for (const [name, part] of declared(node)) {
      declarations.set(name, declarationOf(part));
      if (isExported) exports.set(name, name);
    }
  };
  for (const statement of programOf(source).body as unknown as readonly Node[]) {
    const from = literalOf(statement['source']);
    if (statement['type'] === 'ImportDeclaration')
      for (const [, specifier] of childrenOf(statement).filter(([key]) => key === 'specifiers'))
        imports.set(nameOf(specifier['local']), { from, name: nameOf(specifier['imported']) || 'default' });
    else if (statement['type'] === 'ExportNamedDeclaration') {
      if (isNode(statement['declaration'])) take(statement['declaration'], true);
      for (const [, specifier] of childrenOf(statement).filter(([key]) => key === 'specifiers')) {
        const local = nameOf(specifier['local']);
        exports.set(nameOf(specifier['exported']), from === '' ? local : { from, name: local });
      }
    } else if (statement['type'] === 'ExportDefaultDeclaration') {
      declarations.set('default', declarationOf(statement));
      exports.set('default', 'default');
    } else take(statement, false);
  }
  return { declarations, imports, exports };
};
