import { crc32 } from 'node:zlib';

const LOCAL_HEADER = 0x04034b50;
const DIRECTORY_ENTRY = 0x02014b50;
const END_OF_DIRECTORY = 0x06054b50;
const VERSION = 20;
const NAMES_ARE_UTF8 = 0x0800;

interface Part {
  readonly name: Uint8Array;
  readonly content: Uint8Array;
  readonly checksum: number;
  readonly offset: number;
}

/** Little-endian fields of two or four bytes. */
const fields = (...written: readonly (readonly [bytes: 2 | 4, value: number])[]): Uint8Array => {
  const view = new DataView(new ArrayBuffer(written.reduce((sum, [bytes]) => sum + bytes, 0)));
  let at = 0;
  for (const [bytes, value] of written) {
    if (bytes === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
    at += bytes;
  }
  return new Uint8Array(view.buffer);
};

/** The fields that local header and directory entry share, from flags to the length of the name. */
const described = ({ name, content, checksum }: Part): readonly (readonly [2 | 4, number])[] => [
  [2, NAMES_ARE_UTF8],
  [2, 0],
  [2, 0],
  [2, 0],
  [4, checksum],
  [4, content.byteLength],
  [4, content.byteLength],
  [2, name.byteLength],
  [2, 0],
];

const localHeader = (part: Part): Uint8Array => fields([4, LOCAL_HEADER], [2, VERSION], ...described(part));

const directoryEntry = (part: Part): Uint8Array =>
  fields(
    [4, DIRECTORY_ENTRY],
    [2, VERSION],
    [2, VERSION],
    ...described(part),
    [2, 0],
    [2, 0],
    [2, 0],
    [4, 0],
    [4, part.offset],
  );

const joined = (pieces: readonly Uint8Array[]): Uint8Array<ArrayBuffer> => {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.byteLength, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.byteLength;
  }
  return whole;
};

/** A ZIP archive of texts that are stored as they are: what the workbook reader is given instead of the file. */
export const storedArchive = (texts: ReadonlyMap<string, string>): Uint8Array<ArrayBuffer> => {
  const encoder = new TextEncoder();
  const local: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const [path, text] of texts) {
    const content = encoder.encode(text);
    const part: Part = { name: encoder.encode(path), content, checksum: crc32(content), offset };
    const pieces = [localHeader(part), part.name, content];
    local.push(...pieces);
    directory.push(directoryEntry(part), part.name);
    offset += pieces.reduce((sum, piece) => sum + piece.byteLength, 0);
  }
  const directoryBytes = directory.reduce((sum, piece) => sum + piece.byteLength, 0);
  const end = fields(
    [4, END_OF_DIRECTORY],
    [2, 0],
    [2, 0],
    [2, texts.size],
    [2, texts.size],
    [4, directoryBytes],
    [4, offset],
    [2, 0],
  );
  return joined([...local, ...directory, end]);
};
