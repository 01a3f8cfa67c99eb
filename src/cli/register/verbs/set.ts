import { MOST_BENCHES, type SetFile, type Sheet } from '../../../practice/sheet.ts';
import { mayWitness, setFaults } from '../../../register/acts/set.ts';
import { packed } from '../../../schema/link.ts';
import { plain } from '../../envelope.ts';
import type { Verb } from '../../verb.ts';
import { sitePractice } from '../content.ts';
import { outOf, writeNew } from '../newFile.ts';
import { common, Options } from '../options.ts';
import { chance, folderOf, open } from '../write.ts';

export const setVerb: Verb = {
  name: 'set',
  line: 'a witness sets a sheet for a person: a file to be answered; no entry is written',
  words: ['DIR'],
  options: {
    key: { value: 'KEY', needed: true, line: 'key file of the witness' },
    person: { value: 'ID', needed: true, line: 'who is to answer it' },
    sheet: { value: 'ID', needed: true, line: 'a sheet of the site' },
    bench: {
      value: 'N',
      needed: true,
      line: `bench number, 1 to ${MOST_BENCHES}: with the sheet it fixes the draws`,
    },
    out: { value: 'FILE', needed: true, line: 'the file to make; one that is there is never overwritten' },
    task: { value: 'ID', line: 'which of the sheet’s tasks (the first that the key is appointed for)' },
    ...common,
  },
  manual: () => [
    'Comes back: file, link (to be put behind the address of the page that answers it), sheet, number, bench,',
    'person, task, draws (how many).',
  ],
  run: async (call) => {
    const options = new Options(call);
    const now = options.now();
    const map = await options.map();
    const person = options.need('person', 'give the id of who is to answer it');
    const bench = benchOf(options);
    const { practice } = (await sitePractice())();
    const sheet = sheetOf(options, practice.sheets);
    const chosen = taskOf(options, sheet);
    const signer = await options.signer('key');
    const path = outOf(options);
    let task = chosen ?? '';
    try {
      if (options.isGood('at', 'map')) {
        const { judged } = await open(folderOf(call), now);
        if (signer !== undefined && sheet !== undefined && options.isGood('task')) {
          const writing = { signer, now, chance, device: call.text('device') };
          const tasks = chosen === undefined ? sheet.tasks : [chosen];
          task = tasks.find((id) => mayWitness(judged, id, writing)) ?? tasks[0] ?? '';
          options.takeNewFaults(setFaults(judged, { person, task }, map, writing));
        }
      }
    } catch (cause) {
      options.takeNew(cause);
    }
    options.done();
    if (sheet === undefined) throw new Error('options without a fault name a sheet');
    const set: SetFile = { v: 1, kind: 'set', sheet: sheet.id, bench, person, task };
    writeNew(path, set);
    const draws = sheet.families.reduce((sum, part) => sum + part.draws, 0);
    const link = await packed('set', set);
    return {
      json: plain({ file: path, link, sheet: sheet.id, number: sheet.number, bench, person, task, draws }),
      exit: 0,
    };
  },
};

function benchOf(options: Options): number {
  const todo = `write a whole number from 1 to ${MOST_BENCHES}`;
  const text = options.need('bench', todo);
  const bench = Number(text);
  if (text !== '' && !(/^[1-9]\d*$/.test(text) && bench <= MOST_BENCHES)) {
    options.faults.push({ field: 'bench', value: text, message: 'no bench number', todo });
  }
  return bench;
}

function sheetOf(options: Options, sheets: ReadonlyMap<string, Sheet>): Sheet | undefined {
  const id = options.need('sheet', 'name a sheet of the site');
  const sheet = sheets.get(id);
  if (id !== '' && sheet === undefined) {
    const todo = `write one of ${[...sheets.keys()].join(', ')}`;
    options.faults.push({ field: 'sheet', value: id, message: 'no such sheet', todo });
  }
  return sheet;
}

function taskOf(options: Options, sheet: Sheet | undefined): string | undefined {
  const task = options.call.text('task');
  if (task !== undefined && sheet !== undefined && !sheet.tasks.includes(task)) {
    const todo = `leave it out, or write one of ${sheet.tasks.join(', ')}`;
    const message = `sheet ${sheet.number} says nothing about ${task}`;
    options.faults.push({ field: 'task', value: task, message, todo });
  }
  return task;
}
