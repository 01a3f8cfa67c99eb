/** One of several options. */
import type { Part } from '../family.ts';
import { type Kind, type Read, unread } from './kind.ts';

export interface ChoiceForm {
  readonly options: readonly Part[];
}

export function readOption(ids: readonly string[], value: unknown): Read<string> {
  return typeof value === 'string' && ids.includes(value)
    ? { answer: value }
    : unread(value, 'this is none of the options', `write one of ${ids.join(', ')}`);
}

export const optionFaults = (ids: readonly string[], answer: string) =>
  ids.includes(answer) ? [] : [`${String(answer)} is no option`];

/** What holds of every answer that is one word of several. */
export const oneOf = {
  same: (_: unknown, given: string, wanted: string) => given === wanted,
  near: () => false,
  apart: (_: unknown, one: string, other: string) => one !== other,
  explains: (_: unknown, given: string, mistaken: string) => (given === mistaken ? 'whole' : null),
} as const;

const idsOf = ({ options }: ChoiceForm) => options.map(({ id }) => id);

export const choice: Kind<ChoiceForm, string> = {
  ...oneOf,
  read: (ask, value) => readOption(idsOf(ask), value),
  faults: (ask, answer) => optionFaults(idsOf(ask), answer),
  show: ({ options }, { textOf }) => ({ options: options.map((o) => ({ id: o.id, text: textOf(o) })) }),
};
