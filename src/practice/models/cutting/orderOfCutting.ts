/**
 * Order of cutting (T06): steps of the job in a chance order, to be put right. What must come before what stands
 * in the family's file; any order that keeps to it holds. A slip does one step too late.
 */
import { drawPiece } from '../../../drawing/piece.ts';
import { resolveRun } from '../../../run/resolve.ts';
import type { StraightLeg } from '../../../run/straight.ts';
import { TRADE_USUAL } from '../../../run/usual.ts';
import type { Ticks } from '../../../trade/length.ts';
import type { Family, Precedence } from '../../family.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { read } from '../parts/reads.ts';

const wants = { steps: 'some', width: ['card-2', 'card-4', 'card-6'], length: 'length' } as const;

/** Every pair in which the first must come before the second, however many steps lie between. */
export function everyPrecedence(steps: readonly string[], direct: readonly Precedence[]): Precedence[] {
  const behind = (step: string): ReadonlySet<string> =>
    new Set(direct.filter(([before]) => before === step).flatMap(([, after]) => [after, ...behind(after)]));
  return steps.flatMap((step) =>
    [...behind(step)].filter((after) => steps.includes(after)).map((after): Precedence => [step, after]),
  );
}

interface Plan {
  /** As shown to the person. */
  readonly shown: readonly string[];
  readonly precedence: readonly Precedence[];
  /** As the person does them. */
  readonly order: readonly string[];
  readonly width: string;
  /** From edge to edge of its splices. */
  readonly clear: Ticks;
  readonly leg: StraightLeg;
}

/** Whether an order keeps to every precedence among its steps. */
export function keeps(order: readonly string[], precedence: readonly Precedence[]): boolean {
  return precedence.every(([before, after]) => order.indexOf(before) < order.indexOf(after));
}

function plan({ steps, width, length }: Drawn<typeof wants>, world: World, family: Family): Plan | null {
  const ask = family.asks.find((one) => one.kind === 'order');
  if (ask === undefined) throw new Error(`${family.id}: it asks for no order`);
  const precedence = everyPrecedence(steps, ask.precedence);
  // An order that already holds would show the answer.
  if (keeps(steps, precedence)) return null;
  const order = ask.items.map(({ id }) => id).filter((step) => steps.includes(step));
  return { shown: steps, precedence, order, width, clear: length, leg: pieceToMake(width, length, world) };
}

/** A piece between two sleeves, drawn beside the steps: the thing that is being made. */
function pieceToMake(width: string, clear: Ticks, world: World): StraightLeg {
  const sleeve = read(world, read(world, width, 'tray').own.socketed, 'sleeve');
  const at = [sleeve.length, sleeve.length + sleeve.length + clear] as Ticks[];
  const { legs } = resolveRun(
    {
      v: 1,
      tray: width,
      start: { kind: 'free', joint: 'free' },
      legs: [
        {
          id: 'L1',
          from: 'start',
          fitting: null,
          dir: 'E',
          length: (3 * sleeve.length + clear) as Ticks,
        },
      ],
      joints: at.map((place) => ({ leg: 'L1', at: place, kind: 'socketed' })),
    },
    world.catalogue,
    // Draws and keys are fixed for ever: no paper of a site may change them.
    TRADE_USUAL,
  );
  return legs[0] as StraightLeg;
}

/** Does the step `late` directly after the step `early`, before which it belongs; all else stays as it is. */
const tooLate: Slip<Plan> = (plan, _, { early = '', late = '' }) => {
  if (!plan.shown.includes(early) || !plan.shown.includes(late)) return null;
  const rest = plan.order.filter((step) => step !== late);
  const behind = rest.indexOf(early) + 1;
  return { ...plan, order: [...rest.slice(0, behind), late, ...rest.slice(behind)] };
};

export const orderOfCutting = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ width, clear }) => ({
    width: { kind: 'word', value: width },
    clear: { kind: 'length', ticks: clear },
  }),
  asks: {
    order: {
      kind: 'order',
      answer: (plan) => plan.order,
      steps: (plan) =>
        plan.order.map((item, i) => ({ say: 'practice.orderStep', values: { number: i + 1, item } })),
      order: ({ shown, precedence }) => ({ shown, precedence }),
    },
  },
  slips: { tooLate },
  figures: ({ leg }, _, how) => [drawPiece({ leg, piece: 2 }, how)],
  figured: ({ clear }) => [clear],
  says: [],
});
