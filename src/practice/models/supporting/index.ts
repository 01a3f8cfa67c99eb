import { stepsModel } from '../parts/steps.ts';
import { dropLoad } from './dropLoad.ts';
import { loadPerFoot } from './loadPerFoot.ts';
import { longestSpan } from './longestSpan.ts';
import { pointLoad } from './pointLoad.ts';
import { rodLoad } from './rodLoad.ts';
import { supportSpacing } from './supportSpacing.ts';

/** Supports: where they stand, what they carry. */
export const supporting = {
  steps: stepsModel,
  'support-spacing': supportSpacing,
  'load-per-foot': loadPerFoot,
  'longest-span': longestSpan,
  'point-load': pointLoad,
  'rod-load': rodLoad,
  'drop-load': dropLoad,
};
