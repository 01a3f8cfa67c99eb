/** What the site has adopted wins, everywhere that a training value would stand, and is said. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { calcContent } from '../../src/cli/calcContent.ts';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { root } from '../../src/cli/root.ts';
import { runContent } from '../../src/cli/runContent.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import { type RunUsual, TRADE_USUAL, usualOf } from '../../src/run/usual.ts';
import { shownBy } from '../../src/schema/figure.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { runShape } from '../../src/schema/run.ts';
import { adoptedOf, siteShape } from '../../src/schema/site.ts';
import { taskMapOf } from '../../src/schema/task.ts';
import { tradeTablesOf } from '../../src/schema/tradeTables.ts';
import { witnessDemandsOf } from '../../src/schema/witnessDemands.ts';
import { EDITIONS } from '../../src/trade/editions.ts';
import { MOVEMENT } from '../../src/trade/habits.ts';
import { inches } from '../../src/trade/length.ts';
import { askCalculator } from '../cli/ask.ts';

const project = contentFiles();
const paper = {
  path: 'content/site/tray-standard.yaml',
  text: `id: tray-standard
document: Cable tray standard CT-7, revision 2
by: A. Reyes, electrical engineer
on: "2026-02-10"
values:
  - { key: edition, value: 2020 }
  - { key: insertion, value: 4 1/2 }
  - { key: socket-insertion, value: 1 3/4 }
  - { key: kerf, value: 3/32 }
  - { key: movement, value: 3/4 }
  - { key: support-within, value: 18 }
  - { key: splice-share, value: 0.2 }
  - { key: insertion-off, value: 1/32 }
  - { key: butt-gap, value: 0 }
  - { key: expansion-off, value: 1/8 }
  - { key: open-gap, value: 4 ft }
  - { key: torque, of: 1/4-20, value: 6 }
  - { key: tolerance, of: mark, value: 1/64 }
  - { key: months, of: T07, value: 6 }
  - { key: second, of: T04, value: true }
  - { key: own-standing, value: true }
  - { key: own-standing-in, of: T01, value: false }
  - { key: item, of: card-4, value: [loadTable] }
  - { key: item, of: card-6, value: all }
`,
};
const files = [...project, paper];
const { library, faults } = readLibrary(files);
const adopted = adoptedOf(library.site.values());
const tables = tradeTablesOf(library.rules.values(), library.sources, adopted);
const source = {
  id: 'tray-standard',
  document: 'Cable tray standard CT-7, revision 2',
  edition: '2026-02-10',
  where: 'A. Reyes, electrical engineer',
  seen: 'page',
};
const said = 'adopted by A. Reyes, electrical engineer on 2026-02-10';

/** A calculator of the command, over the project's content with or without the paper. */
function ask(verb: string, given: object, content = calcContent(files)) {
  const answer = askCalculator(verb, given, content);
  if (!answer.ok) throw new Error(JSON.stringify(answer));
  const text = answer.steps.map((s) => s.say).join('\n');
  return { result: answer.result as Record<string, unknown>, text, sources: answer.sources };
}

test('the paper has no fault', () => {
  expect(faults.filter((f) => f.file === paper.path)).toEqual([]);
});

test('the example in content/site/README.md is a paper as it stands, and shows every value that can be adopted', () => {
  const [, text = ''] =
    /```yaml\n([\s\S]*?)```/.exec(readFileSync(join(root, 'content/site/README.md'), 'utf8')) ?? [];
  const read = siteShape.parse(parse(text));
  const keys = siteShape.shape.values.element.options.map(({ shape }) => shape.key.value);
  expect(read.values.map((v) => v.key)).toEqual(expect.arrayContaining(keys));
  expect(keys.length).toBeGreaterThan(10);
});

test('the demo works has adopted nothing', () => {
  const { library: own } = readLibrary(project);
  expect(own.site.size).toBe(0);
  const { limits, usual } = tradeTablesOf(own.rules.values(), own.sources, adoptedOf(own.site.values()));
  const { openGap, ...others } = limits;
  const { edition, ...habits } = usual;
  expect(edition).toBeNull();
  for (const { rests } of [...Object.values(others), ...Object.values(habits)])
    expect(rests).toBe('training');
  expect(openGap[2023]?.rests).toBe('code');
});

