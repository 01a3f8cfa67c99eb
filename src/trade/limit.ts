/** A figure with what it rests on, and the line of the working that says so. */
import type { Source, Step } from './answer.ts';

/**
 * - `code`: a code states it
 * - `training`: remembered, common practice or invented: it serves training until the site adopts its own
 * - `adopted`: the site has adopted it in writing; its source is the site's paper, the day, and who signed
 */
export type Rests = 'code' | 'training' | 'adopted';

export interface Limit<Value> {
  readonly value: Value;
  readonly source: Source;
  readonly rests: Rests;
}

/** Says of a limit that the site has adopted it, by whom and on what day, or that nobody has. Nothing of a code's. */
export function restsOn({ source, rests }: Pick<Limit<unknown>, 'source' | 'rests'>): readonly Step[] {
  const { document, edition, where } = source;
  if (rests === 'adopted') return [{ say: 'rests.adopted', values: { document, on: edition, by: where } }];
  return rests === 'training' ? [{ say: 'rests.training' }] : [];
}
