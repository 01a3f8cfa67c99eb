/** Fastening to the structure (T02, T03): leave to weld, clamp and drill, the anchor for its base, the clamp for its flange. */
import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = {
  edge: 'decimal',
  leastEdge: 'decimal',
  depth: 'decimal',
  wantedDepth: 'decimal',
  flange: 'decimal',
  jaw: 'decimal',
} as const;
type D = Drawn<typeof wants>;

const edge: Scene<D> = heldAgainst({
  seen: (d) => d.edge,
  limit: (d) => d.leastEdge,
  beyond: 'below',
  atLimit: 'holds',
  right: 'ask',
  unit: 'in',
  habits: { edgeByEye: () => 0 },
});
/** A hole that is too shallow is drilled on before the anchor goes in. */
const depth: Scene<D> = heldAgainst({
  seen: (d) => d.depth,
  limit: (d) => d.wantedDepth,
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'in',
  habits: { shallowHole: () => 0 },
});
const flange: Scene<D> = heldAgainst({
  seen: (d) => d.flange,
  limit: (d) => d.jaw,
  beyond: 'above',
  atLimit: 'holds',
  right: 'ask',
  unit: 'in',
  habits: { forcesClamp: () => Number.POSITIVE_INFINITY },
});

export const attachToSteel = scenesModel({
  wants,
  asks: 5,
  scenes: {
    edge,
    depth,
    flange,
    holes: mustAsk('drillsSteel'),
    tack: mustAsk('weldsSteel'),
    block: mustAsk('anyAnchor'),
    rail: mustAsk('hangsFromRail'),
    coat: mustAsk('stripsCoating'),
    bar: mustStop('cutsBar'),
    strap: mustStop('strapLater'),
    turning: mustStop('anchorTurns'),
    clamped: mayGo(),
    allowed: mayGo(),
    through: mayGo(),
    answered: mayGo(),
  },
});
