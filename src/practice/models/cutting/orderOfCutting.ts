/**
 * Order of cutting (T06): steps of the job in a chance order, to be put right. What must come before what stands
 * in the family's file; any order that keeps to it holds. A slip does one step too late.
 */
import { drawPiece } from '../../../drawing/piece.ts';
import { resolveRun } from '../../../run/resolve.ts';
import type { StraightLeg } from '../../../run/straight.ts';
import { TRADE_USUAL } from '../../../run/usual.ts';
import type { Ticks } from '../../../trade/length.ts';
import type { Family } from '../../family.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { pieceShown } from '../parts/pieceShown.ts';
import { read } from '../parts/reads.ts';
import { type Ordered, orderAsk, orderedFrom, tooLate } from '../parts/steps.ts';

const wants = { steps: 'some', width: ['card-2', 'card-4', 'card-6'], length: 'length' } as const;

interface Plan extends Ordered {
  readonly width: string;
  /** From edge to edge of its splices. */
  readonly clear: Ticks;
  readonly leg: StraightLeg;
}

function plan({ steps, width, length }: Drawn<typeof wants>, world: World, family: Family): Plan | null {
  const made = orderedFrom(steps, family);
  return made === null ? null : { ...made, width, clear: length, leg: pieceToMake(width, length, world) };
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

export const orderOfCutting = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ width, clear }) => ({
    width: { kind: 'word', value: width },
    clear: { kind: 'length', ticks: clear },
  }),
  asks: { order: orderAsk() },
  slips: { tooLate: tooLate() },
  figures: ({ leg }, _, how) => [drawPiece({ leg, piece: 2 }, how)],
  figured: ({ leg, clear }) => [{ kind: 'lengths', ticks: [clear] }, ...pieceShown(leg, 2, 'shown')],
  says: [],
});
