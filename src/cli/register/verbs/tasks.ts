import { plain } from '../../envelope.ts';
import type { Verb } from '../../verb.ts';
import { common, Options } from '../options.ts';

const { at, map } = common;

export const tasksVerb: Verb = {
  name: 'tasks',
  line: 'the task map as the register takes it',
  options: { at, map },
  manual: () => [
    'Comes back: tasks [{id, months, second, tickets, variants, revisions, parts, trainHours}].',
  ],
  run: async (call) => {
    const options = new Options(call);
    options.now();
    const tasks = await options.map();
    options.done();
    return { json: plain(tasks), exit: 0 };
  },
};
