import { z } from 'zod';
import { EDITIONS } from '../../trade/editions.ts';
import type { OpenGapRule } from '../../trade/transition.ts';
import { lengthAbove0 } from '../length.ts';
import { citedShape } from '../source.ts';
import { type Cite, ruled } from './kind.ts';

const shape = z.strictObject({
  ...ruled('open gap'),
  limit: lengthAbove0,
  /** Editions whose words cover multiconductor cables. */
  judged: z.array(z.literal(EDITIONS)).min(1),
  source: citedShape,
});

export const openGap = {
  shape,
  read: ({ limit, judged, source }: z.infer<typeof shape>, cite: Cite): OpenGapRule => ({
    limit,
    judged,
    sources: cite.each(source),
  }),
};
