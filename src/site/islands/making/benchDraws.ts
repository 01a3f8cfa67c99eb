import { useMemo } from 'react';
import { type Practice, type Sheet, sheetDraws } from '../../../practice/sheet.ts';
import { tellDraw } from '../../../practice/show.ts';
import type { Language } from '../../../practice/words.ts';

/** Every draw of a sheet at a bench, with what is told of it. */
export function useBenchDraws(sheet: Sheet, bench: number, practice: Practice, language: Language) {
  return useMemo(
    () =>
      sheetDraws(sheet, bench, practice).map(({ place, draw }) => ({
        place,
        draw,
        shown: tellDraw(draw, practice.world, language),
      })),
    [bench, sheet, practice, language],
  );
}
