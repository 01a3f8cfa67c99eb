import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { boardOf } from '../../src/register/board.ts';
import type { RegisterFiles } from '../../src/register/held.ts';
import { openRegister } from '../../src/register/register.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { map, verify } from './book.ts';

interface Vector {
  why: string;
  codes: string[];
  now: string;
  stands: { person: string; task: string; on: string; standing: string; code: string | null };
  files: RegisterFiles;
}
const folder = new URL('./vectors/refused/', import.meta.url);
const vectors = readdirSync(folder).map(
  (name) =>
    [name.replace('.json', ''), JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Vector] as const,
);

describe('one fault each', () => {
  test('every code is the fault of some vector', () => {
    const codes = new Set(vectors.flatMap(([, v]) => v.codes));
    expect([...codes].sort()).toEqual([
      'after-retirement',
      'altered',
      'back-dated',
      'body-missing',
      'foreign-file',
      'fork',
      'gap',
      'not-appointed',
      'own-signature',
      'torn-tail',
      'unreadable',
    ]);
  });

  test.each(vectors)('%s', async (_, { why, codes, now, stands, files }) => {
    const { judged } = await openRegister(files, { verify, now: Date.parse(now), dayIn });
    expect(
      judged.problems.map((p) => p.code),
      why,
    ).toEqual(codes);
    expect(judged.problems.every((p) => p.settled !== true)).toBe(true);
    for (const { file, line } of judged.problems) {
      expect(Object.keys(files)).toContain(file);
      if (file.startsWith('headers/')) expect(line).toBeGreaterThan(0);
    }
    const board = boardOf(judged, { on: stands.on, map, people: [stands.person] });
    const task = board.people.find((p) => p.id === stands.person)?.tasks[stands.task];
    expect([task?.standing, task?.why[0]?.code ?? null], why).toEqual([stands.standing, stands.code]);
  });
});
