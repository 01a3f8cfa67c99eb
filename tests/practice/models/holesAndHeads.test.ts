/** Holes and heads of splices: common practice, no source; a sixteenth short or over in the sleeve is a training value. */
import { expect, test } from 'vitest';
import { job } from '../means.ts';

const scenes = (shown: readonly string[], off = 2) =>
  job('holes-and-heads', { scenes: shown, splice: 7, off, bolts: 2, proud: 4 });
const answers = (made: ReturnType<typeof scenes>) => [1, 2, 3, 4, 5].map((i) => made.answer(`scene-${i}`));

test('a large hole and a thread inside stop the job, a part of another make is asked', () => {
  const made = scenes(['large-hole', 'thread-inside', 'other-pattern', 'large-empty', 'kit-whole']);
  expect(answers(made)).toEqual(['stop', 'stop', 'ask', 'go', 'go']);
  expect(made.slipped('largeHolds', 'scene-1')).toBe('go');
  expect(made.slipped('threadInside', 'scene-2')).toBe('go');
  expect(made.slipped('patternIsClose', 'scene-3')).toBe('go');
});

test('the paint line on both sides of a sixteenth', () => {
  const shown = ['line', 'head-below', 'plate-slot', 'plate-right', 'lines-at-end'];
  expect(answers(scenes(shown, 1))).toEqual(['go', 'stop', 'stop', 'go', 'go']);
  expect(answers(scenes(shown, 2))).toEqual(['stop', 'stop', 'stop', 'go', 'go']);
  expect(scenes(shown, 2).slipped('nearEnough', 'scene-1')).toBe('go');
});
