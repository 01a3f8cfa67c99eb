import { useMemo } from 'react';
import type { Family } from '../../../practice/family.ts';
import type { WorldData } from '../../../practice/model.ts';
import { models } from '../../../practice/models/index.ts';
import type { Practice, Sheet } from '../../../practice/sheet.ts';

/** What a page hands its island to set, answer and grade sheets with. */
export interface PracticeGiven {
  readonly sheets: readonly Sheet[];
  readonly families: readonly Family[];
  readonly world: WorldData;
}

/** The same as src/practice takes it, by id; made once. */
export function usePractice({ sheets, families, world }: PracticeGiven): Practice {
  return useMemo(
    () => ({
      families: new Map(families.map((family) => [family.id, family])),
      sheets: new Map(sheets.map((sheet) => [sheet.id, sheet])),
      world: { ...world, models },
    }),
    [families, sheets, world],
  );
}
