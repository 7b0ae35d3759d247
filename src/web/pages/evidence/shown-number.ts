/** A number as a person reads it: six significant figures unless more matter, no trailing noughts. */
export const shownNumber = (value: number, figures = 6): string => {
  if (!Number.isFinite(value)) return value > 0 ? '∞' : value < 0 ? '−∞' : 'not a number';
  return powerOfTen(String(Number(value.toPrecision(figures)))).replaceAll('-', '−');
};

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** "1.2e-7" as 1.2 · 10⁻⁷. */
const powerOfTen = (text: string): string => {
  const [factor = text, power] = text.split('e');
  if (power === undefined) return text;
  const raised = power.replaceAll(/./g, (letter) => (letter === '-' ? '⁻' : (RAISED[Number(letter)] ?? '')));
  return `${factor} · 10${raised}`;
};

/** "0 to 100", "at most 1", "any". */
export const shownRange = ([low, high]: readonly [number, number]): string => {
  if (low === -Infinity && high === Infinity) return 'any';
  if (low === -Infinity) return `at most ${shownNumber(high)}`;
  if (high === Infinity) return `at least ${shownNumber(low)}`;
  return `${shownNumber(low)} to ${shownNumber(high)}`;
};

/** "kg", or nothing where a quantity has no unit. */
export const shownUnit = (unit: string): string => (unit === '1' ? '' : unit);
