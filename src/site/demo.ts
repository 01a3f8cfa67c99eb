/** The demo works, read at build time: its board follows from its signed register, on the demo's own day. */
import { boardOf } from '../register/board.ts';
import type { Judged } from '../register/judged.ts';
import { mayAsker } from '../register/may.ts';
import { waysOf } from '../register/needs.ts';
import { openRegister } from '../register/register.ts';
import { verifierOf } from '../register/webcrypto.ts';
import { dayIn } from '../schema/dayIn.ts';
import type { Demo } from '../schema/demo.ts';
import type { Library } from '../schema/library.ts';
import { practiceOf } from '../schema/practice.ts';
import { regradeWith } from '../schema/regrade.ts';
import { taskMapOf } from '../schema/task.ts';
import { type CrewView, crewView } from './crew.ts';
import { type CrewLinks, entryAnchor } from './crewLines.ts';
import { mayView } from './mayView.ts';
import { pageAt } from './paths.ts';
import { spokenName } from './people.ts';
import { type Asked, sourceOf } from './personView.ts';
import { tasksOf } from './standRows.ts';
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

/** The demo's register, judged once a build: every page of it says the same. */
const judgedOf = new Map<string, Promise<Judged>>();

/** @throws Error when the demo register does not hold: a build must not show a board that rests on nothing */
function demoJudged(library: Library): Promise<Judged> {
  const { at, owner } = demoOf(library);
  const found = judgedOf.get(at) ?? open(at, owner);
  judgedOf.set(at, found);
  return found;
}

async function open(at: string, owner: string): Promise<Judged> {
  const verify = verifierOf(globalThis.crypto?.subtle);
  const { judged } = await openRegister(register, { now: Date.parse(at), dayIn, verify, owner });
  const open = judged.problems.filter(({ settled }) => settled !== true);
  if (open.length > 0) {
    throw new Error(`content/demo/register: ${open.map(({ file, code }) => `${file}: ${code}`).join('; ')}`);
  }
  return judged;
}

export const demoLinks = (lang: Lang): CrewLinks => ({
  person: (id) => pageAt(lang, `crew/person/${id}`),
  task: (id) => pageAt(lang, `crew/task/${id}`),
  entry: (person, short) => `${pageAt(lang, `crew/person/${person}`)}#${entryAnchor(short)}`,
});

/** What every sheet of the demo's crew is made of, on the demo's own day. */
export async function demoCrew(library: Library, lang: Lang) {
  const { on, people } = demoOf(library);
  const judged = await demoJudged(library);
  const speak = speakerOf(lang);
  const map = taskMapOf(library);
  const regrade = regradeWith(() => ({ practice: practiceOf(library), language: { lang, speak } }));
  const board = boardOf(judged, { on, map, people: people.ids, regrade });
  const source = sourceOf({
    ...{ board, judged, map, names: people.names, speak, links: demoLinks(lang) },
    tell: tellerOf(lang),
  });
  return { source, regrade };
}

/** The demo's crew board in a language. */
export async function demoBoard(library: Library, lang: Lang): Promise<CrewView> {
  const { crew, jobs } = demoOf(library);
  const { source } = await demoCrew(library, lang);
  return crewView({ ...source, only: crew, job: jobs[0] });
}

/** Everybody whom the demo names or whose entries it holds. */
export async function demoPeople(library: Library, lang: Lang): Promise<readonly string[]> {
  const { source } = await demoCrew(library, lang);
  return source.board.people.map(({ id }) => id);
}

/** The same with what each goes by in a box, the name, and how much is shown. */
export async function demoNamed(library: Library, lang: Lang) {
  const { source } = await demoCrew(library, lang);
  const { board, marks, names, tell } = source;
  return board.people.map((row) => {
    const [shown] = tasksOf(source, row);
    const of = shown?.rows.length ?? 0;
    return {
      id: row.id,
      short: marks.get(row.id) ?? row.id,
      name: spokenName(row.id, names),
      line: row.erased === true ? tell('crew.erased') : tell('person.shownCount', { count: of }),
    };
  });
}

/** Whether a person may do what the demo's job needs: what is not a yes stands first. */
export async function demoAsked(library: Library, lang: Lang, person: string): Promise<Asked | undefined> {
  const [job] = demoOf(library).jobs;
  const { source, regrade } = await demoCrew(library, lang);
  const ask = mayAsker(source.judged, { map: source.map, regrade });
  const [from, to] = [Date.parse(job.from), Date.parse(job.to)];
  const answers = job.needs
    .flatMap((need) => waysOf(source.map, need) ?? [])
    .map(({ task, variant }) => {
      const asked = { person, task: task.id, variant, from, to };
      return mayView(source, asked, ask(asked), job.id);
    });
  const first = answers.find(({ answer }) => answer !== 'yes') ?? answers[0];
  if (first === undefined) return undefined;
  return { first, others: answers.filter((one) => one !== first), job: job.id };
}
