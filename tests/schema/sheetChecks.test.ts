/** The project's content, as practice is drawn with, and a sheet more: what its narrowings leave to be drawn is found by the check of the content. */
import { describe, expect, test } from 'vitest';
import { practiceFiles } from '../../src/cli/practiceFiles.ts';
import { readLibrary } from '../../src/schema/library.ts';

const file = 'content/sheets/narrowed.yaml';
const files = practiceFiles(['cut-with-insertion', 'read-tape', 'fill-check']);
const sheet = (...families: readonly string[]) => ({
  path: file,
  text: `id: narrowed
number: 901
title: { en: Narrowed }
tasks: [T05]
families:
${families.map((one) => `  - ${one}\n`).join('')}rule: { need: ${families.length}, of: ${families.length} }
`,
});
const faultsOf = (content: typeof files) =>
  readLibrary(content).faults.filter((fault) => fault.file === file);
const faultsWith = (...families: readonly string[]) => faultsOf([...files, sheet(...families)]);
const cut = (narrow: string) => `{ family: cut-with-insertion, draws: 1, narrow: { ${narrow} } }`;
const distance = (from: string, to: string) =>
  `first: { choice: [sleeve] }, second: { choice: [sleeve] }, measured: { choice: [edges] }, ` +
  `width: { choice: [card-4] }, distance: { length: { from: ${from}, to: ${to}, step: 1/16 } }`;

describe('a sheet that narrows', () => {
  test('what is drawn, and differs from bench to bench, has no fault', () => {
    expect(faultsWith(cut(distance('60', '120')))).toEqual([]);
  });

  test('so far that nothing can be drawn: which family, what is written, and what to do', () => {
    expect(
      faultsWith(
        '{ family: read-tape, draws: 1 }',
        cut('first: { choice: [butt] }, second: { choice: [free] }'),
      ),
    ).toEqual([
      {
        file,
        field: 'families[1].narrow',
        value: { first: { choice: ['butt'] }, second: { choice: ['free'] } },
        message:
          'so narrow, cut-with-insertion has nothing to draw at bench 1: none of 2000 tries of cut-with-insertion can be used',
        todo: 'let it choose from more',
      },
    ]);
  });

  test('so far that benches get the same', () => {
    expect(faultsWith(cut(distance('60', '60')))).toMatchObject([
      {
        file,
        field: 'families[0].narrow',
        value: { distance: { length: { from: `5'-0"` } } },
        message: 'so narrow, benches 1 and 2 get the same of cut-with-insertion',
        todo: expect.stringMatching(/^let it choose from more/),
      },
    ]);
  });

  test('all faults of all its families at once', () => {
    const found = faultsWith(
      cut(distance('60', '60')),
      cut('first: { choice: [butt] }, second: { choice: [free] }'),
    );
    expect(found.map(({ field }) => field)).toEqual(['families[0].narrow', 'families[1].narrow']);
  });

  test('what the family never draws is told alone: there is nothing to try', () => {
    expect(faultsWith(cut('first: { choice: [glue] }')).map(({ field }) => field)).toEqual([
      'families[0].narrow.first',
    ]);
  });

  test('content without a table that every draw takes says that it could not be tried', () => {
    const less = files.filter(({ text }) => !/^kind: open gap$/m.test(text));
    expect(less.length).toBe(files.length - 1);
    const found = faultsOf([...less, sheet(cut(distance('60', '120')))]);
    expect(found).toMatchObject([{ field: 'families', message: expect.stringContaining('open gap') }]);
  });

  test('a table that could not be read is told at its file, not at the sheet', () => {
    const broken = files.map((one) =>
      /^kind: open gap$/m.test(one.text) ? { ...one, text: 'kind: [' } : one,
    );
    expect(readLibrary(broken).faults.length).toBeGreaterThan(0);
    expect(faultsOf([...broken, sheet(cut(distance('60', '120')))])).toEqual([]);
  });
});
