import { second } from '../../../register/acts/second.ts';
import type { Verb } from '../../verb.ts';
import { siteRegrade } from '../content.ts';
import { common, Options } from '../options.ts';
import { folderOf, write } from '../write.ts';

export const secondVerb: Verb = {
  name: 'second',
  line: 'a second witness signs that he saw it himself',
  words: ['DIR'],
  options: {
    key: { value: 'KEY', needed: true, line: 'key file of the second witness' },
    entry: { value: 'ID', needed: true, line: 'the check that he saw, its whole id' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id).'],
  run: async (call) => {
    const options = new Options(call);
    const now = options.now();
    const map = await options.map();
    const demands = await options.demands();
    const entry = options.need('entry', 'write the whole id of the check');
    const signer = await options.signer('key');
    return write(folderOf(call), options, signer, now, async ({ files, judged }, writing) =>
      second(judged, { entry }, map, writing, await siteRegrade(files), demands),
    );
  },
};
