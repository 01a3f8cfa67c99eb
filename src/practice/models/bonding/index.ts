import { bareMetal } from './bareMetal.ts';

/** Bonding, expansion, the transition from ladder tray. */
export const bonding = { 'bare-metal': bareMetal };
