/** Keys of the sentences that this room says; every language must have them. */
export const runSays = [
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
