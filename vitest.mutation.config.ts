import { defineConfig } from 'vitest/config';

/** For mutation testing: the tests beside the sources alone, which say by themselves whether a formula still holds. */
export default defineConfig({
  test: {
    include: ['src/{units,science,domain,assessing,planning,following}/**/*.test.ts'],
    setupFiles: ['test/property-runs.setup.ts'],
  },
});
