/**
 * What the page of a sum is built with, beside the sum itself: its number, the words its working says, what it is handed
 * of the content, its cautions. Build time only; none of it goes to the browser but what `data` hands over.
 */
import type { Library } from '../../schema/library.ts';
import type { SiteKey } from '../speak.ts';
import type { SumId } from './sum.ts';

interface SumPage {
  readonly number: string;
  readonly status: SiteKey;
  /** Begins with values that no works has adopted: its print says NOT FOR CONSTRUCTION. */
  readonly training: boolean;
  /** Groups of words that the core's steps and the figure say, beside the sum's own. */
  readonly words: readonly string[];
  readonly data?: (library: Library) => unknown;
  readonly caution?: { readonly word: 'caution' | 'warning'; readonly text: SiteKey };
  /** What the editions of the code say of it, newest first. */
  readonly editions?: readonly (readonly [edition: string, text: SiteKey])[];
}

export const sumPages: Readonly<Record<SumId, SumPage>> = {
  length: { number: 'TH-C04', status: 'sheet.arithmetic', training: false, words: ['length', 'drawing'] },
  mark: { number: 'TH-C05', status: 'sheet.training', training: true, words: ['mark'] },
};
