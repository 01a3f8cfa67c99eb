/** A sheet whose places several people answered, every one of them: what its items say of each other. */
import { type Sheet, sheetPlaces } from '../sheet.ts';
import type { Figure } from './figure.ts';
import { type Matrix, pointBiserial, pointBiserialWithout } from './item.ts';
import { errorOf, kr20 } from './reliability.ts';
import { type Share, shareOf } from './share.ts';
import type { Tried, Tries } from './tries.ts';

export interface ItemTally {
  readonly place: number;
  readonly family: string;
  readonly share: Share;
  readonly pointBiserial: Figure;
  /** Without the item in the total. */
  readonly pointBiserialWithout: Figure;
}

export interface SheetTally {
  readonly sheet: Pick<Sheet, 'id' | 'number' | 'title'>;
  /** Who answered it whole. */
  readonly people: number;
  /** Who answered a part of it; they are not counted in what follows. */
  readonly partly: number;
  readonly items: readonly ItemTally[];
  readonly kr20: Figure;
  /** In draws. */
  readonly error: Figure;
}

/** One a sheet of which anything was answered, in the order of the sheets' numbers. */
export function sheetTallies({ tried, sheets }: Pick<Tries, 'tried' | 'sheets'>): readonly SheetTally[] {
  return [...sheets]
    .sort(([, a], [, b]) => a.number - b.number)
    .map(([key, sheet]) =>
      sheetTally(
        sheet,
        tried.filter(({ on }) => on?.sheet === key),
      ),
    )
    .filter(({ people, partly }) => people + partly > 0);
}

function sheetTally(sheet: Sheet, own: readonly Tried[]): SheetTally {
  const places = sheetPlaces(sheet, 1);
  const rows: (readonly boolean[])[] = [];
  let partly = 0;
  for (const tries of Map.groupBy(own, ({ who }) => who).values()) {
    const row = [...Map.groupBy(tries, ({ on }) => on?.bench ?? 0)]
      .sort(([a], [b]) => a - b)
      .map(([, bench]) => bench.toSorted((a, b) => (a.on?.place ?? 0) - (b.on?.place ?? 0)))
      .find((bench) => bench.length === places.length);
    if (row === undefined) partly += 1;
    else rows.push(row.map(({ passed }) => passed));
  }
  return { sheet, people: rows.length, partly, ...figuresOf(rows, places) };
}

function figuresOf(matrix: Matrix, places: readonly { readonly place: number; readonly family: string }[]) {
  return {
    items: places.map(
      ({ place, family }, i): ItemTally => ({
        place,
        family,
        share: shareOf(matrix.filter((row) => row[i]).length, matrix.length),
        pointBiserial: pointBiserial(matrix, i),
        pointBiserialWithout: pointBiserialWithout(matrix, i),
      }),
    ),
    kr20: kr20(matrix),
    error: errorOf(matrix),
  };
}
