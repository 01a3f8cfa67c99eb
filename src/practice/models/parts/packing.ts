/**
 * Pieces from whole lengths and remnants (T01, T06): the fewest whole lengths, which piece comes from which, what is left of
 * one, which ends are drilled. Any plan holds that cuts every piece once and opens no more whole lengths than needed; that
 * count is proven by the trade's search.
 */
import { drawSticks } from '../../../drawing/sticks/sticks.ts';
import type { Say, Step } from '../../../trade/answer.ts';
import { KERF } from '../../../trade/habits.ts';
import { fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { sticks } from '../../../trade/sticks/sticks.ts';
import type { Answer, Drawn, Facts, Model, Slip, StickCut, SticksGiven, World } from '../../model.ts';
import { length, number, rows, word } from '../../runs/facts.ts';
import { read } from './reads.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  /** Whether remnants lie in the rack. */
  rack: ['empty', 'full'],
  /** `close`: the last piece and the first make up a whole length, and with the saw cut no longer fit. `tight`: the last fits the first remnant with an inch over. */
  pair: ['open', 'close', 'tight'],
  pieces: { rows: { length: 'length' } },
  remnants: { rows: { length: 'length', ends: ['one', 'none'] } },
} as const;

interface Plan extends SticksGiven {
  readonly stock: Ticks;
  /** As the person cuts. */
  readonly cuts: readonly StickCut[];
  /** As the person counts whole lengths where that is no plan. */
  readonly counted?: number;
  /** Two pieces that come out of one length together, by their place in the list, and the saw cuts counted on them. */
  readonly two: readonly [number, number];
  readonly saws: number;
  /** Of each remnant, how many of its ends have holes. */
  readonly holed: readonly (0 | 1)[];
  readonly drills: 'where none are' | 'the new cut' | 'every end';
}

const WHOLE = 'whole';
const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

function plan({ width, rack, pair, pieces, remnants }: Drawn<typeof wants>, world: World): Plan | null {
  const stock = read(world, width, 'tray').length;
  const drawn = pieces.map((piece) => piece.length);
  const [first] = drawn;
  if (first === undefined) return null;
  const rest = rack === 'full' ? remnants.map((one) => one.length) : [];
  const last = { open: undefined, close: ticks(stock - first), tight: rest[0] && ticks(rest[0] - TIGHT) }[
    pair
  ];
  const cut = last === undefined ? drawn : [...drawn.slice(0, -1), last];
  if (new Set(cut).size < cut.length) return null;
  const from = [
    { id: WHOLE, length: stock, many: true },
    ...rest.map((one, i) => ({ id: `r${i + 1}`, length: one, many: false })),
  ];
  const given: SticksGiven = { from, pieces: cut, kerf: KERF.length };
  const best = fewest(given, stock);
  const two = firstTwo(given, stock);
  if (best === null || two === null) return null;
  const holed = rack === 'full' ? remnants.map(({ ends }) => (ends === 'one' ? 1 : 0)) : [];
  return { ...given, stock, cuts: best, two, saws: 2, holed, drills: 'where none are' };
}
/** Room beside a piece that fits with little over. */
const TIGHT = fromInches(1);
/** Less over than this may look as if it did not fit. */
const CLOSE = fromInches(2);

/** The first two of the list that come out of one length with something left. */
function firstTwo({ pieces, kerf }: SticksGiven, stock: Ticks): Plan['two'] | null {
  for (const [i, one] of pieces.entries())
    for (const [k, other] of pieces.entries())
      if (k > i && one + other + 2 * kerf + TIGHT <= stock) return [i, k];
  return null;
}
/** What is left of a whole length when the two are cut off it. */
const leftOf = ({ two: [i, k], pieces, stock, kerf, saws }: Plan): Ticks =>
  ticks(stock - (pieces[i] ?? 0) - (pieces[k] ?? 0) - saws * kerf);

/** Of one piece out of each remnant, shorter than it and with its holed end where it has one: ends without holes. */
const drilled = ({ holed, drills }: Plan): number =>
  sum(holed.map((has) => ({ 'where none are': 2 - has, 'the new cut': 1, 'every end': 2 })[drills]));

/**
 * A plan with the fewest whole lengths; null where the trade's search does not prove their count. Which plan it is, where
 * several have that count, is settled here and not by the search, that a better search draws the same exercise.
 */
