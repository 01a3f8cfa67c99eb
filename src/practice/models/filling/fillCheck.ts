/**
 * Fill check (T13): area of the cables, the row of the table that speaks for them, and whether they are within it.
 * Every number, right or wrong, comes out of the trade's fill: a slip changes what goes in. A channel that the table
 * has no row for is the engineer's, and saying so is the right answer.
 */
import { LETTERS } from '../../../drawing/frame.ts';
import { drawSection } from '../../../drawing/section.ts';
import { type FillCable, type FillGiven, fill } from '../../../trade/fill.ts';
import type { Bottom } from '../../../trade/fillTables.ts';
import { type Drawn, type Facts, model, type Slip, type World } from '../../model.ts';
import { read } from '../parts/reads.ts';

const cable = { rows: { od: 'decimal', count: 'whole' } } as const;
const wants = {
  bottom: ['ventilated', 'solid'],
  width: ['2', '4', '6'],
  lone: ['one', 'several'],
  spare: ['none', 'fifth', 'quarter'],
  lone2: 'decimal',
  lone4: 'decimal',
  lone6: 'decimal',
  cables2: cable,
  cables4: cable,
  cables6: cable,
} as const;
type Given = Drawn<typeof wants>;

const SPARE = { none: 0, fifth: 0.2, quarter: 0.25 } as const;
/** A job whose area comes closer to what may be used than this is drawn again: the answer is not to hang on a digit. */
const CLEAR_OF_LIMIT = 0.05;
/** Nor is an area to look like a number of the tables, which are shown. */
const CLEAR_OF_TABLE = 0.03;
/** More cables than this do not show in a section, and add nothing to the exercise. */
const MOST_CABLES = 24;

/** A row of the two tables, or none: the options of the ask. */
type Row = `${Bottom}-${'one' | 'several'}` | 'no-row';

interface Cable {
  readonly odIn: number;
  readonly count: number;
}

interface Plan {
  readonly drawn: Given;
  readonly cables: readonly Cable[];
  /** What goes into the trade's fill, as the person takes it. */
  readonly fill: FillGiven;
  /** What the person says of row and limit where it does not follow from `fill`. */
  readonly row?: Row;
  readonly within?: Within;
}
type Within = 'yes' | 'no' | 'ask';

function cablesOf({ width, lone, ...drawn }: Given): readonly Cable[] {
  const key = width as '2' | '4' | '6';
  if (lone === 'one') return [{ odIn: drawn[`lone${key}`], count: 1 }];
  return drawn[`cables${key}`].map(({ od, count }) => ({ odIn: od, count }));
}

function plan(drawn: Given, world: World): Plan | null {
  const cables = cablesOf(drawn);
  const count = cables.reduce((sum, c) => sum + c.count, 0);
  const sizes = new Set(cables.map((c) => c.odIn));
  if ((drawn.lone === 'several' && count < 2) || count > MOST_CABLES || sizes.size < cables.length)
    return null;
  const made: Plan = { drawn, cables, fill: givenOf(drawn, cables.map(asCable)) };
  const { areaIn2, allowedIn2 } = fill(made.fill, world.fillTables).result;
  const widest = Math.max(...cables.map((c) => c.odIn));
  const usable = (allowedIn2 ?? 0) * (1 - SPARE[drawn.spare]);
  const close = (limit: number, by: number) => Math.abs(areaIn2 - limit) < by;
  const unfit = close(usable, CLEAR_OF_LIMIT) || numbersIn(world).some((n) => close(n, CLEAR_OF_TABLE));
  return widest > Number(drawn.width) || unfit ? null : made;
}

function numbersIn({ fillTables: { multiconductor } }: World): readonly number[] {
  return Object.values(multiconductor).flatMap(({ rows }) =>
    rows.flatMap(({ oneIn2, severalIn2 }) => [oneIn2, severalIn2]),
  );
}

function givenOf({ bottom, width, spare }: Given, cables: readonly FillCable[]): FillGiven {
  return { tray: { bottom, widthIn: Number(width) }, cables, spare: SPARE[spare] };
}

