import { inspectSays } from './inspect/says.ts';
import { layoutSays } from './layout/says.ts';
import { takeoffSays } from './takeoffSays.ts';

/** Sentences of a straight leg filled with whole lengths. */
export const straightSays = [
  'run.oneWhole',
  'run.wholes',
  'run.plusPiece',
  'run.plusGap',
  'run.plusGaps',
  'run.isRun',
  'run.piece',
  'run.pieceIn',
  'run.sleeve',
] as const;

/** Keys of the sentences that this room says; every language must have them. */
export const runSays = [...straightSays, ...takeoffSays, ...inspectSays, ...layoutSays] as const;
