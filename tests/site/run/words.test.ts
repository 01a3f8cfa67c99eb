/** One and many in words, and names of files. */
import { expect, test } from 'vitest';
import { fileName } from '../../../src/site/run/fileName.ts';
import { provenKey } from '../../../src/site/run/words.ts';

test.each([
  [0, 'yourRun.proven-none'],
  [1, 'yourRun.proven-first'],
  [2, 'yourRun.proven-one'],
  [3, 'yourRun.proven-many'],
])('of %i sticks it is proven that one fewer does not do', (used, key) => expect(provenKey(used)).toBe(key));

test.each([
  ['', '', 'run', 'run.json'],
  ['', '', 'file', 'run-whole.json'],
  ['ALD-021', 'North rack', 'run', 'ald-021.run.json'],
  ['', 'North rack', 'file', 'north-rack.json'],
] as const)('number %j, name %j, the %s: %s', (number, name, which, called) =>
  expect(fileName({ number, name }, which)).toBe(called),
);
