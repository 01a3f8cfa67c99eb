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
