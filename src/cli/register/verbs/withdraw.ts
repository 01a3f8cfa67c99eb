import { withdraw } from '../../../register/acts/withdraw.ts';
import type { Verb } from '../../verb.ts';
import { common, Options } from '../options.ts';
import { folderOf, write } from '../write.ts';

export const withdrawVerb: Verb = {
  name: 'withdraw',
  line: 'takes back a check, a second, a ticket or an assignment, for good',
  words: ['DIR'],
  options: {
    key: { value: 'KEY', needed: true, line: 'key file of who signed it, or of the owner' },
    entry: { value: 'ID', needed: true, line: 'the entry that is taken back, its whole id' },
    why: { value: 'TEXT', needed: true, line: 'the reason' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id).'],
  run: async (call) => {
    const options = new Options(call);
    const now = await options.setting();
    const entry = options.need('entry', 'write the whole id of the entry');
    const why = options.need('why', 'say why');
    const signer = await options.signer('key');
    return write(folderOf(call), options, signer, now, ({ judged }, writing) =>
      withdraw(judged, { entry, why }, writing),
    );
  },
};
