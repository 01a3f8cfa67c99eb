/** Pieces into stock lengths by first fit, longest first: quick, and the measure by which lay-outs are compared. */

export interface Stock {
  readonly length: number;
  readonly kerf: number;
}

/** What is left of each stock length, for one more piece with its cut; the saw may fall off the end. */
export type Rooms = readonly number[];

/**
 * @param pieces  none longer than the stock
 * @returns       room left in each stock length opened, counted with a kerf for the piece that would take it
 */
export function firstFit(pieces: readonly number[], { length, kerf }: Stock): Rooms {
  const rooms: number[] = [];
  for (const piece of [...pieces].sort((a, b) => b - a)) {
    const need = piece + kerf;
    let i = 0;
    while (i < rooms.length && (rooms[i] as number) < need) i++;
    if (i === rooms.length) rooms.push(length + kerf);
    rooms[i] = (rooms[i] as number) - need;
  }
  return rooms;
}

/** How well pieces fit into stock lengths. */
export interface Fit {
  readonly used: number;
  /** The longest left-over. */
  readonly longest: number;
}

export function fitOf(layouts: readonly { readonly cuts: readonly number[] }[], stock: Stock): Fit {
  const rooms = firstFit(
    layouts.flatMap(({ cuts }) => cuts),
    stock,
  );
  return { used: rooms.length, longest: Math.max(...rooms) };
}

/** Fewer stock lengths, then a longer left-over. */
export const isBetter = (a: Fit, b: Fit): boolean =>
  a.used < b.used || (a.used === b.used && a.longest > b.longest);

export interface Packings {
  /** What each leaves, longest room first; of two the one whose first rooms are longer stands first. No two the same. */
  readonly rooms: readonly Rooms[];
  /** Whether those are all there are. */
  readonly all: boolean;
}

/** Ways to put pieces into so many stock lengths; where there are more than `most`, those that keep rooms long. */
export function packings(
  pieces: readonly number[],
  { length, kerf }: Stock,
  sticks: number,
  most: number,
): Packings {
  let all = true;
  let ways: readonly Rooms[] = [new Array<number>(sticks).fill(length + kerf)];
  for (const piece of pieces.toSorted((a, b) => b - a)) {
    const next = new Map<string, Rooms>();
    for (const rooms of ways) {
      for (const [i, room] of rooms.entries()) {
        if (room < piece + kerf || room === rooms[i - 1]) continue;
        const left = rooms.with(i, room - piece - kerf).sort((a, b) => b - a);
        next.set(left.join(), left);
      }
    }
    ways = [...next.values()].sort((a, b) => compare(b, a)).slice(0, most);
    all &&= ways.length === next.size;
  }
  return { rooms: ways, all };
}

/** The first difference decides. */
function compare(a: Rooms, b: Rooms): number {
  const i = a.findIndex((room, k) => room !== b[k]);
  return i < 0 ? 0 : (a[i] as number) - (b[i] as number);
}
