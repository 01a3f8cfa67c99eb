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

/** Sentences to one text. */
export function together(sentences: readonly (string | undefined)[]): string {
  return sentences.filter((s) => s !== undefined && s !== '').join(' ');
}
