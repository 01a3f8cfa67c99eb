/** Tube in tray (T12, T14): what may lie beside cables, and what else a channel is taken for. NFPA 70, 300.8. */
import { mayGo, mustAsk, mustStop, scenesModel } from '../parts/scenes.ts';

const wants = { tubes: 'whole', feet: 'whole', size: ['quarter', 'three-eighths', 'half'] } as const;

export const tubeInTray = scenesModel({
  wants,
  asks: 5,
  scenes: {
    'air-tube': mustStop('airIsHarmless'),
    'tied-under': mustAsk('tiedToTray'),
    'empty-tube': mustStop('emptyIsNothing'),
    'water-drain': mustStop('drainIsHarmless'),
    'drawn-inside': mustAsk('drawingIsEnough'),
    'tube-crosses': mustAsk('crossingOverlooked'),
    'foot-on': mustStop('steppedOn'),
    'hoist-from': mustStop('hoistedFrom'),
    'own-strut': mayGo(),
    'fibre-cable': mayGo(),
    'moved-out': mayGo(),
    'air-below': mayGo(),
    'ladder-tied': mayGo(),
  },
});
