/** A number as it stands in a sentence: fixed decimals, a true minus sign, no minus before a nought. */
export const figure = (value: number, decimals: number): string => {
  const plain = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(plain) !== 0 ? `−${plain}` : plain;
};

/** A change with its sign in front, a rise too. */
export const signed = (value: number, decimals: number): string => {
  const plain = figure(value, decimals);
  return plain.startsWith('−') || Number(plain) === 0 ? plain : `+${plain}`;
};
