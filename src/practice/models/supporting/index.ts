import { stepsModel } from '../parts/steps.ts';

/** Supports: where they stand, what they carry. */
export const supporting = { steps: stepsModel };
