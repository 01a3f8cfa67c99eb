/** Single conductors (T13): diameters side by side against the inside width, and whether they may lie there at all. */

import { figure } from '../../../trade/figure.ts';
import { type FillCable, fill } from '../../../trade/fill.ts';
import type { Bottom } from '../../../trade/fillTables.ts';
import { inches, type Ticks } from '../../../trade/length.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, long, num, numberAsk, word } from '../parts/asks.ts';
import { areaBy, bothTables, EDITION, limitOf, type Yes } from '../parts/fillRows.ts';
import { read } from '../parts/reads.ts';

const wants = {
  bottom: ['ventilated', 'solid'],
  width: ['2', '4', '6'],
  serviced: ['qualified', 'unsaid'],
  od: 'decimal',
  share: 'decimal',
} as const;

/** What the conductors are held against. */
type Against = 'inside' | 'outside' | 'area' | 'nothing';

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  readonly count: number;
  readonly outside: Ticks;
  /** As the person takes it. */
  readonly counted: number;
  readonly across: 'diameters' | 'radii' | 'areas';
  readonly against: Against;
  readonly said: Yes | null;
}

const widthOf = ({ drawn }: Plan) => Number(drawn.width);

/** The trade's answer for single conductors in this channel. */
function filled(one: Plan, world: World, widthIn = widthOf(one)) {
  const { bottom, od, serviced } = one.drawn;
  const cables: FillCable[] = [{ make: 'single', odIn: od, count: one.counted }];
  const qualifiedOnly = serviced === 'qualified';
  const tray = { bottom: bottom as Bottom, widthIn };
  return fill({ tray, cables, qualifiedOnly, edition: EDITION }, world.fillTables);
}

function sum(one: Plan, world: World): number {
  const { od } = one.drawn;
  if (one.across === 'areas') return areaBy('circle', od, one.counted, world);
  return (filled(one, world).result.sumOfDiametersIn ?? 0) / (one.across === 'radii' ? 2 : 1);
}

function may(one: Plan, world: World, against: Against = one.against): Yes {
  if (one.said !== null) return one.said;
  if (against === 'nothing') return 'ask';
  const { od, bottom } = one.drawn;
  const across = filled(one, world).result.sumOfDiametersIn ?? 0;
  if (against === 'inside') return across <= widthOf(one) ? 'yes' : 'no';
  if (against === 'outside') return across <= inches(one.outside) ? 'yes' : 'no';
  const limit = limitOf({ bottom, widthIn: widthOf(one), column: 'several' }, world);
  return limit === null ? 'ask' : areaBy('circle', od, one.count, world) <= limit ? 'yes' : 'no';
}

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const { width, od, share } = drawn;
  const count = Math.round((share * Number(width)) / od);
  const tray = read(world, `card-${width}`, 'tray');
  const made: Plan = {
    drawn,
    count,
    outside: tray.outsideWidth,
    counted: count,
    across: 'diameters',
    against: 'inside',
    said: null,
  };
  const across = count * od;
  // Nor is the sum to look like a width that is shown.
  const shown = world.fillTables.singles.widthsIn.some((w) => Math.abs(across - w) < 0.05);
  const tight =
    shown || Math.abs(across - Number(width)) < 0.05 || Math.abs(across - inches(tray.outsideWidth)) < 0.05;
  if (tight || count < 3 || count > 14) return null;
  return filled(made, world).result.refer ? { ...made, against: 'nothing' } : made;
}

export const singleConductors = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, count, outside }, world) => ({
    bottom: word(drawn.bottom),
    serviced: word(drawn.serviced),
    width: num(Number(drawn.width)),
    count: num(count),
    od: num(drawn.od, 2),
    outside: long(outside),
    ...bothTables(world),
  }),
  asks: {
    sum: numberAsk(sum, (one, world) => [
      {
        say: 'filling.sideBySide',
        values: { count: one.count, od: figure(one.drawn.od), sum: figure(sum(one, world)) },
      },
    ]),
    against: choiceAsk(
      ({ against }) => against,
      (one, world) => filled(one, world).result.why ?? [],
    ),
    may: choiceAsk(
      (one, world) => may(one, world),
      (one, world) => filled(one, world).steps.slice(-1),
      {
        asks: ['against'],
        answer: (one, world, { against }) => may(one, world, against as Against),
      },
    ),
  },
  slips: {
    areas: (one) => ({ ...one, across: 'areas', against: 'area' }),
    radii: (one) => ({ ...one, across: 'radii' }),
    oneOfEach: (one) => ({ ...one, counted: 1 }),
    outsideWidth: (one) => (one.against === 'inside' ? { ...one, against: 'outside' } : null),
    mayNotAtAll: (one) => (one.against === 'nothing' ? { ...one, against: 'inside' } : null),
    askedThough: (one) => (one.against === 'inside' ? { ...one, against: 'nothing' } : null),
    yesThoughOver: (one, world) =>
      may(one, world) === 'no' && may(one, world, 'outside') === 'no' ? { ...one, said: 'yes' } : null,
    noThoughWithin: (one, world) => (may(one, world) === 'yes' ? { ...one, said: 'no' } : null),
  },
  figures: () => [],
  figured: () => [],
  says: ['filling.sideBySide'],
});
