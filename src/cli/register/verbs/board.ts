import { boardOf } from '../../../register/board.ts';
import { readPeople } from '../../../register/people.ts';
import type { Why } from '../../../register/standing.ts';
import { GivenError } from '../../../trade/given.ts';
import { plain } from '../../envelope.ts';
import type { Verb } from '../../verb.ts';
import { askedOptions, monthsAsked } from '../asked.ts';
import { registerSpeak, siteRegrade } from '../content.ts';
import { common, Options } from '../options.ts';
import { folderOf, open } from '../write.ts';

const { at, map } = common;

export const boardVerb: Verb = {
  name: 'board',
  line: 'who stands where on a day',
  words: ['DIR'],
  options: {
    on: { value: 'DATE', needed: true, line: 'the day asked about' },
    people: { value: 'FILE', line: '{"people":[{"id","name"?}]}: people to list even without entries' },
    ...askedOptions,
    at,
    map,
  },
  manual: () => ['Comes back: on, knownOn, zone, owner, people, signers, notes.'],
  run: async (call) => {
    const options = new Options(call);
    const now = options.now();
    const tasks = await options.map();
    const on = options.day('on', true) ?? '';
    const knownOn = options.day('known-on', false);
    const people = peopleOf(options);
    const months = monthsAsked(options, tasks);
    options.done();
    const { files, judged } = await open(folderOf(call), now, { knownOn });
    const regrade = await siteRegrade(files);
    const board = boardOf(judged, { on, knownOn, map: tasks, people, months, regrade });
    const notes = board.notes.map(registerSpeak);
    return { json: plain(spoken({ ...board, notes })), exit: 0 };
  },
};

/** The board with its reasons as sentences. */
function spoken<T>(value: T): T {
  const isWhy = (v: object): v is Why => 'code' in v && 'say' in v;
  const walk = (v: unknown): unknown => {
    if (Array.isArray(v)) return v.map(walk);
    if (typeof v !== 'object' || v === null) return v;
    if (isWhy(v)) return { ...v, say: registerSpeak(v.say) };
    return Object.fromEntries(Object.entries(v).map(([k, inner]) => [k, walk(inner)]));
  };
  return walk(value) as T;
}

function peopleOf(options: Options): readonly string[] {
  const given = options.json('people');
  if (given === undefined) return [];
  try {
    return readPeople(given).ids;
  } catch (cause) {
    if (!(cause instanceof GivenError)) throw cause;
    options.faults.push(
      ...cause.faults.map((f) => ({ ...f, field: f.field === 'people' ? f.field : `people.${f.field}` })),
    );
    return [];
  }
}
