import { MathText } from './math-text.tsx';

/** Letters with a subscript or a power: what is a symbol wherever it stands in a sentence. */
const SYMBOL = /((?:\p{L}[\p{L}\p{M}0-9]*['′]?|\d+\p{L}{2,})(?:[_^](?:\([^()]*\)|[\p{L}0-9]+)['′]?)+)/u;

/** A sentence with its symbols set as in the equations. */
export function Prose({ text }: { readonly text: string }) {
  if (!/[_^]/.test(text)) return text;
  return text.split(SYMBOL).map((part, place) => (place % 2 === 1 ? <MathText key={place} text={part} /> : part));
}
