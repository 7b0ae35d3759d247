import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

const trials = process.env['BALLAST_TRIALS'] === '1';
const MINUTE = 60_000;

/** Limits against a test that hangs; none of them is an assertion about speed. */
const patience = { testTimeout: trials ? 60 * MINUTE : 2 * MINUTE, hookTimeout: 5 * MINUTE, teardownTimeout: MINUTE };

const storage = 'src/storage/**/*.storage.test.ts';
const freshBuild = ['scripts/fresh-build.setup.mjs'];

/** One kind of test: where it is found and what it needs before it runs. */
const project = (name: string, include: string[], more: object = {}) => ({
  extends: true as const,
  test: { name, include, setupFiles: ['test/property-runs.setup.ts'], ...patience, ...more },
});

export default defineConfig({
  plugins: [react()],
  css: { modules: { generateScopedName: '[local]' } },
  test: {
    maxWorkers: 2,
    // Named by its content, so that a changed file is translated anew; every import here says its whole path.
    experimental: { fsModuleCache: true, fsModuleCachePath: 'node_modules/.cache/modules' },
    projects: [
      // Modules hold no state that a test could leave behind, so that files may share them: a fifteenth of the time.
      // Trials give each file its own, and would show a test that leans on another.
      project('unit', ['src/**/*.test.{ts,tsx}', 'test/*.test.ts'], { exclude: [storage], isolate: trials }),
      project('storage', [storage]),
      project('faults', ['test/faults/**/*.test.ts'], { globalSetup: freshBuild }),
      project('browser', ['test/browser/**/*.test.ts'], { globalSetup: freshBuild, fileParallelism: false }),
    ],
  },
});
