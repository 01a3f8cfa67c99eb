import { erase } from '../../../register/acts/erase.ts';
import type { Register } from '../../../register/register.ts';
import type { Verb } from '../../verb.ts';
import { common, Options } from '../options.ts';
import { tellUnnamed } from '../unnamed.ts';
import { folderOf, write } from '../write.ts';

export const eraseVerb: Verb = {
  name: 'erase',
  line: 'the owner erases a person: what was said about him is dropped, his id stays and is never used again',
  words: ['DIR'],
  options: {
    key: { value: 'OWNER', needed: true, line: 'key file of the owner' },
    person: { value: 'ID', needed: true, line: 'who is erased; every key of his is retired first' },
    why: { value: 'TEXT', needed: true, line: 'the reason; it stays, so name nobody in it' },
    ...common,
  },
  manual: () => [
    'Comes back: entry (its id). There is no way back.',
    'Standard error names files below bodies that no entry names: nobody can say whom they are about.',
    'Take those away yourself, unless their entry may still come from another device.',
  ],
  run: async (call) => {
    const options = new Options(call);
    const now = await options.setting();
    const person = options.need('person', 'write the id of the person');
    const why = options.need('why', 'say why');
    const signer = await options.signer('key');
    let erasedIn: Register | undefined;
    const outcome = await write(folderOf(call), options, signer, now, (register, writing) => {
      erasedIn = register;
      return erase(register.judged, { person, why }, writing);
    });
    if (erasedIn !== undefined) tellUnnamed(erasedIn);
    return outcome;
  },
};
