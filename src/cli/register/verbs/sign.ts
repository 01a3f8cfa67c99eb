import type { AnswersFile } from '../../../practice/sheet.ts';
import { readAnswersFile } from '../../../practice/sheetFiles.ts';
import { check } from '../../../register/acts/check.ts';
import type { Json } from '../../../register/canonical.ts';
import { GivenError } from '../../../trade/given.ts';
import type { Verb } from '../../verb.ts';
import { checkOptions, sawOf } from '../checkOptions.ts';
import { siteRegrade } from '../content.ts';
import { handedFile } from '../handed.ts';
import { common, Options } from '../options.ts';
import { sayUsed } from '../usedBench.ts';
import { folderOf, write } from '../write.ts';

const { person, task, evidence: _, ...seen } = checkOptions;

export const signVerb: Verb = {
  name: 'sign',
  line: 'a witness signs what he saw, with the answers to the sheet that was set; they are graded again',
  words: ['DIR'],
  options: {
    key: { value: 'KEY', needed: true, line: 'key file of the witness' },
    answers: {
      value: 'FILE',
      needed: true,
      line: 'the answers as they were handed over; they say who and which task',
    },
    ...seen,
    person: { value: person.value, line: 'who did it, the same as in the answers' },
    task: { value: task.value, line: 'the task, the same as in the answers' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id): a check whose evidence the answers are.'],
  run: async (call) => {
    const options = new Options(call);
    const now = options.now();
    const map = await options.map();
    const demands = await options.demands();
    const evidence = await answersOf(options);
    const saw = sawOf(options);
    const signer = await options.signer('key');
    return write(folderOf(call), options, signer, now, async ({ files, judged }, writing) => {
      if (evidence === undefined) throw new GivenError([]);
      const given = {
        ...saw,
        person: evidence.file.person,
        task: evidence.file.task,
        evidence: evidence.json,
      };
      try {
        const regrade = await siteRegrade(files, evidence.json);
        const written = await check(judged, given, map, writing, regrade, demands);
        sayUsed(judged, given.person, evidence.json);
        return written;
      } catch (cause) {
        throw named(cause);
      }
    });
  },
};

/** The answers in `--answers`, which `--person` and `--task` may not contradict. */
async function answersOf(options: Options) {
  const path = options.need('answers', 'name the file of the answers');
  if (path === '') return undefined;
  let json: Json;
  let file: AnswersFile;
  try {
    json = await handedFile('', path, 'answers');
    file = readAnswersFile(json);
  } catch (cause) {
    options.takeNew(below(cause));
    return undefined;
  }
  for (const field of ['person', 'task'] as const) {
    const said = options.call.text(field);
    if (said === undefined || said === file[field]) continue;
    const todo = 'leave it out, or give the answers that belong to it';
    options.faults.push({ field, value: said, message: `the answers are for ${file[field]}`, todo });
  }
  return { json, file };
}

/** Faults of the file, below the option that names it. */
function below(cause: unknown): unknown {
  if (!(cause instanceof GivenError)) return cause;
  const at = (field: string) => (field === '' ? 'answers' : `answers.${field}`);
  return new GivenError(cause.faults.map((f) => ({ ...f, field: at(f.field) })));
}

/** Here the evidence is called the answers. */
function named(cause: unknown): unknown {
  if (!(cause instanceof GivenError)) return cause;
  return new GivenError(
    cause.faults.map((f) => ({ ...f, field: f.field.replace(/^evidence\b/, 'answers') })),
  );
}
