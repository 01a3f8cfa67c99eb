import { appoint } from '../../../register/acts/appoint.ts';
import type { Verb } from '../../verb.ts';
import { common, Options } from '../options.ts';
import { folderOf, write } from '../write.ts';

export const appointVerb: Verb = {
  name: 'appoint',
  line: 'the owner appoints a witness for tasks, from a day on',
  words: ['DIR'],
  options: {
    key: { value: 'OWNER', needed: true, line: 'key file of the owner' },
    witness: {
      value: 'PUB',
      needed: true,
      line: 'public key of the witness: 64 digits, or a file that holds it',
    },
    person: { value: 'ID', needed: true, line: 'whose key it is; a key belongs to one person for good' },
    tasks: { value: 'all|IDS', needed: true, line: 'all, or ids with commas' },
    on: { value: 'DATE', needed: true, line: 'first day of the appointment' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id).'],
  run: async (call) => {
    const options = new Options(call);
    const now = options.now();
    const map = await options.map();
    const witness = options.publicKey('witness', options.need('witness', 'give the witness’s public key'));
    const person = options.need('person', 'give the id of the witness');
    const ids = options.need('tasks', 'write all, or ids with commas');
    const on = options.day('on', true) ?? '';
    const signer = await options.signer('key');
    const tasks = ids === 'all' ? ids : ids.split(',');
    return write(folderOf(call), options, signer, now, ({ judged }, writing) =>
      appoint(judged, { witness, person, tasks, on }, map, writing),
    );
  },
};
