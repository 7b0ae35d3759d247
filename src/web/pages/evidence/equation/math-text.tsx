import { createElement, Fragment, type ReactNode } from 'react';
import { join } from '#web/parts/parts.ts';
import { equationParts } from './equation-parts.ts';
import { mathTree, textOfMath, type MathNode } from './math-tree.ts';
import styles from './math.module.css';

/** A symbol or a short expression in a line of text. Its readable form is what is read aloud and copied. */
export function MathText({ text }: { readonly text: string }) {
  return set(text, {});
}

/** A part that is longer is set smaller. */
const LONG = 64;

/** An equation on lines of its own. */
export function Equation({ text }: { readonly text: string }) {
  const parts = equationParts(text);
  const isLong = parts.some(({ length }) => length > LONG);
  return (
    <div className={join(styles['equation'], isLong && styles['long'])}>
      {parts.map((part, place) => (
        <Fragment key={place}>{set(part, { displaystyle: 'true' })} </Fragment>
      ))}
    </div>
  );
}

const set = (text: string, more: Readonly<Record<string, string>>): ReactNode => {
  const { children } = mathTree(text);
  return createElement(
    'math',
    { className: styles['math'], alttext: text, 'aria-label': text, ...more },
    ...children.map((child, place) => drawn(child, children[place - 1], place === 0 && children.length > 1)),
  );
};

const OPENS_A_PART = /^[=≤≥<>≈→+±]$/;
const SIGN = /^[−+±]$/;

/**
 * A sign that begins a part of a longer equation stands between two and keeps its space; one that follows another sign
 * belongs to the number behind it.
 */
const formOf = (node: MathNode, before: MathNode | string | undefined, isFirst: boolean) => {
  if (node.tag !== 'mo') return {};
  const sign = textOfMath(node);
  if (isFirst) return OPENS_A_PART.test(sign) ? { form: 'infix' } : {};
  const isAfterSign = typeof before === 'object' && before.tag === 'mo' && !('fence' in before.attributes);
  return SIGN.test(sign) && isAfterSign && /^[=≤≥<>≈→·×,;:]$/.test(textOfMath(before)) ? { form: 'prefix' } : {};
};

const drawn = (node: MathNode | string, before?: MathNode | string, isFirst = false): ReactNode => {
  if (typeof node === 'string') return node;
  const { tag, attributes, children } = node;
  const form = formOf(node, before, isFirst);
  return createElement(
    tag,
    { ...attributes, ...form },
    ...children.map((child, place) => drawn(child, children[place - 1])),
  );
};
