/** Bonding, expansion, the transition from ladder tray. */
export const bonding = {};
