/** Draws the values of a family's parameters from a generator, in the order of the file (SEED.md §4). */
import { ticks } from '../trade/length.ts';
import type { ListParameter, Parameter, SomeParameter } from './family.ts';
import type { Generator } from './generator.ts';

/** A length in ticks, a number, a word, rows of values, or names in order. */
export type Value = number | string | readonly Values[] | readonly string[];
export type Values = { readonly [name: string]: Value };

/** Decimals are held as the nearest number to their decimal text, on every device the same. */
const decimal = (n: number) => Math.round(n * 1e6) / 1e6;

export function drawValue(parameter: Parameter, generator: Generator): Value {
  if ('length' in parameter) {
    const { from, to, step } = parameter.length;
    return ticks(from + step * generator.below(Math.floor((to - from) / step) + 1));
  }
  if ('whole' in parameter) return generator.between(parameter.whole.from, parameter.whole.to);
  if ('decimal' in parameter) {
    const { from, to, step } = parameter.decimal;
    return decimal(from + step * generator.below(Math.floor((to - from) / step + 1e-9) + 1));
  }
  if ('choice' in parameter) return generator.pick(parameter.choice);
  return 'list' in parameter ? rows(parameter.list, generator) : some(parameter.some, generator);
}

export function drawValues(parameters: Readonly<Record<string, Parameter>>, generator: Generator): Values {
  const values: Record<string, Value> = {};
  for (const [name, parameter] of Object.entries(parameters)) values[name] = drawValue(parameter, generator);
  return values;
}

function rows({ from, to, of }: ListParameter, generator: Generator): readonly Values[] {
  const count = generator.between(from, to);
  return Array.from({ length: count }, () => drawValues(of, generator));
}

/** Shuffles the optional names, takes as many as are wanted beside the needed ones, and shuffles all of them. */
function some({ from, to, of, always }: SomeParameter, generator: Generator): readonly string[] {
  const count = generator.between(from, to);
  const optional = generator.shuffle(of.filter((name) => !always.includes(name)));
  return generator.shuffle([...always, ...optional.slice(0, count - always.length)]);
}
