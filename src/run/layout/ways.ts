/** Ways to fewer stock lengths, and to a bound that is not under them; tried one after another. */
import { inches, ticks } from '../../trade/length.ts';
import { chanceOf } from '../../trade/sticks/chance.ts';
import { sticks } from '../../trade/sticks/sticks.ts';
import type { Search, SearchLine } from './best.ts';
import { fitInto } from './exact.ts';
import { packings } from './pack.ts';
import { byChance, byParts, byPiece } from './price.ts';
import { refill } from './refill.ts';

/** Pairs of neighbouring supports gone through at prices by parts, by chance too, and until lines are laid anew. */
const MOST_WORK = { parts: 1_500_000, chance: 2_200_000, refill: 2_800_000 };

type Way = (search: Search) => void;

/** Pieces that cannot be otherwise must be cut from something. */
const bySettled: Way = (search) => {
  const { settled, stock } = search;
  if (settled.length === 0) return;
  const { lowerBoundIn } = sticks({
    stock: [{ length: ticks(stock.length) }],
    pieces: settled.map((cut) => ({ length: ticks(cut), count: 1 })),
    kerf: ticks(stock.kerf),
  }).result;
  search.atLeast(Math.round((lowerBoundIn ?? 0) / inches(ticks(stock.length))));
};

/** All channel with its cuts; a splice more takes its opening away and adds a cut. */
const byArea: Way = (search) => {
  const { lines, stock } = search;
  const fewest = search.lay(byPiece(stock));
  const { before, behind } = (lines[0] as SearchLine).problem.splice;
  const each = stock.kerf - before - behind;
  const pieces = each < 0 ? -search.lay(byPiece(stock, -1)) : fewest;
  const area = lines.reduce(
    (sum, { problem: { channel } }) => sum + channel[1] - channel[0] + before + behind,
    0,
  );
  search.atLeast(Math.ceil((area + pieces * each) / (stock.length + stock.kerf)));
};

const byWeight: Way = (search) => {
  for (let parts = 2; parts <= 6 && !search.done; parts++) {
    if (search.work + search.step * parts > MOST_WORK.parts) return;
    const { price, most } = byParts(parts, search.stock);
    search.atLeast(Math.ceil(search.lay(price) / most));
  }
};

/** Lay-outs that no thought-out price leads to, and that fit those of other lines. */
const byManyPrices: Way = (search) => {
  const chance = chanceOf(search.lines.length);
  for (let n = 0; n < 60 && search.loose.length > 0 && !search.done; n++) {
    const price = byChance(chance, search.stock);
    if (search.work + search.step * price.steps.length > MOST_WORK.chance) return;
    search.lay(price);
  }
};

/** Ways on from a label, about, when a line is laid into rooms. */
const ROOM_WAYS = 40;

const byRefilling: Way = (search) => {
  const { loose } = search;
  for (let turn = 0; turn < 2 * loose.length && !search.done; turn++) {
    search.work += search.step * ROOM_WAYS;
    if (search.work > MOST_WORK.refill) return;
    const from = turn % loose.length;
    const order = [...loose.slice(from), ...loose.slice(0, from)];
    const layouts = refill(
      turn < loose.length ? order : order.toReversed(),
      search.chosen,
      search.ready,
      search.stock,
    );
    if (layouts !== null) search.add(layouts);
  }
};

/** First one piece a room, then two at most, then as may be: the plainer, the sooner found. Steps allowed. */
const SHARES = [
  { parts: 1, each: 600_000, all: 8_000_000 },
  { parts: 2, each: 1_500_000, all: 6_000_000 },
  { parts: Number.POSITIVE_INFINITY, each: 2_000_000, all: 6_000_000 },
] as const;
/** Beyond so many pieces, sharing out stock lengths one by one leads nowhere in good time. */
const FEW_PIECES = 14;
const MOST_PACKINGS = 300;

const bySharing: Way = (search) => {
  const pieces = search.chosen.reduce((sum, { cuts }) => sum + cuts.length, 0);
  if (pieces > FEW_PIECES || search.loose.length === 0) return;
  while (!search.done && shareOut(search));
};

/** Looks for as many stock lengths as the bound. @returns true where there are none, and the bound has risen */
function shareOut(search: Search): boolean {
  const { stock, settled, bound } = search;
  const loose = search.ready.filter((one) => one !== null);
  const ways = packings(settled, stock, bound, MOST_PACKINGS);
  let open = ways.rooms;
  for (const { parts, each, all } of SHARES) {
    let steps: number = all;
    const left: (readonly number[])[] = [];
    for (const rooms of open) {
      const { layouts, whole, work } = fitInto(loose, rooms, stock.kerf, {
        parts,
        steps: Math.min(each, steps),
      });
      steps -= work;
      if (layouts !== null) {
        search.settle(layouts, bound);
        return false;
      }
      if (!whole || parts !== Number.POSITIVE_INFINITY) left.push(rooms);
    }
    open = left;
  }
  if (open.length > 0 || !ways.all) return false;
  search.atLeast(bound + 1);
  return true;
}

export const WAYS: readonly Way[] = [bySettled, byArea, byWeight, byManyPrices, byRefilling, bySharing];
