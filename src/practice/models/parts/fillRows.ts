/**
 * The fill tables as draws take and show them. Draws are fixed for ever, so they are in one edition: NFPA 70, 2023,
 * whose tables of channel are those of 2017 and 2020 too.
 */

import type { Edition } from '../../../trade/editions.ts';
import { type Bottom, type FillCable, fill } from '../../../trade/fill.ts';
import type { Fact, World } from '../../model.ts';
import { num, rows } from './asks.ts';

export const EDITION: Edition = 2023;

export type Column = 'one' | 'several';
export type Yes = 'yes' | 'no' | 'ask';

/** Rows of a table as the person is shown them. */
export function tableRows(bottom: Bottom, { fillTables }: World): Fact {
  return rows(
    fillTables.multiconductor[bottom].rows.map(({ widthIn, oneIn2, severalIn2 }) => ({
      width: num(widthIn),
      one: num(oneIn2, 1),
      several: num(severalIn2, 1),
    })),
  );
}

/** Facts of both tables, for `each: ventilatedTable` and `each: solidTable`. */
export const bothTables = (world: World) => ({
  ventilatedTable: tableRows('ventilated', world),
  solidTable: tableRows('solid', world),
});

/** Every number of the two tables: no right answer is to look like one of them. */
export const tableNumbers = ({ fillTables: { multiconductor } }: World): readonly number[] =>
  Object.values(multiconductor).flatMap(({ rows: all }) =>
    all.flatMap(({ oneIn2, severalIn2 }) => [oneIn2, severalIn2]),
  );

/** Whether a number lies this close to one of the tables. */
export const nearTable = (n: number, by: number, world: World): boolean =>
  tableNumbers(world).some((one) => Math.abs(one - n) < by);

export const cable = (odIn: number, count = 1): FillCable => ({ make: 'multiconductor', odIn, count });

/** Cables of which only the area together and the column count. */
const ofArea = (areaIn2: number, column: Column): FillCable => {
  const count = column === 'one' ? 1 : 2;
  return { make: 'multiconductor', areaIn2: areaIn2 / count, count };
};

export interface Held {
  readonly bottom: Bottom;
  readonly widthIn: number;
  readonly column: Column;
  readonly spare?: number;
}
const filled = (areaIn2: number, { bottom, widthIn, column, spare = 0 }: Held, world: World) =>
  fill(
    { tray: { bottom, widthIn }, cables: [ofArea(areaIn2, column)], spare, edition: EDITION },
    world.fillTables,
  ).result;

/** What a row allows; null where the table has none. */
export const limitOf = (held: Held, world: World): number | null => filled(1, held, world).allowedIn2;

/** Whether an area may lie there. */
export function mayLie(areaIn2: number, held: Held, world: World): Yes {
  const { within } = filled(areaIn2, held, world);
  return within === null ? 'ask' : within ? 'yes' : 'no';
}

/** How a person gets from a diameter to an area; only `circle` is right. */
export type AreaBy = 'circle' | 'square' | 'diameter' | 'asRadius' | 'radius';
export function areaBy(by: AreaBy, odIn: number, count: number, world: World): number {
  const of = (one: FillCable) =>
    fill({ tray: { bottom: 'solid', widthIn: 6 }, cables: [one], edition: EDITION }, world.fillTables).result
      .areaIn2;
  const made: Readonly<Record<AreaBy, FillCable>> = {
    circle: cable(odIn, count),
    /** π/4 left out. */
    square: { make: 'multiconductor', areaIn2: odIn ** 2, count },
    diameter: { make: 'multiconductor', areaIn2: odIn, count },
    /** The diameter put where the radius belongs, and the other way round. */
    asRadius: cable(2 * odIn, count),
    radius: cable(odIn / 2, count),
  };
  return of(made[by]);
}
