/** How far apart expansion joints may stand, and how wide one is set: metal lengthens by its own rate for each degree. */
import type { Answered, Say, Source, Step } from './answer.ts';
import { figure } from './figure.ts';
import { gapAt } from './gapAt.ts';
import { type Fault, GivenError } from './given.ts';
import { HAIR, same } from './hair.ts';
import { inches, type Ticks } from './length.ts';
import { type Limit, restsOn } from './limit.ts';

export const EXPANSION_METALS = ['steel', 'aluminium', 'stainless 304', 'stainless 316'] as const;
export type ExpansionMetal = (typeof EXPANSION_METALS)[number];

export interface MetalRate {
  /** Share of its length that a metal gains for one degree Fahrenheit. */
  readonly perF: number;
  readonly source: Source;
  /** Of the metal's column of the table. */
  readonly column: Source;
}

export interface ExpansionTable {
  /** Number of the table, as it is cited. */
  readonly table: string;
  readonly metals: Readonly<Record<ExpansionMetal, MetalRate>>;
  /** Ranges of temperature, rising, and the spacing that gives 1 in of movement. */
  readonly rows: readonly ({ readonly rangeF: number } & Readonly<Record<ExpansionMetal, number>>)[];
  /** What one joint takes up, where none is given. */
  readonly movement: Limit<Ticks>;
  /** That the gap lies as far into its range as the metal does into its own. */
  readonly gap: Source;
}

export interface ExpansionGiven {
  readonly metal: ExpansionMetal;
  /** Temperatures of the metal, not of the air: coldest, hottest, when it is set. */
  readonly lowF: number;
  readonly highF: number;
  readonly installF: number;
  /** What one joint takes up, above 0. */
  readonly movementIn?: number | undefined;
  /** The straight run, above 0. */
  readonly lengthFt?: number | undefined;
  /** A length, above 0, and by how many degrees it warms; below 0 it cools. */
  readonly movementOf?: { readonly lengthFt: number; readonly dF: number } | undefined;
}

export interface ExpansionResult {
  readonly maxSpacingFt: number | null;
  /** As the table prints it: only at a range that it lists, for a movement of 1 in. */
  readonly tableFt: number | null;
  /** Parts that the run is divided into. */
  readonly segments: number | null;
  /** Null where the metal is colder or hotter than its range. */
  readonly gapIn: number | null;
  /** How far the length moves; below 0 it shortens. */
  readonly movedIn: number | null;
  readonly refer: boolean;
  /** Why it is referred. */
  readonly why?: readonly Say[];
}

/** The table's rows are for this much movement. */
const TABLE_MOVEMENT_IN = 1;
const INCHES_PER_FOOT = 12;

/** What is wrong with a range of temperatures, or null. */
export function rangeFault({ lowF, highF }: Pick<ExpansionGiven, 'lowF' | 'highF'>): Fault | null {
  if (highF >= lowF) return null;
  return {
    field: 'highF',
    value: highF,
    message: `the hottest is below the coldest, ${lowF}`,
    todo: 'look whether the two are exchanged',
  };
}

/** @throws {GivenError} when the hottest is below the coldest */
export function expansion(given: ExpansionGiven, table: ExpansionTable): Answered<ExpansionResult> {
  const { lowF, highF } = given;
  const fault = rangeFault(given);
  if (fault !== null) throw new GivenError([fault]);
  if (highF === lowF) {
    const why: Say[] = [{ say: 'expansion.noRange' }, { say: 'expansion.ask' }];
    const none = { maxSpacingFt: null, tableFt: null, segments: null, gapIn: null, movedIn: null };
    return { result: { ...none, refer: true, why }, steps: why, sources: [] };
  }
  return workedOut(given, table);
}

function workedOut(given: ExpansionGiven, table: ExpansionTable): Answered<ExpansionResult> {
  const { metal, lowF, highF, installF, lengthFt, movementOf } = given;
  const movementIn = given.movementIn ?? inches(table.movement.value);
  const { perF, source, column } = table.metals[metal];
  const rangeF = highF - lowF;
  const maxSpacingFt = movementIn / (INCHES_PER_FOOT * perF * rangeF);
  const row = table.rows.find((r) => same(r.rangeF, rangeF) && same(movementIn, TABLE_MOVEMENT_IN));
  const segments = lengthFt === undefined ? null : Math.ceil(lengthFt / maxSpacingFt - HAIR);
  const gapIn = gapAt(lowF, highF, installF, movementIn);
  const movedIn =
    movementOf === undefined ? null : INCHES_PER_FOOT * movementOf.lengthFt * perF * movementOf.dF;
  const why: Say[] = [
    { say: 'expansion.outside', values: { low: figure(lowF), high: figure(highF), now: figure(installF) } },
    { say: 'expansion.ask' },
  ];
  const steps: Step[] = [
    { say: 'expansion.range', values: { low: figure(lowF), high: figure(highF) }, value: rangeF, unit: '°F' },
    { say: 'expansion.movement', value: movementIn, unit: 'in' },
    ...(given.movementIn === undefined ? restsOn(table.movement) : []),
    {
      say: 'expansion.spacing',
      values: { movement: figure(movementIn), rate: figure(perF * 1e6), range: figure(rangeF) },
      value: maxSpacingFt,
      unit: 'ft',
    },
    ...(row === undefined
      ? []
      : [{ say: 'expansion.table', values: { table: table.table }, value: row[metal], unit: 'ft' }]),
    ...(lengthFt === undefined
      ? []
      : [
          {
            say: 'expansion.segments',
            values: { length: figure(lengthFt), spacing: figure(maxSpacingFt) },
            value: segments ?? 0,
          },
          { say: 'expansion.joints' },
        ]),
    ...(gapIn === null
      ? why
      : [
          {
            say: 'expansion.gap',
            values: {
              movement: figure(movementIn),
              high: figure(highF),
              now: figure(installF),
              range: figure(rangeF),
            },
            value: gapIn,
            unit: 'in',
          },
        ]),
    ...(movementOf === undefined || movedIn === null
      ? []
      : [
          {
            say: movedIn < 0 ? 'expansion.shorter' : 'expansion.longer',
            values: { length: figure(movementOf.lengthFt), degrees: figure(Math.abs(movementOf.dF)) },
            value: movedIn,
            unit: 'in',
          },
        ]),
  ];
  return {
    result: {
      maxSpacingFt,
      tableFt: row?.[metal] ?? null,
      segments,
      gapIn,
      movedIn,
      refer: gapIn === null,
      ...(gapIn === null ? { why } : {}),
    },
    steps,
    sources: [
      source,
      ...(given.movementIn === undefined ? [table.movement.source] : []),
      ...(row === undefined ? [] : [column]),
      table.gap,
    ],
  };
}
