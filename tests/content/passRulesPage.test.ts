/** The document about pass rules says what the rules do: every row of it is worked out again. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { clopperPearson } from '../../src/practice/passRule/interval.ts';
import { ratesOf } from '../../src/practice/passRule/rates.ts';
import { passRuleOf, ruleFaults, type SheetRule } from '../../src/practice/passRule/rule.ts';
import { outOf100 } from '../../src/practice/passRule/words.ts';

const text = readFileSync('content/pages/en/pass-rules.mdx', 'utf8');
/** From one rule to the next. */
const parts = text.split(/(?=`rule: \{)/).slice(1);

describe.each(parts.map((part) => [/`(rule: \{.*\})`/.exec(part)?.[1] ?? '', part]))(
  '%s',
  (written, part) => {
    const { rule: given } = parse(written) as { rule: SheetRule };
    const rule = passRuleOf(given);
    const rows = [...part.matchAll(/^\| (\d.*) \|$/gm)].map(([, row = '']) => row.split(' | ').map(Number));
    const fixed = Number(/It takes (\d+) draws\./.exec(part)?.[1]);
    const n = rule.kind === 'sequential' ? rule.ceiling : fixed;

    test('may be used', () => {
      expect(ruleFaults(rule, n)).toEqual([]);
      if ('of' in given) expect(given.of).toBe(n);
      expect(rows.length).toBeGreaterThanOrEqual(6);
    });

    test.each(rows)('holds %f: %f pass, %f do not, %f stay undecided', (holds, pass, refuse, undecided) => {
      const rates = ratesOf(rule, n, (holds as number) / 100);
      expect([rates.pass, rates.refuse, rates.undecided].map((rate) => Number(outOf100(rate)))).toEqual([
        pass,
        refuse,
        undecided,
      ]);
    });

    test('the mean number of draws', () => {
      if (rule.kind !== 'sequential') return expect(n).toBe(fixed);
      const [, first, p0, second, p1] =
        /takes ([\d.]+) draws at (\d+) and ([\d.]+) at (\d+)\./.exec(part)?.map(Number) ?? [];
      expect([p0, p1]).toEqual([rule.p0 * 100, rule.p1 * 100]);
      const means = [rule.p0, rule.p1].map((p) => Number(ratesOf(rule, n, p).meanAsks.toFixed(1)));
      expect([first, second]).toEqual(means);
    });
  },
);

test('all five rules are there; six of six show 54 of 100 and no more', () => {
  expect(parts).toHaveLength(5);
  expect(text).toContain('it shows 54 of 100 or more');
  expect(Math.round(100 * clopperPearson(6, 6).low)).toBe(54);
});
