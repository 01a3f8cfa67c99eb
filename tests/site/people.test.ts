/** The sheets of people and tasks as views: groups and their order, the lowest variant, reasons with entries, dates in zones. */
import { beforeAll, describe, expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { boardOf } from '../../src/register/board.ts';
import { judge } from '../../src/register/judge.ts';
import { mayOf } from '../../src/register/may.ts';
import { openRegister, type Register } from '../../src/register/register.ts';
import { verifierOf } from '../../src/register/webcrypto.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { regradeWith } from '../../src/schema/regrade.ts';
import { taskMapOf } from '../../src/schema/task.ts';
import { speaker } from '../../src/schema/words.ts';
import { crewView } from '../../src/site/crew.ts';
import type { CrewSource } from '../../src/site/crewLines.ts';
import { ownLinks, whichOf } from '../../src/site/islands/register/useWhich.ts';
import { mayView } from '../../src/site/mayView.ts';
import { type PersonView, personView, sourceOf } from '../../src/site/personView.ts';
import { teller } from '../../src/site/speak.ts';
import type { StandRow } from '../../src/site/standRows.ts';
import { taskView } from '../../src/site/taskView.ts';
import { instantIn, instantText, wallIn } from '../../src/site/zoned.ts';
import { table } from './wordTable.ts';

const files = contentFiles();
const { library } = readLibrary(files);
const { demo } = library;
if (demo === undefined) throw new Error('no demo');
const at = Date.parse(demo.at);
const map = taskMapOf(library);
const speak = speaker(library.words.get('en') ?? new Map());
const practice = practiceOf(library);
const regrade = regradeWith(() => ({ practice, language: { lang: 'en', speak } }));
const held = Object.fromEntries(
  files.flatMap(({ path, text }) =>
    path.startsWith('content/demo/register/') ? [[path.slice('content/demo/register/'.length), text]] : [],
  ),
);
let register: Register;
beforeAll(async () => {
  register = await openRegister(held, { now: at, dayIn, verify: verifierOf(crypto.subtle) });
});

function source(on: string = demo?.on ?? '', knownOn?: string): CrewSource {
  const judged = knownOn === undefined ? register.judged : judge(register.held, { now: at, dayIn, knownOn });
  const board = boardOf(judged, { on, knownOn, map, people: demo?.people.ids ?? [], regrade });
  const names = demo?.people.names ?? new Map();
  return sourceOf({ board, judged, map, names, links: ownLinks, speak, tell: teller(table('en')) });
}
const person = (id: string, on?: string, knownOn?: string): PersonView => {
  const view = personView(source(on, knownOn), id);
  if (view === undefined) throw new Error(id);
  return view;
};
const rowOf = (view: PersonView, task: string): StandRow => {
  const found = view.groups.flatMap(({ rows }) => rows).find(({ code }) => code === task);
  if (found === undefined) throw new Error(task);
  return found;
};

describe('a person’s sheet', () => {
  test('four groups in one order, every task in one of them, none of the parts apart', () => {
    const view = person('p-04');
    expect(view.groups.map(({ state }) => state)).toEqual([
      'shown',
      'show-again',
      'practice-only',
      'not-shown',
    ]);
    const codes = view.groups.flatMap(({ rows }) => rows.map(({ code }) => code)).sort();
    expect(codes).toEqual(map.tasks.filter(({ id }) => /^T\d+$/.test(id)).map(({ id }) => id));
    expect(view.groups.map(({ count }) => count)).toEqual([
      '4 of 15 tasks',
      '2 of 15 tasks',
      '5 of 15 tasks',
      '4 of 15 tasks',
    ]);
  });

  test('a task stands as its lowest variant and says what the others are', () => {
    // RK: T03 at the bench and from a lift are both shown; the one that ends first is the task's.
    const row = rowOf(person('p-12'), 'T03');
    expect([row.lowest.state, row.lowest.name, row.others.map(({ name }) => name)]).toEqual([
      'shown',
      'bench, unclassified',
      ['lift, unclassified'],
    ]);
    const ends = source()
      .board.people.find(({ id }) => id === 'p-12')
      ?.tasks['T03']?.variants.map(({ variant, until }) => [variant['place'], until]);
    const [bench = '', lift = ''] = ['bench', 'lift'].map(
      (place) => ends?.find(([at]) => at === place)?.[1] ?? '',
    );
    expect(bench < lift).toBe(true);
    // Once the first has ended the task is to be shown again, and the row still says that the other is shown.
    const after = rowOf(person('p-12', lift), 'T03');
    expect([after.lowest.state, after.lowest.mark, after.lowest.name]).toEqual([
      'show-again',
      'T',
      'bench, unclassified',
    ]);
    expect(after.others).toMatchObject([{ name: 'lift, unclassified', state: 'shown' }]);
    // MC: T07 vertical is practised with help, horizontal talked through: practice only both.
    const t07 = rowOf(person('p-09'), 'T07');
    expect([t07.lowest.state, ...t07.others.map(({ state }) => state)]).toEqual([
      'practice-only',
      'practice-only',
    ]);
  });

  test('every reason is said with its entry; a second stands beside the first', () => {
    const again = (id: string, task: string) => {
      const { lowest } = rowOf(person(id), task);
      return [lowest.state, lowest.mark, lowest.why[0], lowest.entries.length];
    };
    expect(again('p-15', 'T05')).toEqual(['show-again', 'W', 'withdrawn on 24 June 2025', 2]);
    expect(again('p-04', 'T05')).toEqual([
      'show-again',
      '?',
      'in doubt: graded again, the answers do not pass',
      1,
    ]);
    expect(again('p-03', 'T13')).toEqual([
      'show-again',
      'N',
      'not yet on 20 February 2026, after it was shown',
      2,
    ]);
    expect(again('p-11', 'T04')).toEqual(['show-again', 'T', 'good to the end of 19 February 2026', 1]);
    expect(again('p-12', 'T15')).toEqual([
      'not-shown',
      '',
      'a second witness has yet to say that he saw it',
      1,
    ]);
    expect(rowOf(person('p-13'), 'T15').lowest).toMatchObject({
      state: 'shown',
      by: 'LZ KD',
      byName: 'Lew Zellmark, Kirra Dunmarsh',
    });
    for (const { href, short } of rowOf(person('p-15'), 'T05').lowest.entries) {
      expect(href).toBe(`#person=p-15&entry=${short}`);
    }
  });

  test('tickets are looked at, never assessed: one that is over says so and nothing more', () => {
    expect(person('p-06').tickets).toMatchObject([{ ticket: 'W1', past: 'past its last day' }]);
    expect(person('p-06').groups[0]?.rows.length).toBe(11);
    expect(person('p-05').tickets.map(({ ticket, past }) => [ticket, past])).toEqual([
      ['W1', ''],
      ['W4', ''],
    ]);
    expect(person('p-01').tickets).toEqual([]);
  });

  test('its entries: seen and entered, whose device, what later entries made of them', () => {
    const entry = (id: string, what: RegExp) => {
      const found = person(id).entries.find((one) => what.test(one.what));
      if (found === undefined) throw new Error(String(what));
      return found;
    };
    expect(entry('p-03', /^T05/)).toMatchObject({ seen: '15 Dec 2025', entered: '22 Dec 2025', by: 'KD' });
    expect(entry('p-06', /^T05/).facts).toContain(
      'That device has the same name as one of the witness’s own.',
    );
    expect(entry('p-04', /^T05/).facts).not.toContain(
      'That device has the same name as one of the witness’s own.',
    );
    expect(entry('p-15', /^T05/).holds).toEqual([
      'The signature holds.',
      expect.stringMatching(/^Withdrawn on 24 June 2025: [0-9a-f]{8}\.$/),
    ]);
    expect(entry('p-09', /^T05/).holds[1]).toMatch(
      /^Other answers took the place of these on 27 October 2025/,
    );
    expect(entry('p-06', /^assigned/).what).toContain('against what stands here: second pair of hands');
    expect(entry('p-14', /^T06/).what).toContain('stopped for safety');
  });

  test('a look that was stopped is said with its day, its witness and its entry; nothing on record says so', () => {
    const row = rowOf(person('p-14'), 'T06').lowest;
    const entry = person('p-14').entries.find(({ what }) => /^T06.*stopped for safety/.test(what));
    expect(row).toMatchObject({
      state: 'not-shown',
      why: [expect.stringMatching(/^stopped for safety on \d+ \w+ \d{4}: counts against nobody$/)],
      by: entry?.by,
      entries: [{ short: entry?.short }],
    });
    const cell = crewView(source()).cell('T06', 'p-14');
    expect(cell.line).toBe(`${row.why[0]} (${entry?.by})`);
    expect(cell.ways).toMatchObject([{ entries: [{ short: entry?.short }] }]);
    const none = rowOf(person('p-14', '2025-01-01'), 'T06').lowest;
    expect([none.why, none.entries]).toEqual([['no record'], []]);
  });

  test('an erased person has a sheet that says so, and nothing else', () => {
    const view = person('p-17');
    expect(view.erased).toContain('p-17 was erased from this register on 11 August 2025');
    expect(view.groups.map(({ rows }) => rows.length)).toEqual([0, 0, 0, 15]);
    expect(
      view.entries.filter(({ facts }) => facts.includes('Its body is dropped: the person is erased.')),
    ).toHaveLength(3);
    expect(personView(source(), 'nobody')).toBeUndefined();
  });

  test('who was erased goes by the id, and is counted nowhere', () => {
    const { board, judged, names, speak, tell } = source();
    const named = new Map([...names, ['p-17', 'Ansel Brightmoor']]);
    const all = sourceOf({ board, judged, map, names: named, links: ownLinks, speak, tell });
    expect(personView(all, 'p-17')).toMatchObject({ name: 'p-17', short: 'p-17' });
    const crew = crewView(all);
    expect(board.people.map(({ id }) => id)).toContain('p-17');
    expect(crew.people.map(({ id }) => id)).toEqual(
      board.people.map(({ id }) => id).filter((id) => id !== 'p-17'),
    );
    expect(crew.erased).toEqual([{ id: 'p-17', href: '#person=p-17' }]);
    const of = crew.people.length;
    for (const { count } of crew.tasks) expect(count).toMatch(new RegExp(` of ${of}$`));
    expect(JSON.stringify(crew)).not.toContain('Ansel');
    const rows = taskView(all, { task: 'T05' })?.groups.flatMap((group) => group.rows) ?? [];
    expect(rows.map(({ anchor }) => anchor)).not.toContain('p-17');
    expect(rows).toHaveLength(of);
  });

  test('the legend shows a sign that stands on this board, and none where nobody is shown', () => {
    const crew = crewView(source());
    const marks = crew.tasks.flatMap(({ id }) =>
      crew.people.map((one) => crew.cell(id, one.id)).filter(({ state }) => state === 'shown'),
    );
    expect(marks.map(({ mark }) => mark)).toContain(crew.sample);
    expect(crewView(source('2020-01-01')).sample).toBe('');
  });

  test('board and sheet count a person’s tasks alike', () => {
    const all = source();
    for (const { id, count } of crewView(all).people) {
      expect([id, personView(all, id)?.groups[0]?.count]).toEqual([id, `${count} tasks`]);
    }
    expect(person('p-04').countNote).toBe(
      'A task with parts counts once, and is shown when all of its parts are.',
    );
  });

  test('on a day, as known on a day', () => {
    expect(person('p-15', '2025-06-20').asOf).toBe('As of 20 June 2025');
    const before = person('p-15', '2025-06-20', '2025-06-20');
    expect(before.asOf).toBe('As of 20 June 2025, as known on 20 June 2025');
    expect(rowOf(before, 'T05').lowest.state).toBe('shown');
    expect(rowOf(person('p-15', '2025-06-20'), 'T05').lowest.mark).toBe('W');
  });
});

describe('a task’s sheet', () => {
  test('who stands where, by state, and what it asks for', () => {
    const view = taskView(source(), { task: 'T07', only: demo.crew });
    expect(view?.groups.map(({ rows }) => rows.length)).toEqual([6, 1, 3, 2]);
    expect(view?.groups[1]?.rows[0]).toMatchObject({ code: 'EI', lowest: { mark: '2' } });
    expect(view?.revisions).toEqual([
      { n: '2, in force', on: '12 January 2026', again: 'Yes: every earlier showing' },
      { n: '1', on: '3 November 2025', again: 'No' },
    ]);
    const facts = new Map(view?.facts.map(({ name, lines }) => [name, lines]));
    expect(facts.get('Good for')).toEqual(['24 months, to the end of the day']);
    expect(facts.get('Second witness')).toEqual(['Not wanted']);
    expect(facts.get('Tickets it names')).toEqual(['W1 PPE and start-of-work check', 'W6 Dropped objects']);
    const t15 = taskView(source(), { task: 'T15' });
    expect(t15?.facts[1]?.lines).toEqual(['Wanted: it counts from the day the second has signed']);
    expect(taskView(source(), { task: 'T99' })).toBeUndefined();
  });
});

test('“May … do it?” says task, way and hours in the register’s zone, and each reason with its entry', () => {
  const asked = {
    person: 'p-04',
    task: 'T07',
    from: Date.parse('2026-03-10T13:00:00Z'),
    to: Date.parse('2026-03-10T21:30:00Z'),
  };
  const view = mayView(source(), asked, mayOf(register.judged, { ...asked, map, regrade }));
  expect([view.label, view.word]).toEqual([
    'T07 4 in, aluminium, horizontal, sleeve (socketed), bench, 10 March 2026 07:00 to 10 March 2026 15:30',
    'No',
  ]);
  expect(view.reasons.map(({ text, entry }) => [text, entry === undefined])).toEqual([
    ['revision 2 of 12 January 2026 asks for it again', false],
    ['ticket W1 PPE and start-of-work check: not recorded here: ask to see it', true],
    ['ticket W6 Dropped objects: not recorded here: ask to see it', true],
  ]);
});

/** Source: United States, Energy Policy Act of 2005 section 110 (second Sunday of March, first of November, at 2 o'clock). */
describe('hours of a zone', () => {
  test.each([
    ['America/Denver', '2026-03-10T07:00', '2026-03-10T13:00:00.000Z'],
    ['America/Denver', '2026-03-07T07:00', '2026-03-07T14:00:00.000Z'],
    // Never comes: 02:30 on the day clocks are put forward is 03:30.
    ['America/Denver', '2026-03-08T02:30', '2026-03-08T09:30:00.000Z'],
    // Comes twice: the first.
    ['America/Denver', '2026-11-01T01:30', '2026-11-01T07:30:00.000Z'],
    ['UTC', '2026-03-08T02:30', '2026-03-08T02:30:00.000Z'],
    ['Asia/Kathmandu', '2026-03-08T00:10', '2026-03-07T18:25:00.000Z'],
  ])('%s %s', (zone, wall, instant) => {
    const found = instantIn(zone, wall) ?? Number.NaN;
    expect(new Date(found).toISOString()).toBe(instant);
    if (wall !== '2026-03-08T02:30' || zone === 'UTC') expect(wallIn(zone, found)).toBe(wall);
  });
  test.each(['', '2026-03-08', '2026-13-08T00:00', 'soon'])('%j is no time', (wall) => {
    expect(instantIn('UTC', wall)).toBeUndefined();
    expect(instantText('UTC', wall)).toBe(wall);
  });
});

test('the address says which sheet is asked for', () => {
  expect(whichOf('#person=p-05&entry=4e19c07b')).toEqual({
    person: 'p-05',
    task: undefined,
    entry: '4e19c07b',
  });
  expect(whichOf(ownLinks.person('a.b_c'))).toMatchObject({ person: 'a.b_c' });
  expect(whichOf('#p-05-T07')).toEqual({ person: undefined, task: undefined, entry: undefined });
});
