import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** `unit` needs nothing but Node; `browser` needs the built site in dist/. */
export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          environment: 'node',
          setupFiles: ['src/setup/properties.ts'],
          // Tests of the command start a process a call; on a busy machine several of them pass 5 s.
          testTimeout: 60_000,
        },
      },
      {
        root,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          environment: 'node',
          testTimeout: 120_000,
          hookTimeout: 60_000,
          fileParallelism: true,
          maxWorkers: 2,
        },
      },
    ],
  },
});
