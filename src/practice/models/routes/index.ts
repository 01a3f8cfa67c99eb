import { findFaults } from './findFaults.ts';
import { placeSupports } from './placeSupports.ts';

/** Runs laid out for each draw: placing, finding faults, packing lengths, jobs. */
export const routes = { 'find-faults': findFaults, 'place-supports': placeSupports };
