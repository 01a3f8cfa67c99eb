/** What is handed over as link or code comes back as it went in; what is not whole, or is something else, says so. */
import fc from 'fast-check';
import { decodeQR } from 'qr/decode.js';
import { describe, expect, test } from 'vitest';
import words from '../../content/words/en/handing.json' with { type: 'json' };
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { keyOf } from '../../src/practice/key.ts';
import { MOST_BENCHES, type SetFile, sheetDraws } from '../../src/practice/sheet.ts';
import { readAnswersFile, readSetFile } from '../../src/practice/sheetFiles.ts';
import { makeKey, publicKeyText, readPublicFile } from '../../src/register/keyFile.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { LONGEST_LINK, marks, packed, unpacked } from '../../src/schema/link.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { speaker } from '../../src/schema/words.ts';
import { codeSvg, LONGEST_CODE } from '../../src/site/code.ts';
import { handedText } from '../../src/site/handed.ts';
import { answersFile } from '../../src/site/sheetFiles.ts';
import { teller } from '../../src/site/speak.ts';
import { formatLength, fromInches } from '../../src/trade/length.ts';

const { library } = readLibrary(contentFiles());
const practice = practiceOf(library);
const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };
const tell = teller(words);
const address = 'https://an-address-of-the-usual-length.example/pages/en/witness/';

const ids = fc.stringMatching(/^[A-Za-z0-9._-]{1,64}$/);
const devices = fc.stringMatching(/^[A-Za-z0-9-]{1,32}$/);
const benches = fc.integer({ min: 1, max: MOST_BENCHES });
const sheets = fc.constantFrom(...practice.sheets.values());
const sets = fc
  .record({ sheet: sheets, bench: benches, person: ids })
  .map(({ sheet, bench, person }): SetFile => {
    const [task = ''] = sheet.tasks;
    return { v: 1, kind: 'set', sheet: sheet.id, bench, person, task };
  });
/** Answers as a person may give them: right, blank, or typed as the longest text of a length. */
const answered = fc
  .record({ set: sets, device: devices, how: fc.array(fc.constantFrom('right', 'blank', 'text')) })
  .map(({ set, device, how }) => {
    const sheet = practice.sheets.get(set.sheet);
    if (sheet === undefined) throw new Error('a sheet that is here');
    const draws = sheetDraws(sheet, set.bench, practice);
    const given = draws.map(({ place, draw }, i) => {
      const right = keyOf(draw, practice.world, language).answers;
      const typed = Object.entries(right).map(([ask, value]) => [
        ask,
        typeof value === 'number' ? formatLength(fromInches(value), 64) : value,
      ]);
      const { [how[i] ?? 'text']: found = {} } = { right, blank: {}, text: Object.fromEntries(typed) };
      return [place, found] as const;
    });
    return answersFile(set, device, draws, Object.fromEntries(given));
  });

/** The grid of a code's picture: true is black. Read from the picture itself, a square a module. */
function squares(svg: string): readonly (readonly boolean[])[] {
  const side = Number(/viewBox="0 0 (\d+) /.exec(svg)?.[1]);
  const grid = Array.from({ length: side }, () => new Array<boolean>(side).fill(false));
  for (const [, x, y, long] of svg.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let k = 0; k < Number(long); k++) {
      const row = grid[Number(y)];
      if (row !== undefined) row[Number(x) + k] = true;
    }
  }
  return grid;
}

/** What a reader reads from a picture of it, every module 4 px wide. */
function readBack(svg: string): string {
  const grid = squares(svg);
  const [side, px] = [grid.length, 4];
  const width = side * px;
  const data = new Uint8ClampedArray(width * width * 4).fill(255);
  for (let y = 0; y < width; y++) {
    for (let x = 0; x < width; x++) {
      if (grid[Math.floor(y / px)]?.[Math.floor(x / px)] === true)
        data.fill(0, (y * width + x) * 4, (y * width + x) * 4 + 3);
    }
  }
  return decodeQR({ width, height: width, data });
}

