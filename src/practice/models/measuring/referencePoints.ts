/**
 * Reference points (T05): at each end of a piece, where the tape is held so that what goes in can be added, and whether
 * anything is added there.
 */

import { SOCKET } from '../../../trade/habits.ts';
import type { Ticks } from '../../../trade/length.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { drawEnds, drawnEndsSays, endNames } from '../parts/drawnEnds.ts';
import type { Pair } from '../parts/pieceEnds.ts';
import { read } from '../parts/reads.ts';

const ENDS = ['sleeve', 'plate', 'socket', 'butt', 'free'] as const;
const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  first: ENDS,
  second: ENDS,
  number: 'whole',
} as const;
type Kind = (typeof ENDS)[number];

/** Where the tape is held, and what is done there. */
interface End {
  readonly point: string;
  readonly joint: string;
}
const RIGHT: Readonly<Record<Kind, End>> = {
  sleeve: { point: 'sleeve-edge', joint: 'goes-in' },
  plate: { point: 'channel-end', joint: 'butts' },
  socket: { point: 'face', joint: 'goes-in' },
  butt: { point: 'face', joint: 'butts' },
  free: { point: 'end-mark', joint: 'free' },
};

interface Plan {
  readonly width: string;
  readonly number: number;
  readonly kinds: Pair<Kind>;
  readonly ends: Pair<End>;
  readonly sleeve: { readonly length: Ticks; readonly insertion: Ticks };
  readonly plate: Ticks;
}

function plan({ width, number, first, second }: Drawn<typeof wants>, world: World): Plan | null {
  const { own } = read(world, width, 'tray');
  // Two ends of one kind ask the same twice.
  if (first === second) return null;
  return {
    width,
    number,
    kinds: [first, second],
    ends: [RIGHT[first], RIGHT[second]],
    sleeve: read(world, own.socketed, 'sleeve'),
    plate: read(world, own.butt, 'plate').length,
  };
}

type EndSlip = Slip<Plan>;
/** At the end that the mistake names, where it is of one of these kinds. */
const at =
  (kinds: readonly Kind[], wrong: Partial<End>): EndSlip =>
  (taken, _, { end }) => {
    const i = end === 'second' ? 1 : 0;
    if (!kinds.includes(taken.kinds[i])) return null;
    const [a, b] = taken.ends;
    return { ...taken, ends: i === 0 ? [{ ...a, ...wrong }, b] : [a, { ...b, ...wrong }] };
  };

/** `measuring.pointSleeve` */
const keyOf = (part: keyof End, kind: Kind) =>
  `measuring.${part}${kind.charAt(0).toUpperCase()}${kind.slice(1)}`;

const ask = (i: 0 | 1, part: keyof End) =>
  ({
    kind: 'choice',
    answer: ({ ends }: Plan) => ends[i][part],
    steps: ({ kinds }: Plan) => [{ say: keyOf(part, kinds[i]), values: { end: i + 1 } }],
  }) as const;

export const referencePoints = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ width, number, kinds, sleeve, plate }) => ({
    width: { kind: 'word', value: width },
    number: { kind: 'number', value: number },
    first: { kind: 'word', value: kinds[0] },
    second: { kind: 'word', value: kinds[1] },
    sleeve: { kind: 'length', ticks: sleeve.length },
    insertion: { kind: 'length', ticks: sleeve.insertion },
    socket: { kind: 'length', ticks: SOCKET.length },
    plate: { kind: 'length', ticks: plate },
  }),
  asks: {
    'first-point': ask(0, 'point'),
    'first-joint': ask(0, 'joint'),
    'second-point': ask(1, 'point'),
    'second-joint': ask(1, 'joint'),
  },
  slips: {
    sleeveMiddle: at(['sleeve'], { point: 'sleeve-middle' }),
    plateEdge: at(['plate'], { point: 'plate-edge' }),
    trayCentre: at(['socket', 'butt'], { point: 'centre-line' }),
    nothingAdded: at(['sleeve', 'socket'], { joint: 'butts' }),
    addedAtButt: at(['plate', 'butt'], { joint: 'goes-in' }),
    addedAtFree: at(['free'], { joint: 'goes-in' }),
  },
  figures: ({ kinds, width }, world, how) => [drawEnds(kinds, width, world, how)],
  figured: ({ kinds }) => [{ kind: 'names', says: endNames(kinds) }],
  says: [...ENDS.flatMap((kind) => [keyOf('point', kind), keyOf('joint', kind)]), ...drawnEndsSays],
});
