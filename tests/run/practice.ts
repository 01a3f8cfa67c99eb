/** The practice catalogue and runs of it, read as a works reads its own. */
import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Catalogue, Item, ItemOf } from '../../src/run/catalogue.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import type { ResolvedRun } from '../../src/run/resolved.ts';
import type { Run } from '../../src/run/types.ts';
import { catalogueOf, catalogueShape } from '../../src/schema/catalogue.ts';
import { runShape } from '../../src/schema/run.ts';

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
  resolveRun(run(length, rest), catalogue);
