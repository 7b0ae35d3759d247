import { crc32, inflateRawSync } from 'node:zlib';
import type { Said } from '../place.ts';
import { inMegabytes, inThousands, type Limits } from './limits.ts';

export type OpenedArchive =
  | { readonly kind: 'opened'; readonly entries: ReadonlyMap<string, Uint8Array> }
  | { readonly kind: 'refused'; readonly said: Said };

/** What the directory at the end of a ZIP archive says of one entry (PKWARE application note 6.3). */
interface DirectoryEntry {
  readonly name: string;
  readonly encrypted: boolean;
  readonly method: number;
  readonly checksum: number;
  readonly packedBytes: number;
  readonly unpackedBytes: number;
  readonly offset: number;
}

const END_OF_DIRECTORY = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const LOCAL_HEADER = 0x04034b50;
const END_BYTES = 22;
const ENTRY_BYTES = 46;
const LOCAL_BYTES = 30;
const LONGEST_COMMENT = 65_535;
const STORED = 0;
const DEFLATED = 8;
const ENCRYPTED_FLAG = 1;

const DAMAGED: Said = {
  what: 'The workbook cannot be unpacked.',
  why: 'An XLSX file is a ZIP archive; this one is cut off or damaged.',
  whatToDo: 'Save it again from the spreadsheet program, or copy it again from where it came.',
};
const LOCKED: Said = {
  what: 'The workbook is protected by a password.',
  why: 'Its contents are encrypted.',
  whatToDo: 'Save a copy without password and bring that in.',
};

const tooMuch = (what: string): Said => ({
  what,
  why: 'A workbook of tests is far smaller; an archive that unpacks to so much is damaged or was made to do harm.',
  whatToDo: 'Copy the sheet with the tests into a new workbook and bring that in.',
});

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const endOfDirectory = (view: DataView): number | null => {
  const first = Math.max(0, view.byteLength - END_BYTES - LONGEST_COMMENT);
  for (let at = view.byteLength - END_BYTES; at >= first; at -= 1)
    if (view.getUint32(at, true) === END_OF_DIRECTORY) return at;
  return null;
};

const directoryEntry = (view: DataView, bytes: Uint8Array, at: number): DirectoryEntry & { readonly next: number } => {
  const nameLength = view.getUint16(at + 28, true);
  const extraLength = view.getUint16(at + 30, true);
  const commentLength = view.getUint16(at + 32, true);
  const nameStart = at + ENTRY_BYTES;
  return {
    name: new TextDecoder().decode(bytes.subarray(nameStart, nameStart + nameLength)),
    encrypted: (view.getUint16(at + 8, true) & ENCRYPTED_FLAG) !== 0,
    method: view.getUint16(at + 10, true),
    checksum: view.getUint32(at + 16, true),
    packedBytes: view.getUint32(at + 20, true),
    unpackedBytes: view.getUint32(at + 24, true),
    offset: view.getUint32(at + 42, true),
    next: nameStart + nameLength + extraLength + commentLength,
  };
};

/** The directory, or null where the bytes hold none that can be read. A read past the end throws a RangeError. */
const directoryOf = (bytes: Uint8Array): readonly DirectoryEntry[] | null => {
  const view = viewOf(bytes);
  const end = endOfDirectory(view);
  if (end === null) return null;
  const count = view.getUint16(end + 10, true);
  const entries: DirectoryEntry[] = [];
  let at = view.getUint32(end + 16, true);
  for (let read = 0; read < count; read += 1) {
    if (view.getUint32(at, true) !== DIRECTORY_ENTRY) return null;
    const { next, ...entry } = directoryEntry(view, bytes, at);
    entries.push(entry);
    at = next;
  }
  return entries;
};

const refusalOf = (directory: readonly DirectoryEntry[], limits: Limits): Said | null => {
  if (directory.length > limits.entries)
    return tooMuch(
      `The workbook holds ${inThousands(directory.length)} parts; at most ${inThousands(limits.entries)} are read.`,
    );
  const declared = directory.reduce((sum, entry) => sum + entry.unpackedBytes, 0);
  if (declared > limits.unpackedBytes)
    return tooMuch(
      `The workbook unpacks to ${inMegabytes(declared)}; at most ${inMegabytes(limits.unpackedBytes)} are read.`,
    );
  if (directory.some(({ encrypted }) => encrypted)) return LOCKED;
  return null;
};

/** Unpacks one entry, never to more bytes than the directory declares; null where it is not what was declared. */
const unpacked = (bytes: Uint8Array, entry: DirectoryEntry): Uint8Array | null => {
  const view = viewOf(bytes);
  if (view.getUint32(entry.offset, true) !== LOCAL_HEADER) return null;
  const start =
    entry.offset + LOCAL_BYTES + view.getUint16(entry.offset + 26, true) + view.getUint16(entry.offset + 28, true);
  if (start + entry.packedBytes > bytes.byteLength) return null;
  const packed = bytes.subarray(start, start + entry.packedBytes);
  if (entry.method !== STORED && entry.method !== DEFLATED) return null;
  const content =
    entry.method === STORED ? packed : inflateRawSync(packed, { maxOutputLength: Math.max(1, entry.unpackedBytes) });
  return content.byteLength === entry.unpackedBytes && crc32(content) === entry.checksum ? content : null;
};

const isText = ({ name }: DirectoryEntry): boolean => /\.(xml|rels)$/i.test(name) || name === 'mimetype';

/**
 * The text parts of an archive. Sizes are judged by the directory before anything is unpacked, and again while it is:
 * an entry that unpacks to more than it declares is cut short and the archive refused.
 */
export const openArchive = (bytes: Uint8Array, limits: Limits): OpenedArchive => {
  try {
    const directory = directoryOf(bytes);
    const said = directory ? refusalOf(directory, limits) : DAMAGED;
    if (said || !directory) return { kind: 'refused', said: said ?? DAMAGED };
    const entries = new Map<string, Uint8Array>();
    for (const entry of directory.filter(isText)) {
      const content = unpacked(bytes, entry);
      if (!content) return { kind: 'refused', said: DAMAGED };
      entries.set(entry.name, content);
    }
    return { kind: 'opened', entries };
  } catch {
    return { kind: 'refused', said: DAMAGED };
  }
};
