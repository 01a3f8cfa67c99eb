import { check } from '../../../register/acts/check.ts';
import type { Verb } from '../../verb.ts';
import { checkGivenOf, checkOptions } from '../checkOptions.ts';
import { siteRegrade } from '../content.ts';
import { common, Options } from '../options.ts';
import { sayUsed } from '../usedBench.ts';
import { folderOf, write } from '../write.ts';

export const checkVerb: Verb = {
  name: 'check',
  line: 'a witness signs what he saw a person do',
  words: ['DIR'],
  options: {
    key: { value: 'KEY', needed: true, line: 'key file of the witness' },
    ...checkOptions,
    ...common,
  },
  manual: () => ['Comes back: entry (its id).'],
  run: async (call) => {
    const options = new Options(call);
    const now = options.now();
    const map = await options.map();
    const demands = await options.demands();
    const given = checkGivenOf(options);
    const signer = await options.signer('key');
    return write(folderOf(call), options, signer, now, async ({ files, judged }, writing) => {
      const regrade = await siteRegrade(files, given.evidence);
      const written = await check(judged, given, map, writing, regrade, demands);
      sayUsed(judged, given.person, given.evidence ?? null);
      return written;
    });
  },
};
