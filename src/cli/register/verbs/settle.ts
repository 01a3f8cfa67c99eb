import { settle } from '../../../register/acts/settle.ts';
import type { Verb } from '../../verb.ts';
import { common, Options } from '../options.ts';
import { folderOf, write } from '../write.ts';

export const settleVerb: Verb = {
  name: 'settle',
  line: 'the owner ends a doubt: which branch stands, what is lost for good, what is taken though back-dated',
  words: ['DIR'],
  options: {
    key: { value: 'OWNER', needed: true, line: 'key file of the owner' },
    entry: {
      value: 'ID',
      needed: true,
      line: 'an entry of the branch that stands, a missing one, or a back-dated one; its whole id',
    },
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
      settle(judged, { entry, why }, writing),
    );
  },
};
