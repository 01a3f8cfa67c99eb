/** The practice catalogue and runs of it, read as a works reads its own. */
import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Catalogue, Item, ItemOf } from '../../src/run/catalogue.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import type { ResolvedRun } from '../../src/run/resolved.ts';
import type { Run } from '../../src/run/types.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { catalogueOf, catalogueShape } from '../../src/schema/catalogue.ts';
import { runShape } from '../../src/schema/run.ts';
import { GivenError } from '../../src/trade/given.ts';

const folder = new URL('../../content/catalogue/', import.meta.url);

export const catalogueFiles = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => ({ name, data: parse(readFileSync(new URL(name, folder), 'utf8')) as unknown }));

export const catalogue: Catalogue = catalogueOf(
  catalogueFiles.map(({ data }) => catalogueShape.parse(data)),
).catalogue;

/** An item of the kind wanted. */
export function item<K extends Item['kind']>(id: string, kind: K): ItemOf<K> {
  const found = catalogue.get(id);
  if (found?.kind !== kind) throw new Error(`no ${kind} ${id}`);
  return found as ItemOf<K>;
}

/** One straight leg of 4 in channel, both ends free, and whatever is given besides. */
export function run(length: string | number, rest: Record<string, unknown> = {}): Run {
  return runShape.parse({
    v: 1,
    tray: 'card-4',
    start: { kind: 'free', joint: 'free' },
    legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length }],
    ...rest,
  });
}

export const resolved = (length: string | number, rest: Record<string, unknown> = {}): ResolvedRun =>
  resolveRun(run(length, rest), catalogue, TRADE_USUAL);

/** A whole run of 4 in channel from its legs, and whatever is given besides; a leg's id is its letter. */
export function whole(legs: readonly Record<string, unknown>[], rest: Record<string, unknown> = {}): Run {
  return runShape.parse({ v: 1, tray: 'card-4', start: { kind: 'free', joint: 'free' }, legs, ...rest });
}

/** A leg of 10 ft; the first one where no fitting is named. */
export function leg(
  id: string,
  dir: unknown,
  from = 'start',
  fitting: string | null = null,
  rest: object = {},
) {
  return { id, from, fitting, dir, length: `10'`, ...rest };
}

/** Every fault of a run, `field: message`, in the order of their fields; none when it resolves. */
export function faultsOf(given: Run, of: Catalogue = catalogue): readonly string[] {
  try {
    resolveRun(given, of, TRADE_USUAL);
  } catch (error) {
    if (!(error instanceof GivenError)) throw error;
    for (const { message, todo } of error.faults) {
      // What to do, in words of its own.
      if (todo.split(' ').length < 2 || todo === message) throw new Error(`nothing to do: ${message}`);
    }
    return error.faults.map((f) => `${f.field}: ${f.message}`).sort();
  }
  return [];
}

/** The fields alone. */
export const faultFields = (given: Run, of?: Catalogue): readonly string[] =>
  faultsOf(given, of).map((f) => f.slice(0, f.indexOf(': ')));
