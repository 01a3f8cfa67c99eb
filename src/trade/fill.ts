/**
 * How full a channel is. Multiconductor cables by their areas against a table, single conductors by their diameters
 * against the inside width, both together by the two shares. What the tables do not say is not worked out: the answer
 * then refers to the authority, and no number stands for a limit.
 */
import type { Answered, Say, Source, Step } from './answer.ts';
import { figure, figures } from './figure.ts';
import { type Bottom, type Edition, type FillTable, type FillTables, NEWEST } from './fillTables.ts';
import { HAIR } from './hair.ts';

export type { Bottom, Edition, FillTables } from './fillTables.ts';

export type Make = 'multiconductor' | 'single';

/** Cables of one size. Exactly one of diameter and area is given; a single conductor has its diameter. */
export type FillCable = { readonly count: number } & (
  | { readonly make: Make; readonly odIn: number }
  | { readonly make: 'multiconductor'; readonly areaIn2: number }
);

export interface FillGiven {
  readonly tray: { readonly bottom: Bottom; readonly widthIn: number };
  readonly cables: readonly FillCable[];
  /** Only qualified persons service the place; single conductors need it. */
  readonly qualifiedOnly?: boolean | undefined;
  /** Share of the limit to keep free, from 0, below 1. */
  readonly spare?: number | undefined;
  readonly edition?: Edition | undefined;
}

export interface FillResult {
  /** Sum of the multiconductor cables' areas. */
  readonly areaIn2: number;
  /** The table's own limit, whatever is kept spare; null where no table gives one. */
  readonly allowedIn2: number | null;
  readonly within: boolean | null;
  /** Share of what may be used that is used. */
  readonly fraction: number | null;
  readonly table: string;
  /** Column of the table: 1 for one multiconductor cable, 2 for more; null without any. */
  readonly column: 1 | 2 | null;
  /** All cables counted. */
  readonly cables: number;
  /** What may still go in beside the share kept spare; below 0 when over. */
  readonly spareIn2: number | null;
  /** Single conductors only: the sum of their diameters, and the width it is held against. */
  readonly sumOfDiametersIn?: number;
  readonly allowedIn?: number | null;
  readonly refer: boolean;
  /** Why it is referred. */
  readonly why?: readonly Say[];
}

export function fill(given: FillGiven, tables: FillTables): Answered<FillResult> {
  const { tray, cables, spare = 0, edition = NEWEST } = given;
  const multis = cables.filter((c) => c.make === 'multiconductor');
  const singles = cables.filter((c) => c.make === 'single');
  const table = tables.multiconductor[tray.bottom];
  const free = 1 - spare;

  const areas = multis.length === 0 ? undefined : byArea(table, tray.widthIn, multis, free);
  const widths = singles.length === 0 ? undefined : byDiameter(tables, given, singles, free);
  const why = [...(areas?.why ?? []), ...(widths?.why ?? [])];
  const known = why.length === 0;
  const both = areas !== undefined && widths !== undefined;
  const fraction = known ? (areas?.fraction ?? 0) + (widths?.fraction ?? 0) : null;
  const within = known ? (!both ? (areas ?? widths)?.within === true : (fraction ?? 0) <= 1 + HAIR) : null;

  const result: FillResult = {
    areaIn2: areas?.areaIn2 ?? 0,
    allowedIn2: known ? (areas?.allowedIn2 ?? null) : null,
    within,
    fraction,
    table: areas === undefined ? tables.singles.table : table.table,
    column: areas?.column ?? null,
    cables: countOf(cables),
    spareIn2: known && areas !== undefined ? (areas.allowedIn2 ?? 0) * free - areas.areaIn2 : null,
    ...(widths === undefined
      ? {}
      : { sumOfDiametersIn: widths.sumIn, allowedIn: known ? widths.allowedIn : null }),
    refer: !known || both,
    ...(known && !both ? {} : { why: known ? [{ say: 'fill.bothRefer' }] : [...why, { say: 'fill.ask' }] }),
  };
  const spared: Step[] =
    spare > 0 && known
      ? [{ say: 'fill.spare', values: { kept: figure(spare * 100), free: figure(free * 100) } }]
      : [];
  return {
    result,
    steps: [...(areas?.steps ?? []), ...(widths?.steps ?? []), ...spared, ...verdict(given, result, free)],
    sources: sourcesOf(tables, given, { areas: areas !== undefined, widths: widths !== undefined, edition }),
  };
}

/** Area of the multiconductor cables against their table. */
function byArea(table: FillTable, widthIn: number, cables: readonly FillCable[], free: number) {
  const count = countOf(cables);
  const column: 1 | 2 = count === 1 ? 1 : 2;
  const areaIn2 = cables.reduce((sum, cable) => sum + cable.count * areaOf(cable), 0);
  const row = table.rows.find((r) => Math.abs(r.widthIn - widthIn) <= HAIR);
  const allowedIn2 = row === undefined ? null : column === 1 ? row.oneIn2 : row.severalIn2;
  const values = { table: table.table, width: figure(widthIn), column };
  const steps: Step[] = [
    ...cables.map(areaStep),
    ...(cables.length > 1 ? [{ say: 'fill.area', value: areaIn2, unit: 'in2' }] : []),
    { say: column === 1 ? 'fill.one' : 'fill.several', values: { count, table: table.table } },
    allowedIn2 === null
      ? { say: 'fill.noRow', values }
      : { say: 'fill.row', values, value: allowedIn2, unit: 'in2' },
  ];
  const why: Say[] = allowedIn2 === null ? [{ say: 'fill.noRow', values }] : [];
  const fraction = allowedIn2 === null ? null : areaIn2 / (allowedIn2 * free);
  const within = allowedIn2 === null ? null : areaIn2 <= allowedIn2 * free + HAIR;
  return { column, areaIn2, allowedIn2, fraction, within, steps, why };
}

