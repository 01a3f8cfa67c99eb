import { type MayAsked, mayAsker, mayFaults } from '../../../register/may.ts';
import type { TaskMap } from '../../../register/taskMap.ts';
import { type Fault, GivenError } from '../../../trade/given.ts';
import { plain } from '../../envelope.ts';
import type { Verb } from '../../verb.ts';
import { askedOptions, instantAsked, monthsAsked, variantAsked } from '../asked.ts';
import { registerSpeak, siteRegrade } from '../content.ts';
import { common, Options } from '../options.ts';
import { folderOf, open } from '../write.ts';

const { at, map } = common;

export const mayVerb: Verb = {
  name: 'may',
  line: 'whether the register speaks for somebody doing a task over a shift',
  words: ['DIR'],
  options: {
    person: { value: 'ID', needed: true, line: 'who would do it' },
    task: { value: 'ID', needed: true, line: 'the task; a heading is asked for by its parts' },
    variant: { value: 'k=v,k=v', line: 'pairs that are not plain' },
    from: { value: 'INSTANT', needed: true, line: 'when it starts, with an offset or Z' },
    to: { value: 'INSTANT', needed: true, line: 'when it ends; midnight belongs to the day before' },
    ...askedOptions,
    at,
    map,
  },
  manual: () => ['Comes back: answer (yes, no, not enough evidence), reasons: say, entry (its id or null).'],
  run: async (call) => {
    const options = new Options(call);
    const now = options.now();
    const tasks = await options.map();
    const from = instantAsked(options, 'from');
    const to = instantAsked(options, 'to');
    const asked: MayAsked = {
      person: options.need('person', 'give the id of who would do it'),
      task: options.need('task', 'give the id of the task'),
      variant: variantAsked(options),
      from: from ?? 0,
      to: to ?? Number.POSITIVE_INFINITY,
    };
    const knownOn = options.day('known-on', false);
    const months = monthsAsked(options, tasks);
    options.takeNew(new GivenError(faultsOf(asked, tasks, options)));
    const folder = folderOf(call);
    const register = options.isGood('at', 'known-on')
      ? await open(folder, now, { knownOn }).catch((cause: unknown) => options.take('DIR', cause))
      : undefined;
    options.done();
    if (register === undefined) throw new RangeError('a register that did not open is at fault');
    const regrade = await siteRegrade(register.files);
    const { answer, reasons } = mayAsker(register.judged, { map: tasks, months, regrade })(asked);
    const spoken = reasons.map(({ say, entry }) => ({ say: registerSpeak(say), entry }));
    return { json: plain({ answer, reasons: spoken }), exit: 0 };
  },
};

/** What is wrong with the question itself, as far as its options could be read. */
function faultsOf(asked: MayAsked, tasks: TaskMap, options: Options): readonly Fault[] {
  const span = options.isGood('from', 'to') ? {} : { from: 0, to: 1 };
  const known = options.isGood('map') ? [] : ['task', 'variant'];
  return mayFaults({ ...asked, ...span }, tasks)
    .filter(({ field }) => !known.some((name) => field.startsWith(name)))
    .map((f) => (f.field === 'to' ? { ...f, value: options.call.text('to') ?? '' } : f));
}
