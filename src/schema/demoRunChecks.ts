/** Runs of the demo works hang together, can be taken off, and are found to be as their files say. */
import type { Catalogue } from '../run/catalogue.ts';
import { inspect } from '../run/inspect/inspect.ts';
import { resolveRun } from '../run/resolve.ts';
import type { RunTables } from '../run/tables.ts';
import { takeoff } from '../run/takeoff.ts';
import { usualOf } from '../run/usual.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import { formatLength, ticks } from '../trade/length.ts';
import type { DemoRun } from './demoRun.ts';
import { judgedBy } from './entryTables.ts';
import { missingOne } from './missing.ts';
import type { FileFault } from './shelf.ts';
import type { Entries, Lost } from './shelves.ts';

/** Ranks and tags are always judged; runs where all that they are judged by could be read. */
export function demoRunFaults(entries: Entries, lost: Lost): readonly FileFault[] {
  const { demoRuns } = entries;
  const judged = demoRuns.length === 0 ? null : judgedBy(entries, lost);
  const own = [...rankFaults(demoRuns), ...tagFaults(demoRuns)];
  if (judged === null) return own;
  const { catalogue, tables } = judged;
  const faults = demoRuns.flatMap(({ file, data }) =>
    faultsOfRun(data, catalogue, tables).map((fault) => ({ file, ...fault })),
  );
  return [...own, ...faults];
}

/** Every end has its tag, and no tag stands where nothing ends. */
function tagFaults(demoRuns: Entries['demoRuns']): readonly FileFault[] {
  return demoRuns.flatMap(({ file, data: { tags, run } }) => {
    const ends = new Set((run.ends ?? []).map(({ leg }) => leg));
    const untagged = [...ends].filter((leg) => !Object.hasOwn(tags.ends, leg));
    return [
      ...Object.keys(tags.ends).flatMap((leg) =>
        missingOne(file, `tags.ends.${leg}`, leg, ends, 'end at leg'),
      ),
      ...untagged.map((leg) => ({
        ...{ file, field: 'tags.ends', value: leg },
        message: `the end of leg ${leg} has no tag`,
        todo: 'write what stands there, as FT-1204',
      })),
    ];
  });
}

function rankFaults(demoRuns: Entries['demoRuns']): readonly FileFault[] {
  return demoRuns.flatMap(({ file, data: { rank } }) => {
    const first = demoRuns.find((r) => r.data.rank === rank);
    if (first === undefined || first.file === file) return [];
    const todo = 'give each run a rank of its own, the easiest 1';
    return [{ file, field: 'rank', value: rank, message: `${first.id} has this rank`, todo }];
  });
}

function faultsOfRun({ run, finds }: DemoRun, catalogue: Catalogue, tables: RunTables): readonly Fault[] {
  try {
    const resolved = resolveRun(run, catalogue, usualOf(tables));
    // How the pieces are cut from stock is not asked here, only whether they can be.
    takeoff(resolved, catalogue, tables, { stop: () => true });
    return findingFaults(finds, inspect(resolved, catalogue, tables).result.findings);
  } catch (cause) {
    if (!(cause instanceof GivenError)) throw cause;
    return cause.faults.map((f) => ({ ...f, field: f.field === '' ? 'run' : `run.${f.field}` }));
  }
}

interface Place {
  readonly rule: string;
  readonly leg: string;
  readonly at: number | null;
}

/** What is found and not written, and what is written and not found. */
function findingFaults(written: readonly Place[], found: readonly Place[]): readonly Fault[] {
  const unwritten = found
    .filter((f) => !written.some((w) => same(w, f)))
    .map((f) => ({
      field: 'finds',
      value: placeText(f),
      message: 'an inspection finds this, and it is not written here',
      todo: 'mend the run, or write it under finds',
    }));
  const unfound = written.flatMap((w, i) =>
    found.some((f) => same(w, f))
      ? []
      : [
          {
            field: `finds[${i}]`,
            value: placeText(w),
            message: 'no inspection finds this',
            todo: 'take it out, or give the run this fault',
          },
        ],
  );
  return [...unwritten, ...unfound];
}

/** The middle of a span may lie half a tick off. */
function same(a: Place, b: Place): boolean {
  const near = a.at === null || b.at === null ? a.at === b.at : Math.abs(a.at - b.at) < 1;
  return a.rule === b.rule && a.leg === b.leg && near;
}

function placeText({ rule, leg, at }: Place): string {
  const where = at === null ? 'the whole leg' : formatLength(ticks(Math.floor(at)));
  return `${rule}, leg ${leg}, ${where}`;
}
