/** Lengths as a person hears them, for the words of a drawing. */

import type { Ticks } from '../trade/length.ts';
import type { Speak } from '../trade/say.ts';
import { shortLength } from '../trade/shortLength.ts';

/** `63 ft 7 1/2 in`, `5 in`, `20 ft`. */
export function spoken(length: Ticks, speak: Speak): string {
  const [feet, inches] = shortLength(length).replace('"', '').split("'-");
  if (inches === undefined) return speak({ say: 'drawing.inches', values: { inches: feet ?? '' } });
  const values = { feet: feet ?? '', inches };
  return speak({ say: inches === '0' ? 'drawing.feet' : 'drawing.feetInches', values });
}

/** Lengths in a text as a person hears them: `24'-8 1/2"` is `24 ft 8 1/2 in`, `20'-0"` is `20 ft`. */
export function heard(text: string): string {
  return text
    .replace(/(\d+)'-0"/g, '$1 ft')
    .replace(/(\d+)'-(\d[\d /]*)"/g, '$1 ft $2 in')
    .replaceAll('"', ' in');
}

/** Sentences to one text. */
export function together(sentences: readonly (string | undefined)[]): string {
  return sentences.filter((s) => s !== undefined && s !== '').join(' ');
}
