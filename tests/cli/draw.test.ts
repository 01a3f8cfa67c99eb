/** `run draw` as it is called. Figures of the practice catalogue are training values. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { VIEWS } from '../../src/drawing/views.ts';
import { trayhand } from './command.ts';

const run = {
  v: 1,
  tray: 'card-4',
  start: { kind: 'ladder', joint: 'socketed' },
  legs: [
    { id: '1', from: 'start', fitting: null, dir: 'E', length: `24' 8 1/2"` },
    { id: '2', from: '1', fitting: 'card-4-elbow-90', dir: 'N', length: `10' 9"` },
  ],
  joints: [{ leg: '1', at: `15'`, kind: 'socketed' }],
  supports: [18, 84, 150, 216, 276].map((at) => ({ leg: '1', at, way: 'horizontal', hold: 'clamp' })),
};
interface Shown {
  readonly view: string;
  readonly svg: string;
  readonly words: string;
}

test('every view that the run has something to show in, in order, black on white', async () => {
  const { one, exit } = await trayhand(['run', 'draw'], run);
  expect(exit).toBe(0);
  const views = one.result['views'] as readonly Shown[];
  expect(views.map(({ view }) => view)).toEqual(VIEWS.filter((v) => v !== 'expansion'));
  for (const { svg, words } of views) {
    expect(svg).toMatch(/^<svg .*<\/svg>$/);
    expect(svg).not.toMatch(/var\(|style=/);
    expect(words.length).toBeGreaterThan(40);
  }
});

test.each(['phone', 'desk', 'paper'])('one view alone, on %s', async (form) => {
  const { one } = await trayhand(['run', 'draw', '--view', 'isometric', '--form', form], run);
  const [first, ...more] = one.result['views'] as readonly Shown[];
  expect(more).toEqual([]);
  expect(Object.keys(first ?? {})).toEqual(['view', 'svg', 'words']);
  const width = { phone: '328', desk: '752', paper: '718' }[form];
  expect(first?.svg).toContain(` width="${width}"`);
  // What is wrong is on the sheet: the splice stands 2 ft 6 in from C, more than a quarter of its span.
  expect(first?.words).toMatch(/Note \d: [^.]*S1[^.]* 2 ft 6 in/);
});

test('--of names what is shown; without its view, or of nothing, it is a fault', async () => {
  const section = await trayhand(['run', 'draw', '--view', 'section', '--of', '2'], run);
  expect((section.one.result['views'] as readonly Shown[])[0]?.words).toContain('Section of leg 2');
  const { one, exit } = await trayhand(['run', 'draw', '--view', 'section', '--of', '9'], run);
  expect(exit).toBe(2);
  expect(one.errors).toMatchObject([{ field: 'leg', value: '9' }]);
  expect((await trayhand(['run', 'draw', '--of', '2'], run)).one.errors).toMatchObject([{ field: '--of' }]);
});

test('no such view and no such form are told at once; a view with nothing to show is told too', async () => {
  const { one, exit } = await trayhand(['run', 'draw', '--view', 'plan', '--form', 'wall'], 'no JSON');
  expect(exit).toBe(2);
  expect(one.errors?.map(({ field }) => field)).toEqual(['--view', '--form']);
  const none = await trayhand(['run', 'draw', '--view', 'expansion'], run);
  expect(none.one.errors).toMatchObject([{ field: 'view', value: 'expansion' }]);
});

test('a list of runs in, a list of answers out', async () => {
  const { many } = await trayhand(['run', 'draw', '--view', 'strip'], [run, { ...run, tray: 'none' }]);
  expect(many.map(({ ok }) => ok)).toEqual([true, false]);
});

test('the manual names every view', () => {
  const manual = readFileSync(new URL('../../src/cli/README.md', import.meta.url), 'utf8');
  expect(manual).toContain(`\`${VIEWS.join(' ')}\``);
});
