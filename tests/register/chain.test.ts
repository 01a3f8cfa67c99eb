import { expect, test } from 'vitest';
import type { Citation } from '../../src/register/header.ts';
import type { Entry } from '../../src/register/held.ts';
import { arrange, isBackDated } from '../../src/register/order.ts';
import cases from '../references/register/chain.json' with { type: 'json' };

interface Row {
  id: string;
  signer: string;
  seq: number;
  prev: string | null;
  seen?: string[];
  at?: string;
}

/** What is wrong with rows that are only chained, not signed: in the words of the cases. */
function faults(rows: readonly Row[]): string[] {
  const cite = (id: string): Citation => {
    const held = rows.find((r) => r.id === id);
    return { id, device: 'd', signer: held?.signer ?? '?', seq: held?.seq ?? 0 };
  };
  const entries = rows.map((r): Entry => {
    const time = r.at ?? '2026-01-01T00:00:00Z';
    const common = {
      v: 1 as const,
      kind: 'check',
      register: 'r',
      device: 'd',
      about: null,
      target: [],
      key: null,
      body: null,
    };
    const header = {
      ...common,
      signer: r.signer,
      seq: r.seq,
      prev: r.prev,
      seen: (r.seen ?? []).map(cite),
      time,
    };
    return { id: r.id, header, signature: '', time: Date.parse(time), file: 'f', line: 1 };
  });
  const { list } = arrange(entries);
  const found = list.flatMap((p) => [
    ...p.lacks.map((c) =>
      rows.some((r) => r.id === c.id) ? `badlink:${p.header.signer}:${p.header.seq}` : `missing:${c.id}`,
    ),
    ...(isBackDated(p) ? [`time-backwards:${p.header.signer}:${p.header.seq}`] : []),
  ]);
  const numbers = Map.groupBy(list, (p) => `${p.header.signer}:${p.header.seq}`);
  const forks = [...numbers].filter(([, same]) => same.length > 1).map(([name]) => `fork:${name}`);
  return [...found, ...forks];
}

test.each(cases)('$id: $source', ({ given, expect: want }) => {
  expect(faults(given.records)).toEqual(want);
});
