import { byText } from '../../../register/bytes.ts';
import type { Problem } from '../../../register/held.ts';
import { NoRegister } from '../../../register/judged.ts';
import { openRegister } from '../../../register/register.ts';
import { dayIn } from '../../../schema/dayIn.ts';
import { plain } from '../../envelope.ts';
import type { Verb } from '../../verb.ts';
import { registerSpeak } from '../content.ts';
import { type Left, readWhole } from '../folder.ts';
import { common, Options } from '../options.ts';
import { folderOf, hash, verify } from '../write.ts';

const { at, map } = common;

const problemsOf = (problems: readonly Problem[]): readonly object[] =>
  sorted(problems).map(({ file, line, code, say, settled }) => ({
    file,
    ...(line === undefined ? {} : { line }),
    code,
    message: registerSpeak(say),
    ...(settled === undefined ? {} : { settled }),
  }));

const sorted = (problems: readonly Problem[]): readonly Problem[] =>
  problems.toSorted((a, b) => byText(a.file, b.file) || (a.line ?? 0) - (b.line ?? 0));

/** Something in the folder that is no file to read: a link, a pipe, a file too large. */
const unreadable = ({ file, why }: Left): Problem => ({
  file,
  code: 'unreadable',
  say: { say: 'registerProblem.unreadable', values: { why } },
});

export const verifyVerb: Verb = {
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
    const read = options.attempt('DIR', () => readWhole(folderOf(call)));
    options.done();
    const left = (read?.left ?? []).map(unreadable);
    try {
      const { judged } = await openRegister(read?.files ?? {}, { verify, hash, now, dayIn, owner });
      const { authority, view, entries, signers } = judged;
      const problems = problemsOf([...judged.problems, ...left]);
      const open = left.length > 0 || judged.problems.some((p) => p.settled !== true);
      const result = { owner: authority.owner, begin: view.begin.id, entries, signers, problems };
      return { json: plain(result), exit: open ? 1 : 0 };
    } catch (cause) {
      if (!(cause instanceof NoRegister)) throw cause;
      const { held } = cause;
      const problems = problemsOf([...held.problems, cause.problem, ...left]);
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
