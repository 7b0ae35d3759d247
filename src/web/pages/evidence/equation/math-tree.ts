import mathup from 'mathup';
import { mathupText } from './mathup-text.ts';

/** MathML as plain values: what is drawn, read aloud and tested, with no text ever put into a page as markup. */
export interface MathNode {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (MathNode | string)[];
}

const PIECE = /<(?<close>\/)?(?<tag>[a-z]+)(?<attributes>[^>]*?)(?<empty>\s*\/)?>|(?<text>[^<]+)/gu;
const ATTRIBUTE = /(?<name>[a-z]+)="(?<value>[^"]*)"/gu;

/** The tree of well-formed MathML. Only the elements of mathematics are taken over. */
export const readMath = (markup: string): MathNode => {
  const root: Growing = { tag: 'mrow', attributes: {}, children: [] };
  const open: Growing[] = [root];
  for (const { groups = {} } of markup.matchAll(PIECE)) {
    const parent = open.at(-1) ?? root;
    const { close, tag, text, empty, attributes = '' } = groups;
    if (text !== undefined) parent.children.push(unescaped(text));
    else if (close !== undefined) open.pop();
    else if (tag !== undefined) {
      const node: Growing = { tag, attributes: attributesOf(attributes), children: [] };
      parent.children.push(node);
      if (empty === undefined) open.push(node);
    }
  }
  return root;
};

interface Growing extends MathNode {
  readonly children: (Growing | string)[];
}

const attributesOf = (text: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    [...text.matchAll(ATTRIBUTE)].flatMap(({ groups }) => {
      const { name = '', value = '' } = groups ?? {};
      return KEPT.has(name) ? [[name, unescaped(value)] as const] : [];
    }),
  );

/** Spacing and stretching. Styles and classes are the page's own affair. */
const KEPT = new Set(['lspace', 'rspace', 'fence', 'separator', 'stretchy', 'accent', 'accentunder', 'mathvariant']);

const unescaped = (text: string): string =>
  text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');

const kept = new Map<string, MathNode>();

/** An equation or a symbol of the textbook, set. */
export const mathTree = (equation: string): MathNode => {
  const known = kept.get(equation);
  if (known) return known;
  const tree = readMath(mathup(mathupText(equation), { bare: true }).toString());
  kept.set(equation, tree);
  return tree;
};

/** All that a tree shows, in order. */
export const textOfMath = (node: MathNode | string): string =>
  typeof node === 'string' ? node : node.children.map(textOfMath).join('');

/** Every element of a tree. */
export const elementsOfMath = (node: MathNode): readonly MathNode[] => [
  node,
  ...node.children.flatMap((child) => (typeof child === 'string' ? [] : elementsOfMath(child))),
];
