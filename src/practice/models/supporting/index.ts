import { attachToSteel } from './attachToSteel.ts';
import { dropLoad } from './dropLoad.ts';
import { loadPerFoot } from './loadPerFoot.ts';
import { longestSpan } from './longestSpan.ts';
import { plumbDrop } from './plumbDrop.ts';
import { pointLoad } from './pointLoad.ts';
import { rodLoad } from './rodLoad.ts';
import { singleSpanTable } from './singleSpanTable.ts';
import { stringAndLevel } from './stringAndLevel.ts';
import { strutLength } from './strutLength.ts';
import { supportBeforeElbow } from './supportBeforeElbow.ts';
import { supportPattern } from './supportPattern.ts';
import { supportSpacing } from './supportSpacing.ts';

/** Supports: where they stand, what they carry. */
export const supporting = {
  'support-spacing': supportSpacing,
  'support-pattern': supportPattern,
  'support-before-elbow': supportBeforeElbow,
  'load-per-foot': loadPerFoot,
  'longest-span': longestSpan,
  'single-span-table': singleSpanTable,
  'point-load': pointLoad,
  'rod-load': rodLoad,
  'drop-load': dropLoad,
  'strut-length': strutLength,
  'string-and-level': stringAndLevel,
  'plumb-drop': plumbDrop,
  'attach-to-steel': attachToSteel,
};