describe('a link', () => {
  test('a set sheet, answers and a public key come back as they went in', async () => {
    await fc.assert(
      fc.asyncProperty(
        sets,
        answered,
        fc.uint8Array({ minLength: 32, maxLength: 32 }),
        async (set, answers, seed) => {
          const key = JSON.parse(publicKeyText(makeKey('kd-phone', () => seed).publicKey));
          for (const [mark, thing] of [
            ['set', set],
            ['answers', answers],
            ['key', key],
          ] as const) {
            const link = `${address}${await packed(mark, thing)}`;
            expect(await unpacked(link)).toEqual({ found: 'json', mark, json: thing });
            // Whole, broken into lines on its way, or with a space behind.
            const lines = ` ${link.replace(/(.{40})/g, '$1\r\n')} \n`;
            expect(await unpacked(lines)).toEqual({ found: 'json', mark, json: thing });
          }
          expect(
            readSetFile(JSON.parse(await handedText(await packed('set', set), 'set', 'link', tell))),
          ).toEqual(set);
          const text = await handedText(await packed('answers', answers), 'answers', 'code', tell);
          expect(readAnswersFile(JSON.parse(text))).toEqual(answers);
          expect(readPublicFile(await handedText(await packed('key', key), 'key', 'link', tell))).toBe(
            key.publicKey,
          );
        },
      ),
      { numRuns: 40 },
    );
  });

  test('one sign changed, left out or doubled never reads as something else', async () => {
    const spoil = fc.record({
      at: fc.nat(),
      sign: fc.constantFrom(...'AZaz09-_'),
      how: fc.constantFrom('change', 'drop', 'double'),
    });
    await fc.assert(
      fc.asyncProperty(answered, spoil, async (answers, { at, sign, how }) => {
        const link = await packed('answers', answers);
        const head = '#answers=2.'.length;
        const i = head + (at % (link.length - head));
        const put = how === 'change' ? sign : how === 'drop' ? '' : `${link[i]}${link[i]}`;
        const found = await unpacked(`${link.slice(0, i)}${put}${link.slice(i + 1)}`);
        // Bits that the last sign does not use may change nothing.
        if (found.found === 'json') expect(found.json).toEqual(answers);
        else expect(found).toEqual({ found: 'broken', mark: 'answers' });
      }),
      { numRuns: 150 },
    );
  });

  test.each(marks)('#%s=: cut short, of a later version, of none', async (mark) => {
    const link = await packed(mark, { some: 'thing', longer: 'than a few signs' });
    expect(await unpacked(link.slice(0, -3))).toEqual({ found: 'broken', mark });
    expect(await unpacked(link.replace('=2.', '=3.'))).toEqual({ found: 'version', mark });
    expect(await unpacked(link.replace('=2.', '=10.'))).toEqual({ found: 'version', mark });
    expect(await unpacked(link.replace('=2.', '='))).toEqual({ found: 'broken', mark });
  });

  test.each(['', '#', '#top', 'https://example.org/', '#sets=2.abc', 'set=2.abc', '#constructor=2.a'])(
    '%j is no link of ours',
    async (text) => expect(await unpacked(text)).toEqual({ found: 'none' }),
  );

  test('a link of the first version is still read', async () => {
    // Deflated raw by another program: zlib, `printf '{"v":1}' | deflate`, in base64url.
    expect(await unpacked('#run=1.q1YqU7IyrAUA')).toEqual({ found: 'json', mark: 'run', json: { v: 1 } });
  });
});

