/** Figures of metals for an estimate of strength: least yield, never typical; modulus of elasticity; Poisson's ratio. */
import type { Source } from './answer.ts';

export type Metal = 'aluminium' | 'steel' | 'stainless';

export interface MetalFigures {
  readonly yieldPsi: number;
  readonly ePsi: number;
  readonly poisson: number;
  readonly sources: readonly Source[];
}

const elastic = (where: string): Source => ({
  id: 'elastic-figures',
  document: "Handbook figures of modulus of elasticity and Poisson's ratio",
  edition: 'no edition',
  where,
  seen: 'memory',
});
const yields = (id: string, document: string, where: string): Source => ({
  id,
  document,
  edition: 'no edition',
  where,
  seen: 'memory',
});

export const METALS: Readonly<Record<Metal, MetalFigures>> = {
  steel: {
    yieldPsi: 33_000,
    ePsi: 29.0e6,
    poisson: 0.3,
    sources: [
      yields('astm-a653', 'ASTM A653 and A1011, Steel Sheet', 'structural grade 33: yield 33 000 psi'),
      elastic('steel: 29.0 million psi, 0.3'),
    ],
  },
  aluminium: {
    yieldPsi: 25_000,
    ePsi: 10.0e6,
    poisson: 0.33,
    sources: [
      yields('astm-b221', 'ASTM B221, Aluminium Extruded Profiles', '6063-T6: yield 25 000 psi'),
      elastic('aluminium: 10.0 million psi, 0.33'),
    ],
  },
  stainless: {
    yieldPsi: 30_000,
    ePsi: 28.0e6,
    poisson: 0.3,
    sources: [
      yields('astm-a240', 'ASTM A240, Stainless Steel Sheet', 'types 304 and 316: yield 30 000 psi'),
      elastic('stainless: 28.0 million psi, 0.3'),
    ],
  },
};
