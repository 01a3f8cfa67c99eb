import { begin } from '../../../register/acts/begin.ts';
import { dayIn } from '../../../schema/dayIn.ts';
import { plain } from '../../envelope.ts';
import type { Verb } from '../../verb.ts';
import { isRegister } from '../folder.ts';
import { beginFolder, registerIsHere } from '../folderWrite.ts';
import { common, Options } from '../options.ts';
import { chance, folderOf } from '../write.ts';

export const beginVerb: Verb = {
  name: 'begin',
  line: 'begins a register in a folder',
  words: ['DIR'],
  options: {
    owner: { value: 'KEY', needed: true, line: 'key file of the owner' },
    person: { value: 'ID', line: 'the owner’s own id, where he is one of the people' },
    zone: { value: 'Z', line: 'time zone that days are counted in (UTC)' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id). A register that is there is never overwritten.'],
  run: async (call) => {
    const options = new Options(call);
    const folder = folderOf(call);
    const now = options.now();
    if (call.text('map') !== undefined) await options.map();
    const signer = await options.signer('owner');
    if (isRegister(folder)) options.faults.push(...registerIsHere(folder).faults);
    options.done();
    if (signer === undefined) throw new Error('options without a fault give a signer');
    const given = { zone: call.text('zone') ?? 'UTC', person: call.text('person') };
    const written = await begin(given, { signer, now, chance, device: call.text('device') }, dayIn);
    beginFolder(folder, written);
    return { json: plain({ entry: written.entry }), exit: 0 };
  },
};
