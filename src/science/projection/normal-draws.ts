import type { Random } from '../random.ts';

/**
 * Fills a row with standard normal values, both of each pair of Box and Muller (1958). The first values are the same
 * however long the row is.
 */
export const fillNormals = ({ uniform }: Random, into: Float64Array): void => {
  for (let place = 0; place < into.length; place += 2) {
    // 1 − u keeps the logarithm from zero.
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    into[place] = radius * Math.cos(angle);
    // Behind the end of a row of odd length nothing is written.
    into[place + 1] = radius * Math.sin(angle);
  }
};
