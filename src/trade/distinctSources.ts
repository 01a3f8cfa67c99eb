/** Sources of several answers put together. */
import type { Source } from './answer.ts';

/** Each source once, at its first place; two that differ in any part, as in the page, are two. */
export function distinctSources(sources: readonly Source[]): readonly Source[] {
  return [...new Map(sources.map((source) => [JSON.stringify(source), source])).values()];
}
