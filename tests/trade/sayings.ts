import { describe, expect, test } from 'vitest';
import { speaker } from '../../src/schema/words.ts';
import type { Answered, Say } from '../../src/trade/answer.ts';
import { placesOf } from '../../src/trade/say.ts';
import { library } from './tables.ts';

const words = library.words.get('en') ?? new Map<string, string>();

/** Holds a list of sentences against what is said: `answers` is one call or more for every sentence of the list. */
export function holdSays(listed: readonly string[], answers: readonly Answered<object>[]): void {
  const said: readonly Say[] = answers.flatMap(({ result, steps }) => [
    ...steps,
    ...('why' in result ? ((result.why ?? []) as readonly Say[]) : []),
  ]);

  describe('sentences of the working', () => {
    test('every sentence listed is said, and every sentence said is listed', () => {
      expect([...new Set(said.map((s) => s.say))].sort()).toEqual([...listed].sort());
    });

    test('each has words, and its values are exactly the places of its words', () => {
      for (const { say, values = {} } of said) {
        const text = words.get(say) ?? '';
        expect([say, text === '']).toEqual([say, false]);
        expect([
          say,
          ...Object.keys(values)
            .filter((v) => placesOf(text).includes(v))
            .sort(),
        ]).toEqual([say, ...placesOf(text)]);
      }
    });

    test('a number in a sentence is short; the value beside it is not rounded', () => {
      const speak = speaker(words);
      for (const line of said.map(speak)) expect(line).not.toMatch(/\d\.\d{5}/);
    });
  });
}
