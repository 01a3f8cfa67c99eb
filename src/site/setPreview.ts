/** What a sheet asks, one draw of each part of it, as a bench gets it. Pure. */
import { type Draw, drawOf } from '../practice/draw.ts';
import { narrowed } from '../practice/narrow.ts';
import { type Practice, type Sheet, type SheetFamily, sheetSeed } from '../practice/sheet.ts';

/** The first place of each part, drawn as the part narrows its family; the others of the sheet are not drawn. */
export function firstDraws(
  sheet: Pick<Sheet, 'id' | 'families'>,
  bench: number,
  { families, world }: Practice,
): readonly { readonly part: SheetFamily; readonly draw: Draw }[] {
  let next = 1;
  return sheet.families.flatMap((part) => {
    const place = next;
    next += part.draws;
    const family = families.get(part.family);
    if (family === undefined) return [];
    return [{ part, draw: drawOf(narrowed(family, part.narrow), sheetSeed(sheet.id, bench, place), world) }];
  });
}
