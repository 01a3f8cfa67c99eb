import { retire } from '../../../register/acts/retire.ts';
import type { Verb } from '../../verb.ts';
import { common, Options } from '../options.ts';
import { folderOf, write } from '../write.ts';

export const retireVerb: Verb = {
  name: 'retire',
  line: 'the owner ends what a witness’s key signed, from a place in each device’s chain on',
  words: ['DIR'],
  options: {
    key: { value: 'OWNER', needed: true, line: 'key file of the owner' },
    witness: { value: 'PUB', needed: true, line: 'public key to retire: 64 digits, or a file that holds it' },
    after: {
      value: 'none|IDS',
      needed: true,
      line: 'the last entry that stands of each device, whole ids with commas; none: nothing stands',
    },
    why: { value: 'TEXT', needed: true, line: 'the reason' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id). All of a device that --after does not name falls.'],
  run: async (call) => {
    const options = new Options(call);
    const now = await options.setting();
    const witness = options.publicKey('witness', options.need('witness', 'give the witness’s public key'));
    const ids = options.need('after', 'write none, or ids with commas');
    const why = options.need('why', 'say why');
    const signer = await options.signer('key');
    const after = ids === 'none' ? [] : ids.split(',');
    return write(folderOf(call), options, signer, now, ({ judged }, writing) =>
      retire(judged, { witness, after, why }, writing),
    );
  },
};
