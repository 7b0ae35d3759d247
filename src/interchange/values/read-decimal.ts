import { decimalOf } from '#units/entered.ts';
import { quoted } from '../place.ts';
import { type Value, BLANK_VALUE, saysNothing, valued, wrong } from './value.ts';

/** Which character stands before the decimals in a sheet; null where no number tells. */
export type DecimalMark = '.' | ',' | null;

const ONE_MARK = /^[+-]?\d+([.,])(\d+)$/;
const THOUSANDS_THEN_DECIMALS = /^([+-]?\d{1,3})(?:([.,])\d{3})+([.,])(\d+)$/;
const GROUP = 3;
const MOST_DIGITS = 12;
const MOST_DECIMALS = 9;

const WRITE_PLAINLY = 'Write the number plainly, such as 102.5.';

/** Full-width digits, a minus sign of typography, and the apostrophe that forces text, brought to plain characters. */
const plainText = (text: string): string => text.normalize('NFKC').replace(/[−–]/g, '-').replace(/^'/, '').trim();

/** The decimal mark that this text proves: a mark that is followed by other than three digits groups no thousands. */
export const markProvedBy = (text: string): DecimalMark => {
  const plain = plainText(text);
  const [, mark, decimals = ''] = ONE_MARK.exec(plain) ?? [];
  if (mark && decimals.length !== GROUP) return mark as DecimalMark;
  const [, , group, last] = THOUSANDS_THEN_DECIMALS.exec(plain) ?? [];
  return last && last !== group ? (last as DecimalMark) : null;
};

/** The mark of a sheet: the one that its numbers prove, where they do not contradict each other. */
export const decimalMark = (texts: readonly string[]): DecimalMark => {
  const proved = new Set(texts.flatMap((text) => markProvedBy(text) ?? []));
  const [only] = proved;
  return proved.size === 1 && only ? only : null;
};

/** "007.50" is "7.5" to nobody but the program: only a decimal point and the digits before it are made plain. */
const tidy = (sign: string, whole: string, decimals: string): Value<string> => {
  const digits = whole.replace(/^0+(?=\d)/, '');
  if (digits.length > MOST_DIGITS)
    return wrong('The number has too many digits.', `It has ${digits.length} before the decimals.`, WRITE_PLAINLY);
  const kept = decimals.slice(0, MOST_DECIMALS);
  const text = `${sign === '-' ? '-' : ''}${digits === '' ? '0' : digits}${kept === '' ? '' : `.${kept}`}`;
  return decimalOf(text) === null
    ? wrong(`${quoted(text)} is not a number.`, 'It cannot be read as one.', WRITE_PLAINLY)
    : valued(text);
};

const readPlain = (plain: string, mark: DecimalMark): Value<string> | null => {
  const [, sign = '', whole = '', found, decimals = ''] = /^([+-]?)(\d*)(?:([.,])(\d+))?$/.exec(plain) ?? [];
  if (whole === '' && decimals === '') return null;
  const groups =
    found !== undefined && decimals.length === GROUP && whole.length <= GROUP && whole !== '' && whole !== '0';
  if (groups && found !== mark && !(mark === null && found === '.')) {
    return wrong(
      `${quoted(plain)} can be read as two numbers.`,
      `The ${found === ',' ? 'comma' : 'point'} may stand before decimals or between thousands.`,
      'Write the number without a mark for thousands.',
    );
  }
  return tidy(sign, whole, decimals);
};

const readGrouped = (plain: string): Value<string> | null => {
  const [, , group, last] = THOUSANDS_THEN_DECIMALS.exec(plain) ?? [];
  if (!group || !last || group === last) return null;
  return readPlain(plain.replaceAll(group, '').replace(',', '.'), '.');
};

/** A decimal number as text with a point, as it was typed; a comma counts as the sheet's mark says. */
export const readDecimal = (text: string, mark: DecimalMark): Value<string> => {
  const plain = plainText(text);
  if (saysNothing(plain)) return BLANK_VALUE;
  const read = readPlain(plain, mark) ?? readGrouped(plain);
  return read ?? wrong(`${quoted(text)} is not a number.`, reasonWhyNot(plain), WRITE_PLAINLY);
};

const reasonWhyNot = (plain: string): string => {
  if (/^[+-]?(nan|#n\/a|#div\/0!|#value!|#ref!|#name\?|#num!|#null!)$/i.test(plain))
    return 'A calculation in the file failed.';
  if (/^[+-]?(inf|infinity|∞)$/i.test(plain)) return 'No load, mass or count is infinite.';
  if (/^[+-]?[\d.]+e[+-]?\d+$/i.test(plain)) return 'It is written with an exponent.';
  if (/^[=+@-]/.test(plain)) return 'It looks like a formula; formulas are never run.';
  return 'A number is expected here.';
};

/** A decimal text times two or half, exactly: digits are kept, nothing is rounded but a tenth decimal. */
export const doubled = (text: string): string => timesTenths(text, 20n);
export const halved = (text: string): string => timesTenths(text, 5n);
/** Metres as centimetres. */
export const hundredfold = (text: string): string => timesTenths(text, 1000n);

const timesTenths = (text: string, tenths: bigint): string => {
  const [whole = '0', decimals = ''] = text.replace('-', '').split('.');
  const product = String(BigInt(whole + decimals) * tenths).padStart(decimals.length + 2, '0');
  const cut = product.length - decimals.length - 1;
  const rest = product.slice(cut, cut + MOST_DECIMALS).replace(/0+$/, '');
  return `${text.startsWith('-') ? '-' : ''}${product.slice(0, cut)}${rest === '' ? '' : `.${rest}`}`;
};

/** A decimal text with a whole number added. */
export const increasedBy = (text: string, whole: bigint): string => {
  const [before = '0', decimals] = text.split('.');
  return decimals === undefined ? String(BigInt(before) + whole) : `${BigInt(before) + whole}.${decimals}`;
};
