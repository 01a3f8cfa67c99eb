/**
 * The file in which a run is kept and handed on: the run as the command reads it under `run`, and beside it number, name,
 * place, crew, tags and what was built. A file that holds the pure run alone is read too.
 */
import { z } from 'zod';
import type { Catalogue } from '../run/catalogue.ts';
import { bareFile, type RunFile } from '../run/edit/file.ts';
import type { RunUsual } from '../run/usual.ts';
import { runJson } from '../run/writeRun.ts';
import { inches } from '../trade/length.ts';
import { checkRun } from './checkRun.ts';
import { type Checked, faultsOf } from './faults.ts';
import { lengthAbove0 } from './length.ts';

const text = z.string().max(200);

const fileShape = z.strictObject({
  v: z.literal(1),
  kind: z.literal('run'),
  number: text.default(''),
  name: text.default(''),
  place: text.default(''),
  crew: text.default(''),
  tags: z
    .strictObject({ start: text.default(''), ends: z.record(z.string(), text).default({}) })
    .default({ start: '', ends: {} }),
  run: z.unknown(),
  built: z
    .array(
      z.strictObject({
        piece: z.string().min(1),
        cut: lengthAbove0,
        by: text,
        on: z.iso.date('a day is written YYYY-MM-DD'),
      }),
    )
    .default([]),
});

/** Reads either form; faults of the run in a whole file are at `run.…`. A run that does not hang together is read all the same. */
export function checkRunFile(given: unknown, catalogue: Catalogue, usual: RunUsual): Checked<RunFile> {
  const whole = typeof given === 'object' && given !== null && 'kind' in given;
  if (!whole) {
    const run = checkRun(given, catalogue, usual);
    return 'data' in run ? { data: bareFile(run.data) } : run;
  }
  const file = fileShape.safeParse(given);
  const run = checkRun((given as { run?: unknown }).run, catalogue, usual);
  const faults = [
    ...(file.success ? [] : faultsOf(file.error.issues, given)),
    ...('faults' in run ? run.faults.map((f) => ({ ...f, field: under(f.field) })) : []),
  ];
  if (!file.success || !('data' in run)) return { faults };
  return { data: { ...file.data, run: run.data } };
}

const under = (field: string) => (field === '' ? 'run' : `run.${field}`);

/** A whole file as plain JSON values; `checkRunFile` reads it back to the same. */
export function runFileJson(file: RunFile): unknown {
  return {
    ...file,
    run: runJson(file.run),
    built: file.built.map((one) => ({ ...one, cut: inches(one.cut) })),
  };
}
