/** Signatures, lengths and places of an archive's directory (ZIP, PKWARE application note 6.3.x). */
const END_OF_DIRECTORY = { signature: 0x06054b50, length: 22, entries: 10, directory: 16 };
const ENTRY = {
  signature: 0x02014b50,
  length: 46,
  time: 12,
  nameLength: 28,
  moreLength: 30,
  noteLength: 32,
  header: 42,
};
const LOCAL_HEADER_TIME = 10;
/** 1 January 1980, midnight: the first moment that an archive can say. */
const FIRST_MOMENT = 0x00210000;

/** The same archive with every entry written at one moment, so that the same content is the same bytes. */
export const withFixedTimes = (archive: Buffer): Buffer => {
  const fixed = Buffer.from(archive);
  const end = fixed.length - END_OF_DIRECTORY.length;
  if (fixed.readUInt32LE(end) !== END_OF_DIRECTORY.signature)
    throw new RangeError('The archive does not end with its directory.');
  let place = fixed.readUInt32LE(end + END_OF_DIRECTORY.directory);
  for (let count = fixed.readUInt16LE(end + END_OF_DIRECTORY.entries); count > 0; count -= 1)
    place = fixEntry(fixed, place);
  return fixed;
};

/** Fixes one entry and its local header; gives the place of the next entry. */
const fixEntry = (archive: Buffer, place: number): number => {
  if (archive.readUInt32LE(place) !== ENTRY.signature) throw new RangeError('The directory of the archive is broken.');
  archive.writeUInt32LE(FIRST_MOMENT, place + ENTRY.time);
  archive.writeUInt32LE(FIRST_MOMENT, archive.readUInt32LE(place + ENTRY.header) + LOCAL_HEADER_TIME);
  const following = [ENTRY.nameLength, ENTRY.moreLength, ENTRY.noteLength].map((at) =>
    archive.readUInt16LE(place + at),
  );
  return place + ENTRY.length + following.reduce((sum, length) => sum + length, 0);
};
