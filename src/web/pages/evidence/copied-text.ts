/** What is copied from the page: equations in their readable notation, not as letters without their places. */

const BLOCK = /^(P|DIV|LI|TR|H[1-6]|DT|DD|SECTION|ARTICLE|HEADER|FIGCAPTION|SUMMARY|DETAILS|TABLE)$/;

/** The text of a copied piece of the page; null where no equation is in it, and the browser knows best. */
export const copiedText = (piece: DocumentFragment): string | null =>
  piece.querySelector('math') === null
    ? null
    : textOf(piece)
        .replaceAll(/[ \t]+\n/g, '\n')
        .replaceAll(/\n{2,}/g, '\n')
        .trim();

const textOf = (node: Node): string => {
  if (node.nodeType === Node.TEXT_NODE) return (node.textContent ?? '').replaceAll(/\s+/g, ' ');
  if (node instanceof Element && node.tagName.toLowerCase() === 'math') return node.getAttribute('alttext') ?? '';
  const inside = [...node.childNodes].map(textOf).join('');
  const tag = node instanceof Element ? node.tagName : '';
  if (tag === 'TD' || tag === 'TH') return `${inside}\t`;
  return BLOCK.test(tag) ? `\n${inside}\n` : inside;
};
