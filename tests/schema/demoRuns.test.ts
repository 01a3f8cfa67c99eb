/** The demo's six runs: what each is for can be shown on it, and a change that spoils one is told. */
import { expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { inspect } from '../../src/run/inspect/inspect.ts';
import { resolveRun } from '../../src/run/resolve.ts';
import { takeoff } from '../../src/run/takeoff.ts';
import { TRADE_USUAL } from '../../src/run/usual.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { NOTHING_ADOPTED } from '../../src/schema/site.ts';
import { runTablesOf } from '../../src/schema/tradeTables.ts';
import { inches, type Ticks } from '../../src/trade/length.ts';

const files = contentFiles();
const { library } = readLibrary(files);
const tables = runTablesOf(library.rules.values(), library.sources, NOTHING_ADOPTED);
const runs = [...library.demoRuns.values()].sort((a, b) => a.rank - b.rank);

const answers = new Map(
  runs.map(({ id, run }) => {
    const resolved = resolveRun(run, library.catalogue, TRADE_USUAL);
    const off = takeoff(resolved, library.catalogue, tables, { stop: () => true }).result;
    return [id, { resolved, off, findings: inspect(resolved, library.catalogue, tables).result.findings }];
  }),
);
const answer = (id: string) => {
  const found = answers.get(id);
  if (found === undefined) throw new Error(`no run ${id}`);
  return found;
};

test('six runs, the easiest first', () => {
  expect(runs.map(({ id, rank }) => `${rank} ${id}`)).toEqual([
    '1 wall',
    '2 drop',
    '3 offset',
    '4 tee',
    '5 outdoor',
    '6 faulty',
  ]);
});

const clean = ['wall', 'drop', 'offset', 'tee', 'outdoor'];

test.each(clean)('%s: nothing is found; every jumper is there and sized, every cable has room', (id) => {
  const { findings, off } = answer(id);
  expect(findings).toEqual([]);
  expect(off.jumpers.length).toBeGreaterThan(1);
  for (const jumper of off.jumpers) {
    expect(jumper.size).not.toBeNull();
    expect(jumper.holds).toBe(true);
  }
  for (const row of off.fill) {
    expect(row.allowedIn2).not.toBeNull();
    expect(row.areaIn2).toBeGreaterThan(0);
    expect(row.within).toBe(true);
  }
  // Every support knows what it carries: a drop has somebody who takes its weight.
  for (const { lb } of off.supportLoads) expect(lb).not.toBeNull();
});

test.each(clean)('%s: cuts come out in sixteenths of an inch or finer halves of an opening', (id) => {
  // A sleeve of 10 1/8 in leaves 1/8 in, half of it to each end; three eighths of an expansion gap, 3/16 to each.
  for (const { cutIn } of answer(id).off.pieces) expect(Number.isInteger(cutIn * 16)).toBe(true);
});

test('what each teaches is on it', () => {
  const kinds = (id: string) =>
    answer(id).resolved.legs.flatMap(({ joints }) => joints.map(({ kind }) => kind));
  const fittings = (id: string) => runs.find((r) => r.id === id)?.run.legs.map(({ fitting }) => fitting);
  expect(kinds('wall')).toEqual(['socketed']);
  expect(fittings('drop')?.filter((f) => f === 'card-4-elbow-90')).toHaveLength(2);
  expect(fittings('drop')?.at(-1)).toBe('card-4-outside-90');
  expect(fittings('offset')).toEqual([
    null,
    ...['elbow-45', 'elbow-45', 'hinge', 'hinge'].map((f) => `card-6-${f}`),
  ]);
  expect(fittings('tee')?.filter((f) => f === 'card-4-tee')).toHaveLength(2);
  expect(kinds('outdoor').filter((k) => k === 'expansion')).toHaveLength(2);
  // (120 − 68) / (120 − −20) of 1 in of movement = 0.371 in.
  expect(answer('outdoor').off.gaps.map(({ gapIn }) => gapIn?.toFixed(3))).toEqual(['0.371', '0.371']);
  // 18 / sin 45° and 18 / sin 30°, each to the sixteenth.
  const [, out, , back] =
    runs.find((r) => r.id === 'offset')?.run.legs.map(({ length }) => inches(length)) ?? [];
  expect(out).toBe(Math.round((18 / Math.SQRT1_2) * 16) / 16);
  expect(back).toBe(36);
});

test('the last one has what it says and nothing else, of many kinds', () => {
  const said = runs.at(-1)?.finds.map(({ rule, leg, at }) => [rule, leg, at]);
  expect(answer('faulty').findings.map(({ rule, leg, at }) => [rule, leg, at])).toEqual(said);
  expect(new Set(said?.map(([rule]) => rule)).size).toBeGreaterThanOrEqual(10);
});

const spoilt = (id: string, find: string, put: string) => {
  const path = `content/demo/runs/${id}.yaml`;
  const changed = files.map((file) => {
    if (file.path !== path) return file;
    if (!file.text.includes(find)) throw new Error(`${path} has no ${find}`);
    return { path, text: file.text.replace(find, put) };
  });
  return readLibrary(changed)
    .faults.filter(({ file }) => file === path)
    .map(({ field, value }) => [field, value]);
};

test.each([
  ['wall', 'at: 12\'-6"', 'at: 13\'-6"', [['finds', 'span-too-long, leg 1, 10\'-3"']]],
  ['wall', 'length: 38\'-6 5/16"', 'length: 58\'-6 5/16"', [['run.legs[0].length', 702.3125]]],
  ['drop', 'card-4-outside-90', 'card-4-outside-9', [['run.legs[3].fitting', 'card-4-outside-9']]],
  [
    'tee',
    '"6": PT-1406',
    '"7": PT-1406',
    [
      ['tags.ends.7', '7'],
      ['tags.ends', '6'],
    ],
  ],
  ['tee', 'rank: 4', 'rank: 6', [['rank', 6]]],
  ['tee', 'name: demoRun.tee', 'name: demoRun', [['name', 'demoRun']]],
  [
    'faulty',
    "at: 4', kind",
    "at: 5', kind",
    [
      ['finds', 'used-as-step, leg 1, 5\'-0"'],
      ['finds[1]', 'used-as-step, leg 1, 4\'-0"'],
    ],
  ],
] as const)('%s: %s is told', (id, find, put, want) => {
  expect(spoilt(id, find, put)).toEqual(want);
});

test('lengths of findings are read as lengths', () => {
  const at = runs.at(-1)?.finds.find(({ rule }) => rule === 'gap-wrong')?.at as Ticks;
  expect(inches(at)).toBe(126);
});
