/**
 * Last piece (T05, T07): a straight run between two faces, whole lengths put in from the start, and the piece that
 * fills the rest. Sleeves leave an opening at every joint, plates none; one joint may be an expansion splice.
 */
import { openingOf } from '../../../run/joints.ts';
import { KERF, MOVEMENT } from '../../../trade/habits.ts';
import { formatLength, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip, type World } from '../../model.ts';
import { type Between, cutOf, NONE, PLAIN, withEnds, worthCutting } from '../parts/pieceEnds.ts';
import { read } from '../parts/reads.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  joint: ['plate', 'sleeve'],
  expansion: ['none', 'one'],
  distance: 'length',
  gap: 'length',
} as const;

interface Plan extends Between {
  readonly drawn: Drawn<typeof wants>;
  readonly stock: Ticks;
  /** Whole lengths in the run; as many joints come before the last piece. */
  readonly whole: number;
  readonly plate: Ticks;
  readonly sleeve: { readonly length: Ticks; readonly insertion: Ticks };
  /** Between channel ends at one ordinary joint. */
  readonly opening: Ticks;
  readonly gaps: number;
}

/** What stays open at all joints together, taken as the last piece's. */
const opened = ({ opening, whole, gaps, drawn }: Pick<Plan, 'opening' | 'whole' | 'gaps' | 'drawn'>) =>
  ticks(opening * (whole - gaps) + gaps * drawn.gap);

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const tray = read(world, drawn.width, 'tray');
  const sleeve = read(world, tray.own.socketed, 'sleeve');
  const opening =
    drawn.joint === 'sleeve'
      ? openingOf({
          kind: 'socketed',
          length: sleeve.length,
          insertions: [sleeve.insertion, sleeve.insertion],
        })
      : NONE;
  const whole = Math.floor(drawn.distance / tray.length);
  const gaps = drawn.expansion === 'one' ? 1 : 0;
  const parts = { drawn, whole, opening, gaps };
  const made: Plan = {
    ...parts,
    stock: tray.length,
    plate: read(world, tray.own.butt, 'plate').length,
    sleeve,
    distance: ticks(drawn.distance - whole * tray.length),
    ends: [{ ...PLAIN, share: opened(parts) }, PLAIN],
    extra: NONE,
  };
  return whole > 0 && worthCutting(cutOf(made), tray.length) ? made : null;
}

const open = (plan: Plan, at: Ticks): Plan =>
  withEnds(plan, (end, i) => (i === 0 ? { ...end, share: at } : end));
const off = (plan: Plan, by: Ticks): Plan => ({ ...plan, extra: ticks(plan.extra - by) });
type LastSlip = Slip<Plan>;

/** Measured from the plate's edge; the channel would end half a plate too soon. */
const fromPlateEdge: LastSlip = (plan) =>
  plan.drawn.joint === 'plate' ? off(plan, ticks(plan.plate / 2)) : null;
/** The whole plate comes off. */
const plateTakenOff: LastSlip = (plan) => (plan.drawn.joint === 'plate' ? off(plan, plan.plate) : null);
/** Measured from the sleeve's edge, and what goes in is not added. */
const fromSleeveEdge: LastSlip = (plan) =>
  plan.drawn.joint === 'sleeve' ? off(plan, plan.sleeve.insertion) : null;
/** Sleeves are taken for joints that butt. */
const openingsForgotten: LastSlip = (plan) =>
  plan.opening === 0 || plan.whole === plan.gaps
    ? null
    : open({ ...plan, opening: NONE }, opened({ ...plan, opening: NONE }));
/** Of several sleeves' openings only one comes off. */
const oneOpening: LastSlip = (plan) => {
  const sleeves = plan.whole - plan.gaps;
  return plan.opening === 0 || sleeves < 2
    ? null
    : { ...plan, extra: ticks(plan.extra + (sleeves - 1) * plan.opening) };
};
const kerfOff: LastSlip = (plan) => off(plan, KERF.length);
const change =
  (by: (gap: Ticks) => number): LastSlip =>
  (plan) =>
    plan.gaps === 0 ? null : { ...plan, extra: ticks(plan.extra + Math.round(by(plan.drawn.gap))) };

export const lastPiece = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, stock, plate, sleeve, opening }) => ({
    width: { kind: 'word', value: drawn.width },
    joint: { kind: 'word', value: drawn.joint },
    distance: { kind: 'length', ticks: drawn.distance },
    gap: { kind: 'length', ticks: drawn.gap },
    movement: { kind: 'length', ticks: MOVEMENT.length },
    stock: { kind: 'length', ticks: stock },
    plate: { kind: 'length', ticks: plate },
    sleeve: { kind: 'length', ticks: sleeve.length },
    insertion: { kind: 'length', ticks: sleeve.insertion },
    opening: { kind: 'length', ticks: opening },
    kerf: { kind: 'length', ticks: KERF.length },
  }),
  asks: {
    whole: {
      kind: 'number',
      answer: ({ whole }) => whole,
      steps: ({ whole, drawn, stock }) => [
        {
          say: 'measuring.wholeLengths',
          values: { run: formatLength(drawn.distance), stock: formatLength(stock), whole },
        },
      ],
    },
    cut: {
      kind: 'number',
      answer: (plan) => inches(cutOf(plan)),
      steps: (plan) => [
        { say: 'measuring.rest', values: { length: formatLength(plan.distance) } },
        { say: 'measuring.opened', values: { length: shortLength(plan.ends[0].share) } },
        { say: 'measuring.last', values: { length: formatLength(cutOf(plan)) } },
      ],
    },
  },
  slips: {
    fromPlateEdge,
    plateTakenOff,
    fromSleeveEdge,
    openingsForgotten,
    oneOpening,
    kerfOff,
    wholeRoundedUp: (plan) => ({ ...plan, whole: plan.whole + 1 }),
    gapForgotten: change((gap) => gap),
    gapAdded: change((gap) => 2 * gap),
    fullMovement: change((gap) => gap - MOVEMENT.length),
    halfGap: change((gap) => gap / 2),
  },
  figures: () => [],
  figured: () => [],
  says: ['wholeLengths', 'rest', 'opened', 'last'].map((key) => `measuring.${key}`),
});
