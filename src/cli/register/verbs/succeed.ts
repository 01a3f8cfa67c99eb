import { succeed } from '../../../register/acts/succeed.ts';
import type { Verb } from '../../verb.ts';
import { common, Options } from '../options.ts';
import { folderOf, write } from '../write.ts';

export const succeedVerb: Verb = {
  name: 'succeed',
  line: 'the owner names the key, kept elsewhere, that may take over should his be lost',
  words: ['DIR'],
  options: {
    key: { value: 'OWNER', needed: true, line: 'key file of the owner' },
    next: {
      value: 'PUB',
      needed: true,
      line: 'public key that may take over: 64 digits, or a file that holds it',
    },
    ...common,
  },
  manual: () => ['Comes back: entry (its id). Of several keys that were named the last counts.'],
  run: async (call) => {
    const options = new Options(call);
    const now = await options.setting();
    const next = options.publicKey('next', options.need('next', 'give the public key that may take over'));
    const signer = await options.signer('key');
    return write(folderOf(call), options, signer, now, ({ judged }, writing) =>
      succeed(judged, { next }, writing),
    );
  },
};
