/** A tag or a text of an XML document, in order. Names come without their prefix. */
export type XmlPiece =
  | { readonly kind: 'opens'; readonly name: string; readonly attributes: string; readonly closed: boolean }
  | { readonly kind: 'closes'; readonly name: string }
  /** Escaped as it stood in the document. */
  | { readonly kind: 'text'; readonly escaped: string };

export class DamagedXml extends Error {}

const withoutPrefix = (name: string): string => name.slice(name.indexOf(':') + 1);

/** Where the tag that opens at `from` ends: the first ">" outside quotes. */
const endOfTag = (xml: string, from: number): number => {
  let quote = '';
  for (let at = from; at < xml.length; at += 1) {
    const character = xml[at] ?? '';
    if (quote === '') {
      if (character === '>') return at;
      if (character === '"' || character === "'") quote = character;
    } else if (character === quote) quote = '';
  }
  throw new DamagedXml('A tag is not closed.');
};

const after = (xml: string, mark: string, from: number): number => {
  const at = xml.indexOf(mark, from);
  if (at < 0) throw new DamagedXml(`${mark} is missing.`);
  return at;
};

const escapeText = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

const tag = (inside: string): XmlPiece => {
  if (inside.startsWith('/')) return { kind: 'closes', name: withoutPrefix(inside.slice(1).trim()) };
  const closed = inside.endsWith('/');
  const [name = ''] = /^[^\s/]+/.exec(inside) ?? [];
  return { kind: 'opens', name: withoutPrefix(name), attributes: inside.slice(name.length), closed };
};

/**
 * The pieces of an XML document. Only what a workbook needs: no document types, so no entities of its own, and comments
 * and instructions are passed over. The reader of workbooks sees what is rebuilt from these pieces, never the document.
 */
export function* xmlPieces(xml: string): Generator<XmlPiece, void, undefined> {
  let at = 0;
  while (at < xml.length) {
    const opens = xml.indexOf('<', at);
    const textEnd = opens < 0 ? xml.length : opens;
    if (textEnd > at) yield { kind: 'text', escaped: xml.slice(at, textEnd) };
    if (opens < 0) return;
    if (xml.startsWith('<!--', opens)) at = after(xml, '-->', opens) + 3;
    else if (xml.startsWith('<?', opens)) at = after(xml, '?>', opens) + 2;
    else if (xml.startsWith('<![CDATA[', opens)) {
      const end = after(xml, ']]>', opens);
      yield { kind: 'text', escaped: escapeText(xml.slice(opens + 9, end)) };
      at = end + 3;
    } else if (xml.startsWith('<!', opens)) throw new DamagedXml('A document type is not allowed.');
    else {
      const end = endOfTag(xml, opens + 1);
      yield tag(xml.slice(opens + 1, end));
      at = end + 1;
    }
  }
}

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
const HIGHEST_CODE_POINT = 0x10ffff;

const codePoint = (code: number): string =>
  code > 0 && code <= HIGHEST_CODE_POINT ? String.fromCodePoint(code) : '\uFFFD';

/** The text that an escaped one stands for; an entity nobody knows stays as it is. */
export const unescapeXml = (escaped: string): string =>
  escaped.replace(
    /&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|([a-z]{1,8}));/gi,
    (whole, hex?: string, decimal?: string, name?: string) => {
      if (hex !== undefined) return codePoint(parseInt(hex, 16));
      if (decimal !== undefined) return codePoint(Number(decimal));
      return NAMED[name ?? ''] ?? whole;
    },
  );

export const escapeXml = (text: string): string => escapeText(text).replace(/"/g, '&quot;');

/** Reads the value of one attribute, its prefix aside; null where the tag has none. */
export const attribute = (name: string): ((attributes: string) => string | null) => {
  const pattern = new RegExp(`(?:^|\\s)(?:[\\w.-]+:)?${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`);
  return (attributes) => {
    const found = pattern.exec(attributes);
    return found ? unescapeXml(found[1] ?? found[2] ?? '') : null;
  };
};