/** Diameters of the single conductors against the inside width, where they may lie in channel at all. */
function byDiameter(
  { singles: rule }: FillTables,
  { tray, qualifiedOnly = false }: FillGiven,
  cables: readonly FillCable[],
  free: number,
) {
  const sumIn = cables.reduce((sum, c) => sum + ('odIn' in c ? c.count * c.odIn : 0), 0);
  const width = figure(tray.widthIn);
  const why: Say[] = [
    ...(tray.bottom === rule.bottom ? [] : [{ say: 'fill.singlesSolid' }]),
    ...(tray.bottom !== rule.bottom || rule.widthsIn.some((w) => Math.abs(w - tray.widthIn) <= HAIR)
      ? []
      : [{ say: 'fill.singlesWidth', values: { width, table: rule.table } }]),
    ...(qualifiedOnly ? [] : [{ say: 'fill.notQualified' }]),
  ];
  const allowedIn = why.length === 0 ? tray.widthIn : null;
  const steps: Step[] = [
    ...cables.map((c) => diameterStep(c)),
    ...(cables.length > 1 ? [{ say: 'fill.diameters', value: sumIn, unit: 'in' }] : []),
    ...(allowedIn === null
      ? why
      : [{ say: 'fill.width', values: { table: rule.table }, value: allowedIn, unit: 'in' }]),
  ];
  const fraction = allowedIn === null ? null : sumIn / (allowedIn * free);
  const within = allowedIn === null ? null : sumIn <= allowedIn * free + HAIR;
  return { sumIn, allowedIn, fraction, within, steps, why };
}

function countOf(cables: readonly FillCable[]): number {
  return cables.reduce((sum, cable) => sum + cable.count, 0);
}

/** Area of one cable: as given, or of a circle of its outside diameter. */
export function areaOf(cable: FillCable): number {
  return 'areaIn2' in cable ? cable.areaIn2 : (Math.PI * cable.odIn ** 2) / 4;
}

function areaStep(cable: FillCable): Step {
  const value = cable.count * areaOf(cable);
  const { count } = cable;
  return 'areaIn2' in cable
    ? { say: 'fill.cableByArea', values: { count, area: figure(cable.areaIn2) }, value, unit: 'in2' }
    : { say: 'fill.cableByDiameter', values: { count, od: figure(cable.odIn) }, value, unit: 'in2' };
}

function diameterStep(cable: FillCable): Step {
  const od = 'odIn' in cable ? cable.odIn : 0;
  return {
    say: 'fill.single',
    values: { count: cable.count, od: figure(od) },
    value: cable.count * od,
    unit: 'in',
  };
}

/** The last lines of the working: what is used of what may be used. */
function verdict({ tray }: FillGiven, result: FillResult, free: number): Step[] {
  const { areaIn2, allowedIn2, sumOfDiametersIn = 0, allowedIn = null, fraction, within, column } = result;
  if (fraction === null) return [{ say: 'fill.refer' }];
  const holds = within === true;
  if (allowedIn2 !== null && allowedIn !== null) {
    const values = {
      areas: figure((areaIn2 / (allowedIn2 * free)) * 100),
      widths: figure((sumOfDiametersIn / (allowedIn * free)) * 100),
    };
    return [
      { say: 'fill.shares', values, value: fraction },
      { say: holds ? 'fill.sharesHold' : 'fill.sharesOver' },
      { say: 'fill.bothRefer' },
    ];
  }
  const most = (allowedIn2 ?? allowedIn ?? 0) * free;
  const [used, usable] = figures(allowedIn2 === null ? sumOfDiametersIn : areaIn2, most);
  const unit = allowedIn2 === null ? 'Width' : 'Area';
  return [
    { say: `fill.${holds ? 'within' : 'over'}${unit}`, values: { used, usable }, value: fraction },
    ...(column === 1 ? [{ say: 'fill.oneMore', values: { width: figure(tray.widthIn) } }] : []),
  ];
}

function sourcesOf(
  { multiconductor, singles, together }: FillTables,
  { tray }: FillGiven,
  of: { readonly areas: boolean; readonly widths: boolean; readonly edition: Edition },
): readonly Source[] {
  return [
    ...(of.areas ? [multiconductor[tray.bottom].sources[of.edition]] : []),
    ...(of.widths ? [singles.sources[of.edition], singles.qualified[of.edition]] : []),
    ...(of.areas && of.widths ? [together[of.edition]] : []),
  ];
}
