import type { AstroIntegration } from 'astro';
import { contentFiles } from '../cli/contentFiles.ts';
import { staleProofs } from '../cli/proofHashes.ts';
import { readLibrary } from '../schema/library.ts';
import { refuseFaults } from '../schema/refusal.ts';

/**
 * Stops a build whose content does not hold, before Astro reads any of it and stops at the first fault it meets: every
 * fault of every file, practice families that were not proven as they now are among them.
 */
export function sound(): AstroIntegration {
  return {
    name: 'sound',
    hooks: {
      'astro:config:setup': ({ command }) => {
        if (command === 'build') refuseFaults([...readLibrary(contentFiles()).faults, ...staleProofs()]);
      },
    },
  };
}
