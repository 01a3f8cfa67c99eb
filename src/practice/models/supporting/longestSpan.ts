/** Longest span (T02): the total load, and the longest listed span that carries it, as one span alone. */

import type { Tray } from '../../../run/catalogue.ts';
import { figure } from '../../../trade/figure.ts';
import { spanByTable } from '../../../trade/span.ts';
import type { Drawn } from '../../model.ts';
import { loadRows, ROW_SAYS, rowSteps, SEVERAL_SPANS, spanOption } from '../parts/loadTable.ts';
import { read } from '../parts/reads.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lineOf, numberFact, wordFact } from '../parts/told.ts';

const wants = {
  width: ['card-2', 'card-4', 'card-6'],
  where: ['single', 'end'],
  weight: ['light', 'middle', 'over'],
  light: 'decimal',
  middle: 'decimal',
  over: 'decimal',
} as const;

interface Job {
  readonly width: string;
  readonly where: string;
  readonly table: Tray['loadTable'];
  readonly cables: number;
  readonly tray: number;
  /** What a listed figure is taken to be worth. */
  readonly bonus: number;
  readonly reads: 'row' | 'between' | 'next row' | 'beyond' | 'asks';
}

const load = ({ cables, tray }: Job) => cables + tray;

function spanOf(job: Job, lbPerFt = load(job)): number | null {
  const least = lbPerFt / job.bonus;
  const listed = spanByTable(job.table, least);
  const rows = [...job.table].sort((a, b) => a.spanFt - b.spanFt);
  const i = rows.findIndex(({ spanFt }) => spanFt === listed);
  const [row, next] = [rows[i], rows[i + 1]];
  if (job.reads === 'asks') return null;
  if (job.reads === 'beyond') return listed === null ? (rows[0]?.spanFt ?? null) : listed;
  if (row === undefined || next === undefined) return listed;
  if (job.reads === 'next row') return next.spanFt;
  if (job.reads === 'row') return listed;
  const share = (row.lbPerFt - least) / (row.lbPerFt - next.lbPerFt);
  return Math.floor(row.spanFt + share * (next.spanFt - row.spanFt));
}

/** How far the load must lie from every listed figure. */
const CLEAR = 0.1;
const say = lineOf('supporting');

export const longestSpan = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn: Drawn<typeof wants>, world) => {
    const tray = read(world, drawn.width, 'tray');
    const job: Job = {
      width: drawn.width,
      where: drawn.where,
      table: tray.loadTable,
      cables: drawn[drawn.weight],
      tray: tray.weightLbPerFt,
      bonus: 1,
      reads: 'row',
    };
    // Not so close to a listed figure that the answer hangs on a digit.
    return tray.loadTable.some((row) => Math.abs(row.lbPerFt - load(job)) < CLEAR) ? null : job;
  },
  facts: ({ width, where, cables, tray }, world) => ({
    width: wordFact(width),
    where: wordFact(where),
    cables: numberFact(cables, 2),
    tray: numberFact(tray),
    several: numberFact(SEVERAL_SPANS),
    table: loadRows(read(world, width, 'tray')),
  }),
  asks: {
    load: {
      kind: 'number',
      answer: (job) => load(job),
      steps: (job) => [
        say('total', { cables: figure(job.cables), tray: figure(job.tray) }, load(job), 'lbPerFt'),
      ],
    },
    span: {
      kind: 'choice',
      answer: (job) => spanOption(spanOf(job)),
      steps: (job) => rowSteps(job.table, load(job)),
      follows: {
        asks: ['load'],
        answer: (job, _, earlier) => {
          const lbPerFt = earlier['load'] as number;
          return lbPerFt > 0 ? spanOption(spanOf(job, lbPerFt)) : null;
        },
      },
    },
  },
  slips: {
    severalSpans: (job) => ({ ...job, bonus: SEVERAL_SPANS }),
    readBetween: (job) => ({ ...job, reads: 'between' }),
    nextRow: (job) => ({ ...job, reads: 'next row' }),
    beyondTable: (job) => (spanOf(job) === null ? { ...job, reads: 'beyond' } : null),
    askedAnyway: (job) => (spanOf(job) === null ? null : { ...job, reads: 'asks' }),
    cablesOnly: (job) => ({ ...job, tray: 0 }),
  },
  figures: () => [],
  figured: () => [],
  says: [...keysOf('supporting', ['total']), ...ROW_SAYS],
});
