import { fileURLToPath } from 'node:url';
import { defineConfig, type TestProjectInlineConfiguration } from 'vitest/config';

const root = fileURLToPath(new URL('../../', import.meta.url));

const pure = ['trade', 'run', 'drawing', 'practice', 'schema'].map((room) => `tests/${room}/**/*.test.ts`);

const unit = {
  environment: 'node',
  setupFiles: ['src/setup/properties.ts'],
  // Tests of the command start a process a call; on a busy machine several of them pass 5 s.
  testTimeout: 60_000,
} satisfies TestProjectInlineConfiguration['test'];

/** `unit` and `pure` need nothing but Node; `browser` needs the built site in dist/. */
export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', ...pure],
          ...unit,
        },
      },
      {
        root,
        test: {
          name: 'pure',
          include: pure,
          // Rooms without state: what one file has loaded serves the next, which saves most of what loading takes.
          isolate: false,
          ...unit,
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
