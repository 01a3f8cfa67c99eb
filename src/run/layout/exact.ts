/**
 * Whether lines can be cut from what is left of so many stock lengths: by branching on how each room is shared out.
 *
 * The pieces in a room, longest first, are at most the whole, the half, the third of it, and so on. Slots of these
 * lengths are a looser demand, which cover.ts answers exactly: where no lay-out fits them, none fits the rooms. Where one
 * does and the pieces of some room are too long together, one of its slots is either shorter than the piece that
 * took it, or so long that the others get shorter. Both are tried, so that what is not found is not there.
 */
import type { Prepared } from './cheapest.ts';
import { cover, slotsOf } from './cover.ts';
import type { LineLayout } from './line.ts';

export interface Tried {
  /** One a line; null: none found. */
  readonly layouts: readonly LineLayout[] | null;
  /** Nothing is left to try: without lay-outs, there are none. */
  readonly whole: boolean;
  readonly work: number;
}

/** The slots of one room, longest first: between what and what the pieces in them are. */
interface Share {
  readonly least: readonly number[];
  readonly most: readonly number[];
}

/** Work that one share more to be tried is counted for at least. */
const EACH = 50;

/**
 * @param rooms  what pieces that are settled leave of each stock length, counted with a kerf
 * @param kerf   of each piece
 * @param parts  pieces in one room at most; what then is not found may be there with more
 * @param steps  of work allowed
 */
export function fitInto(
  lines: readonly Prepared[],
  rooms: readonly number[],
  kerf: number,
  { parts, steps }: { readonly parts: number; readonly steps: number },
): Tried {
  // No splice stands in the end spans: so many pieces at most.
  const pieces = lines.reduce((sum, { count }) => sum + Math.max(1, count - 2), 0);
  const piece = shortest(lines);
  const fresh = rooms.map((room): Share => {
    const slots = Math.min(parts, pieces, Math.floor(room / (piece + kerf)));
    const most = Array.from({ length: slots }, (_, i) => Math.floor(room / (i + 1)) - kerf);
    return { least: most.map(() => 0), most };
  });

  const need = needed(lines, kerf);

  let work = 0;
  const open: (readonly Share[])[] = [fresh];
  for (let shares = open.pop(); shares !== undefined; shares = open.pop()) {
    work += EACH;
    const room = shares.reduce((sum, share, i) => sum + held(share, rooms[i] as number, kerf), 0);
    if (room < need) continue;
    const tried = cover(lines, slotsOf(shares.flatMap(({ most }) => most)), steps - work);
    work += tried.work;
    if (tried.cut || work > steps) return { layouts: null, whole: false, work };
    if (tried.layouts === null) continue;
    const cuts = tried.layouts.flatMap((layout) => layout.cuts);
    const over = tooFull(shares, cuts, rooms, kerf);
    if (over === null) return { layouts: tried.layouts, whole: true, work };
    const whole = rooms[over.stick] as number;
    for (const share of parted(over, shares[over.stick] as Share, { room: whole, kerf, piece })) {
      open.push(shares.map((other, i) => (i === over.stick ? share : other)));
    }
  }
  return { layouts: null, whole: true, work };
}

/** No piece is shorter: it goes past one support at least, and half a sleeve stands clear of it on either side. */
function shortest(lines: readonly Prepared[]): number {
  const least = lines.map(({ problem: { splice, places, channel }, count, windows }) => {
    const [second] = windows[2] as readonly [number, number];
    const [, lastButOne] = windows[count - 1] as readonly [number, number];
    const first = (places[second] as number) + splice.length / 2 - splice.before - channel[0];
    const last = channel[1] - (places[lastButOne] as number) + splice.length / 2 - splice.behind;
    // With four supports there is one splice at most, and no piece between two.
    const between = count > 4 ? splice.length - splice.before - splice.behind : first;
    return Math.min(first, last, between);
  });
  return Math.max(1, Math.floor(Math.min(...least)));
}

