/** What typists without the sign write in its place. */
const SPELLINGS: Readonly<Record<string, string>> = {
  '×': 'x',
  '−': '-',
  '–': '-',
  '—': '-',
  '‑': '-',
  '≤': '<=',
  '≥': '>=',
  '±': '+/-',
  '·': '-',
  '•': '-',
  '…': '...',
  '‘': "'",
  '’': "'",
  '“': '"',
  '”': '"',
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '°': ' deg',
  '→': '->',
  ø: 'o',
  Ø: 'O',
  æ: 'ae',
  Æ: 'Ae',
  œ: 'oe',
  ß: 'ss',
  ł: 'l',
  Ł: 'L',
  đ: 'd',
  Đ: 'D',
  þ: 'th',
  Þ: 'Th',
  ð: 'd',
};

/** Flight day is FD where every byte counts. */
export const shortAscii = (text: string): string => plainAscii(text).replace(/\bflight day (?=\d)/gi, 'FD ');

/** Text on one line in printable ASCII: signs spelled out, accents dropped, anything else a question mark. */
export const plainAscii = (text: string): string =>
  [...text.normalize('NFC')]
    .map((sign) => SPELLINGS[sign] ?? sign)
    .join('')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/\s+/gu, ' ')
    .replace(/[^\x20-\x7E]/gu, '?')
    .trim();
