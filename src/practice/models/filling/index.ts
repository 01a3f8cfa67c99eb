import { fillCheck } from './fillCheck.ts';

/** Cables in the channel: fill, bends, what lies beside what. */
export const filling = { 'fill-check': fillCheck };
