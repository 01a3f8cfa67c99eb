/**
 * Fill with a barrier (T13, T12): each side against the row of its own width. NFPA 70 speaks of each divided section
 * (392.22(A)); that a side is read as a channel of half the width is a rule of the project, and the family says so.
 */

import { figure } from '../../../trade/figure.ts';
import type { Bottom } from '../../../trade/fillTables.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, num, numberAsk, word } from '../parts/asks.ts';
import { type AreaBy, areaBy, bothTables, limitOf, mayLie, nearTable, type Yes } from '../parts/fillRows.ts';

const wants = {
  bottom: ['ventilated', 'solid'],
  width: ['4', '6'],
  powerCount: 'whole',
  powerOd: 'decimal',
  signalCount: 'whole',
  signalOd: 'decimal',
} as const;
const SIDES = ['power', 'signal'] as const;
type Side = (typeof SIDES)[number];
type Sides = 'both' | Side | 'neither' | 'ask';
type Next = 'lay' | 'elsewhere' | 'no-barrier';

interface Plan {
  readonly drawn: Drawn<typeof wants>;
  /** As the person takes it. */
  readonly by: AreaBy;
  readonly counted: boolean;
  /** What each side is held against: its own width, or the whole channel for both together. */
  readonly against: 'side' | 'whole';
  readonly worst: boolean;
  readonly next: Next | null;
}

const areaOf = ({ drawn, by, counted }: Plan, side: Side, world: World) =>
  areaBy(by, drawn[`${side}Od`], counted ? drawn[`${side}Count`] : 1, world);

function may(one: Plan, side: Side, world: World): Yes {
  const width = Number(one.drawn.width);
  const whole = one.against === 'whole';
  const area = whole ? SIDES.reduce((sum, s) => sum + areaOf(one, s, world), 0) : areaOf(one, side, world);
  const column = whole || one.drawn[`${side}Count`] > 1 ? 'several' : 'one';
  return mayLie(
    area,
    { bottom: one.drawn.bottom as Bottom, widthIn: whole ? width : width / 2, column },
    world,
  );
}

function sides(one: Plan, world: World): Sides {
  const [power, signal] = SIDES.map((side) => may(one, side, world));
  if (power === 'ask' || signal === 'ask') return 'ask';
  if (power === 'yes' && signal === 'yes') return 'both';
  if (one.worst || power === signal) return 'neither';
  return power === 'yes' ? 'power' : 'signal';
}
const nextOf = (said: Sides): Next => (said === 'both' ? 'lay' : 'elsewhere');

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const made: Plan = { drawn, by: 'circle', counted: true, against: 'side', worst: false, next: null };
  const areas = SIDES.map((side) => areaOf(made, side, world));
  const [power = 0, signal = 0] = areas;
  const whole = limitOf(
    { bottom: drawn.bottom as Bottom, widthIn: Number(drawn.width), column: 'several' },
    world,
  );
  const close =
    areas.some((area) => nearTable(area, 0.05, world)) || Math.abs(power + signal - (whole ?? 0)) < 0.05;
  // More lies on a side than has room there only in a drawing nobody makes.
  const absurd = power + signal > 4.5 || Math.min(power, signal) < 0.2;
  const ask = drawn.width === '4' && drawn.bottom === 'ventilated';
  return close || absurd || Math.abs(power - signal) < 0.07 || (ask && power + signal > 2.4) ? null : made;
}

const answerOf = (one: Plan, world: World): Next => one.next ?? nextOf(sides(one, world));

export const fillWithBarrier = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn }, world) => ({
    bottom: word(drawn.bottom),
    width: num(Number(drawn.width)),
    side: num(Number(drawn.width) / 2),
    powerCount: num(drawn.powerCount),
    powerOd: num(drawn.powerOd, 2),
    signalCount: num(drawn.signalCount),
    signalOd: num(drawn.signalOd, 2),
    ...bothTables(world),
  }),
  asks: {
    power: numberAsk(
      (one, world) => areaOf(one, 'power', world),
      (one, world) => [sumOf(one, 'power', world)],
    ),
    signal: numberAsk(
      (one, world) => areaOf(one, 'signal', world),
      (one, world) => [sumOf(one, 'signal', world)],
    ),
    sides: choiceAsk(sides, ({ drawn }) => [
      { say: 'filling.eachSide', values: { side: figure(Number(drawn.width) / 2) } },
    ]),
    next: choiceAsk(answerOf, undefined, {
      asks: ['sides'],
      answer: (_, __, { sides: said }) => nextOf(said as Sides),
    }),
  },
  slips: {
    squares: (one) => ({ ...one, by: 'square' }),
    asRadius: (one) => ({ ...one, by: 'asRadius' }),
    oneOfEach: (one) =>
      one.drawn.powerCount === 1 || one.drawn.signalCount === 1 ? null : { ...one, counted: false },
    wholeTray: (one, world) =>
      may({ ...one, against: 'whole' }, 'power', world) === 'yes' ? { ...one, against: 'whole' } : null,
    bothRefused: (one) => ({ ...one, worst: true }),
    leftOut: (one, world) => (answerOf(one, world) === 'elsewhere' ? { ...one, next: 'no-barrier' } : null),
    laidThough: (one, world) => (answerOf(one, world) === 'elsewhere' ? { ...one, next: 'lay' } : null),
    heldThough: (one, world) => (answerOf(one, world) === 'lay' ? { ...one, next: 'elsewhere' } : null),
  },
  figures: () => [],
  figured: () => [],
  says: ['filling.sideArea', 'filling.eachSide'],
});

function sumOf(one: Plan, side: Side, world: World) {
  const values = { count: one.drawn[`${side}Count`], od: figure(one.drawn[`${side}Od`]) };
  return { say: 'filling.sideArea', values: { ...values, area: figure(areaOf(one, side, world)) } };
}
