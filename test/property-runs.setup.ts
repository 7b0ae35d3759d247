import fc from 'fast-check';

/**
 * Everyday runs draw the same cases each time, so that a red test is red for everyone; trials draw many more, from a
 * seed that `npm run trials` chooses and prints.
 */
const EVERYDAY = { runs: 100, seed: 20_011 };
const TRIALS = { runs: 10_000 };

const chosen = process.env['BALLAST_SEED'];
const seed = chosen === undefined ? EVERYDAY.seed : Number(chosen);
const numRuns = process.env['BALLAST_TRIALS'] === '1' ? TRIALS.runs : EVERYDAY.runs;

fc.configureGlobal({ seed, numRuns });