function fewest(given: SticksGiven, stock: Ticks): readonly StickCut[] | null {
  const left = given.from.filter(({ many }) => !many);
  const { result } = sticks({
    stock: [{ length: stock }],
    offcuts: left.map((one) => ({ length: one.length, count: 1 })),
    pieces: given.pieces.map((one) => ({ length: one, count: 1 })),
    kerf: given.kerf,
  });
  if (!result.proven) return null;
  const whole = result.lengths.filter(({ offcut }) => !offcut).length;
  const bars = [...left, ...Array.from({ length: whole }, () => ({ id: WHOLE, length: stock }))];
  return laidInto(
    bars.map(({ id, length: long }) => ({ id, room: long + given.kerf, pieces: [] })),
    given.pieces.toSorted((a, b) => b - a),
    given.kerf,
  );
}

interface Bar {
  readonly id: string;
  /** What is free, and a saw cut: as if each piece took one. */
  readonly room: number;
  readonly pieces: readonly Ticks[];
}
/** The longest piece into the first bar after which all others find a place too. */
function laidInto(bars: readonly Bar[], pieces: readonly Ticks[], kerf: Ticks): readonly StickCut[] | null {
  const [piece, ...others] = pieces;
  if (piece === undefined)
    return bars
      .filter((bar) => bar.pieces.length > 0)
      .map((bar) => ({ from: bar.id, pieces: bar.pieces.map(inches) }));
  const tried = new Set<number>();
  for (const [i, bar] of bars.entries()) {
    const room = bar.room - piece - kerf;
    // Two bars with the same room lead to the same.
    if (room < 0 || tried.has(room)) continue;
    tried.add(room);
    const found = laidInto(bars.with(i, { ...bar, room, pieces: [...bar.pieces, piece] }), others, kerf);
    if (found !== null) return found;
  }
  return null;
}

const wholes = (cuts: readonly StickCut[]): number => cuts.filter(({ from }) => from === WHOLE).length;
const counted = ({ cuts, counted: said }: Plan): number => said ?? wholes(cuts);
const lengthOf = ({ from }: SticksGiven, id: string): number =>
  inches(from.find((one) => one.id === id)?.length ?? fromInches(0));

const HAIR = 1 / 256;
/** Whether so many pieces fit; the last one needs no cut where it is the length's own end. */
const fits = (plan: Plan, { from, pieces }: StickCut, kerf = inches(plan.kerf)): boolean =>
  sum(pieces) + (pieces.length - 1) * kerf <= lengthOf(plan, from) + HAIR;

/** How many of the pieces no cut makes, and how many cuts make none of them; each piece is wanted once. */
function unmade(plan: Plan, cuts: readonly StickCut[]): { readonly missing: number; readonly extra: number } {
  const wanted = plan.pieces.map(inches);
  let extra = 0;
  for (const piece of cuts.flatMap(({ pieces }) => pieces)) {
    const k = wanted.findIndex((one) => Math.abs(one - piece) <= HAIR);
    if (k < 0) extra += 1;
    else wanted.splice(k, 1);
  }
  return { missing: wanted.length, extra };
}

/** Pieces cut are those wanted, each once. */
function everyPiece(plan: Plan, cuts: readonly StickCut[]): boolean {
  const { missing, extra } = unmade(plan, cuts);
  return missing === 0 && extra === 0;
}

/** No remnant twice. */
const onceEach = (plan: Plan, cuts: readonly StickCut[]): boolean =>
  plan.from.every(({ id, many }) => many || cuts.filter(({ from }) => from === id).length <= 1);

const given = (answer: Answer) => answer as readonly StickCut[];

function holds(plan: Plan, _: World, answer: Answer): boolean {
  const cuts = given(answer);
  const can = everyPiece(plan, cuts) && onceEach(plan, cuts) && cuts.every((one) => fits(plan, one));
  return can && wholes(cuts) <= wholes(plan.cuts);
}

type PackSlip = Slip<Plan>;

