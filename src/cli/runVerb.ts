/** A verb of `run`: one run in, one answer out; a list in, a list of answers out, each with its own faults. */

import { resolveRun } from '../run/resolve.ts';
import type { ResolvedRun } from '../run/resolved.ts';
import type { Run } from '../run/types.ts';
import { usualOf } from '../run/usual.ts';
import { checkRun } from '../schema/checkRun.ts';
import type { Answered } from '../trade/answer.ts';
import { GivenError } from '../trade/given.ts';
import { bad, type Envelope, good } from './envelope.ts';
import { table } from './help.ts';
import { type RunContent, runContent } from './runContent.ts';
import type { Call, Option, Verb } from './verb.ts';

/** Options of the call, as written. */
export type Options = Pick<Call, 'text' | 'has'>;

export interface RunVerb {
  readonly name: string;
  readonly line: string;
  /** The result's fields, for the manual. */
  readonly results: readonly (readonly [string, string])[];
  readonly options?: Readonly<Record<string, Option>>;
  /**
   * Reads the options once a call, and hands back what answers each run.
   * @throws {GivenError} an option that cannot be used
   */
  readonly work: (options: Options) => (run: Run, content: RunContent) => Answered<object>;
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
    run: async (call) => {
      const answer = work(call);
      const given = await call.input();
      const content = runContent();
      const one = (run: unknown) => answered(run, content, answer);
      const answers = Array.isArray(given) ? given.map(one) : [one(given)];
      return { json: Array.isArray(given) ? answers : answers[0], exit: answers.every((a) => a.ok) ? 0 : 2 };
    },
  };
}

function answered(given: unknown, content: RunContent, answer: ReturnType<RunVerb['work']>): Envelope {
  const read = checkRun(given, content.catalogue, usualOf(content.tables));
  if ('faults' in read) return bad(read.faults);
  try {
    return good(answer(read.data, content), content.speak);
  } catch (cause) {
    if (cause instanceof GivenError) return bad(cause.faults);
    throw cause;
  }
}

/** A verb that looks at the run as it resolves. */
export function onResolved(
  work: (resolved: ResolvedRun, content: RunContent) => Answered<object>,
): RunVerb['work'] {
  return () => (run, content) => work(resolveRun(run, content.catalogue, usualOf(content.tables)), content);
}
