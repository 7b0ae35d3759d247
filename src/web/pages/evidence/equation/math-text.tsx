import { createElement, Fragment, type ReactNode } from 'react';
import { equationParts } from './equation-parts.ts';
import { mathTree, textOfMath, type MathNode } from './math-tree.ts';
import styles from './math.module.css';

/** A symbol or a short expression in a line of text. Its readable form is what is read aloud and copied. */
export function MathText({ text }: { readonly text: string }) {
  return set(text, {});
}

/** An equation on lines of its own. */
export function Equation({ text }: { readonly text: string }) {
  return (
    <div className={styles['equation']}>
      {equationParts(text).map((part) => (
        <Fragment key={part}>{set(part, { displaystyle: 'true' })} </Fragment>
      ))}
    </div>
  );
}

const set = (text: string, more: Readonly<Record<string, string>>): ReactNode => {
  const { children } = mathTree(text);
  return createElement(
    'math',
    { className: styles['math'], alttext: text, 'aria-label': text, ...more },
    ...children.map((child, place) => drawn(child, place === 0 && children.length > 1)),
  );
};

const OPENS_A_PART = /^[=≤≥<>≈→+±]$/;

/** A sign that begins a part stands between two: it keeps its space. A minus at the front may be a sign of its own. */
const drawn = (node: MathNode | string, isFirst = false): ReactNode => {
  if (typeof node === 'string') return node;
  const { tag, attributes, children } = node;
  const infix = isFirst && tag === 'mo' && OPENS_A_PART.test(textOfMath(node)) ? { form: 'infix' } : {};
  return createElement(tag, { ...attributes, ...infix }, ...children.map((child) => drawn(child)));
};