describe('limits of a run', () => {
  test.each([
    // its own value; the training value in brackets: common practice and NEMA VE 2, from memory
    ['supportWithin', 18 * 8128], // 24 in
    ['spliceShare', 0.2], // 1/4
    ['insertionOff', 8128 / 32], // 1/16 in
    ['buttGap', 0], // 1/8 in
    ['expansionOff', 8128 / 8], // 1/16 in
    ['movement', (3 * 8128) / 4], // 1 in
  ] as const)('%s is the site’s, with its paper', (limit, value) => {
    expect(tables.limits[limit]).toEqual({ value, source, rests: 'adopted' });
  });

  test('an open gap is the site’s in every edition, in 2017 too', () => {
    for (const edition of EDITIONS)
      expect(tables.limits.openGap[edition]).toEqual({ value: 48 * 8128, source, rests: 'adopted' });
  });

  test('kerf, socket and movement are what a run takes where it gives none', () => {
    const { kerf, socket, movement } = usualOf(tables);
    expect([kerf, socket, movement].map(inches)).toEqual([3 / 32, 1.75, 0.75]);
  });

  test('a run is resolved with them: what goes into the ladder, the saw, the gap of an expansion splice', () => {
    const run = runShape.parse({
      v: 1,
      tray: 'card-4',
      start: { kind: 'ladder', joint: 'socketed' },
      legs: [{ id: 'a', from: 'start', fitting: null, dir: 'E', length: 120 }],
      joints: [{ leg: 'a', at: 60, kind: 'expansion' }],
      temps: { lowF: 0, highF: 100, nowF: 50 },
    });
    const cuts = (usual: RunUsual) => {
      const { legs, kerf } = resolveRun(run, library.catalogue, usual);
      return [inches(kerf), ...(legs[0]?.pieces.map((p) => inches(p.cut)) ?? [])];
    };
    // 60 + insertion − half the gap, 60 − half the gap; gap is half the movement
    expect(cuts(TRADE_USUAL)).toEqual([1 / 8, 60 + 1.5 - 0.25, 60 - 0.25]);
    expect(cuts(usualOf(tables))).toEqual([3 / 32, 60 + 1.75 - 0.1875, 60 - 0.1875]);
  });

  const socketed = (length: string) => ({
    path: 'content/procedures/runs/socketed.yaml',
    text: `id: socketed
run:
  v: 1
  tray: card-4
  start: { kind: ladder, joint: socketed }
  legs: [{ id: "1", from: start, fitting: null, dir: E, length: "${length}" }]
`,
  });
  const runFaults = (more: readonly { path: string; text: string }[]) =>
    readLibrary([...project, ...more])
      .faults.filter(({ file }) => file.endsWith('socketed.yaml'))
      .map(({ field }) => field);

  test('runs of procedures are looked through with them', () => {
    // 19'-10 1/2" + 1 1/2 in is a whole length of 20 ft; with the site's 1 3/4 in it is too long.
    const run = socketed(`19'-10 1/2\\"`);
    expect(runFaults([run])).toEqual([]);
    expect(runFaults([run, paper])).toEqual(['run.legs[0].length']);
  });

  test('figures of procedures are drawn with them', () => {
    const run = runShape.parse({
      v: 1,
      tray: 'card-4',
      start: { kind: 'ladder', joint: 'socketed' },
      legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length: 60 }],
    });
    const cut = (usual: RunUsual) =>
      shownBy({ view: 'piece', of: '1-1' }, run, library.catalogue, usual).facts['cut'];
    expect(cut(TRADE_USUAL)).toBe(`5'-1 1/2"`);
    expect(cut(usualOf(tables))).toBe(`5'-1 3/4"`);
  });

  test('the trade’s own, which practice is drawn by, are the training values of the content', () => {
    const own = runContent().tables;
    expect(usualOf(own)).toEqual(TRADE_USUAL);
    expect(own.limits.movement.source).toEqual(MOVEMENT.source);
  });

  test('the training values stand where no paper lies', () => {
    const { limits, edition } = runContent().tables;
    expect([inches(limits.supportWithin.value), limits.spliceShare.value]).toEqual([24, 0.25]);
    expect(
      [limits.insertionOff, limits.buttGap, limits.expansionOff, limits.movement].map((l) => inches(l.value)),
    ).toEqual([1 / 16, 1 / 8, 1 / 16, 1]);
    expect(EDITIONS.map((e) => limits.openGap[e]?.value ?? null)).toEqual([null, 72 * 8128, 72 * 8128]);
    expect(edition).toBe(2023);
  });
});

