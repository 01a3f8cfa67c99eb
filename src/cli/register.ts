/** `trayhand register …`: signed entries about what people were seen to do, and the board that follows from them. */
import { boardOf } from '../register/board.ts';
import type { Problem } from '../register/held.ts';
import { NoRegister } from '../register/judged.ts';
import { readPeople } from '../register/people.ts';
import { openRegister } from '../register/register.ts';
import type { Why } from '../register/standing.ts';
import { isHeading, type TaskMap, taskOf } from '../register/taskMap.ts';
import { dayIn } from '../schema/dayIn.ts';
import { GivenError } from '../trade/given.ts';
import { plain } from './envelope.ts';
import { registerSpeak, siteRegrade } from './registerContent.ts';
import { readFolder } from './registerFolder.ts';
import { asWritten, common, Options } from './registerOptions.ts';
import { appointVerb, beginVerb, checkVerb, folderOf, keyVerb, open, verify } from './registerWrite.ts';
import type { Group, Verb } from './verb.ts';

const { at, map } = common;

const problemsOf = (problems: readonly Problem[]): readonly object[] =>
  problems.map(({ file, line, code, say, settled }) => ({
    file,
    ...(line === undefined ? {} : { line }),
    code,
    message: registerSpeak(say),
    ...(settled === undefined ? {} : { settled }),
  }));

const verifyVerb: Verb = {
  name: 'verify',
  line: 'checks every signature and rule, and says what is wrong',
  words: ['DIR'],
  options: { owner: { value: 'PUB', line: 'public key that must own it' }, at, map },
  manual: () => [
    'Comes back: owner, begin, entries (how many), signers [{id, device, person, last, at}],',
    'problems [{file, line?, code, message, settled?}].',
    'Exit 0: nothing wrong, or all of it settled. Exit 1: a problem that is not settled.',
  ],
  run: async (call) => {
    const options = new Options(call);
    const now = options.now();
    if (call.text('map') !== undefined) await options.map();
    const wanted = call.text('owner');
    const owner = wanted === undefined ? undefined : options.publicKey('owner', wanted);
    const files = options.attempt('DIR', () => readFolder(folderOf(call)));
    options.done();
    try {
      const { judged } = await openRegister(files ?? {}, { verify, now, dayIn, owner });
      const { authority, view, entries, signers } = judged;
      const problems = problemsOf(judged.problems);
      const open = judged.problems.some((p) => p.settled !== true);
      const result = { owner: authority.owner, begin: view.begin.id, entries, signers, problems };
      return { json: plain(result), exit: open ? 1 : 0 };
    } catch (cause) {
      if (!(cause instanceof NoRegister)) throw cause;
      const { held } = cause;
      const problems = problemsOf([...held.problems, cause.problem]);
      const result = {
        owner: null,
        begin: held.marker ?? null,
        entries: held.entries.size,
        signers: [],
        problems,
      };
      return { json: plain(result), exit: 1 };
    }
  },
};

const boardVerb: Verb = {
  name: 'board',
  line: 'who stands where on a day',
  words: ['DIR'],
  options: {
    on: { value: 'DATE', needed: true, line: 'the day asked about' },
    'known-on': { value: 'DATE', line: 'only what was entered by the end of this day' },
    people: { value: 'FILE', line: '{"people":[{"id","name"?}]}: people to list even without entries' },
    months: { value: 'T04=6', line: 'months in place of the map’s; several with commas', many: true },
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
    const months = monthsOf(options, tasks);
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

function monthsOf({ call, faults }: Options, tasks: TaskMap): Readonly<Record<string, number>> {
  const parts = call.all('months').flatMap((given) => given.split(','));
  return Object.fromEntries(
    parts.flatMap((part): readonly (readonly [string, number])[] => {
      const [, id = '', n = ''] = /^([^=]+)=([1-9]\d{0,3})$/.exec(part) ?? [];
      const task = taskOf(tasks, id);
      if (task !== undefined && !isHeading(task)) return [[id, Number(n)]];
      const message = id === '' ? 'no task with its months' : `${id} is no task that is shown itself`;
      faults.push({
        field: 'months',
        value: part,
        message,
        todo: 'write a task with a whole number from 1: T04=6',
      });
      return [];
    }),
  );
}

const tasksVerb: Verb = {
  name: 'tasks',
  line: 'the task map as the register takes it',
  options: { at, map },
  manual: () => [
    'Comes back: tasks [{id, months, second, tickets, variants, revisions, parts, trainHours}].',
  ],
  run: async (call) => {
    const options = new Options(call);
    options.now();
    const tasks = await options.map();
    options.done();
    return { json: plain(tasks), exit: 0 };
  },
};

export const group: Group = {
  name: 'register',
  line: 'signed entries about what people were seen to do, and who stands where',
  verbs: [keyVerb, beginVerb, appointVerb, checkVerb, verifyVerb, boardVerb, tasksVerb].map(asWritten),
};
