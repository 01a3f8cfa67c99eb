import { assigned } from '../../../register/acts/assigned.ts';
import { GivenError } from '../../../trade/given.ts';
import type { Verb } from '../../verb.ts';
import { common, Options } from '../options.ts';
import { folderOf, write } from '../write.ts';

export const assignedVerb: Verb = {
  name: 'assigned',
  line: 'owner or witness records who was sent to which job',
  words: ['DIR'],
  options: {
    key: { value: 'KEY', needed: true, line: 'key file of the owner or of a witness' },
    job: { value: 'ID', needed: true, line: 'the job' },
    person: { value: 'ID', needed: true, line: 'who was sent' },
    shift: { value: 'FROM/TO', needed: true, line: 'two instants with an offset or Z' },
    override: { value: 'TEXT', line: 'why, where the register does not say yes for this person' },
    ...common,
  },
  manual: () => ['Comes back: entry (its id).'],
  run: async (call) => {
    const options = new Options(call);
    const now = await options.setting();
    const job = options.need('job', 'write the id of the job');
    const person = options.need('person', 'write who was sent');
    const [from, to] = shiftOf(options);
    const override = call.text('override');
    const signer = await options.signer('key');
    return write(folderOf(call), options, signer, now, async ({ judged }, writing) => {
      try {
        return await assigned(judged, { job, person, from, to, override }, writing);
      } catch (cause) {
        if (!(cause instanceof GivenError)) throw cause;
        const isEnd = (field: string) => field === 'from' || field === 'to';
        throw new GivenError(cause.faults.map((f) => (isEnd(f.field) ? { ...f, field: 'shift' } : f)));
      }
    });
  },
};

/** The two ends of `FROM/TO`; empty with a fault when it has not two. */
function shiftOf(options: Options): readonly [string, string] {
  const todo = 'write FROM/TO: 2026-03-09T07:00:00Z/2026-03-09T15:00:00Z';
  const given = options.need('shift', todo);
  const [from = '', to = '', more] = given.split('/');
  if (given === '' || (to !== '' && from !== '' && more === undefined)) return [from, to];
  options.faults.push({ field: 'shift', value: given, message: 'no two instants', todo });
  return ['', ''];
}
