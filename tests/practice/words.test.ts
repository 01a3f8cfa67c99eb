/** What an apprentice reads: the words of a draw are enough to answer it, and say one thing only. */
import { describe, expect, test } from 'vitest';
import { keyOf } from '../../src/practice/key.ts';
import { showDraw } from '../../src/practice/show.ts';
import { draw, finding, how, language, world } from './means.ts';

const shown = (id: string, seed: string) => {
  const one = draw(id, seed);
  return { one, ...showDraw(one, world, language, how) };
};

test('the tape is read from the words of its figure: whole feet passed, inch, sixteenths', () => {
  for (let seed = 0; seed < 60; seed++) {
    const { one, figures, text } = shown('read-feet-inch', `w${seed}`);
    const [, feet, inch, marks] =
      /passed (\d+) whole feet\..* inch mark (\d+) and (\d+) of the 16/.exec(figures[0]?.words ?? '') ?? [];
    const reading = Number(feet) * 12 + Number(inch) + Number(marks) / 16;
    expect(one.right['tape']).toBe(reading - (text.includes('1-in mark') ? 1 : 0));
  }
});

describe('fill', () => {
  test('says how finely the area is wanted', () => {
    expect(shown('fill-check', 'hand-2').asks[0]?.prompt).toContain('hundredths');
  });

  test('over what the project leaves and within the table: asking is not told that the table says no', () => {
    for (let seed = 0, met = 0; met < 5; seed++) {
      const one = draw('fill-check', `s${seed}`);
      if (!one.wrong.some((w) => w.mistake.id === 'spare-forgotten')) continue;
      met += 1;
      const { mistake, says } = finding(one, 'within', 'ask');
      expect(mistake).toBe('asked-though-over');
      expect(says).toContain('above what may be used');
      expect(says).not.toMatch(/table|limit/);
    }
  });

  test('a line of the working that ends in a number leads up to it', () => {
    const { working } = keyOf(draw('fill-check', 'hand-2'), world, language);
    expect(working[0]).toBe('5 × pi × (0.54 in)² / 4: 1.1451 in²');
    for (const line of working) expect(line).not.toMatch(/\. \d/);
  });
});

test('steps on the cut piece cannot be taken for steps before the cut', () => {
  for (let seed = 0; seed < 40; seed++)
    for (const { id, text } of shown('order-of-cutting', `w${seed}`).asks[0]?.items ?? [])
      if (id === 'measure' || id === 'square') expect(text).toMatch(/\bcut\b/);
});
