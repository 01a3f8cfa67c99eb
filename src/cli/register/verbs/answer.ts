import { type AnswersFile, regradeSheet, type SetFile, sheetPlaces } from '../../../practice/sheet.ts';
import { readSetFile } from '../../../practice/sheetFiles.ts';
import { deviceName } from '../../../register/shapes.ts';
import { packed } from '../../../schema/link.ts';
import { GivenError } from '../../../trade/given.ts';
import { plain } from '../../envelope.ts';
import type { Verb } from '../../verb.ts';
import { answersGiven } from '../answersGiven.ts';
import { sitePractice } from '../content.ts';
import { handedFile } from '../handed.ts';
import { outOf, writeNew } from '../newFile.ts';
import { common, Options } from '../options.ts';

const { at, map } = common;
/** Device of answers that were given without a page, where none is named. */
const DEVICE = 'command';

export const answerVerb: Verb = {
  name: 'answer',
  line: 'a person’s answers to a sheet that was set, as a file for the witness; nothing is graded',
  words: ['FILE'],
  options: {
    answers: { value: 'FILE', needed: true, line: 'JSON: {"1":{"ask":value},"2":{…}}, by place of the draw' },
    out: { value: 'FILE', needed: true, line: 'the file to make; one that is there is never overwritten' },
    device: { value: 'NAME', line: `the device it was answered on (${DEVICE})` },
    at,
    map,
  },
  manual: () => [
    'FILE: what "register set" made, or a file with its link. A draw or an ask that is left out is blank.',
    'Comes back: file, link (to be put behind the address of the witness’s page), sheet, bench, person, task, device, draws, answered (draws with an answer).',
  ],
  run: async (call) => {
    const options = new Options(call);
    options.now();
    if (call.text('map') !== undefined) await options.map();
    const set = await setOf(options);
    options.need('answers', 'name the file of the answers');
    const given = call.text('answers') === '' ? undefined : options.json('answers');
    const device = call.text('device') ?? DEVICE;
    const wrong = deviceName(device);
    if (wrong !== undefined) {
      const todo = 'write 1 to 32 letters, digits, -';
      options.faults.push({ field: 'device', value: device, message: `the device ${wrong}`, todo });
    }
    const path = outOf(options);
    const file =
      set === undefined || given === undefined ? undefined : await fileOf(options, set, given, device);
    options.done();
    if (file === undefined) throw new Error('options without a fault make a file');
    writeNew(path, file);
    const { sheet, bench, person, task, answers } = file;
    const answered = answers.filter((entry) => Object.keys(entry.answers).length > 0).length;
    const link = await packed('answers', file);
    const result = { file: path, link, sheet, bench, person, task, device, draws: answers.length, answered };
    return { json: plain(result), exit: 0 };
  },
};

/** The set file. Its faults stand at `FILE`, as `FILE.bench`. */
async function setOf(options: Options): Promise<SetFile | undefined> {
  const [word = ''] = options.call.words;
  try {
    const json = await handedFile('FILE', word, 'set');
    return within('FILE', () => readSetFile(json));
  } catch (cause) {
    options.take('FILE', cause);
    return undefined;
  }
}

async function fileOf(
  options: Options,
  set: SetFile,
  given: unknown,
  device: string,
): Promise<AnswersFile | undefined> {
  const { practice, language } = (await sitePractice())();
  const { sheet, bench, person, task } = set;
  const head = { v: 1, kind: 'answers', sheet, bench, person, device, task } as const;
  const found = practice.sheets.get(sheet);
  return options.attempt('answers', () => {
    // Nobody is told here how it would be graded; grading is what finds an answer that cannot be read.
    const grade = (answers: AnswersFile['answers']) => regradeSheet({ ...head, answers }, practice, language);
    within('FILE', () => grade([]));
    const answers = answersGiven(given, found === undefined ? [] : sheetPlaces(found, bench));
    const file = { ...head, answers };
    grade(answers);
    return file;
  });
}

/** Does what may throw faults of a file, and names them below a word of the command. */
function within<T>(word: string, what: () => T): T {
  try {
    return what();
  } catch (cause) {
    if (!(cause instanceof GivenError)) throw cause;
    const named = (field: string) => (field === '' ? word : `${word}.${field}`);
    throw new GivenError(cause.faults.map((f) => ({ ...f, field: named(f.field) })));
  }
}
