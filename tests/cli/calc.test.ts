import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { trayhand } from './command.ts';

const folder = mkdtempSync(join(tmpdir(), 'trayhand-calc-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const cutGiven = { toSpliceEdge: '7-3 5/8', insertedEnds: 1 };
const fillGiven = { tray: { bottom: 'ventilated', widthIn: 4 }, cables: [{ odIn: 0.6, count: 8 }] };
const markGiven = { at: 12, firstHole: 6, pitch: 6, holeWidth: '9/16' };

describe('good answers', () => {
  test('length', async () => {
    const { exit, one, talk } = await trayhand(['calc', 'length'], { text: `12'-3 1/3"` });
    expect([exit, one.ok, talk]).toEqual([2, false, '']);
    const good = await trayhand(['calc', 'length', '-'], { text: 95.99 });
    expect(good.exit).toBe(0);
    expect(good.one.ok).toBe(true);
    expect(good.one.result).toEqual({
      in: 780_207 / 8128, // 95.99 in is 780 206.72 ticks
      mm: 780_207 / 320,
      text: `8'-0"`,
      roundedIn: 96,
    });
    expect(Object.keys(good.one)).toEqual(['ok', 'result', 'steps', 'sources']);
  });

  test('length to another part of an inch', async () => {
    const parts = [2, 4, 8, 16, 32, 64];
    const { many } = await trayhand(
      ['calc', 'length'],
      parts.map((toFraction) => ({ text: '2350 mm', toFraction })),
    );
    // 2350 mm = 92.519685 in, by hand to each part
    expect(many.map((a) => [a.result['text'], a.result['roundedIn']])).toEqual([
      [`7'-8 1/2"`, 92.5],
      [`7'-8 1/2"`, 92.5],
      [`7'-8 1/2"`, 92.5],
      [`7'-8 1/2"`, 92.5],
      [`7'-8 17/32"`, 92.53125],
      [`7'-8 33/64"`, 92.515625],
    ]);
  });

  test('cut, mark, fill: result, working and sources', async () => {
    const cut = (await trayhand(['calc', 'cut'], cutGiven)).one;
    expect(cut.result).toEqual({ cutIn: 92.625, cutMm: 2352.675, text: `7'-8 5/8"`, fitsStock: true });
    const mark = (await trayhand(['calc', 'mark'], markGiven)).one;
    expect(mark.result).toEqual({ clear: false, shorterIn: 11.15625, longerIn: 12.84375 });
    const fill = (await trayhand(['calc', 'fill'], fillGiven)).one;
    expect(fill.result).toEqual({
      areaIn2: expect.closeTo(2.261947, 5),
      allowedIn2: 2.5,
      within: true,
      fraction: expect.closeTo(0.904779, 5),
      table: '392.22(A)(5)',
      column: 2,
      cables: 8,
      spareIn2: expect.closeTo(0.238053, 5),
      refer: false,
    });
    for (const { steps, sources } of [cut, mark, fill]) {
      expect(steps.length).toBeGreaterThan(2);
      expect(sources.length).toBeGreaterThan(0);
      for (const step of steps)
        expect(step).toEqual({
          say: expect.stringMatching(/^[^{}]+$/),
          ...('value' in step ? { value: expect.any(Number) } : {}),
          ...('unit' in step ? { unit: expect.any(String) } : {}),
        });
      for (const source of sources)
        expect(Object.keys(source)).toEqual(['id', 'document', 'edition', 'where', 'seen']);
    }
  });

  test('over-filled and referred are answers: exit 0', async () => {
    const over = { ...fillGiven, cables: [{ odIn: 0.6, count: 9 }] };
    const none = { ...fillGiven, tray: { bottom: 'ventilated', widthIn: 2 } };
    const { exit, many } = await trayhand(['calc', 'fill'], [over, none]);
    expect(exit).toBe(0);
    expect(many[0]?.result).toMatchObject({ within: false, refer: false });
    expect(many[1]?.result).toMatchObject({
      within: null,
      refer: true,
      why: expect.stringContaining('no row'),
    });
  });

  test('a file is read as standard input is', async () => {
    const file = join(folder, 'cut.json');
    writeFileSync(file, `\uFEFF${JSON.stringify([cutGiven])}`);
    expect((await trayhand(['calc', 'cut', file])).out).toBe(
      (await trayhand(['calc', 'cut', '-'], [cutGiven])).out,
    );
  });
});

test('an option that cannot be used is said before the input is read', async () => {
  for (const seconds of ['1e3', '3601']) {
    const { exit, one } = await trayhand(['calc', 'sticks', '--seconds', seconds], 'no JSON');
    expect([exit, one.errors.map(({ field }) => field)]).toEqual([2, ['--seconds']]);
  }
});

describe('lists', () => {
  test('a bad element spoils no other, and the exit is 2', async () => {
    const { exit, many } = await trayhand(
      ['calc', 'cut'],
      [cutGiven, { ...cutGiven, insertedEnds: 3 }, cutGiven, 7, null, []],
    );
    expect(exit).toBe(2);
    expect(many.map((a) => a.ok)).toEqual([true, false, true, false, false, false]);
    expect(many[1]).toEqual({
      ok: false,
      errors: [
        { field: 'insertedEnds', value: 3, message: expect.any(String), todo: 'write one of 0, 1, 2' },
      ],
    });
  });

  test('an empty list gives an empty list; a list of one gives a list', async () => {
    expect(await trayhand(['calc', 'cut'], [])).toMatchObject({ exit: 0, many: [] });
    expect((await trayhand(['calc', 'cut'], [cutGiven])).many).toHaveLength(1);
  });

  test.each([
    ['length', { text: `12'-3 1/2"` }],
    ['cut', cutGiven],
    ['mark', markGiven],
    ['fill', fillGiven],
  ])('1,000 of %s: each answered as one alone is', async (verb, given) => {
    const { exit, many } = await trayhand(['calc', verb], Array(1000).fill(given));
    const { one } = await trayhand(['calc', verb], given);
    expect([exit, one.ok]).toEqual([0, true]);
    expect(many).toEqual(Array(1000).fill(one));
  });
});

describe.concurrent('faults: every one, with path, value and what to do', () => {
  const rows: readonly (readonly [verb: string, given: unknown, fields: readonly string[]])[] = [
    ['length', {}, ['text']],
    ['length', { text: true }, ['text']],
    ['length', { text: null }, ['text']],
    ['length', { text: `4' 14"`, toFraction: 3 }, ['text', 'toFraction']],
    ['length', { text: '5', toFraction: '16' }, ['toFraction']],
    ['length', { text: '5', edition: 2023 }, ['edition']],
    ['length', [], ['']],
    ['cut', {}, ['insertedEnds', 'toSpliceEdge']],
    [
      'cut',
      { toSpliceEdge: -1, insertedEnds: '1', insertion: -5, stock: 0, x: 1 },
      ['insertedEnds', 'insertion', 'stock', 'toSpliceEdge', 'x'],
    ],
    ['cut', { toSpliceEdge: 5, insertedEnds: 1.5 }, ['insertedEnds']],
    ['cut', { toSpliceEdge: 5, insertedEnds: true }, ['insertedEnds']],
    ['cut', { toSpliceEdge: 5, insertedEnds: 1, edition: 2023 }, ['edition']],
    ['cut', { toSpliceEdge: 5, insertedEnds: 1, insertion: null }, ['insertion']],
    ['cut', { toSpliceEdge: [5], insertedEnds: 1 }, ['toSpliceEdge']],
    ['mark', {}, ['at', 'firstHole', 'holeWidth', 'pitch']],
    [
      'mark',
      { at: -1, firstHole: -1, pitch: 0, holeWidth: '0', clearance: -1 },
      ['at', 'clearance', 'firstHole', 'holeWidth', 'pitch'],
    ],
    ['mark', { at: 0, firstHole: 0, pitch: 0.00001, holeWidth: 1 }, ['pitch']],
    ['fill', {}, ['cables', 'tray']],
    ['fill', { ...fillGiven, cables: [] }, ['cables']],
    [
      'fill',
      { ...fillGiven, tray: { bottom: 'ladder', widthIn: '4', depthIn: 2 } },
      ['tray.bottom', 'tray.depthIn', 'tray.widthIn'],
    ],
    ['fill', { ...fillGiven, tray: { bottom: 'solid', widthIn: 0 }, spare: -0.1 }, ['spare', 'tray.widthIn']],
    ['fill', { ...fillGiven, spare: 1 }, ['spare']],
    [
      'fill',
      { ...fillGiven, spare: '0.1', qualifiedOnly: 'yes', edition: 2021 },
      ['edition', 'qualifiedOnly', 'spare'],
    ],
    ['fill', { ...fillGiven, edition: '2020' }, ['edition']],
    ['fill', { ...fillGiven, qualifiedOnly: null }, ['qualifiedOnly']],
    [
      'fill',
      {
        ...fillGiven,
        cables: [
          { odIn: 0.5, areaIn2: 0.2, count: 1 },
          { count: 1 },
          { make: 'single', areaIn2: 0.2, count: 1 },
          { odIn: 0, count: 0 },
          { odIn: '1/2', count: 1.5 },
          { odIn: 0.5, count: 1, make: 'ribbon', name: 'x' },
          { areaIn2: true, count: '2' },
          3,
        ],
      },
      [
        'cables[0].areaIn2',
        'cables[1].odIn',
        'cables[2].odIn',
        'cables[3].count',
        'cables[3].odIn',
        'cables[4].count',
        'cables[4].odIn',
        'cables[5].make',
        'cables[5].name',
        'cables[6].areaIn2',
        'cables[6].count',
        'cables[7]',
      ],
    ],
  ];

  test.each(['length', 'cut', 'mark', 'fill'])('calc %s', async (verb) => {
    const mine = rows.filter((row) => row[0] === verb);
    const { exit, many } = await trayhand(
      ['calc', verb],
      mine.map(([, given]) => given),
    );
    expect(exit).toBe(2);
    expect(many.map((a) => a.errors.map((e) => e.field).sort())).toEqual(mine.map(([, , fields]) => fields));
    for (const { message, todo } of many.flatMap((a) => a.errors)) {
      expect([message, todo].every((text) => text.length > 5)).toBe(true);
    }
  });

  test('numbers beyond what can be worked with', async () => {
    const { exit, one } = await trayhand(['calc', 'fill'], {
      ...fillGiven,
      cables: [{ odIn: 1e200, count: 1 }],
    });
    expect([exit, one.errors[0]?.message]).toEqual([2, 'these numbers are too large to be worked with']);
  });

  test('a value that JSON cannot carry is left out of its fault', async () => {
    const deep = `${'['.repeat(20_000)}${']'.repeat(20_000)}`;
    const texts = ['1e999', '-1e999', deep, 'null'].map((text) => `{"text":${text}}`);
    const { exit, many } = await trayhand(['calc', 'length'], `[${texts}]`);
    expect(exit).toBe(2);
    const bare = ['field', 'message', 'todo'];
    expect(many.map((a) => Object.keys(a.errors[0] ?? {}).sort())).toEqual([
      bare,
      bare,
      bare,
      [...bare, 'value'],
    ]);
  });

  test('the text of a fault', async () => {
    const { one } = await trayhand(['calc', 'length'], { text: `4' 14"`, colour: 'red' });
    expect(one.errors).toEqual([
      {
        field: 'text',
        value: `4' 14"`,
        message: 'beside feet the inches stay below 12',
        todo: `write 5'-2"`,
      },
      {
        field: 'colour',
        value: 'red',
        message: 'there is no such field here',
        todo: 'take it out, or mend its spelling',
      },
    ]);
  });

  test.each([
    ['no JSON', '{"text":'],
    ['nothing', ''],
    ['a number', '5'],
    ['null', 'null'],
    ['text', '"12"'],
  ])('%s on standard input', async (_, given) => {
    expect(await trayhand(['calc', 'length'], given)).toMatchObject({
      exit: 2,
      talk: '',
      one: { ok: false, errors: [{ field: '' }] },
    });
  });

  test('a file is named from where npm was called', async () => {
    writeFileSync(join(folder, 'here.json'), JSON.stringify(cutGiven));
    const { exit } = await trayhand(['calc', 'cut', 'here.json'], '', {
      npm_lifecycle_event: 'trayhand',
      INIT_CWD: folder,
    });
    expect(exit).toBe(0);
  });

  test('a file that is not there', async () => {
    const { exit, one } = await trayhand(['calc', 'cut', join(folder, 'none.json')]);
    expect([exit, one.errors[0]?.message]).toEqual([2, expect.stringContaining('there is no such file')]);
  });
});

describe.concurrent('the command itself', () => {
  test.each([
    [[], 'group'],
    [['calk'], 'group'],
    [['calc'], 'verb'],
    [['calc', 'sawing'], 'verb'],
    [['calc', 'cut', 'a.json', 'b.json'], ''],
    [['calc', 'cut', '--fast'], '--fast'],
  ])('%j is a bad command', async (words, field) => {
    const { exit, one } = await trayhand(words);
    expect([exit, one.ok, one.errors[0]?.field]).toEqual([2, false, field]);
    expect(one.errors[0]?.todo).not.toBe('');
  });

  test.each([
    [['--help']],
    [['calc', '--help']],
    [['calc', 'fill', '--help']],
    [['calc', '-h']],
    [['--help', 'calc', 'mark']],
  ])('%j prints its manual on standard output', async (words) => {
    const { exit, out, talk } = await trayhand(words);
    expect([exit, talk]).toEqual([0, '']);
    expect(out).toContain('npm run -s trayhand --');
  });

  test('the manual of a verb names every field of its input', async () => {
    const { out } = await trayhand(['calc', 'fill', '--help']);
    for (const field of [
      'tray',
      'cables',
      'qualifiedOnly',
      'spare',
      'edition',
      'odIn',
      'areaIn2',
      'count',
      'make',
    ])
      expect(out).toContain(field);
  });
});
