import { placeSupports } from './placeSupports.ts';

/** Runs laid out for each draw: placing, finding faults, packing lengths, jobs. */
export const routes = { 'place-supports': placeSupports };
