/** Offset in one plane (T01, T08f): two equal fittings, and the straight to cut between them. */
import { model } from '../../model.ts';
import { offsetSketch, sketchSays } from '../parts/offsetSketch.ts';
import {
  ANGLES,
  type AngleWord,
  type OffsetPlan,
  offsetAsks,
  offsetFacts,
  offsetPlan,
  offsetSays,
  offsetSlips,
} from '../parts/offsets.ts';

const angles = Object.keys(ANGLES) as AngleWord[];
const wants = { angle: angles, offset: 'length', takeOut: 'length', insertion: 'length' } as const;

export const offsetStraight = model<typeof wants, OffsetPlan>({
  wants,
  plan: offsetPlan,
  facts: offsetFacts,
  asks: offsetAsks,
  slips: offsetSlips,
  figures: ({ angleDeg, offset }, _, how) => [offsetSketch({ angleDeg, angle: 'given', offset }, how)],
  figured: ({ angleDeg, offset }) => [
    { kind: 'lengths', ticks: [offset] },
    { kind: 'slope', deg: angleDeg },
  ],
  says: [...offsetSays, ...sketchSays, 'offsets.sketchWords'],
});
