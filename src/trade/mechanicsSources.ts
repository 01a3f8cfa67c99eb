/** Where the mechanics and the figures of metals come from; the entries of the same ids in content/sources say more. */
import type { Source } from './answer.ts';

function memory(id: string, document: string, where: string): Source {
  return { id, document, edition: 'no edition', where, seen: 'memory' };
}

export const THREE_MOMENTS: Source = memory(
  'statics',
  'Statics and strength of materials, any textbook',
  "Clapeyron's equation of three moments",
);
export const SIMPLE_BEAM: Source = memory(
  'statics',
  'Statics and strength of materials, any textbook',
  'simple beam: moment wL²/8 and PL/4, deflection 5wL^4/384EI and PL³/48EI',
);
export const PARALLEL_AXES: Source = memory(
  'statics',
  'Statics and strength of materials, any textbook',
  'parallel-axis theorem',
);
export const WEIGHTS: Source = memory(
  'statics',
  'Statics and strength of materials, any textbook',
  'a weight is shared evenly by supports that give alike',
);
/** 490 lb/ft³ = 0.2836 lb/in³. */
export const STEEL_DENSITY: Source = {
  id: 'steel-designers-handbook',
  document: "Structural Steel Designer's Handbook",
  edition: 'no edition',
  where: 'p. 1.4, density of steel',
  seen: 'page',
};
/** k = 0.43 of a flat element with one free edge; safety factor 1.67 in bending. */
export const LEG_BUCKLING: Source = memory(
  'aisi-s100',
  'AISI S100, Design of Cold-Formed Steel Structural Members',
  'local buckling of an unstiffened element, 0.43; safety factor in bending, 1.67',
);
export const CONCENTRATED: Source = {
  id: 'nema-ve-1',
  document: 'NEMA VE 1, Metal Cable Tray Systems',
  edition: 'extract of section 6',
  where: 'concentrated static load: 2P/L added to the uniform load',
  seen: 'page',
};
