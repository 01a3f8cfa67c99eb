/** Facts and lines of working, made short. */
import type { Step } from '../../../trade/answer.ts';
import type { Ticks } from '../../../trade/length.ts';
import type { Fact, Facts } from '../../model.ts';

export const lengthFact = (length: Ticks): Fact => ({ kind: 'length', ticks: length });
export const wordFact = (value: string): Fact => ({ kind: 'word', value });
export const rowsFact = (rows: readonly Facts[]): Fact => ({ kind: 'rows', rows });
/** @param decimals  always shown; as many as there are when left out */
export const numberFact = (value: number, decimals?: number): Fact => ({
  kind: 'number',
  value,
  ...(decimals === undefined ? {} : { text: value.toFixed(decimals) }),
});

/** A line of working: a sentence of the group, its values, and the number it comes to. */
export const lineOf =
  (group: string) =>
  (
    key: string,
    values: Readonly<Record<string, string | number>> = {},
    value?: number,
    unit?: string,
  ): Step => ({
    say: `${group}.${key}`,
    values,
    ...(value === undefined ? {} : { value }),
    ...(unit === undefined ? {} : { unit }),
  });

export const keysOf = (group: string, keys: readonly string[]): readonly string[] =>
  keys.map((key) => `${group}.${key}`);

const UNITS: Readonly<Record<string, string>> = { 'lb/ft': 'lbPerFt' };
/** The trade's own working, its units by the names that answers have. */
export const tradeSteps = (steps: readonly Step[]): readonly Step[] =>
  steps.map((step) => ({
    ...step,
    ...(step.unit === undefined ? {} : { unit: UNITS[step.unit] ?? step.unit }),
  }));
