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
          // Rooms without state: what one file has loaded serves the next. A test that changes something puts it back.
          isolate: false,
          // Left to itself the runner keeps a processor free: half of what a small machine has.
          maxWorkers: '100%',
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
          // One patience for all that is waited for, the browser's own; no test has another.
          expect: { poll: { timeout: 30_000 } },
          testTimeout: 120_000,
          hookTimeout: 60_000,
          maxWorkers: '100%',
        },
      },
    ],
  },
});
