/** Steps in an order. Which orders hold is for the precedence; here an order is the same only as itself. */
import type { OrderAsk } from '../family.ts';
import { type Kind, unread } from './kind.ts';

type Order = readonly string[];
const same = (_: unknown, one: Order, other: Order) => one.join('\n') === other.join('\n');

export const order: Kind<OrderAsk, Order> = {
  read: (_, value, { items }) => {
    const todo = `write a list of the items, each once: ${items.join(', ')}`;
    if (!Array.isArray(value)) return unread(value, 'this is no list of items', todo);
    const unknown = value.filter((item) => !items.includes(item));
    if (unknown.length > 0)
      return unread(value, `no such item here: ${unknown.map(String).join(', ')}`, todo);
    const twice = value.filter((item, i) => value.indexOf(item) < i);
    if (twice.length > 0) return unread(value, `named twice: ${[...new Set(twice)].join(', ')}`, todo);
    return { answer: value.length === 0 ? null : (value as string[]) };
  },
  same,
  near: () => false,
  apart: (ask, one, other) => !same(ask, one, other),
  faults: (_, answer, __, { items }) =>
    [...answer].sort().join() === [...items].sort().join() ? [] : ['an answer has other items'],
  // Two steps the wrong way round are looked for in the order itself (diagnose.ts).
  explains: () => null,
  show: (ask, { textOf, asked }) => ({
    items: asked.items.flatMap((id) => {
      const item = ask.items.find((one) => one.id === id);
      return item === undefined ? [] : [{ id, text: textOf(item) }];
    }),
  }),
};
