import { bareMetal } from './bareMetal.ts';
import { expansionGap } from './expansionGap.ts';
import { expansionSpacing } from './expansionSpacing.ts';
import { gapTwice } from './gapTwice.ts';
import { groundPath } from './groundPath.ts';
import { jointResistance } from './jointResistance.ts';
import { jumperList } from './jumperList.ts';
import { jumperSize } from './jumperSize.ts';
import { ladderTransition } from './ladderTransition.ts';
import { oneAnchor } from './oneAnchor.ts';

/** Bonding, expansion, the transition from ladder tray. */
export const bonding = {
  'bare-metal': bareMetal,
  'jumper-list': jumperList,
  'jumper-size': jumperSize,
  'ground-path': groundPath,
  'expansion-spacing': expansionSpacing,
  'expansion-gap': expansionGap,
  'gap-twice': gapTwice,
  'one-anchor': oneAnchor,
  'ladder-transition': ladderTransition,
  'joint-resistance': jointResistance,
};
