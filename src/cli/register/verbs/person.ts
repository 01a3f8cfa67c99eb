import { personFile } from '../../../register/person.ts';
import { personId } from '../../../register/shapes.ts';
import { plain } from '../../envelope.ts';
import type { Verb } from '../../verb.ts';
import { common, Options } from '../options.ts';
import { folderOf, open } from '../write.ts';

const { at, map } = common;

export const personVerb: Verb = {
  name: 'person',
  line: 'everything held about one person',
  words: ['DIR'],
  options: {
    person: { value: 'ID', needed: true, line: 'whose file it is' },
    at,
    map,
  },
  manual: () => ['Comes back: id, entries (id, header, signature, file, line), bodies (hash, body).'],
  run: async (call) => {
    const options = new Options(call);
    const now = options.now();
    await options.map();
    const id = options.need('person', 'give the id of the person');
    const wrong = id === '' ? undefined : personId(id);
    if (wrong !== undefined) {
      options.faults.push({
        field: 'person',
        value: id,
        message: `an id ${wrong}`,
        todo: 'write another id',
      });
    }
    const register = options.isGood('at')
      ? await open(folderOf(call), now).catch((cause: unknown) => options.take('DIR', cause))
      : undefined;
    options.done();
    if (register === undefined) throw new RangeError('a register that did not open is at fault');
    return { json: plain(personFile(register.judged, id)), exit: 0 };
  },
};
