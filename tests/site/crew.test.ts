import { describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { boardOf } from '../../src/register/board.ts';
import { openRegister } from '../../src/register/register.ts';
import { verifierOf } from '../../src/register/webcrypto.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { taskMapOf } from '../../src/schema/task.ts';
import { speaker } from '../../src/schema/words.ts';
import { crew, grid, tasks } from '../../src/setup/demoCrew.ts';
import { byState, type CrewView, crewView } from '../../src/site/crew.ts';
import { ownLinks } from '../../src/site/islands/register/useWhich.ts';
import { keptPeople, marksOf } from '../../src/site/people.ts';
import { teller, type WordTable } from '../../src/site/speak.ts';
import { table } from './wordTable.ts';

const files = contentFiles();
const { library } = readLibrary(files);
const { demo } = library;
if (demo === undefined) throw new Error('no demo');
const { jobs, people } = demo;
/** Ids say nothing of a name; here people go by their initials. */
const idOf = (initials: string): string => {
  const found = people.ids.find((id) => (people.names.get(id) ?? '').replace(/[^A-Z]/g, '') === initials);
  if (found === undefined) throw new Error(initials);
  return found;
};
const register = Object.fromEntries(
  files.flatMap(({ path, text }) =>
    path.startsWith('content/demo/register/') ? [[path.slice('content/demo/register/'.length), text]] : [],
  ),
);
const words: WordTable = table('en');
const map = taskMapOf(library);

async function view(job: unknown = jobs[0]): Promise<CrewView> {
  const asked = { now: Date.parse(demo?.at ?? ''), dayIn, verify: verifierOf(crypto.subtle) };
  const { judged } = await openRegister(register, asked);
  const board = boardOf(judged, { on: demo?.on ?? '', map, people: crew });
  return crewView({
    ...{ board, judged, map, names: people.names, only: crew },
    links: ownLinks,
    job: job as { id: string; needs: { task: string }[] },
    speak: speaker(library.words.get('en') ?? new Map()),
    tell: teller(words),
  });
}

describe('the crew board of the demo works', () => {
  test('every mark is the one that the demo was made from', async () => {
    const { cell } = await view();
    const expected = {
      K: ['shown', 'KD'],
      L: ['shown', 'LZ'],
      p: ['practice-only', ''],
      '.': ['not-shown', ''],
    };
    for (const [row, task] of tasks.entries()) {
      if ((map.tasks.find(({ id }) => id === task)?.parts.length ?? 0) > 0) continue;
      for (const [column, person] of crew.entries()) {
        const mark = grid[row]?.split(' ')[column] as keyof typeof expected | '*';
        if (mark === '*') continue;
        const { state, mark: text } = cell(task, person);
        expect([task, person, state, text]).toEqual([task, person, ...expected[mark]]);
      }
    }
  });

  test('Show again carries its sign: T, N, and the number of the revision', async () => {
    const { cell } = await view();
    expect(
      ['PO T04', 'SL T14', 'DM T13', 'EI T07']
        .map((at) => at.split(' '))
        .map(([who = '', task = '']) => cell(task, idOf(who)).mark),
    ).toEqual(['T', 'T', 'N', '2']);
    expect(cell('T13', idOf('DM')).spoken).toBe(
      'Davit Marlsand, Fill check: Show again, not yet on 20 February 2026, after it was shown',
    );
  });

  test('a cell says who, task, word, witness, day and until when', async () => {
    const { cell } = await view();
    expect(cell('T05', idOf('DM')).spoken).toMatch(
      /^Davit Marlsand, Measure and mark: Shown, witness Kirra Dunmarsh, \d+ \w+ \d{4}, good to \d+ \w+ \d{4}$/,
    );
    expect(cell('T04', idOf('TG'))).toMatchObject({ line: 'no record', ways: [] });
  });

  test('who can take the job, and who lacks one task only', async () => {
    expect((await view()).job).toMatchObject({
      label: 'Job ALD-014 needs T03, T06, T07, T11. Shown on 9 March 2026:',
      ready: 'Bettina Norrgate, Hanne Vallmoor, Pell Oskarby, Runa Kestrowe, Silas Larkmere',
      lacks: ['Joss Tannerby lacks only T11.'],
      ways: expect.stringMatching(/^Judged this way: T03: .+; T07: 4 in, .+\. Another way of the same task/),
    });
    const other = await view({ id: 'X', needs: [{ task: 'T03', variant: { place: 'lift' } }] });
    // RK alone was seen at it from a lift; a showing at the bench says nothing of that.
    expect(other.job?.ready).toBe('Runa Kestrowe');
    expect((await view({ id: 'X', needs: [{ task: 'T99' }] })).job?.ready).toBe('Nobody');
  });

  test('a heading is as low as its lowest part, and names them', async () => {
    const { cell } = await view();
    const heading = cell('T08', idOf('EI'));
    expect(heading.state).toBe('practice-only');
    expect(heading.ways).toHaveLength(6);
  });

  test('groups stand in one order, and nothing is averaged', async () => {
    const crewed = await view();
    const list = crewed.people.map((person) => ({ cell: crewed.cell('T04', person.id) }));
    expect(byState(list).map(({ state }) => state)).toEqual([
      'shown',
      'show-again',
      'practice-only',
      'not-shown',
    ]);
    const texts = [...crewed.people, ...crewed.tasks]
      .map(({ count }) => count)
      .concat(crewed.signers, crewed.notes);
    expect(texts.filter((text) => /%/.test(text))).toEqual([]);
    expect(crewed.signers).toHaveLength(5);
    expect(crewed.signers).toContain('Odette Ravenhurst on office-desk: number 8, 7 days old');
    // Nobody hears of a retired key any more, and its age says so.
    expect(crewed.signers).toContain('Wick Tarnhollow on wt-tablet: number 0, 461 days old');
  });
});

describe('what people go by in a box', () => {
  const marks = (people: Readonly<Record<string, string>>, order = Object.keys(people)) =>
    Object.fromEntries(marksOf(order, new Map(Object.entries(people).filter(([, name]) => name !== ''))));

  test('initials of a name; without one an id as it is, or the beginning of a long one', () => {
    expect(marks({ 'p-1': 'Ana-Lucia de la Vega', 'q-17': '', KD: '', 'x7f-209ab': '' })).toEqual({
      'p-1': 'ALD',
      'q-17': 'q-17',
      'x7f-209ab': 'x7f',
      KD: 'KD',
    });
  });
  test('no two alike: they grow until they differ, whatever the order', () => {
    const people = { a: 'Ann Pell', b: 'Abe Poll', c: 'Cy Marl' };
    const want = { a: 'APe', b: 'APo', c: 'CM' };
    expect(marks(people)).toEqual(want);
    expect(marks(people, ['c', 'b', 'a'])).toEqual(want);
    expect(marks({ 'crew-01': '', 'crew-02': '', 'crew-11': '', 'cress-1': '' })).toEqual({
      'crew-01': 'crew-01',
      'crew-02': 'crew-02',
      'crew-11': 'crew-1',
      'cress-1': 'cres',
    });
  });
  test('two of one name go by their ids; an id that looks like a mark stays itself', () => {
    expect(marks({ 'x-1': 'Ann Pell', 'x-2': 'Ann Pell' })).toEqual({ 'x-1': 'x-1', 'x-2': 'x-2' });
    expect(marks({ AP: '', b: 'Ann Pell' })).toEqual({ AP: 'AP', b: 'APe' });
  });
  test('on the demo’s board every mark stands once and its key has a name', async () => {
    const { people: shown, nameKey } = await view();
    expect(new Set(shown.map(({ short }) => short)).size).toBe(12);
    expect(nameKey).toHaveLength(16);
    expect(nameKey[0]).toEqual({ mark: 'AW', name: 'Abel Wrenfield' });
    expect(nameKey).toContainEqual({ mark: 'KD', name: 'Kirra Dunmarsh' });
  });
  test('a names file kept from before that does not hold is no names', () => {
    expect(keptPeople('{"people":{}}').ids).toEqual([]);
    expect(keptPeople(undefined).ids).toEqual([]);
  });
});

test('a need without a variant is the plain one: HV, shown at T07 in 6 in from a lift only', async () => {
  const crewed = await view({ id: 'X', needs: [{ task: 'T07', variant: { width: '6', place: 'lift' } }] });
  expect(crewed.job?.ready).toBe('Hanne Vallmoor');
});
