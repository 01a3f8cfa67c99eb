/** A family whose seeds choose from less: what a sheet narrows. Within its own ranges everything proven of it stands. */
import type { Fault } from '../trade/given.ts';
import type { Family, Parameter } from './family.ts';
import { hasOnly, isRecord } from './fileFields.ts';

/** Parameters that take the place of the family's own, by name. */
export type Narrowing = Readonly<Record<string, Parameter>>;

/** @param narrow  sound for this family (`narrowFaults`) */
export function narrowed(family: Family, narrow: Narrowing | undefined): Family {
  return narrow === undefined ? family : { ...family, parameters: { ...family.parameters, ...narrow } };
}

/** Kinds of parameters that a sheet may narrow; in rows and in choices of several it leaves the family as it is. */
export const NARROWS = ['length', 'whole', 'decimal', 'choice'] as const;
export const canNarrow = (parameter: Parameter): boolean =>
  NARROWS.some((kind) => kind in parameter) && sizeOf(parameter) > 1;

/** How many values a seed chooses from. */
export function sizeOf(parameter: Parameter): number {
  if ('choice' in parameter) return new Set(parameter.choice).size;
  const range = rangeOf(parameter);
  return range === undefined ? 1 : Math.floor((range.to - range.from) / range.step + 1e-9) + 1;
}

export interface Range {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/** Between what and in which steps a seed chooses a number; undefined where it chooses none. */
export function rangeOf(parameter: Parameter): Range | undefined {
  if ('length' in parameter) return parameter.length;
  if ('decimal' in parameter) return parameter.decimal;
  return 'whole' in parameter ? { ...parameter.whole, step: 1 } : undefined;
}

/** Whether what lay kept has the form of a narrowing, lengths in ticks; whether it is one of a family, `narrowFaults` says. */
export const isNarrowing = (value: unknown): value is Narrowing =>
  isRecord(value) && Object.values(value).every(isParameter);

function isParameter(value: unknown): value is Parameter {
  if (hasOnly(value, ['choice']))
    return Array.isArray(value.choice) && value.choice.every((word) => typeof word === 'string');
  const numbers = (of: unknown, names: readonly string[]) =>
    hasOnly(of, names) && Object.values(of).every((one) => Number.isFinite(one));
  if (hasOnly(value, ['whole'])) return numbers(value.whole, ['from', 'to']);
  const stepped = ['from', 'to', 'step'];
  return (
    (hasOnly(value, ['length']) && numbers(value.length, stepped)) ||
    (hasOnly(value, ['decimal']) && numbers(value.decimal, stepped))
  );
}

/** What is wrong with a narrowing of this family; fields are the parameters' names. */
export function narrowFaults(family: Family, narrow: Narrowing): readonly Fault[] {
  return Object.entries(narrow).flatMap(([name, parameter]): Fault[] => {
    const own = family.parameters[name];
    const able = Object.entries(family.parameters).filter(([, one]) => canNarrow(one));
    if (own === undefined || !canNarrow(own))
      return [
        {
          field: name,
          value: parameter,
          message: `${family.id} has nothing to narrow under this name`,
          todo: able.length === 0 ? 'take it out' : `name one of ${able.map(([one]) => one).join(', ')}`,
        },
      ];
    const why = whyNot(own, parameter);
    return why === undefined ? [] : [{ field: name, value: parameter, ...why }];
  });
}

function whyNot(own: Parameter, narrow: Parameter): Pick<Fault, 'message' | 'todo'> | undefined {
  const kind = NARROWS.find((one) => one in own) ?? '';
  if (!(kind in narrow))
    return { message: 'the family draws another kind of value here', todo: `write ${kind}: …` };
  if ('choice' in own && 'choice' in narrow) {
    const unknown = narrow.choice.filter((word) => !own.choice.includes(word));
    return unknown.length === 0
      ? undefined
      : {
          message: `it never draws ${unknown.join(', ')}`,
          todo: `choose of ${[...new Set(own.choice)].join(', ')}`,
        };
  }
  const [wide, range] = [rangeOf(own), rangeOf(narrow)];
  if (wide === undefined || range === undefined) return undefined;
  const whole = (n: number) => Math.abs(n - Math.round(n)) < 1e-9;
  const good =
    range.from >= wide.from &&
    range.to <= wide.to &&
    range.from <= range.to &&
    whole((range.from - wide.from) / wide.step) &&
    whole(range.step / wide.step);
  return good
    ? undefined
    : {
        message: 'this is not inside what the family draws, on its own steps',
        todo: 'let from and to lie within the family’s own, in whole steps of it',
      };
}
