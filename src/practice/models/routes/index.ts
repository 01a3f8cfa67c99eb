import { findFaults } from './findFaults.ts';
import { jobDrop } from './jobDrop.ts';
import { jobWallRun } from './jobWallRun.ts';
import { packLengths } from './packLengths.ts';
import { packRemnants } from './packRemnants.ts';
import { placeAnchor } from './placeAnchor.ts';
import { placeJumpers } from './placeJumpers.ts';
import { placeSplices } from './placeSplices.ts';
import { placeSupports } from './placeSupports.ts';

/** Runs laid out for each draw: placing, finding faults, packing lengths, jobs. */
export const routes = {
  'find-faults': findFaults,
  'job-drop': jobDrop,
  'job-wall-run': jobWallRun,
  'pack-lengths': packLengths,
  'pack-remnants': packRemnants,
  'place-anchor': placeAnchor,
  'place-jumpers': placeJumpers,
  'place-splices': placeSplices,
  'place-supports': placeSupports,
};
