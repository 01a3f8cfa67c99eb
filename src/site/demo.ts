/** The demo works, read at build time: its signed register, its people, its jobs, and its own day. */
import { boardOf } from '../register/board.ts';
import { openRegister } from '../register/register.ts';
import { verifierOf } from '../register/webcrypto.ts';
import { dayIn } from '../schema/dayIn.ts';
import type { Library } from '../schema/library.ts';
import { practiceOf } from '../schema/practice.ts';
import { regradeWith } from '../schema/regrade.ts';
import { taskMapOf } from '../schema/task.ts';
import { type CrewView, crewView, type Need } from './crew.ts';
import { readPeople } from './people.ts';
import { type Lang, speakerOf, tellerOf } from './words.ts';

const files = import.meta.glob<string>('../../content/demo/**/*.{json,jsonl}', {
  eager: true,
  query: '?raw',
  import: 'default',
});
const texts = new Map(
  Object.entries(files).map(([path, text]) => [path.replace(/^.*content\/demo\//, ''), text]),
);

function textOf(name: string): string {
  const text = texts.get(name);
  if (text === undefined) throw new Error(`content/demo/${name}: not there`);
  return text;
}

interface Demo {
  readonly works: string;
  readonly on: string;
  /** The demo's own moment: its board does not age. */
  readonly at: string;
  readonly owner: string;
  readonly crew: readonly string[];
}
export const demo = JSON.parse(textOf('demo.json')) as Demo;

interface Job {
  readonly id: string;
  readonly needs: readonly Need[];
}

/**
 * The demo's crew board in a language.
 * @throws Error when the demo register does not hold: a build must not show a board that rests on nothing
 */
export async function demoBoard(library: Library, lang: Lang): Promise<CrewView> {
  const register = Object.fromEntries(
    [...texts].flatMap(([path, text]) =>
      path.startsWith('register/') ? [[path.slice('register/'.length), text]] : [],
    ),
  );
  const verify = verifierOf(globalThis.crypto?.subtle);
  const { judged } = await openRegister(register, {
    now: Date.parse(demo.at),
    dayIn,
    verify,
    owner: demo.owner,
  });
  if (judged.problems.length > 0) {
    throw new Error(
      `content/demo/register: ${judged.problems.map(({ file, code }) => `${file}: ${code}`).join('; ')}`,
    );
  }
  const people = readPeople(textOf('people.json'));
  if (people === undefined) throw new Error('content/demo/people.json: not a file of names');
  const { jobs } = JSON.parse(textOf('jobs.json')) as { jobs: readonly Job[] };
  const [job] = jobs;
  if (job === undefined) throw new Error('content/demo/jobs.json: holds no job');
  const speak = speakerOf(lang);
  const map = taskMapOf(library);
  const regrade = regradeWith(() => ({ practice: practiceOf(library), language: { lang, speak } }));
  const board = boardOf(judged, { on: demo.on, map, people: demo.crew, regrade });
  return crewView({
    ...{ board, judged, map, names: people.names, only: demo.crew, job, speak },
    tell: tellerOf(lang),
  });
}