/** Channel and cuts that the rooms must hold at least, with as many splices as make it least. */
function needed(lines: readonly Prepared[], kerf: number): number {
  return lines.reduce((sum, { problem: { channel, splice }, count }) => {
    const open = splice.before + splice.behind;
    return sum + channel[1] - channel[0] + kerf - Math.max(0, open - kerf) * (count - 3);
  }, 0);
}

/** What a room can take in at most. */
const held = ({ most }: Share, room: number, kerf: number): number =>
  Math.min(
    room,
    most.reduce((sum, m) => sum + Math.max(0, m) + kerf, 0),
  );

interface TooFull {
  readonly stick: number;
  /** Pieces in its slots, longest first. */
  readonly pieces: readonly number[];
  /** How much they are too long together. */
  readonly over: number;
}

/** The longest piece into the longest slot, and so on; the room that then is fullest above what it holds. */
function tooFull(
  shares: readonly Share[],
  cuts: readonly number[],
  rooms: readonly number[],
  kerf: number,
): TooFull | null {
  const slots = shares
    .flatMap(({ most }, stick) => most.map((m) => ({ stick, most: m })))
    .sort((a, b) => b.most - a.most || a.stick - b.stick);
  const held = shares.map((): number[] => []);
  for (const [i, cut] of [...cuts].sort((a, b) => b - a).entries())
    held[slots[i]?.stick as number]?.push(cut);
  let worst: TooFull | null = null;
  for (const [stick, pieces] of held.entries()) {
    const over = pieces.reduce((sum, piece) => sum + piece + kerf, 0) - (rooms[stick] as number);
    if (over > 0 && (worst === null || over > worst.over)) worst = { stick, pieces, over };
  }
  return worst;
}

/**
 * The two ways in which a share can be other than it is: with fewer pieces or with as many for certain, while that is
 * not settled; then with one of them shorter, or so long that the others are.
 */
function parted(
  { pieces, over }: TooFull,
  { least, most }: Share,
  { room, kerf, piece }: { readonly room: number; readonly kerf: number; readonly piece: number },
): readonly Share[] {
  const settled = least.findLastIndex((l) => l > 0) + 1;
  let [slot, at] = [Math.max(1, settled), 0];
  if (slot >= pieces.length) {
    const step = Math.ceil(over / pieces.length);
    let widest = -1;
    for (const [i, long] of pieces.entries()) {
      const [low, high] = [least[i] as number, most[i] as number];
      if (long > low && high - low > widest) {
        [slot, at] = [i, Math.max(low, long - step)];
        widest = high - low;
      }
    }
    if (widest < 0) return [];
  }
  const shorter = { least, most: most.map((m, i) => (i >= slot ? Math.min(m, at) : m)) };
  const from = Math.max(at + 1, piece);
  const longer = { least: least.map((l, i) => (i <= slot ? Math.max(l, from) : l)), most };
  return [tightened(longer, room, kerf), tightened(shorter, room, kerf)].filter((share) => share !== null);
}

/** What the slots of a room can be at most, when others are so long at least; null: they cannot all be. */
function tightened({ least, most }: Share, room: number, kerf: number): Share | null {
  const held = least.reduce((sum, l) => sum + (l > 0 ? l + kerf : 0), 0);
  if (held > room) return null;
  const tight: number[] = [];
  for (const [i, m] of most.entries()) {
    // The slots before it are no shorter; those behind take what they must.
    let behind = 0;
    for (const [k, l] of least.entries()) if (k > i && l > 0) behind += l + kerf;
    let before = 0;
    let even = i + 1;
    for (const [k, l] of least.entries()) {
      if (k >= i || l + kerf <= (room - behind - before) / even) continue;
      before += l + kerf;
      even--;
    }
    const share = Math.floor((room - behind - before) / even) - kerf;
    tight.push(Math.min(m, share, tight[i - 1] ?? m));
  }
  if (tight.some((t, i) => t < (least[i] as number))) return null;
  return { least, most: tight };
}
