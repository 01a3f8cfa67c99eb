/** Point load (T02): a box at the middle of a span, as the uniform load that bends the channel as much. */

import type { Tray } from '../../../run/catalogue.ts';
import { equivalent } from '../../../trade/equivalent.ts';
import { figure } from '../../../trade/figure.ts';
import { spanByTable } from '../../../trade/span.ts';
import type { Drawn } from '../../model.ts';
import { loadRows, ROW_SAYS, rowSteps, spanOption } from '../parts/loadTable.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lineOf, numberFact, tradeSteps, wordFact } from '../parts/told.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  span: ['4', '5', '6', '8'],
  weight: ['usual', 'over'],
  box: 'whole',
  /** A box that most tables bear at no span. */
  over: 'whole',
  cables: 'decimal',
} as const;

interface Job {
  readonly width: string;
  readonly table: Tray['loadTable'];
  readonly spanFt: number;
  readonly box: number;
  readonly cables: number;
  readonly tray: number;
  /** Of the box's equivalent, the part that is taken: half where P/L stands for 2P/L. */
  readonly share: number;
  /** The box put on the load a foot as it is, in pounds. */
  readonly whole: boolean;
  /** Which row is taken; or the total of the span at hand held against every row. */
  readonly reads: 'row' | 'next row' | 'one total' | 'beyond' | 'asks';
}

const along = ({ cables, tray }: Job) => cables + tray;
const total = (job: Job) =>
  job.whole
    ? along(job) + job.box
    : equivalent({ staticLb: job.box * job.share, spanFt: job.spanFt, otherLbPerFt: along(job) }).result
        .totalLbPerFt;

function longest(job: Job): number | null {
  const { table, box, share, whole, reads } = job;
  if (reads === 'one total') return spanByTable(table, total(job));
  const listed = whole ? spanByTable(table, along(job) + box) : spanByTable(table, along(job), box * share);
  if (reads === 'asks') return null;
  if (reads === 'beyond') return listed ?? Math.min(...table.map(({ spanFt }) => spanFt));
  if (reads === 'row' || listed === null) return listed;
  const longer = table.map(({ spanFt }) => spanFt).filter((ft) => ft > listed);
  return longer.length === 0 ? listed : Math.min(...longer);
}
/** A load within so much of a listed figure makes the answer hang on a digit. */
const CLEAR = 0.1;
const say = lineOf('supporting');

export const pointLoad = slippingModel<typeof wants, Job>({
  wants,
  plan: ({ width, span, weight, box: usual, over, cables }: Drawn<typeof wants>, world) => {
    const tray = read(world, width, 'tray');
    const box = weight === 'over' ? over : usual;
    const job: Job = {
      width,
      table: tray.loadTable,
      spanFt: Number(span),
      box,
      cables,
      tray: tray.weightLbPerFt,
      share: 1,
      whole: false,
      reads: 'row',
    };
    const close = tray.loadTable.some(
      ({ spanFt, lbPerFt }) =>
        Math.abs(along(job) + (2 * box) / spanFt - lbPerFt) < CLEAR || Math.abs(total(job) - lbPerFt) < CLEAR,
    );
    return close ? null : job;
  },
  facts: ({ width, spanFt, box, cables, tray }, world) => ({
    width: wordFact(width),
    span: numberFact(spanFt),
    box: numberFact(box),
    cables: numberFact(cables, 2),
    tray: numberFact(tray),
    table: loadRows(read(world, width, 'tray')),
  }),
  asks: {
    total: {
      kind: 'number',
      answer: (job) => total(job),
      steps: (job) => [
        say('total', { cables: figure(job.cables), tray: figure(job.tray) }, along(job), 'lbPerFt'),
        ...tradeSteps(
          equivalent({ staticLb: job.box, spanFt: job.spanFt, otherLbPerFt: along(job) }).steps.slice(0, 2),
        ),
      ],
    },
    longest: {
      kind: 'choice',
      answer: (job) => spanOption(longest(job)),
      steps: (job) => rowSteps(job.table, along(job), job.box),
    },
  },
  slips: {
    oneTotal: (job) => ({ ...job, reads: 'one total' }),
    nextRow: (job) => ({ ...job, reads: 'next row' }),
    beyondTable: (job) => (longest(job) === null ? { ...job, reads: 'beyond' } : null),
    ignored: (job) => ({ ...job, share: 0 }),
    once: (job) => ({ ...job, share: 0.5 }),
    addedWhole: (job) => ({ ...job, whole: true }),
    trayLeftOut: (job) => ({ ...job, tray: 0 }),
    askedAnyway: (job) => (longest(job) === null ? null : { ...job, reads: 'asks' }),
  },
  figures: () => [],
  figured: () => [],
  says: [...keysOf('supporting', ['total']), 'equivalent.weight', 'equivalent.total', ...ROW_SAYS],
});
