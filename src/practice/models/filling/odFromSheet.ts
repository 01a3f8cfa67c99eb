/** Diameter from the sheet (T13): which of the sheet's numbers goes into fill, and what the cables then take. */
import { figure } from '../../../trade/figure.ts';
import { type Drawn, model, type World } from '../../model.ts';
import { choiceAsk, num, numberAsk, rows, word } from '../parts/asks.ts';
import { type AreaBy, areaBy } from '../parts/fillRows.ts';

const wants = {
  sheet: {
    rows: { conductors: 'whole', gauge: ['16', '14', '12', '10', '8'], wall: 'decimal', jacket: 'decimal' },
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

/** Columns of the sheet: the wire, one conductor in its insulation, all of them under the jacket, over the jacket. */
type Column = 'wire' | 'conductor' | 'core' | 'jacket' | 'nominal';

interface Row {
  readonly conductors: Conductors;
  readonly gauge: keyof typeof WIRE;
  readonly sizes: Readonly<Record<Exclude<Column, 'nominal'>, number>>;
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
function rowOf({ conductors, gauge, wall, jacket }: Drawn<typeof wants>['sheet'][number]): Row {
  const of = ([2, 3, 4, 7] as const)[conductors - 1] ?? 7;
  const conductor = Math.round((WIRE[gauge] + 2 * wall) * 1000) / 1000;
  const core = hundredth(conductor * BUNDLE[of]);
  return {
    conductors: of,
    gauge,
    sizes: { wire: WIRE[gauge], conductor, core, jacket: hundredth(core + 2 * jacket) },
  };
}

const odOf = ({ sheet, taken, column, nominal }: Plan) =>
  column === 'nominal' ? nominal : (sheet[taken]?.sizes[column] ?? 0);
const area = (one: Plan, world: World) => areaBy(one.by, odOf(one), one.counted ? one.count : 1, world);

function plan({ sheet: drawn, pick, count }: Drawn<typeof wants>): Plan | null {
  const sheet = drawn.map(rowOf);
  const row = (pick - 1) % sheet.length;
  const od = sheet[row]?.sizes.jacket ?? 0;
  const kinds = new Set(sheet.map(({ conductors, gauge }) => `${conductors} ${gauge}`));
  const sizes = new Set(sheet.map(({ sizes: { jacket } }) => jacket));
  // The nearest eighth that is no nearer than one part in twelve.
  const nominal = [Math.ceil(od * 8) / 8, Math.floor(od * 8) / 8].find(
    (n) => n > 0 && Math.abs(n - od) > od / 12,
  );
  if (nominal === undefined || kinds.size < sheet.length || sizes.size < sheet.length) return null;
  return { sheet, row, count, nominal, taken: row, column: 'jacket', by: 'circle', counted: true };
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
    nominal: word(eighths(nominal)),
    sheet: rows(
      sheet.map(({ conductors, gauge, sizes }) => ({
        conductors: num(conductors),
        gauge: word(gauge),
        wire: num(sizes.wire, 4),
        conductor: num(sizes.conductor, 3),
        core: num(sizes.core, 2),
        jacket: num(sizes.jacket, 2),
      })),
    ),
  }),
  asks: {
    column: choiceAsk(({ column }) => column),
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
        answer: (one, world, { column }) => area({ ...one, column: column as Column }, world),
      },
    ),
  },
  slips: {
    nominal: (one) => ({ ...one, column: 'nominal' }),
    underJacket: (one) => ({ ...one, column: 'core' }),
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
