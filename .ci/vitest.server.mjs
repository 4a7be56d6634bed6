// The tests that need the built folder: they come after the build, the others before it.
import path from 'node:path';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: path.resolve(import.meta.dirname, '..'),
  test: {
    include: ['tests/server/**/*.test.ts'],
    environment: 'node',
    // a limit is for tests that hang, on a shared machine, too
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
