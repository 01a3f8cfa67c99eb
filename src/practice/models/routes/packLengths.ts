/**
 * Pieces from whole lengths and remnants (T01, T06): the fewest whole lengths, and which piece comes from which. Any plan
 * holds that cuts every piece once and opens no more whole lengths than needed; that count is proven by the trade's search.
 */
import { drawSticks } from '../../../drawing/sticks/sticks.ts';
import type { Step } from '../../../trade/answer.ts';
import { KERF } from '../../../trade/habits.ts';
import { fromInches, inches, type Ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { sticks } from '../../../trade/sticks/sticks.ts';
import {
  type Answer,
  type Drawn,
  type Facts,
  model,
  type Slip,
  type StickCut,
  type SticksGiven,
  type World,
} from '../../model.ts';
import { length, rows, word } from '../../runs/facts.ts';
import { read } from '../parts/reads.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  /** Whether remnants lie in the rack. */
  rack: ['empty', 'full'],
  /** The last piece and the first make up a whole length: with the saw cut they no longer fit. */
  pair: ['open', 'close'],
  pieces: { rows: { length: 'length' } },
  remnants: { rows: { length: 'length' } },
} as const;

interface Plan extends SticksGiven {
  readonly stock: Ticks;
  /** As the person cuts. */
  readonly cuts: readonly StickCut[];
  /** As the person counts whole lengths where that is no plan. */
  readonly counted?: number;
}

const WHOLE = 'whole';
const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

function plan({ width, rack, pair, pieces, remnants }: Drawn<typeof wants>, world: World): Plan | null {
  const stock = read(world, width, 'tray').length;
  const drawn = pieces.map((piece) => piece.length);
  const [first] = drawn;
  if (first === undefined || new Set(drawn).size < drawn.length) return null;
  const cut = pair === 'close' ? [...drawn.slice(0, -1), (stock - first) as Ticks] : drawn;
  const rest = rack === 'full' ? remnants.map((one) => one.length) : [];
  const from = [
    { id: WHOLE, length: stock, many: true },
    ...rest.map((one, i) => ({ id: `r${i + 1}`, length: one, many: false })),
  ];
  const given: SticksGiven = { from, pieces: cut, kerf: KERF.length };
  const best = fewest(given, stock);
  return best === null ? null : { ...given, stock, cuts: best };
}

/** A plan with the fewest whole lengths; null where the search does not prove it. */
function fewest({ from, pieces, kerf }: SticksGiven, stock: Ticks): readonly StickCut[] | null {
  const { result } = sticks({
    stock: [{ length: stock }],
    offcuts: from.filter(({ many }) => !many).map((one) => ({ length: one.length, count: 1 })),
    pieces: pieces.map((one) => ({ length: one, count: 1 })),
    kerf,
  });
  if (!result.proven) return null;
  const left = from.filter(({ many }) => !many);
  return result.lengths.map((bar): StickCut => {
    const at = bar.offcut ? left.findIndex((one) => inches(one.length) === bar.fromIn) : -1;
    const [one] = at < 0 ? [] : left.splice(at, 1);
    return { from: one?.id ?? WHOLE, pieces: bar.pieces.map((piece) => piece.in) };
  });
}

const wholes = (cuts: readonly StickCut[]): number => cuts.filter(({ from }) => from === WHOLE).length;
const counted = ({ cuts, counted: said }: Plan): number => said ?? wholes(cuts);
const lengthOf = ({ from }: SticksGiven, id: string): number =>
  inches(from.find((one) => one.id === id)?.length ?? fromInches(0));

const HAIR = 1 / 256;
/** Whether so many pieces fit; the last one needs no cut where it is the length's own end. */
const fits = (plan: Plan, { from, pieces }: StickCut, kerf = inches(plan.kerf)): boolean =>
  sum(pieces) + (pieces.length - 1) * kerf <= lengthOf(plan, from) + HAIR;

/** Pieces cut are those wanted, each once. */
function everyPiece(plan: Plan, cuts: readonly StickCut[]): boolean {
  const along = (numbers: readonly number[]) => [...numbers].sort((a, b) => a - b);
  const cut = along(cuts.flatMap(({ pieces }) => pieces));
  const wanted = along(plan.pieces.map(inches));
  return cut.length === wanted.length && cut.every((one, i) => Math.abs(one - (wanted[i] as number)) <= HAIR);
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
  return [
    ...(rack(plan).length > 0 && cuts.every(({ from }) => from === WHOLE) ? ['remnantsLeft'] : []),
    ...(cuts.every(({ pieces }) => pieces.length === 1) ? ['lengthEach'] : []),
    'anyOpen',
    'smallestFirst',
  ];
}

function steps(plan: Plan): readonly Step[] {
  return plan.cuts.map(({ from, pieces }) => {
    const kerfs = pieces.length - 1;
    const left = lengthOf(plan, from) - sum(pieces) - kerfs * inches(plan.kerf);
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

export const packLengths = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ from, pieces, kerf, stock }): Facts => ({
    stock: length(stock),
    kerf: length(kerf),
    pieces: rows(pieces.map((one) => ({ length: length(one) }))),
    remnants: rows(
      from.filter(({ many }) => !many).map((one) => ({ remnant: word(one.id), length: length(one.length) })),
    ),
  }),
  asks: {
    count: { kind: 'number', answer: counted, steps: () => [] },
    plan: {
      kind: 'sticks',
      answer: ({ cuts }) => cuts,
      steps,
      sticks: ({ from, pieces, kerf }) => ({ from, pieces, kerf }),
      holds,
      blames,
    },
  },
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
  figured: ({ from }) => from.map((one) => one.length),
  says: ['route.bar'],
});
