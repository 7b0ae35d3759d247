/** International avoirdupois pound, exact by definition (1959 agreement) [kg]. */
export const KILOGRAMS_PER_POUND = 0.45359237;

/** The two units in which machines, bars and people are read. */
export type MassUnit = 'kg' | 'lb';

export const kilogramsPer = (unit: MassUnit): number => (unit === 'kg' ? 1 : KILOGRAMS_PER_POUND);
