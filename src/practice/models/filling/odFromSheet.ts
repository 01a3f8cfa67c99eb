/**
 * Diameter from the sheet (T13): which of the sheet's numbers goes into fill, and what the cables then take. It is the
 * outermost that the cable has: its jacket, or its armour where no jacket lies over it.
 */
import { figure } from '../../../trade/figure.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, num, numberAsk, rows, word } from '../parts/asks.ts';
import { type AreaBy, areaBy } from '../parts/fillRows.ts';

const wants = {
  sheet: {
    rows: {
      conductors: 'whole',
      gauge: ['16', '14', '12', '10', '8'],
      wall: 'decimal',
      jacket: 'decimal',
      armour: 'decimal',
      make: ['jacketed', 'armoured', 'bare-armour'],
    },
  },
  pick: 'whole',
  count: 'whole',
} as const;

/**
 * Diameter of the bare wire in inches, each size next to the last by the 39th root of 92.
 * Source: ASTM B258, standard nominal diameters of AWG wire (from memory).
 */
const WIRE = { '16': 0.0508, '14': 0.0641, '12': 0.0808, '10': 0.1019, '8': 0.1285 } as const;
/** How much wider than one conductor the twisted bundle is. Source: circles in the smallest circle around them. */
const BUNDLE = { 2: 2, 3: 2.155, 4: 2.414, 7: 3 } as const;
type Conductors = keyof typeof BUNDLE;

/** Numbers of the sheet: the wire, one conductor in its insulation, all of them together, over the armour, over the jacket. */
type Column = 'wire' | 'conductor' | 'core' | 'armour' | 'jacket' | 'nominal';
type Make = 'jacketed' | 'armoured' | 'bare-armour';
/** Of each make, the outermost: what lies in the channel. */
const OUTERMOST: Readonly<Record<Make, 'armour' | 'jacket'>> = {
  jacketed: 'jacket',
  armoured: 'jacket',
  'bare-armour': 'armour',
};

interface Row {
  readonly conductors: Conductors;
  readonly gauge: keyof typeof WIRE;
  readonly make: Make;
  /** Null: the cable has none. */
  readonly sizes: Readonly<Record<Exclude<Column, 'nominal'>, number | null>>;
}

interface Plan {
  readonly sheet: readonly Row[];
  readonly row: number;
  readonly count: number;
  /** What the stores call it, in eighths of an inch. */
  readonly nominal: number;
  /** As the person takes it. */
  readonly taken: number;
  readonly column: Column;
  readonly by: AreaBy;
  readonly counted: boolean;
}

const hundredth = (n: number) => Math.round(n * 100) / 100;
function rowOf({ conductors, gauge, wall, jacket, armour, make }: Drawn<typeof wants>['sheet'][number]): Row {
  const of = ([2, 3, 4, 7] as const)[conductors - 1] ?? 7;
  const conductor = Math.round((WIRE[gauge] + 2 * wall) * 1000) / 1000;
  const core = hundredth(conductor * BUNDLE[of]);
  const overArmour = make === 'jacketed' ? null : hundredth(core + 2 * armour);
  const overJacket = make === 'bare-armour' ? null : hundredth((overArmour ?? core) + 2 * jacket);
  return {
    conductors: of,
    gauge,
    make,
    sizes: { wire: WIRE[gauge], conductor, core, armour: overArmour, jacket: overJacket },
  };
}

/** Across the cable: the outermost number of its row. */
const over = (row: Row | undefined) => (row === undefined ? 0 : (row.sizes[OUTERMOST[row.make]] ?? 0));
/** The straight edge on another row: its own outermost is read there. */
function odOf({ sheet, row, taken, column, nominal }: Plan): number {
  if (column === 'nominal') return nominal;
  return taken === row ? (sheet[row]?.sizes[column] ?? 0) : over(sheet[taken]);
}
const makeOf = ({ sheet, row }: Plan): Make => sheet[row]?.make ?? 'jacketed';
const area = (one: Plan, world: World) => areaBy(one.by, odOf(one), one.counted ? one.count : 1, world);

function plan({ sheet: drawn, pick, count }: Drawn<typeof wants>): Plan | null {
  const sheet = drawn.map(rowOf);
  const row = (pick - 1) % sheet.length;
  const od = over(sheet[row]);
  const kinds = new Set(sheet.map(({ conductors, gauge }) => `${conductors} ${gauge}`));
  const sizes = new Set(sheet.map(over));
  // The nearest eighth that is no nearer than one part in twelve.
  const nominal = [Math.ceil(od * 8) / 8, Math.floor(od * 8) / 8].find(
    (n) => n > 0 && Math.abs(n - od) > od / 12,
  );
  if (nominal === undefined || kinds.size < sheet.length || sizes.size < sheet.length) return null;
  const column = OUTERMOST[sheet[row]?.make ?? 'jacketed'];
  return { sheet, row, count, nominal, taken: row, column, by: 'circle', counted: true };
}

const EIGHTHS = ['0', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
const eighths = (n: number) => {
  const [whole, part] = [Math.floor(n), EIGHTHS[Math.round((n % 1) * 8)] ?? ''];
  return whole === 0 ? part : part === '0' ? String(whole) : `${whole} ${part}`;
};

export const odFromSheet = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ sheet, row, count, nominal }) => ({
    count: num(count),
    conductors: num(sheet[row]?.conductors ?? 0),
    gauge: word(sheet[row]?.gauge ?? ''),
    make: word(sheet[row]?.make ?? ''),
    nominal: word(eighths(nominal)),
    sheet: rows(
      sheet.map(({ conductors, gauge, make, sizes }) => ({
        conductors: num(conductors),
        gauge: word(gauge),
        make: word(make),
        layers: word(make, 'layers'),
        wire: num(sizes.wire ?? 0, 4),
        conductor: num(sizes.conductor ?? 0, 3),
        core: num(sizes.core ?? 0, 2),
        armour: num(sizes.armour ?? 0, 2),
        jacket: num(sizes.jacket ?? 0, 2),
      })),
    ),
  }),
  asks: {
    column: { ...choiceAsk<Plan>(({ column }) => column), kind: 'reading' },
    area: numberAsk(
      area,
      (one, world) => [
        {
          say: 'filling.sideArea',
          values: { count: one.count, od: figure(odOf(one)), area: figure(area(one, world)) },
        },
      ],
      {
        asks: ['column'],
        answer: (one, world, { column }) => {
          const made: Plan = { ...one, column: column as Column };
          return odOf(made) > 0 ? area(made, world) : null;
        },
      },
    ),
  },
  slips: {
    nominal: (one) => ({ ...one, column: 'nominal' }),
    underJacket: (one) => ({ ...one, column: 'core' }),
    overArmour: (one) => (makeOf(one) === 'armoured' ? { ...one, column: 'armour' } : null),
    noJacket: (one) => (makeOf(one) === 'bare-armour' ? { ...one, column: 'jacket' } : null),
    noArmour: (one) => (makeOf(one) === 'jacketed' ? { ...one, column: 'armour' } : null),
    oneConductor: (one) => ({ ...one, column: 'conductor' }),
    wire: (one) => ({ ...one, column: 'wire' }),
    asRadius: (one) => ({ ...one, by: 'asRadius' }),
    radius: (one) => ({ ...one, by: 'radius' }),
    squares: (one) => ({ ...one, by: 'square' }),
    nextRow: (one) => ({ ...one, taken: (one.row + 1) % one.sheet.length }),
    oneOnly: (one) => ({ ...one, counted: false }),
  },
  figures: () => [],
  figured: () => [],
  says: ['filling.sideArea'],
});
