import { describe, expect, test } from 'vitest';
import { decide } from '../../src/practice/passRule/decide.ts';
import { statedRates } from '../../src/practice/passRule/rates.ts';
import type { PassRule } from '../../src/practice/passRule/rule.ts';
import {
  outOf100,
  passRuleSays,
  saysOfDecision,
  saysOfRates,
  saysOfRule,
} from '../../src/practice/passRule/words.ts';
import { language } from './means.ts';

const wald: PassRule = { kind: 'sequential', p0: 0.6, p1: 0.85, alpha: 0.05, beta: 0.1, ceiling: 40 };
const bound: PassRule = { kind: 'bound', confidence: 0.95, share: 0.75 };
const speak = (says: ReturnType<typeof saysOfRule>) => says.map(language.speak);

test.each([
  [0, '0'],
  [1, '100'],
  [0.6, '60'],
  [0.8539, '85.4'],
  // Never none or all where it is neither, as far as two places tell.
  [0.0004, '0.04'],
  [0.9996, '99.96'],
])('%f is %s of 100', (share, text) => {
  expect(outOf100(share)).toBe(text);
});

describe('in words', () => {
  test('every rule, and that critical points are absolute', () => {
    expect(speak(saysOfRule({ kind: 'all' }, 6))).toEqual([
      'All 6 draws hold.',
      'One critical point missed on any draw, and it is not passed, whatever the rest.',
    ]);
    expect(speak(saysOfRule(bound, 30))).toEqual([
      '27 or more of its 30 draws hold: that makes one 95 % sure that the person holds at least 75 of 100 such draws.',
      '17 or fewer, and it is not passed: that makes one as sure of less than 75 of 100.',
      expect.stringContaining('undecided'),
      expect.stringContaining('critical'),
    ]);
    expect(speak(saysOfRule(wald, 40)).join(' ')).toContain('After 40 draws');
  });

  test('one is one: a draw, and a draw that holds', () => {
    const ruled = (rule: PassRule, n: number) => speak(saysOfRule(rule, n))[0];
    expect(ruled({ kind: 'all' }, 1)).toBe('The draw holds.');
    expect(ruled({ kind: 'all' }, 2)).toBe('All 2 draws hold.');
    const held = (...draws: readonly boolean[]) =>
      speak(saysOfDecision(decide({ kind: 'all' }, [...draws], false))).at(-1);
    expect(held(true)).toMatch(/^The one draw holds\. From so few .* and 100 of 100/);
    expect(held(false)).toMatch(/^The one draw does not hold\. From so few .* between 0 and /);
    expect(held(true, false)).toMatch(/^1 of 2 draws holds\./);
    expect(held(false, false)).toMatch(/^0 of 2 draws hold\./);
  });

  test('every result says n and the interval', () => {
    const held = decide(
      wald,
      Array.from({ length: 9 }, () => true),
      false,
    );
    const low = outOf100(held.interval.low);
    expect(speak(saysOfDecision(held))).toEqual([
      'It is passed.',
      `9 of 9 draws hold. From so many one can be 95 % sure that the person holds between ${low} and 100 of 100 such draws.`,
    ]);
    const missed = decide({ kind: 'all' }, [true, true], true);
    expect(speak(saysOfDecision(missed))).toEqual([
      'It is not passed.',
      'A critical point was missed; nothing else counts.',
      expect.stringMatching(/^2 of 2 draws hold\. .* between 15\.8 and 100 of 100/),
    ]);
    expect(speak(saysOfDecision(decide(wald, [], false)))).toEqual([
      'It stays undecided: the draws are too few to say.',
      'No draw is answered yet.',
    ]);
  });

  test('rates, of the people that the rule names and of others', () => {
    const lines = statedRates(wald, 40).map((rates) => speak(saysOfRates(rates, wald)).join(' '));
    // passRule.json: p 0.6 passes 0.0413790, p 0.85 is refused 0.0627503.
    expect(lines).toContain(
      'A person who holds 60 of 100, and should not pass: 4.1 of 100 such pass, 93.1 do not, 2.8 stay undecided. It takes 13.2 draws on average.',
    );
    expect(lines.some((line) => line.includes('should pass: 89.5 of 100 such pass, 6.3 do not'))).toBe(true);
    expect(statedRates(bound, 30).map(({ p, as }) => [p, as])).toContainEqual([0.75, 'share']);
  });

  test('every key that the room lists is said by something here', () => {
    const rules: readonly (readonly [PassRule, number])[] = [
      [wald, 40],
      [bound, 30],
      [{ kind: 'all' }, 6],
      [{ kind: 'all' }, 1],
    ];
    const said = rules.flatMap(([rule, n]) => [
      ...saysOfRule(rule, n),
      ...statedRates(rule, n).flatMap((rates) => saysOfRates(rates, rule)),
      ...[true, false].flatMap((held) =>
        saysOfDecision(
          decide(
            rule,
            Array.from({ length: n }, () => held),
            !held,
          ),
        ),
      ),
      ...saysOfDecision(decide(wald, [], false)),
      ...saysOfDecision(decide(wald, [true, false], false)),
    ]);
    expect([...new Set(said.map(({ say }) => say))].sort()).toEqual([...passRuleSays].sort());
  });
});
