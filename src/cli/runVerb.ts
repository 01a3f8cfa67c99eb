/** A verb of `run`: a run is read, resolved, and answered. */
import { resolveRun } from '../run/resolve.ts';
import type { ResolvedRun } from '../run/resolved.ts';
import type { Run } from '../run/types.ts';
import { usualOf } from '../run/usual.ts';
import { checkRun } from '../schema/checkRun.ts';
import { GivenError } from '../trade/given.ts';
import { answering, type Work } from './answering.ts';
import { table } from './help.ts';
import { type RunContent, runContent } from './runContent.ts';
import type { Option, Verb } from './verb.ts';

export interface RunVerb {
  readonly name: string;
  readonly line: string;
  /** The result's fields, for the manual. */
  readonly results: readonly (readonly [string, string])[];
  readonly options?: Readonly<Record<string, Option>>;
  readonly work: Work<Run, RunContent>;
}

export function runVerb({ name, line, results, options, work }: RunVerb): Verb {
  return {
    name,
    line,
    takesInput: true,
    ...(options === undefined ? {} : { options }),
    manual: () => [
      'In: one run, or a list of them; its fields are in src/cli/README.md, "run".',
      '',
      'Out, in "result":',
      ...table(results),
    ],
    run: answering((options) => {
      const answer = work(options);
      return (given, content) => {
        const read = checkRun(given, content.catalogue, usualOf(content.tables));
        if ('faults' in read) throw new GivenError(read.faults);
        return answer(read.data, content);
      };
    }, runContent),
  };
}

/** A verb that looks at the run as it resolves. */
export function onResolved(work: Work<ResolvedRun, RunContent>): RunVerb['work'] {
  return (options) => {
    const answer = work(options);
    return (run, content) => answer(resolveRun(run, content.catalogue, usualOf(content.tables)), content);
  };
}
