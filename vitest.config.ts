import { defineConfig } from 'vitest/config';

// Four kinds of test, told apart by their file name or folder.
export default defineConfig({
  test: {
    pool: 'forks',
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['packages/*/src/**/*.test.ts', 'apps/*/src/**/*.test.ts', 'tests/reference/**/*.test.ts'],
          exclude: ['**/*.db.test.ts', '**/node_modules/**'],
          // Some decode video in a child process; a busy machine is no failure.
          testTimeout: 30_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'integration',
          include: ['packages/*/src/**/*.db.test.ts', 'apps/*/src/**/*.db.test.ts'],
          globalSetup: ['packages/testing/src/global-setup.ts'],
          testTimeout: 120_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'schema',
          include: ['tests/schema/**/*.test.ts'],
          globalSetup: ['packages/testing/src/global-setup.ts'],
          testTimeout: 120_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'journeys',
          include: ['tests/journeys/**/*.test.ts'],
          globalSetup: ['tests/journeys/global-setup.ts'],
          testTimeout: 300_000,
          hookTimeout: 300_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
