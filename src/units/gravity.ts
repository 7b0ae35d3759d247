/** Standard gravity, exact by definition (3rd General Conference on Weights and Measures, 1901) [m/s²]. */
export const STANDARD_GRAVITY = 9.80665;
