import { correct } from '../../../register/acts/correct.ts';
import type { Verb } from '../../verb.ts';
import { evidenceOf } from '../checkOptions.ts';
import { siteRegrade } from '../content.ts';
import { common, Options } from '../options.ts';
import { folderOf, write } from '../write.ts';

export const correctVerb: Verb = {
  name: 'correct',
  line: 'replaces the evidence of a check, nothing else',
  words: ['DIR'],
  options: {
    key: { value: 'KEY', needed: true, line: 'key file of who signed the check, or of the owner' },
    entry: { value: 'ID', needed: true, line: 'the check, its whole id' },
    evidence: { value: 'FILE', needed: true, line: 'the answers to a sheet; they are graded again' },
    why: { value: 'TEXT', needed: true, line: 'the reason' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id). What the check was signed with stays where it is.'],
  run: async (call) => {
    const options = new Options(call);
    const now = await options.setting();
    const entry = options.need('entry', 'write the whole id of the check');
    const why = options.need('why', 'say why');
    const named = options.need('evidence', 'name the file of the answers') !== '';
    const evidence = (named ? evidenceOf(options) : undefined) ?? null;
    const signer = await options.signer('key');
    return write(folderOf(call), options, signer, now, async ({ files, judged }, writing) =>
      correct(judged, { entry, evidence, why }, writing, await siteRegrade(files, evidence)),
    );
  },
};
