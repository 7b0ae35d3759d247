import type { Said } from '../place.ts';

export type DecodedText =
  | { readonly kind: 'decoded'; readonly text: string; readonly encoding: string; readonly guessed: boolean }
  | { readonly kind: 'refused'; readonly said: Said };

const BYTE_ORDER_MARKS = [
  { mark: [0xef, 0xbb, 0xbf], encoding: 'utf-8', name: 'UTF-8' },
  { mark: [0xff, 0xfe], encoding: 'utf-16le', name: 'UTF-16' },
  { mark: [0xfe, 0xff], encoding: 'utf-16be', name: 'UTF-16' },
] as const;

const BROKEN: Said = {
  what: 'The text of the file is damaged.',
  why: 'It opens with a byte-order mark, and what follows is not text in that encoding.',
  whatToDo: 'Save it again from the spreadsheet program as CSV in UTF-8.',
};

/** A text, or null where the bytes are none in this encoding. The mark itself is dropped. */
const strictly = (bytes: Uint8Array, encoding: string): string | null => {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
};

/**
 * The text of a file: by its byte-order mark, else UTF-8, else Windows-1252, in which any bytes are some text: then it
 * is said that the encoding was guessed.
 */
export const decodeText = (bytes: Uint8Array): DecodedText => {
  const found = BYTE_ORDER_MARKS.find(({ mark }) => mark.every((byte, place) => bytes[place] === byte));
  if (found) {
    const text = strictly(bytes, found.encoding);
    if (text === null) return { kind: 'refused', said: BROKEN };
    return { kind: 'decoded', text, encoding: `${found.name} with byte-order mark`, guessed: false };
  }
  const text = strictly(bytes, 'utf-8');
  if (text !== null) return { kind: 'decoded', text, encoding: 'UTF-8', guessed: false };
  const western = new TextDecoder('windows-1252').decode(bytes);
  return { kind: 'decoded', text: western, encoding: 'Windows-1252', guessed: true };
};
