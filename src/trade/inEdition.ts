import type { Answered } from './answer.ts';
import type { Edition } from './editions.ts';
import type { Limit } from './limit.ts';

/**
 * Works in the edition that is named; where none is, in the one that the site has adopted, and says so; else in the
 * newest known here.
 */
export function inEdition<Given extends { readonly edition?: Edition | undefined }, Result>(
  given: Given,
  adopted: Limit<Edition> | null,
  work: (given: Given) => Answered<Result>,
): Answered<Result> {
  if (given.edition !== undefined || adopted === null) return work(given);
  const { value: edition, source } = adopted;
  const { result, steps, sources } = work({ ...given, edition });
  const values = { edition, document: source.document, on: source.edition, by: source.where };
  return { result, steps: [...steps, { say: 'rests.edition', values }], sources: [...sources, source] };
}
