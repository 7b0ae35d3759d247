import { decimalOf } from '#units/entered.ts';

/** Delivered over set, to four decimals: finer than any load cell on a machine. Null unless both are loads. */
export const deliveredOver = (set: string, delivered: string): string | null => {
  const [commanded, came] = [decimalOf(set), decimalOf(delivered)];
  if (commanded === null || came === null || commanded <= 0 || came <= 0) return null;
  return String(Number((came / commanded).toFixed(4)));
};
