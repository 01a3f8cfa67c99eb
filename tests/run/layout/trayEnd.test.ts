/** An end at another tray asks for no support of its own (the limits of a run, training values); every other end does. */
import { expect, test } from 'vitest';
import { inspect } from '../../../src/run/inspect/inspect.ts';
import { layout } from '../../../src/run/layout/layout.ts';
import { resolveRun } from '../../../src/run/resolve.ts';
import type { Run } from '../../../src/run/types.ts';
import { TRADE_USUAL } from '../../../src/run/usual.ts';
import { runShape } from '../../../src/schema/run.ts';
import { catalogue } from '../practice.ts';
import { tables } from '../tables.ts';

const to = (kind: string, length: number, rest: object = {}): Run =>
  runShape.parse({
    v: 1,
    tray: 'card-4',
    start: { kind: 'free', joint: 'free' },
    legs: [{ id: '1', from: 'start', fitting: null, dir: 'E', length }],
    ends: [{ leg: '1', kind, joint: 'free', jumper: '8 AWG' }],
    limits: { maxSpan: 72 },
    ...rest,
  }) as Run;

const laid = (run: Run) => layout(run, catalogue, tables).result;

// From 24 in, 72 in at a time: 120 in reach an end within 24 in with two, 121 in with three; one piece, one support near
// the start breaks no rule at a tray's end. Spliced, four supports bear the span in the middle that a splice asks for.
test.each([
  ['free', 121, 3],
  ['instrument', 121, 3],
  ['tray', 121, 1],
  ['tray', 240, 1],
  ['tray', 241, 4],
])('an end of kind %s, %d in: %d', (kind, length, count) => {
  const answer = laid(to(kind, length));
  if (answer.run === null) throw new Error(`refused: ${answer.refused.rule}`);
  expect(answer.bound.supports).toBe(count);
  expect(answer.run.supports).toHaveLength(count);
  const findings = inspect(resolveRun(answer.run, catalogue, TRADE_USUAL), catalogue, tables).result.findings;
  expect(findings.filter(({ rule }) => /unsupported|span|splice-/.test(rule))).toEqual([]);
});

test('no place near the end: refused, unless it is at a tray', () => {
  const places = [{ leg: '1', at: [12, 60] }];
  expect(laid(to('free', 120, { places }))).toMatchObject({
    run: null,
    refused: { rule: 'end-unsupported' },
  });
  expect(laid(to('tray', 120, { places })).run?.supports).toHaveLength(1);
});