describe('the calculators', () => {
  test('cut: the insertion is the site’s, unless one is given', () => {
    const given = { toSpliceEdge: 60, insertedEnds: 2 };
    const mine = ask('cut', given);
    expect(mine.result).toMatchObject({ cutIn: 69 });
    expect(mine.text).toContain(said);
    expect(mine.sources).toContainEqual(source);
    const own = ask('cut', { ...given, insertion: 5 });
    expect(own.result).toMatchObject({ cutIn: 70 });
    expect(own.text).not.toContain('adopted');
    const training = ask('cut', given, calcContent(project));
    expect(training.result).toMatchObject({ cutIn: 70 });
    expect(training.text).toContain('training value, not adopted');
  });

  test('expansion: the movement is the site’s, unless one is given', () => {
    const given = { metal: 'steel', lowF: 0, highF: 100, installF: 50 };
    const mine = ask('expansion', given);
    expect(mine.result).toMatchObject({ gapIn: 0.375, tableFt: null });
    expect(mine.text).toContain(said);
    expect(mine.sources).toContainEqual(source);
    expect(ask('expansion', { ...given, movementIn: 1 }).text).not.toContain('adopted');
    expect(ask('expansion', given, calcContent(project)).text).toContain('training value, not adopted');
  });

  test.each([
    [
      'groundpath',
      { metal: 'steel', deviceA: 60, markedAreaIn2: 1, qualifiedService: true, identified: true },
    ],
    ['radius', { cable: 'over 1000 V', odIn: 1 }],
    ['jumper', { devicesA: [20], metal: 'copper' }],
    ['transition', { gapFt: 5, secured: true, guarded: true }],
    ['ampacity', { currentCarrying: 4 }],
    ['marking', { volts: 700 }],
    ['separation', { volts: [700], mc: false }],
    ['fill', { tray: { bottom: 'ventilated', widthIn: 4 }, cables: [{ odIn: 1, count: 1 }] }],
  ])('%s: the edition is the site’s, unless one is given', (verb, given) => {
    const editions = (of: ReturnType<typeof ask>) =>
      new Set(of.sources.filter((s) => s.id === 'nfpa-70').map((s) => s.edition));
    const mine = ask(verb, given);
    expect(editions(mine)).toEqual(new Set(['2020']));
    expect(mine.text).toContain(`Edition 2020, ${said}`);
    expect(mine.sources).toContainEqual(source);
    const own = ask(verb, { ...given, edition: 2017 });
    expect(editions(own)).toEqual(new Set(['2017']));
    expect(own.text).not.toContain('adopted');
    expect(editions(ask(verb, given, calcContent(project)))).toEqual(new Set(['2023']));
  });

  test('radius in the site’s edition cites its section', () => {
    expect(ask('radius', { cable: 'over 1000 V', odIn: 1 }).result['table']).toBe('300.34');
  });

  test('span: work may be accepted by an adopted load table, and by no other', () => {
    const given = (tray: string) => ({ tray, loadLbPerFt: 8 });
    for (const tray of ['card-4', 'card-6']) {
      const mine = ask('span', given(tray));
      expect(mine.result).toMatchObject({ maxSpanIn: 96, acceptance: true, refer: false });
      expect(mine.text).toContain(said);
      expect(mine.sources).toContainEqual(source);
    }
    const other = ask('span', given('card-2'));
    expect(other.result).toMatchObject({ maxSpanIn: 96, acceptance: false, refer: false });
    expect(other.text).toContain('Training value');
    expect(ask('span', given('card-4'), calcContent(project)).result).toMatchObject({ acceptance: false });
    // No row carries it: nothing is accepted, whoever adopted the table.
    expect(ask('span', { tray: 'card-4', loadLbPerFt: 99 }).result).toMatchObject({
      maxSpanIn: null,
      acceptance: false,
      refer: true,
    });
  });
});

describe('catalogue and tasks', () => {
  test('values that the paper names are adopted, the others stay what they were', () => {
    const four = library.catalogue.get('card-4');
    expect([four?.origin, four?.origins]).toEqual(['training value', { loadTable: 'adopted by the site' }]);
    expect(four?.papers).toEqual({ loadTable: source });
    const six = library.catalogue.get('card-6');
    expect(six?.origin).toBe('adopted by the site');
    expect(six?.papers).toMatchObject({ loadTable: source, thickness: source, webHoles: source });
    expect(library.catalogue.get('card-2')).toMatchObject({ origin: 'training value' });
    expect(library.catalogue.get('card-2')?.papers).toBeUndefined();
  });

  test('months of a task are the site’s in the register’s map', () => {
    const months = (of: typeof library) =>
      Object.fromEntries(taskMapOf(of).tasks.map((t) => [t.id, t.months]));
    const before = months(readLibrary(project).library);
    expect(months(library)).toEqual({ ...before, T07: 6 });
    expect(before['T07']).not.toBe(6);
  });

  test('a second witness is wanted where the site wants one', () => {
    const wanting = (of: typeof library) => taskMapOf(of).tasks.flatMap((t) => (t.second ? [t.id] : []));
    expect(wanting(readLibrary(project).library)).not.toContain('T04');
    expect(wanting(library)).toContain('T04');
  });

  test('what is asked of a witness’s own standing holds from the paper’s day; one task goes before all', () => {
    const { ownStanding } = witnessDemandsOf(library);
    const shown = taskMapOf(library).tasks.filter((t) => t.parts.length === 0 && t.id !== 'T01');
    expect(ownStanding).toEqual(Object.fromEntries(shown.map((t) => [t.id, '2026-02-10'])));
    expect(witnessDemandsOf(readLibrary(project).library)).toEqual({ ownStanding: {} });
  });

  test('a task that is not there, or named twice, is a fault of the paper', () => {
    const wrong = paper.text
      .replace('own-standing-in, of: T01', 'own-standing-in, of: T99')
      .replace(
        'second, of: T04, value: true }',
        'second, of: T98, value: true }\n  - { key: own-standing, value: false }',
      );
    const found = readLibrary([...project, { ...paper, text: wrong }]).faults.filter(
      (f) => f.file === paper.path,
    );
    expect(found.map((f) => f.value)).toEqual(expect.arrayContaining(['T98', 'T99', 'own-standing']));
  });

  test('torque and tolerances are kept for the pages', () => {
    expect(adopted.torque.get('1/4-20')).toEqual({ value: 6, source, rests: 'adopted' });
    expect(adopted.tolerance.get('mark')).toEqual({ value: 127, source, rests: 'adopted' });
  });
});
