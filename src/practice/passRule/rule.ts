/** What a pass rule is, how a sheet's file writes it, and which rules are refused. README.md says what each means. */
import type { Fault } from '../../trade/given.ts';
import { successRun } from './interval.ts';

export interface Bound {
  /** One-sided, above a half and below 1. */
  readonly confidence: number;
  /** The share of such draws that a person must be shown to hold. */
  readonly share: number;
}

export interface Sequential {
  /** Share of a person who must not pass. */
  readonly p0: number;
  /** Share of a person who should. */
  readonly p1: number;
  /** Chance wanted of passing the first. */
  readonly alpha: number;
  /** Chance wanted of refusing the second. */
  readonly beta: number;
  /** Draws after which it stays undecided. */
  readonly ceiling: number;
}

export type PassRule =
  | { readonly kind: 'all' }
  | ({ readonly kind: 'bound' } & Bound)
  | ({ readonly kind: 'sequential' } & Sequential);

/** As a sheet's file writes it. */
export type SheetRule =
  /** All of them: `need` and `of` are both the number of draws. */
  | { readonly need: number; readonly of: number }
  | { readonly bound: Bound }
  | { readonly sequential: Sequential };

export function passRuleOf(rule: SheetRule): PassRule {
  if ('bound' in rule) return { kind: 'bound', ...rule.bound };
  if ('sequential' in rule) return { kind: 'sequential', ...rule.sequential };
  return { kind: 'all' };
}

/** Fewest draws about which anything statistical is said: 14 in a row make one 95 % sure of 80 %. */
export const FEWEST_TRIALS = 14;
/** Most draws of a sheet under a statistical rule; beyond it the exact rates take too long for a page. */
export const MOST_TRIALS = 1000;

/**
 * What is wrong with a rule for a sheet of `n` draws. Fields are those of the rule as the sheet's file writes it
 * (`bound.share`, `sequential.ceiling`).
 */
export function ruleFaults(rule: PassRule, n: number): readonly Fault[] {
  if (rule.kind === 'bound') return boundFaults(rule, n);
  return rule.kind === 'sequential' ? sequentialFaults(rule, n) : [];
}

/** The same of a rule as a sheet's file writes it. */
export function sheetRuleFaults(rule: SheetRule, n: number): readonly Fault[] {
  if (!('need' in rule)) return ruleFaults(passRuleOf(rule), n);
  return [
    ...wrongUnless(rule.of === n, 'of', rule.of, {
      message: `the sheet has ${n} draws`,
      todo: `write ${n}`,
    }),
    // So many of them, with no error stated, would let a person pass of whom little is known.
    ...wrongUnless(rule.need === rule.of, 'need', rule.need, {
      message: 'all draws of a sheet have to hold',
      todo: `write ${n}, or from ${FEWEST_TRIALS} draws on a bound or a sequential rule`,
    }),
  ];
}

function boundFaults({ confidence, share }: Bound, n: number): readonly Fault[] {
  const faults = [
    ...between('bound.confidence', confidence, 0.5, 1),
    ...between('bound.share', share, 0, 1),
    ...sizeFaults('bound', n),
  ];
  if (faults.length > 0) return faults;
  const fewest = successRun(confidence, share);
  return wrongUnless(
    n >= fewest,
    'bound',
    { confidence, share },
    {
      message: `nobody could pass: ${n} of ${n} do not show ${share} at ${confidence}`,
      todo: `put ${fewest} draws or more on the sheet, or ask for less`,
    },
  );
}

function sequentialFaults(rule: Sequential, n: number): readonly Fault[] {
  const { p0, p1, alpha, beta, ceiling } = rule;
  const faults = [
    ...between('sequential.p0', p0, 0, 1),
    ...between('sequential.p1', p1, 0, 1),
    ...between('sequential.alpha', alpha, 0, 0.5),
    ...between('sequential.beta', beta, 0, 0.5),
    ...wrongUnless(!(p1 <= p0), 'sequential.p1', p1, {
      message: 'who should pass holds no more than who must not',
      todo: `write a share above p0, ${p0}`,
    }),
    ...sizeFaults('sequential.ceiling', ceiling),
  ];
  if (faults.length > 0) return faults;
  const straight = Math.ceil(Math.log((1 - beta) / alpha) / Math.log(p1 / p0) - 1e-9);
  return [
    ...wrongUnless(ceiling === n, 'sequential.ceiling', ceiling, {
      message: `the sheet has ${n} draws`,
      todo: `write ${n}`,
    }),
    ...wrongUnless(
      straight <= ceiling,
      'sequential',
      { p0, p1, alpha, beta, ceiling },
      {
        message: `nobody could pass: ${straight} held in a row are the first that pass`,
        todo: `put ${straight} draws or more on the sheet, or set p0 and p1 further apart`,
      },
    ),
  ];
}

function sizeFaults(field: string, n: number): readonly Fault[] {
  return wrongUnless(Number.isInteger(n) && n >= FEWEST_TRIALS && n <= MOST_TRIALS, field, n, {
    message:
      n < FEWEST_TRIALS ? `${n} draws are too few for this rule` : `${n} is no number of draws for this rule`,
    todo: `have from ${FEWEST_TRIALS} to ${MOST_TRIALS} draws, or ask that all of them hold (need and of)`,
  });
}

function between(field: string, value: number, low: number, high: number): readonly Fault[] {
  return wrongUnless(value > low && value < high, field, value, {
    message: 'this is no share that the rule can work with',
    todo: `write a number above ${low} and below ${high}`,
  });
}

function wrongUnless(
  good: boolean,
  field: string,
  value: unknown,
  words: Pick<Fault, 'message' | 'todo'>,
): readonly Fault[] {
  return good ? [] : [{ field, value, ...words }];
}
