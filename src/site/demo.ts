/** The demo works, read at build time: its board follows from its signed register, on the demo's own day. */
import { boardOf } from '../register/board.ts';
import { openRegister } from '../register/register.ts';
import { verifierOf } from '../register/webcrypto.ts';
import { dayIn } from '../schema/dayIn.ts';
import type { Demo } from '../schema/demo.ts';
import type { Library } from '../schema/library.ts';
import { practiceOf } from '../schema/practice.ts';
import { regradeWith } from '../schema/regrade.ts';
import { taskMapOf } from '../schema/task.ts';
import { type CrewView, crewView } from './crew.ts';
import { type Lang, speakerOf, tellerOf } from './words.ts';

const files = import.meta.glob<string>('../../content/demo/register/**/*', {
  eager: true,
  query: '?raw',
  import: 'default',
});
const register = Object.fromEntries(
  Object.entries(files).map(([path, text]) => [path.replace(/^.*content\/demo\/register\//, ''), text]),
);

/** @throws Error when the library was read without the demo's files */
export function demoOf({ demo }: Library): Demo {
  if (demo === undefined) throw new Error('content/demo: not there');
  return demo;
}

/**
 * The demo's crew board in a language.
 * @throws Error when the demo register does not hold: a build must not show a board that rests on nothing
 */
export async function demoBoard(library: Library, lang: Lang): Promise<CrewView> {
  const { on, at, owner, crew, people, jobs } = demoOf(library);
  const verify = verifierOf(globalThis.crypto?.subtle);
  const { judged } = await openRegister(register, { now: Date.parse(at), dayIn, verify, owner });
  if (judged.problems.length > 0) {
    throw new Error(
      `content/demo/register: ${judged.problems.map(({ file, code }) => `${file}: ${code}`).join('; ')}`,
    );
  }
  const speak = speakerOf(lang);
  const map = taskMapOf(library);
  const regrade = regradeWith(() => ({ practice: practiceOf(library), language: { lang, speak } }));
  const board = boardOf(judged, { on, map, people: crew, regrade });
  return crewView({
    ...{ board, judged, map, names: people.names, only: crew, job: jobs[0], speak },
    tell: tellerOf(lang),
  });
}