/** Pieces in this order, each into the first open bar that takes it by `may`, else into a new whole length. */
function byHand(
  plan: Plan,
  order: readonly Ticks[],
  may: (bars: readonly StickCut[]) => readonly StickCut[],
  start: readonly StickCut[],
): readonly StickCut[] {
  const bars: StickCut[] = [...start];
  for (const piece of order.map(inches)) {
    const bar = may(bars).find((one) => fits(plan, { ...one, pieces: [...one.pieces, piece] }));
    if (bar === undefined) bars.push({ from: WHOLE, pieces: [piece] });
    else bars[bars.indexOf(bar)] = { ...bar, pieces: [...bar.pieces, piece] };
  }
  return bars.filter(({ pieces }) => pieces.length > 0);
}
const rack = ({ from }: Plan): readonly StickCut[] =>
  from.filter(({ many }) => !many).map(({ id }) => ({ from: id, pieces: [] }));
const more = (plan: Plan, cuts: readonly StickCut[]): Plan | null =>
  wholes(cuts) > wholes(plan.cuts) ? { ...plan, cuts } : null;

const slips = {
  /** Cut as the list has it; what is left of a length is laid away when the next piece does not fit. */
  listOrder: (plan) =>
    more(
      plan,
      byHand(plan, plan.pieces, (bars) => bars.slice(-1), rack(plan)),
    ),
  /** In the order of the list, into any length that still takes it. */
  anyOpen: (plan) =>
    more(
      plan,
      byHand(plan, plan.pieces, (bars) => bars, rack(plan)),
    ),
  lengthEach: (plan) =>
    more(
      plan,
      plan.pieces.map((piece) => ({ from: WHOLE, pieces: [inches(piece)] })),
    ),
  remnantsLeft: (plan) => {
    const best = fewest({ ...plan, from: plan.from.filter(({ many }) => many) }, plan.stock);
    return best === null || rack(plan).length === 0 ? null : more(plan, best);
  },
  /** Smallest pieces first, into the first remnant that takes them; the long ones then find no remnant. */
  smallestFirst: (plan) =>
    rack(plan).length === 0
      ? null
      : more(
          plan,
          byHand(
            plan,
            plan.pieces.toSorted((a, b) => a - b),
            (bars) => bars,
            rack(plan),
          ),
        ),
  /** Pieces that make up a whole length are cut from one, as if the saw took nothing. */
  noKerf: (plan) => {
    const best = fewest({ ...plan, kerf: fromInches(0) }, plan.stock);
    return best === null || best.every((one) => fits(plan, one)) ? null : { ...plan, cuts: best };
  },
  /** Left in the rack: what would fit with hardly anything over. */
  tightRefused: (plan) => {
    const shorter = plan.from.map((one) => (one.many ? one : { ...one, length: ticks(one.length - CLOSE) }));
    const best = fewest({ ...plan, from: shorter }, plan.stock);
    return best === null ? null : more(plan, best);
  },
  noSawCuts: (plan) => ({ ...plan, saws: 0 }),
  oneSawCut: (plan) => ({ ...plan, saws: 1 }),
  onePieceOff: (plan) => ({ ...plan, pieces: plan.pieces.with(plan.two[1], ticks(-plan.kerf)) }),
  newCutOnly: (plan) => (plan.holed.includes(0) ? { ...plan, drills: 'the new cut' } : null),
  everyEnd: (plan) => (plan.holed.includes(1) ? { ...plan, drills: 'every end' } : null),
  /** All pieces added up, and divided by a whole length. */
  addedUp: (plan) => {
    const count = Math.ceil(sum(plan.pieces.map(inches)) / inches(plan.stock) - HAIR);
    return rack(plan).length > 0 || count >= wholes(plan.cuts) ? null : { ...plan, counted: count };
  },
} satisfies Readonly<Record<string, PackSlip>>;

/** What a plan that does not hold shows. */
function blames(plan: Plan, _: World, answer: Answer): readonly string[] {
  const cuts = given(answer);
  const over = cuts.filter((one) => !fits(plan, one));
  if (over.length > 0) return over.every((one) => fits(plan, one, 0)) ? ['noKerf'] : [];
  if (!everyPiece(plan, cuts) || !onceEach(plan, cuts)) return [];
  const empty = plan.from.filter(({ id, many }) => !many && cuts.every(({ from }) => from !== id));
  const refused = cuts.some(
    ({ from, pieces }) =>
      from === WHOLE &&
      pieces.some((one) =>
        empty.some(({ length: long }) => one <= inches(long) + HAIR && inches(long) - one < inches(CLOSE)),
      ),
  );
  return [
    ...(rack(plan).length > 0 && cuts.every(({ from }) => from === WHOLE) ? ['remnantsLeft'] : []),
    ...(cuts.every(({ pieces }) => pieces.length === 1) ? ['lengthEach'] : []),
    ...(refused ? ['tightRefused'] : []),
  ];
}

