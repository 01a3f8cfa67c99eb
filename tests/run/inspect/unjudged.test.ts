/** What an inspection does not judge it says, once, and whom to ask; what it can judge it says nothing of. */
import { describe, expect, test } from 'vitest';
import { adoptedOf } from '../../../src/schema/site.ts';
import { runTablesOf } from '../../../src/schema/tradeTables.ts';
import { fromInches, inches } from '../../../src/trade/length.ts';
import { library, speak } from '../tables.ts';
import { branch, cable, corner, type Given, inspected, UNJUDGED, wall, wallWith } from './runs.ts';

const steps = (run: Given, key: string) => inspected(run).steps.filter(({ say }) => say === `inspect.${key}`);

test.each(UNJUDGED)('%s is said once, and to ask the engineer', (key, run) => {
  const said = steps(run, key);
  expect(said).toHaveLength(1);
  for (const step of said) expect(speak(step)).toMatch(/ask the engineer/i);
});

describe('nothing is said of what is judged, or not there', () => {
  const keys = [...new Set(UNJUDGED.map(([key]) => key))];
  const bent = (over: Given) => corner('card-4-elbow-90', 'N', { cables: [cable('b', over)] });

  test.each([
    ['a level run', wall()],
    ['TC, shielded: its section has a multiple', bent({ shielded: true })],
    ['over 1000 V, shielded', bent({ type: 'over 1000 V', shielded: true })],
    ['MC interlocked, plain', bent({ type: 'MC interlocked' })],
    // Nothing bends: the run is straight, or the cable ends before the elbow.
    ['ITC in a straight run', wall({ cables: [cable('1', { type: 'ITC' })] })],
    [
      'ITC that ends before the elbow',
      corner('card-4-elbow-90', 'N', { cables: [cable('a', { type: 'ITC' })] }),
    ],
    ['a tee without cables', branch()],
    ['straight on through a tee', corner('card-4-tee', 'E', { cables: [cable('b')] })],
  ])('%s', (_, run) => {
    expect(keys.flatMap((key) => steps(run, key))).toEqual([]);
  });

  test('a span limit that the run gives is no load table’s', () => {
    const [, edge = {}] = UNJUDGED.find(([key]) => key === 'flatTable-edge') ?? [];
    expect(steps({ ...edge, limits: { maxSpan: 60 } }, 'flatTable-edge')).toEqual([]);
  });
});

test('what is not judged finds nothing, what is judged by less still does', () => {
  const bent = (type: string, odIn: number) =>
    inspected(
      corner('card-4-elbow-90', 'N', { cables: [cable('b', { type, odIn, shielded: true })] }),
    ).result.findings.filter(({ rule }) => rule === 'radius-small').length;
  // MC interlocked 7 × od, NFPA 70-2023 330.24(B); the elbow has 5 in (practice catalogue, training value).
  expect([
    bent('MC shielded', 3),
    bent('ITC', 3),
    bent('MC interlocked', 0.7),
    bent('MC interlocked', 0.75),
  ]).toEqual([0, 0, 0, 1]);
});

describe('a greatest span that the run gives', () => {
  const adopting = (edition: 2017 | 2020 | 2023) =>
    runTablesOf(
      library.rules.values(),
      library.sources,
      adoptedOf([
        {
          id: 'paper',
          document: 'Standard 7',
          by: 'A. Reyes',
          on: '2026-02-10',
          values: [{ key: 'edition', value: edition }],
        },
      ]),
    );
  const short = wall({ limits: { maxSpan: 50 } });

  test('is the run’s own, not the code’s', () => {
    const [finding] = inspected(short).result.findings;
    expect(finding).toMatchObject({ rule: 'span-too-long', limit: 50, source: { id: 'run-given' } });
  });

  // NFPA 70, 392.30(A) of each edition: supported at the intervals of the installation instructions; no number.
  test.each([
    [wall({ limits: { maxSpan: 50, edition: 2020 } }), 2023, ['2020']],
    [short, 2017, ['2017']],
    [wall(), 2017, []],
  ] as const)('beside it stands the code in the edition that the run is judged by', (run, edition, cited) => {
    const { sources } = inspected(run, adopting(edition));
    expect(sources.filter(({ where }) => where === '392.30(A)').map((s) => s.edition)).toEqual(cited);
  });
});

test('the middle of a span may be half a tick, and is told as it is', () => {
  const odd = (fromInches(60) + 1) / 8128;
  const run = wallWith(
    {},
    {
      limits: { maxSpan: 59 },
      supports: [0, odd].map((at) => ({ leg: '1', at, way: 'horizontal', hold: 'clamp' })),
    },
  );
  const [finding] = inspected(run).result.findings.filter(({ rule }) => rule === 'span-too-long');
  expect(finding?.at).toBe((fromInches(60) + 1) / 2);
  expect(inches(finding?.at ?? fromInches(0))).toBe(odd / 2);
});
