/** One anchor (T10): which support of a section holds the channel fast, and how many let it slide. */
import { fromInches, inches, type Ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip } from '../../model.ts';
import { long, num, numberAsk } from '../parts/asks.ts';

const wants = { section: 'length', first: 'length', spacing: 'length' } as const;
/** Two supports this nearly as far from the middle leave a choice: drawn again. */
const TIE_IN = 5;

interface Plan {
  readonly section: number;
  readonly first: number;
  readonly spacing: number;
  /** Supports along the section, inches from its start. */
  readonly supports: readonly number[];
  /** As the person takes it. */
  readonly anchor: number;
  readonly anchors: number;
}

const middle = ({ section }: Pick<Plan, 'section'>) => section / 2;

function plan(drawn: Drawn<typeof wants>): Plan | null {
  const [section, first, spacing] = [drawn.section, drawn.first, drawn.spacing].map((one) =>
    inches(one as Ticks),
  ) as [number, number, number];
  const count = Math.floor((section - first) / spacing) + 1;
  const supports = Array.from({ length: count }, (_, i) => first + i * spacing);
  const away = supports.map((at) => Math.abs(at - section / 2));
  const [nearest = 0, next = 0] = [...away].sort((a, b) => a - b);
  if (count < 5 || next - nearest < TIE_IN || nearest < 3) return null;
  const anchor = supports[away.indexOf(nearest)] ?? first;
  return { section, first, spacing, supports, anchor, anchors: 1 };
}

type Own = Slip<Plan>;
/** Fixes it at another place; nothing to tell where that is the right one. */
const at =
  (of: (one: Plan) => number | undefined): Own =>
  (one) => {
    const anchor = of(one);
    return anchor === undefined || Math.abs(anchor - one.anchor) < 1 ? null : { ...one, anchor };
  };

export const oneAnchor = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ section, first, spacing, supports }) => ({
    section: long(fromInches(section)),
    first: long(fromInches(first)),
    spacing: long(fromInches(spacing)),
    count: num(supports.length),
  }),
  asks: {
    anchor: numberAsk(
      ({ anchor }) => anchor,
      (one) => [
        {
          say: 'bonding.anchor',
          values: {
            middle: shortLength(fromInches(middle(one))),
            anchor: shortLength(fromInches(one.anchor)),
          },
        },
      ],
    ),
    guides: numberAsk(
      ({ supports, anchors }) => supports.length - anchors,
      ({ supports }) => [
        { say: 'bonding.guides', values: { count: supports.length, guides: supports.length - 1 } },
      ],
    ),
  },
  slips: {
    atStart: at(({ supports }) => supports[0]),
    atEnd: at(({ supports }) => supports.at(-1)),
    theMiddle: at(middle),
    beforeMiddle: at((one) => one.supports.findLast((place) => place <= middle(one))),
    afterMiddle: at((one) => one.supports.find((place) => place >= middle(one))),
    allClamped: (one) => ({ ...one, anchors: one.supports.length }),
    bothEnds: (one) => ({ ...one, anchors: 2 }),
    anchorCounted: (one) => ({ ...one, anchors: 0 }),
  },
  figures: () => [],
  figured: () => [],
  says: ['bonding.anchor', 'bonding.guides'],
});
