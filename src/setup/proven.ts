import type { AstroIntegration } from 'astro';
import { staleProofs } from '../cli/proofHashes.ts';

/** Stops a build whose practice families were not proven as they now are; the proofs themselves run in `npm test`. */
export function proven(): AstroIntegration {
  return {
    name: 'proven',
    hooks: {
      'astro:build:start': () => {
        const stale = staleProofs();
        if (stale.length === 0) return;
        throw new Error(stale.map((f) => `${f.file}: ${f.field}: ${f.message}; ${f.todo}`).join('\n'));
      },
    },
  };
}
