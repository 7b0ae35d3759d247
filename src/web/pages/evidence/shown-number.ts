/** A number as a person reads it: six significant figures, no trailing noughts. */
export const shownNumber = (value: number): string => {
  if (!Number.isFinite(value)) return value > 0 ? '∞' : value < 0 ? '−∞' : 'not a number';
  return String(Number(value.toPrecision(6))).replace('-', '−');
};

/** "0 to 100", "at most 1", "any". */
export const shownRange = ([low, high]: readonly [number, number]): string => {
  if (low === -Infinity && high === Infinity) return 'any';
  if (low === -Infinity) return `at most ${shownNumber(high)}`;
  if (high === Infinity) return `at least ${shownNumber(low)}`;
  return `${shownNumber(low)} to ${shownNumber(high)}`;
};
