/** "f" and "1 + n / 30" make one equation; what says itself of what it is the equation stays as it is. */
export const wholeEquation = (symbol: string, equation: string): string => {
  const [left = '', right] = equation.split('=', 2);
  return right !== undefined && left.startsWith(symbol) && !left.includes(',') ? equation : `${symbol} = ${equation}`;
};
