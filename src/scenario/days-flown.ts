/** Home again, half of what flight took is back every thirty days. */
const HALF_BACK = 30;

/** Days of flight that a body still shows on a day; negative before launch. All counted from one and the same day. */
export const daysFlown = (day: number, launch: number, landing: number | null): number => {
  const landed = landing ?? Infinity;
  return day <= landed ? day - launch : (landed - launch) * 2 ** (-(day - landed) / HALF_BACK);
};
