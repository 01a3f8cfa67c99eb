/**
 * Power and signal (T12): which cables share a space, and whether a barrier stands between them. Power-limited cables
 * keep apart from power by a solid fixed barrier: NFPA 70, 2017 and 2020, 725.136; later editions number it anew.
 */
import { mayGo, mustAsk, mustStop, scenesModel } from '../parts/scenes.ts';

const wants = {
  pairs: 'whole',
  volts: ['120', '208', '480'],
  apart: 'whole',
  feet: 'whole',
  before: 'whole',
} as const;

export const powerAndSignal = scenesModel({
  wants,
  asks: 5,
  scenes: {
    'no-barrier': mustStop('sideBySide'),
    'apart-only': mustStop('distanceEnough'),
    'loose-strip': mustStop('stripEnough'),
    'barrier-ends': mustStop('almostThrough'),
    'wrong-side': mustStop('laidWhereRoom'),
    'sheet-only': mustAsk('unmarkedTaken'),
    'drawn-without': mustAsk('drawingIsEnough'),
    'barrier-full': mustAsk('movedOver'),
    'barrier-set': mayGo(),
    'signal-only': mayGo(),
    'power-only': mayGo(),
    'own-channel': mayGo(),
    'right-side': mayGo(),
  },
});
