/** What the page says was not judged, and whether a lay-out still stands. Common practice, no source. */
import { describe, expect, test } from 'vitest';
import { inspect } from '../../../src/run/inspect/inspect.ts';
import { inspectSays } from '../../../src/run/inspect/says.ts';
import { resolveRun } from '../../../src/run/resolve.ts';
import type { Run } from '../../../src/run/types.ts';
import { usualOf } from '../../../src/run/usual.ts';
import { notJudged, parted } from '../../../src/site/run/judged.ts';
import { standing } from '../../../src/site/run/laid.ts';
import { catalogue, leg, whole } from '../../run/practice.ts';
import { tables } from '../../run/tables.ts';

const worked = (run: Run) => {
  const resolved = resolveRun(run, catalogue, usualOf(tables));
  return { resolved, inspected: inspect(resolved, catalogue, tables) };
};
const names = (run: Run) => {
  const { resolved, inspected } = worked(run);
  return notJudged(resolved, inspected).map(({ name }) => name.replace('yourRun.unjudged-', ''));
};
const bare = whole([leg('1', 'E')]);

describe('not judged', () => {
  test('a run without cables and supports says so of both', () => {
    expect(names(bare)).toEqual(expect.arrayContaining(['cables', 'supports']));
  });
  test('supports that are set are not missed', () => {
    const support = { leg: '1', at: 12 * 8128, way: 'horizontal', hold: 'clamp' };
    const set = { ...bare, supports: [support] } as unknown as Run;
    expect(names(set)).not.toContain('supports');
  });
  test('every sentence of an inspection that ends in "not judged" or serves for want of another is known', () => {
    const silent = inspectSays.filter((key) =>
      /^inspect\.(no[A-Z]|flatTable|overStock|singles|plainRadius)/.test(key),
    );
    const { resolved, inspected } = worked(bare);
    const ends = [{ leg: '1', kind: 'free', joint: 'free', open: 8128 }];
    const opened = { ...resolved, run: { ...resolved.run, ends } } as unknown as typeof resolved;
    const rows = notJudged(opened, { ...inspected, steps: silent.map((say) => ({ say, values: {} })) });
    expect(rows.flatMap(({ say: { say } }) => (say.startsWith('inspect.') ? [say] : []))).toEqual(silent);
  });
});

test('before a lay-out, what only supports settle stands apart; each keeps its number on the figure', () => {
  const { resolved, inspected } = worked(bare);
  const { findings } = inspected.result;
  const { wrong, unlaid } = parted(resolved.run, findings);
  expect(unlaid.length).toBeGreaterThan(0);
  expect(unlaid.map(({ finding }) => finding.rule)).toContain('end-unsupported');
  for (const { finding, number } of [...wrong, ...unlaid]) expect(findings[number - 1]).toBe(finding);
  expect(wrong.length + unlaid.length).toBe(findings.length);
  const supports = [{}] as unknown as NonNullable<Run['supports']>;
  expect(parted({ ...bare, supports }, findings).unlaid).toEqual([]);
});

test('a lay-out is stale once cables or ends change; gone once its supports do', () => {
  const supports = [{ leg: '1', at: 12 }] as unknown as NonNullable<Run['supports']>;
  const laid: Run = { ...bare, supports };
  expect(standing({ ...laid }, laid)).toBe('stands');
  expect(standing({ ...laid, ends: [{ leg: '1', kind: 'free', joint: 'free' }] }, laid)).toBe('stale');
  expect(standing({ ...laid, cables: [{ id: 'C' }] as unknown as NonNullable<Run['cables']> }, laid)).toBe(
    'stale',
  );
  expect(standing(bare, laid)).toBe('gone');
});
