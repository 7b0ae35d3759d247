import { defineConfig } from 'vitest/config';

/** For mutation testing: the tests beside the sources, and those that live whole flights through the planner. */
export default defineConfig({
  test: {
    include: [
      'src/{units,science,domain,assessing,planning,following}/**/*.test.ts',
      'test/{worked-flight,results-move-loads,limits-and-holds,signatures-and-bounds,planning-laws}.test.ts',
    ],
    setupFiles: ['test/property-runs.setup.ts'],
  },
});
