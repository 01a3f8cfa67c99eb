import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bareFile, type RunFile } from '../../../src/run/edit/file.ts';
import { TRADE_USUAL } from '../../../src/run/usual.ts';
import { packed, unpacked } from '../../../src/schema/link.ts';
import { checkRunFile, runFileJson } from '../../../src/schema/runFile.ts';
import { fromInches } from '../../../src/trade/length.ts';
import { catalogue, leg, whole } from '../../run/practice.ts';
import { randomRuns } from '../../run/randomRun.ts';

const fileOf = (run: RunFile['run']): RunFile => ({
  ...bareFile(run),
  number: 'ALD-021',
  name: 'Filter gallery',
  crew: 'HV, RK',
  tags: { start: 'LAD-2', ends: { [run.legs[0]?.id ?? '1']: 'FT-204' } },
  built: [{ piece: '1-1', cut: fromInches(60.0625), by: 'HV', on: '2026-03-09' }],
});

test('any run comes back from its link and from its file as it went in', async () => {
  await fc.assert(
    fc.asyncProperty(randomRuns, async (run) => {
      const file = fileOf(run);
      const found = await unpacked(await packed('run', runFileJson(file)));
      expect(found.found).toBe('json');
      if (found.found !== 'json') return;
      expect(checkRunFile(found.json, catalogue, TRADE_USUAL)).toEqual({ data: file });
    }),
    { numRuns: 60 },
  );
});

describe('a link that is not whole', () => {
  const run = whole([leg('1', 'E')]);
  test('no run behind #', async () => expect(await unpacked('#add-leg')).toEqual({ found: 'none' }));
  test('another version', async () => {
    const link = (await packed('run', runFileJson(fileOf(run)))).replace('#run=2.', '#run=3.');
    expect(await unpacked(link)).toEqual({ found: 'version', mark: 'run' });
  });
  test.each([
    ['cut short', (link: string) => link.slice(0, -12)],
    ['a sign that is none', (link: string) => `${link.slice(0, 30)}!${link.slice(30)}`],
    ['empty', () => '#run=2.'],
    ['no version', () => '#run='],
    ['a version that never was', (link: string) => link.replace('=2.', '=0.')],
  ])('%s', async (_, spoil) => {
    const link = await packed('run', runFileJson(fileOf(run)));
    expect(await unpacked(spoil(link))).toEqual({ found: 'broken', mark: 'run' });
  });
  test('one that would unpack to more than any run is given up', async () => {
    expect(await unpacked(await packed('run', 'a'.repeat(3_000_000)))).toEqual({
      found: 'broken',
      mark: 'run',
    });
  });
});

describe('a file', () => {
  const run = whole([leg('1', 'E')]);
  test('the run alone is read, nothing beside it', () => {
    const { run: alone } = runFileJson(bareFile(run)) as { run: unknown };
    expect(checkRunFile(alone, catalogue, TRADE_USUAL)).toEqual({ data: bareFile(run) });
  });
  test('every fault at once, those of the run under run', () => {
    const json = runFileJson(fileOf(run)) as { run: { legs: object[] }; built: { on: string }[] };
    const spoilt = {
      ...json,
      colour: 'red',
      built: [{ ...json.built[0], on: 'today' }],
      run: { ...json.run, legs: [{ ...json.run.legs[0], dir: 'X', colour: 1 }] },
    };
    const checked = checkRunFile(spoilt, catalogue, TRADE_USUAL);
    const fields = 'faults' in checked ? checked.faults.map(({ field }) => field) : [];
    expect(fields).toEqual(
      expect.arrayContaining(['colour', 'built[0].on', 'run.legs[0].dir', 'run.legs[0].colour']),
    );
  });
  test.each([null, 7, 'run', [], { kind: 'set' }])('%j is refused', (given) =>
    expect(checkRunFile(given, catalogue, TRADE_USUAL)).toHaveProperty('faults'),
  );
});
