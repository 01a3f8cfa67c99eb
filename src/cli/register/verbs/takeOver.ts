import { takeOver } from '../../../register/acts/takeOver.ts';
import type { Verb } from '../../verb.ts';
import { common, Options } from '../options.ts';
import { folderOf, write } from '../write.ts';

export const takeOverVerb: Verb = {
  name: 'take-over',
  line: 'the key that the owner named last becomes the owner’s',
  words: ['DIR'],
  options: {
    key: { value: 'NEXT', needed: true, line: 'key file of who takes over' },
    why: { value: 'TEXT', needed: true, line: 'the reason' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id). What the old key signs from here on counts for nothing.'],
  run: async (call) => {
    const options = new Options(call);
    const now = await options.setting();
    const why = options.need('why', 'say why');
    const signer = await options.signer('key');
    return write(folderOf(call), options, signer, now, ({ judged }, writing) =>
      takeOver(judged, { why }, writing),
    );
  },
};