/** What is wrong with a plan, without a better one. */
function notes(plan: Plan, _: World, answer: Answer): readonly Say[] {
  const cuts = given(answer);
  const { missing, extra } = unmade(plan, cuts);
  const over = cuts.filter((one) => !fits(plan, one));
  const bars = [...new Set(over.map(({ from }) => shortLength(fromInches(lengthOf(plan, from)))))];
  const twice = plan.from.filter(
    ({ id, many }) => !many && cuts.filter(({ from }) => from === id).length > 1,
  );
  return [
    ...(missing > 0 ? [{ say: 'route.notCut', values: { count: missing, of: plan.pieces.length } }] : []),
    ...(extra > 0 ? [{ say: 'route.notWanted', values: { count: extra } }] : []),
    ...bars.map((bar) => ({ say: 'route.overLength', values: { bar } })),
    ...twice.map(({ length: long }) => ({ say: 'route.remnantTwice', values: { bar: shortLength(long) } })),
    ...(wholes(cuts) > wholes(plan.cuts)
      ? [{ say: 'route.moreLengths', values: { count: wholes(cuts) } }]
      : []),
  ];
}

function steps(plan: Plan): readonly Step[] {
  return plan.cuts.map(({ from, pieces }) => {
    const left = lengthOf(plan, from) - sum(pieces) - pieces.length * inches(plan.kerf);
    return {
      say: 'route.bar',
      values: {
        bar: shortLength(fromInches(lengthOf(plan, from))),
        pieces: pieces.map((one) => shortLength(fromInches(one))).join(', '),
        left: shortLength(fromInches(Math.max(0, left))),
      },
    };
  });
}

type Pack = Model<typeof wants, Plan>;

/** Asks, of which a model takes those that its family asks. */
export const packAsks = {
  count: { kind: 'number', answer: counted, steps: () => [] },
  left: {
    kind: 'number',
    answer: (plan) => inches(leftOf(plan)),
    steps: (plan) => [
      {
        say: 'route.leftOf',
        values: {
          stock: shortLength(plan.stock),
          one: shortLength(plan.pieces[plan.two[0]] ?? ticks(0)),
          other: shortLength(plan.pieces[plan.two[1]] ?? ticks(0)),
          kerf: shortLength(plan.kerf),
          left: shortLength(leftOf(plan)),
        },
      },
    ],
  },
  drill: {
    kind: 'number',
    answer: drilled,
    steps: (plan) => [{ say: 'route.drilled', values: { count: drilled(plan) } }],
  },
  plan: {
    kind: 'sticks',
    answer: ({ cuts }) => cuts,
    steps,
    sticks: ({ from, pieces, kerf }) => ({ from, pieces, kerf }),
    holds,
    blames,
    notes,
  },
} satisfies Pack['asks'];

/** All of a model but its asks. */
export const packing: Omit<Pack, 'asks'> = {
  wants,
  plan,
  facts: ({ from, pieces, kerf, stock, two, holed }): Facts => ({
    first: number(two[0] + 1),
    second: number(two[1] + 1),
    stock: length(stock),
    kerf: length(kerf),
    pieces: rows(pieces.map((one) => ({ length: length(one) }))),
    remnants: rows(
      from
        .filter(({ many }) => !many)
        .map((one, i) => ({
          remnant: word(one.id),
          length: length(one.length),
          ends: word(holed[i] === 1 ? 'one' : 'none'),
        })),
    ),
  }),
  slips,
  figures: ({ from, kerf }, _, how) => [
    drawSticks(
      {
        lengths: from.map(({ length: long, many }) => ({
          fromIn: inches(long),
          offcut: !many,
          pieces: [],
          leftIn: inches(long),
        })),
        kerf,
      },
      how,
    ),
  ],
  figured: ({ from }) => {
    const ticks = from.map((one) => one.length);
    return [
      { kind: 'lengths', ticks },
      // Those alike that stand side by side are drawn as one.
      { kind: 'bars', ticks: ticks.filter((one, i) => one !== ticks[i - 1]) },
    ];
  },
  says: ['bar', 'leftOf', 'drilled', 'notCut', 'notWanted', 'overLength', 'remnantTwice', 'moreLengths'].map(
    (key) => `route.${key}`,
  ),
};
