/** A load as the machine shows it: whole increments in the machine's own unit, without a unit. */
export const shownLoad = (increments: number, increment: string): string => {
  const decimals = increment.split('.')[1]?.length ?? 0;
  return (increments * Number(increment)).toFixed(decimals);
};
