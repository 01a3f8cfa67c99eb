import { expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { readLibrary } from '../../src/schema/library.ts';

test('the content has no fault', () => {
  expect(readLibrary(contentFiles()).faults).toEqual([]);
});

test('the task map has T01 to T15, six parts of T08, and eight outside tickets', () => {
  const { tasks, tickets } = readLibrary(contentFiles()).library;
  const numbers = Array.from({ length: 15 }, (_, i) => `T${String(i + 1).padStart(2, '0')}`);
  const parts = ['a', 'b', 'c', 'd', 'e', 'f'].map((p) => `T08${p}`);
  expect([...tasks.keys()].sort()).toEqual([...numbers, ...parts].sort());
  expect(tasks.get('T08')?.parts).toEqual(parts);
  expect([...tickets.keys()].sort()).toEqual(['W1', 'W2', 'W3', 'W4', 'W5', 'W6', 'W7', 'W8']);
});
