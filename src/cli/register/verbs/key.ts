import { keyFileText, makeKey, wrapKey } from '../../../register/keyFile.ts';
import { plain } from '../../envelope.ts';
import { pathHere } from '../../input.ts';
import type { Verb } from '../../verb.ts';
import { writeSecret } from '../folderWrite.ts';
import { common, Options } from '../options.ts';
import { chance } from '../write.ts';

export const keyVerb: Verb = {
  name: 'key',
  line: 'makes a key for signing, in a new file that only its owner reads',
  options: {
    out: { value: 'FILE', needed: true, line: 'the file to make; one that is there is never overwritten' },
    'pass-file': {
      value: 'FILE',
      line: 'file with a passphrase that wraps the key; left out: the key lies open',
    },
    device: { value: 'NAME', line: 'name of the device; left out: one is made up' },
    at: common.at,
  },
  manual: () => ['Comes back: publicKey (64 hexadecimal digits): hand it to the owner to be appointed.'],
  run: async (call) => {
    const options = new Options(call);
    const out = options.need('out', 'name the file to make');
    options.now();
    const passphrase = options.attempt('pass-file', () => options.passphrase());
    if (passphrase === '') {
      options.faults.push({ field: 'pass-file', message: 'is empty', todo: 'write a passphrase into it' });
    }
    const made = [...chance(4)].map((b) => b.toString(16).padStart(2, '0')).join('');
    const open = options.attempt('device', () => makeKey(call.text('device') ?? `device-${made}`, chance));
    options.done();
    if (open === undefined) throw new Error('options without a fault make a key');
    const key = passphrase === undefined ? open : await wrapKey(open, passphrase, crypto.subtle, chance);
    writeSecret(pathHere(out), keyFileText(key));
    return { json: plain({ publicKey: key.publicKey }), exit: 0 };
  },
};
