import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Json } from '../../src/register/canonical.ts';
import { type Header, headerFault, headerText, lineOf } from '../../src/register/header.ts';
import { readQuick } from '../../src/register/quickLine.ts';
import { readJson } from '../../src/register/strictJson.ts';
import { bigRegister } from './big.ts';

const hex = (bytes: number) => fc.stringMatching(new RegExp(`^[0-9a-f]{${2 * bytes}}$`));
const id = hex(32);
const sometimes = <T>(usual: fc.Arbitrary<T>, odd: readonly unknown[]) =>
  fc.oneof({ weight: 24, arbitrary: usual }, { weight: 1, arbitrary: fc.constantFrom(...odd) });
const nothingOr = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: null });
const ofId = { odd: ['', 'A'.repeat(64), '0'.repeat(63), '0'.repeat(65), 7, `${'0'.repeat(63)}"`] };
const device = sometimes(fc.stringMatching(/^[A-Za-z0-9-]{1,32}$/), ['', 'a b', 'é', 'x'.repeat(33), null]);
const seq = sometimes(fc.oneof(fc.nat(3), fc.nat(1e9)), [-1, 1.5, 2 ** 53, 1e16, 9e15, 1e21, '1', null]);
const byId = (a: { id: unknown }, b: { id: unknown }) => (String(a.id) < String(b.id) ? -1 : 1);
const seen = fc
  .array(fc.record({ id: sometimes(id, ofId.odd), signer: sometimes(id, ofId.odd), device, seq }), {
    maxLength: 4,
  })
  .chain((list) => fc.boolean().map((sorts) => (sorts ? list.sort(byId) : list)));
const odd = [undefined, 0, '', [], {}];

/** Headers, most of them good, some with something that this format does not take. */
const header = fc.record({
  v: sometimes(fc.constant(1), [2, '1', null]),
  kind: sometimes(fc.constantFrom('begin', 'check', 'take-over', 'x'), [
    '',
    'Check',
    '-a',
    'a'.repeat(33),
    null,
  ]),
  register: sometimes(nothingOr(id), ofId.odd),
  signer: sometimes(id, [...ofId.odd, null]),
  device,
  seq,
  prev: sometimes(nothingOr(id), ofId.odd),
  seen: sometimes(seen, [null, {}, [null], ['']]),
  time: sometimes(
    fc
      .date({ min: new Date('0000-01-01'), max: new Date('9999-12-31'), noInvalidDate: true })
      .map((d) => d.toISOString()),
    [
      '2026-02-30T00:00:00.000Z',
      '2026-01-01T24:00:00.000Z',
      '2026-01-01T00:00:00Z',
      '+002026-01-01T00:00:00.0Z',
      '',
    ],
  ),
  about: sometimes(nothingOr(fc.stringMatching(/^[A-Za-z0-9._-]{1,64}$/)), ['', 'a b', 'ü', 'x'.repeat(65)]),
  target: sometimes(
    fc.array(id, { maxLength: 3 }).map((list) => [...new Set(list)].sort()),
    [['b'.repeat(64), 'a'.repeat(64)], ['a'.repeat(64), 'a'.repeat(64)], [1], ['x'], null],
  ),
  key: sometimes(nothingOr(id), ofId.odd),
  body: sometimes(nothingOr(id), ofId.odd),
  more: fc.oneof(
    { weight: 24, arbitrary: fc.constant(undefined) },
    { weight: 1, arbitrary: fc.constantFrom(...odd) },
  ),
});
const signature = sometimes(hex(64), ['', 'G'.repeat(128), '0'.repeat(127), 3]);

/** The same without the pattern: strict JSON, its one form, then field by field. */
function slowly(line: string): { text: string; header: Header; signature: string } | undefined {
  let value: Json;
  try {
    value = readJson(line);
  } catch {
    return undefined;
  }
  const { header: h, signature: s } = value as { header: Json; signature: string };
  if (headerFault(h) !== undefined || !/^[0-9a-f]{128}$/.test(s)) return undefined;
  const own = h as unknown as Header;
  return lineOf(own, s) === line ? { text: headerText(own), header: own, signature: s } : undefined;
}
const quickly = (line: string) => readQuick(line, (text) => text);

let taken = 0;
const agree = (line: string): void => {
  const wanted = slowly(line);
  if (wanted !== undefined) taken += 1;
  expect(quickly(line)).toEqual(wanted);
};

describe('a line read in one pass', () => {
  let lines: readonly string[];
  beforeAll(() => {
    const files = bigRegister({ entries: 400, people: 9, witnesses: 5, tasks: 6, apart: 3 });
    lines = Object.entries(files)
      .filter(([path]) => path.startsWith('headers/'))
      .flatMap(([, text]) => text.trimEnd().split('\n'));
  });
  test('is every line that a device writes', () => {
    expect(lines.length).toBeGreaterThanOrEqual(400);
    for (const line of lines) expect(quickly(line)).toEqual(slowly(line));
    expect(lines.every((line) => quickly(line) !== undefined)).toBe(true);
  });
  test('is what reading it field by field takes, and nothing else', () => {
    fc.assert(
      fc.property(header, signature, ({ more, ...fields }, s) => {
        const whole = more === undefined ? fields : { ...fields, more };
        agree(lineOf(whole as unknown as Header, s as string));
      }),
      { numRuns: 3000 },
    );
    expect(taken).toBeGreaterThan(100);
  });
  test('is not taken with one sign put in, left out or changed unless the slow way takes it too', () => {
    fc.assert(
      fc.property(
        fc.nat(),
        fc.nat(),
        fc.constantFrom('', ' ', '"', '\\', ',', '0', 'a', 'A', '{', ']', '\n', 'é', '\u2028', '-', '.', 'e'),
        fc.boolean(),
        (which, where, sign, replaces) => {
          const line = lines[which % lines.length] as string;
          const at = where % (line.length + 1);
          agree(line.slice(0, at) + sign + line.slice(replaces ? at + 1 : at));
        },
      ),
      { numRuns: 4000 },
    );
  });
});
