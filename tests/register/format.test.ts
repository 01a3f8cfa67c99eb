import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import words from '../../content/words/en/register.json' with { type: 'json' };
import { dropped, hasBody } from '../../src/register/bodies.ts';
import { hashOf, utf8 } from '../../src/register/bytes.ts';
import { SIGNED_PREFIX } from '../../src/register/header.ts';
import { problemCodes } from '../../src/register/held.ts';
import { openRegister } from '../../src/register/register.ts';
import { registerSays } from '../../src/register/says.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { verify } from './book.ts';

const page = readFileSync(new URL('../../src/register/FORMAT.md', import.meta.url), 'utf8');
const example = page.slice(page.indexOf('## A complete example'), page.indexOf('## Words'));
const blocks = [...example.matchAll(/```text\n(.*)\n```/g)].map((m) => m[1] ?? '');
const names = [...example.matchAll(/^`((?:register|headers|bodies)[^`]*)`/gm)].map((m) => m[1] ?? '');

describe('FORMAT.md', () => {
  test('its example is a register that verifies', async () => {
    expect([blocks.length, names.length]).toEqual([4, 3]);
    const [marker, line, body, header] = blocks as [string, string, string, string];
    const files = {
      [names[0] as string]: marker,
      [names[1] as string]: `${line}\n`,
      [names[2] as string]: body,
    };
    const { judged } = await openRegister(files, { verify, now: Date.parse('2026-03-09T12:00:00Z'), dayIn });
    expect(judged.problems).toEqual([]);
    expect([judged.entries, judged.view.zone, judged.signers[0]?.person]).toEqual([
      1,
      'America/Denver',
      'OW',
    ]);
    expect(hashOf(header)).toBe(judged.view.begin.id);
    expect(example).toContain(`\`${judged.view.begin.id}\``);
    expect(line).toContain(header);
    expect(utf8(SIGNED_PREFIX)).toHaveLength(20);
  });
  test('names every kind, every problem, and which bodies an erase drops', () => {
    for (const code of problemCodes) expect(page).toMatch(new RegExp(`^\\| \`${code}\` +\\|`, 'm'));
    for (const kind of [
      'begin',
      'appoint',
      'check',
      'second',
      'withdraw',
      'correct',
      'retire',
      'settle',
      'take-over',
      'erase',
      'ticket',
      'assigned',
    ]) {
      expect(hasBody(kind)).toBe(true);
      expect(page).toMatch(new RegExp(`^\\| \`${kind}\` +\\|`, 'm'));
    }
    for (const kind of ['seen', 'succeed']) expect(page).toMatch(new RegExp(`^\\| \`${kind}\` +\\|`, 'm'));
    expect(dropped).not.toContain('appoint');
    expect(dropped).not.toContain('retire');
  });
  test('every sentence has its words, and no words are without a sentence', () => {
    const keys = Object.entries(words).flatMap(([group, texts]) =>
      Object.keys(texts).map((key) => `${group}.${key}`),
    );
    expect([...registerSays].sort()).toEqual(keys.sort());
  });
});