describe('what is handed over and is not what was wanted', () => {
  const saying = async (text: string, came: 'text' | 'link' | 'code' = 'link'): Promise<string> =>
    handedText(text, 'set', came, tell).then(
      () => 'taken',
      (cause) => cause.faults[0].message,
    );
  test('each says what it is', async () => {
    const answers = await packed('answers', {});
    expect(await saying(answers)).toBe('it holds answers to a sheet; the witness’s page opens them');
    expect(await saying(await packed('run', {}))).toBe('it holds a run; the page “Your run” opens it');
    expect(await saying('https://example.org/')).toBe('this is no link of these pages');
    expect(await saying('https://example.org/', 'code')).toBe('this holds something else than a set sheet');
    expect(await saying((await packed('set', {})).replace('=2.', '=7.'))).toContain('later version');
    expect(await saying('#set=2.AAAA')).toContain('not whole');
  });
  test('a file is left to its own reader', async () => {
    expect(await handedText('{"kind":"other"}', 'set', 'text', tell)).toBe('{"kind":"other"}');
    expect(await handedText('no JSON at all', 'set', 'text', tell)).toBe('no JSON at all');
    expect(await handedText(` ${'a'.repeat(64)}\n`, 'key', 'link', tell)).toContain('aaaa');
  });
});

describe('a code', () => {
  test('is read back from its picture, whatever the text', () => {
    const texts = fc.oneof(fc.string({ minLength: 1, maxLength: 300 }), fc.webUrl());
    fc.assert(
      fc.property(texts, (text) => {
        expect(readBack(codeSvg(text) ?? '')).toBe(text);
      }),
      { numRuns: 30 },
    );
  });

  test('is black on white with four modules of white about it, and has no style in it', () => {
    const svg = codeSvg(`${address}#set=2.abc`) ?? '';
    expect(svg).toContain('fill="#fff"');
    expect(svg).toContain('fill="#000"');
    expect(svg).not.toMatch(/style|class|var\(|currentColor/);
    const grid = squares(svg);
    const edge = (i: number) => i < 4 || i >= grid.length - 4;
    grid.forEach((row, y) => {
      row.forEach((black, x) => {
        if (edge(x) || edge(y)) expect(black).toBe(false);
      });
    });
    expect([grid[4]?.[4], grid[4]?.[10], grid[10]?.[4]]).toEqual([true, true, true]);
  });

  test('a text that is too long for one gets none; the longest is read back', () => {
    expect(codeSvg('a'.repeat(LONGEST_CODE + 1))).toBeUndefined();
    const longest = 'a#é'.repeat(LONGEST_CODE / 4);
    const svg = codeSvg(longest) ?? '';
    // Version 25 of ISO/IEC 18004, 117 modules, and the quiet zone on both sides.
    expect(squares(svg).length).toBe(117 + 8);
    expect(readBack(svg)).toBe(longest);
  });

  // Measured: the answers to the longest sheet, every answer typed as text and every id as long as it may be, come to
  // a link of 538 signs, a code of 89 modules a side (version 18); one code holds 1200.
  test.each([...practice.sheets.values()].map((one) => [one.id, one] as const))(
    'the answers to %s fit one, however long the ids and the answers',
    async (_, sheet) => {
      const set: SetFile = {
        v: 1,
        kind: 'set',
        sheet: sheet.id,
        bench: 9999,
        person: 'p-'.repeat(32),
        task: sheet.tasks[0] ?? '',
      };
      const draws = sheetDraws(sheet, set.bench, practice);
      const given = Object.fromEntries(
        draws.map(({ place, draw }) => [
          place,
          Object.fromEntries(
            Object.entries(keyOf(draw, practice.world, language).answers).map(([ask, value]) => [
              ask,
              typeof value === 'number' ? formatLength(fromInches(value), 64) : value,
            ]),
          ),
        ]),
      );
      // Letters of one kind deflate to nothing; these do not (RFC 8032 §7.1 TEST 1, the public key).
      const person = 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a';
      const file = answersFile({ ...set, person }, person.slice(0, 32), draws, given);
      const link = `${address}${await packed('answers', file)}`;
      expect(link.length).toBeLessThanOrEqual(Math.min(LONGEST_CODE, LONGEST_LINK));
      const svg = codeSvg(link) ?? '';
      expect(readBack(svg)).toBe(link);
    },
  );
});
