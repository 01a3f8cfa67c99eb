/**
 * How far apart the supports of a channel may stand. The tray's own load table answers; a section without one gets
 * an estimate, which nobody accepts work by. Always one simple span: what several spans in a row gain is never used.
 */
import type { Answered, Say, Source, Step } from './answer.ts';
import { figure, figures } from './figure.ts';
import { atMost } from './hair.ts';
import { CONCENTRATED } from './mechanicsSources.ts';
import type { Metal } from './metals.ts';
import type { SectionShape } from './section.ts';
import { type Estimate, estimateSpan } from './spanEstimate.ts';

/** One row of a load table: the uniform load that a simple span of this length carries. */
export interface LoadRow {
  readonly spanFt: number;
  readonly lbPerFt: number;
}

/** A tray with a load table. */
export interface LoadedTray {
  readonly id: string;
  readonly loadTable: readonly LoadRow[];
  readonly weightLbPerFt: number;
  /** The site has adopted the table; else its figures are for training. */
  readonly adopted: boolean;
  readonly source: Source;
}

export type SpanGiven = {
  /** Uniform load, the channel's own weight included; from 0. */
  readonly loadLbPerFt: number;
  /** One weight at the middle of the span, from 0. */
  readonly pointLb?: number | undefined;
  /** Span over greatest deflection, above 0; 200 when left out, null: not looked at. For an estimate only. */
  readonly deflectionRatio?: number | null | undefined;
} & ({ readonly tray: LoadedTray } | { readonly section: SectionShape; readonly metal: Metal });

export interface SpanResult {
  /** Null when no row of the table carries the load. */
  readonly maxSpanIn: number | null;
  readonly governs: 'table' | Estimate['governs'];
  readonly refer: boolean;
  /** Whether work may be accepted by it: a table that the site has adopted carries the load, the tray's weight in it. */
  readonly acceptance: boolean;
  readonly why?: readonly Say[];
}

/** What a row has to carry. */
function loadAt({ spanFt }: LoadRow, loadLbPerFt: number, pointLb: number): number {
  return pointLb === 0 ? loadLbPerFt : loadLbPerFt + (2 * pointLb) / spanFt;
}

/**
 * The longest listed span that carries a load, in feet; null when none does. Nothing is read between rows.
 * @param loadLbPerFt  uniform load, the channel's own weight included
 * @param pointLb      one weight at the middle of the span; at each span L it counts as 2P/L more of uniform load,
 *                     which makes the same moment
 */
export function spanByTable(table: readonly LoadRow[], loadLbPerFt: number, pointLb = 0): number | null {
  const carried = table.filter((row) => atMost(loadAt(row, loadLbPerFt, pointLb), row.lbPerFt));
  return carried.length === 0 ? null : Math.max(...carried.map((row) => row.spanFt));
}

export function span(given: SpanGiven): Answered<SpanResult> {
  return 'tray' in given ? byTable(given, given.tray) : byEstimate(given);
}

function byTable({ loadLbPerFt, pointLb = 0 }: SpanGiven, tray: LoadedTray): Answered<SpanResult> {
  const ft = spanByTable(tray.loadTable, loadLbPerFt, pointLb);
  const lighter = isLighter(loadLbPerFt, tray);
  const noRow: Say[] =
    ft === null ? [{ say: 'span.noRow', values: { tray: tray.id } }, { say: 'span.askTable' }] : [];
  // Why an adopted table is not accepted by; one for training never is.
  const why: Say[] = [...(lighter === null || !tray.adopted ? [] : [lighter]), ...noRow];
  const tried = [...tray.loadTable]
    .sort((a, b) => b.spanFt - a.spanFt)
    .filter(({ spanFt }) => ft === null || spanFt >= ft);
  const steps: Step[] = [
    loadStep(loadLbPerFt, pointLb),
    ...(lighter === null ? [] : [lighter]),
    ...(pointLb > 0 ? [{ say: 'span.asUniform', values: { point: figure(pointLb) } }] : []),
    ...tried.map((row) => rowStep(row, loadAt(row, loadLbPerFt, pointLb))),
    ...(ft === null
      ? noRow
      : [{ say: 'span.longest', values: { ft: figure(ft) }, value: ft * 12, unit: 'in' }]),
    { say: 'span.between' },
    tray.adopted ? adoptedStep(tray.source) : { say: 'span.training' },
    ...SIMPLE,
  ];
  return {
    result: {
      maxSpanIn: ft === null ? null : ft * 12,
      governs: 'table',
      refer: ft === null,
      acceptance: tray.adopted && ft !== null && lighter === null,
      ...(why.length === 0 ? {} : { why }),
    },
    steps,
    sources: [tray.source, ...(pointLb > 0 ? [CONCENTRATED] : [])],
  };
}

/** A load below the tray's own weight is no total: the tray was left out, and no work is accepted by the answer. */
function isLighter(loadLbPerFt: number, { id, weightLbPerFt }: LoadedTray): Say | null {
  if (atMost(weightLbPerFt, loadLbPerFt)) return null;
  const [weight] = figures(weightLbPerFt, loadLbPerFt);
  return { say: 'span.lighter', values: { tray: id, weight } };
}

/** Who adopted the table, on what day, in which paper: as an adopted source says it. */
function adoptedStep({ document, edition, where }: Source): Step {
  return { say: 'span.adopted', values: { document, on: edition, by: where } };
}

/** What several spans gain is not used, and where it does harm. */
const SIMPLE: readonly Step[] = [{ say: 'span.simple' }, { say: 'span.several' }, { say: 'span.walkway' }];

function loadStep(loadLbPerFt: number, pointLb: number): Step {
  return pointLb > 0
    ? {
        say: 'span.loadAndPoint',
        values: { load: figure(loadLbPerFt), point: figure(pointLb) },
        value: loadLbPerFt,
        unit: 'lb/ft',
      }
    : { say: 'span.load', value: loadLbPerFt, unit: 'lb/ft' };
}

function rowStep({ spanFt, lbPerFt }: LoadRow, load: number): Step {
  const [asked, listed] = figures(load, lbPerFt);
  return {
    say: atMost(load, lbPerFt) ? 'span.carries' : 'span.tooMuch',
    values: { ft: figure(spanFt), asked, listed },
  };
}

function byEstimate(given: Extract<SpanGiven, { section: unknown }>): Answered<SpanResult> {
  const { loadLbPerFt, pointLb = 0, deflectionRatio = 200 } = given;
  const { maxSpanIn, governs, steps, sources } = estimateSpan({
    section: given.section,
    metal: given.metal,
    loadLbPerFt,
    pointLb,
    deflectionRatio,
  });
  const why: Say[] = [{ say: 'span.estimate' }, { say: 'span.askTable' }];
  return {
    result: { maxSpanIn, governs, refer: true, acceptance: false, why },
    steps: [loadStep(loadLbPerFt, pointLb), ...steps, ...why, ...SIMPLE],
    sources,
  };
}