const asCable = ({ odIn, count }: Cable): FillCable => ({ make: 'multiconductor', odIn, count });
/** A cable whose area someone has worked out in his own way. */
const byArea = (count: number, areaIn2: number): FillCable => ({ make: 'multiconductor', areaIn2, count });

const filled = (plan: Plan, world: World) => fill(plan.fill, world.fillTables).result;

function rowOf(plan: Plan, world: World): Row {
  if (plan.row !== undefined) return plan.row;
  const { column, refer } = filled(plan, world);
  return refer ? 'no-row' : `${plan.fill.tray.bottom}-${column === 1 ? 'one' : 'several'}`;
}

function withinOf(plan: Plan, world: World): Within {
  if (plan.within !== undefined) return plan.within;
  const { within } = filled(plan, world);
  return within === null ? 'ask' : within ? 'yes' : 'no';
}

/** What is right to say of an area and a row that were answered before; `null` for a row that no table has. */
function withinFrom(plan: Plan, world: World, areaIn2: number, row: string): Within | null {
  if (row === 'no-row') return 'ask';
  if (areaIn2 <= 0) return null;
  const [bottom, column] = row.split('-') as [Bottom, 'one' | 'several'];
  const count = column === 'one' ? 1 : 2;
  const tray = { ...plan.fill.tray, bottom };
  const { within } = fill(
    { ...plan.fill, tray, cables: [byArea(count, areaIn2 / count)] },
    world.fillTables,
  ).result;
  return within === null ? null : within ? 'yes' : 'no';
}

type FillSlip = Slip<Plan>;
const withCables = (plan: Plan, each: (cable: Cable) => FillCable): Plan => ({
  ...plan,
  fill: { ...plan.fill, cables: plan.cables.map(each) },
});

/** Squares of the diameters: π/4 left out. */
const squares: FillSlip = (plan) => withCables(plan, ({ odIn, count }) => byArea(count, odIn ** 2));
/** The diameters themselves are added up. */
const diameters: FillSlip = (plan) => withCables(plan, ({ odIn, count }) => byArea(count, odIn));
/** The diameter put where the radius belongs: four times the area. */
const diameterAsRadius: FillSlip = (plan) =>
  withCables(plan, ({ odIn, count }) => asCable({ odIn: 2 * odIn, count }));
/** The radius put where the diameter belongs: a quarter of the area. */
const radiusAsDiameter: FillSlip = (plan) =>
  withCables(plan, ({ odIn, count }) => asCable({ odIn: odIn / 2, count }));
/** One cable of each size is counted. */
const oneOfEach: FillSlip = (plan) =>
  plan.cables.every((c) => c.count === 1)
    ? null
    : withCables(plan, ({ odIn }) => asCable({ odIn, count: 1 }));

/** The column for one cable where there are several, and the other way round. */
const otherColumn =
  (from: 'one' | 'several'): FillSlip =>
  (plan, world) => {
    const [bottom, column] = rowOf(plan, world).split('-');
    return column === from
      ? { ...plan, row: `${bottom as Bottom}-${from === 'one' ? 'several' : 'one'}` }
      : null;
  };

/** The other bottom's table is used. */
const otherTable =
  (from: Bottom): FillSlip =>
  (plan, world) => {
    if (plan.drawn.bottom !== from) return null;
    const to = from === 'ventilated' ? 'solid' : 'ventilated';
    const there = world.fillTables.multiconductor[to].rows.some(
      (r) => r.widthIn === Number(plan.drawn.width),
    );
    const column = plan.row?.split('-')[1] ?? plan.drawn.lone;
    return there ? { ...plan, row: `${to}-${column as 'one' | 'several'}` } : null;
  };

/** A row is read out of a table that has none for this width. */
const rowThatIsNot: FillSlip = (plan, world) =>
  rowOf(plan, world) === 'no-row'
    ? { ...plan, row: `${plan.drawn.bottom}-${plan.drawn.lone}`, within: halfOfFour(plan, world) }
    : null;

/** Half of what a 4-in channel may take, which nobody has allowed. */
function halfOfFour(plan: Plan, world: World): Within {
  const { areaIn2 } = filled(plan, world);
  const four = { ...plan.fill, tray: { ...plan.fill.tray, widthIn: 4 } };
  const { allowedIn2 } = fill(four, world.fillTables).result;
  return areaIn2 <= ((allowedIn2 ?? 0) / 2) * (1 - (plan.fill.spare ?? 0)) ? 'yes' : 'no';
}

/** The row is there and was not found. */
const rowOverlooked: FillSlip = (plan, world) =>
  rowOf(plan, world) === 'no-row' ? null : { ...plan, row: 'no-row' };

/** What the project keeps free is forgotten; looked for where that changes the answer. */
const spareForgotten: FillSlip = (plan, world) => {
  const whole: Plan = { ...plan, fill: { ...plan.fill, spare: 0 } };
  return withinOf(whole, world) === withinOf(plan, world) ? null : whole;
};

const saidInstead =
  (right: Within, said: Within): FillSlip =>
  (plan, world) =>
    withinOf(plan, world) === right && (said === 'ask' || spareForgotten(plan, world, {}) === null)
      ? { ...plan, within: said }
      : null;

export const fillCheck = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ drawn, cables }, world): Facts => ({
    bottom: { kind: 'word', value: drawn.bottom },
    width: { kind: 'number', value: Number(drawn.width) },
    spare: { kind: 'word', value: drawn.spare },
    cables: {
      kind: 'rows',
      rows: cables.map(({ odIn, count }, i) => ({
        // As the section letters them.
        letter: { kind: 'word', value: LETTERS[i] ?? '' },
        od: { kind: 'number', value: odIn, text: odIn.toFixed(2) },
        count: { kind: 'number', value: count },
      })),
    },
    ventilatedTable: rowsOf('ventilated', world),
    solidTable: rowsOf('solid', world),
  }),
  asks: {
    area: {
      kind: 'number',
      answer: (plan, world) => filled(plan, world).areaIn2,
      steps: (plan, world) => fill(plan.fill, world.fillTables).steps,
    },
    row: { kind: 'choice', answer: rowOf, steps: () => [] },
    within: {
      kind: 'choice',
      answer: withinOf,
      steps: () => [],
      follows: {
        asks: ['area', 'row'],
        answer: (plan, world, earlier) =>
          withinFrom(plan, world, earlier['area'] as number, earlier['row'] as string),
      },
    },
  },
  slips: {
    squares,
    diameters,
    diameterAsRadius,
    radiusAsDiameter,
    oneOfEach,
    oneForSeveral: otherColumn('several'),
    severalForOne: otherColumn('one'),
    solidForVentilated: otherTable('ventilated'),
    ventilatedForSolid: otherTable('solid'),
    rowThatIsNot,
    rowOverlooked,
    spareForgotten,
    yesThoughOver: saidInstead('no', 'yes'),
    noThoughWithin: saidInstead('yes', 'no'),
    askedThoughOver: saidInstead('no', 'ask'),
    askedThoughWithin: saidInstead('yes', 'ask'),
  },
  figures: ({ drawn, cables }, world, how) => [
    drawSection(
      { tray: { ...read(world, `card-${drawn.width}`, 'tray'), bottom: drawn.bottom }, cables },
      how,
    ),
  ],
  figured: ({ drawn, cables }) => [{ kind: 'cables', widthIn: Number(drawn.width), cables }],
  says: [],
});

/** The rows of a table as the person is shown them. */
function rowsOf(bottom: Bottom, { fillTables }: World): Facts[string] {
  return {
    kind: 'rows',
    rows: fillTables.multiconductor[bottom].rows.map(({ widthIn, oneIn2, severalIn2 }) => ({
      width: { kind: 'number', value: widthIn },
      one: { kind: 'number', value: oneIn2, text: oneIn2.toFixed(1) },
      several: { kind: 'number', value: severalIn2, text: severalIn2.toFixed(1) },
    })),
  };
}
