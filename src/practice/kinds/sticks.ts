/** Which pieces are cut from which lengths. Which plans hold is for the model; here two are the same by their cuts. */
import { formatLength, inches, lengthRefusal, tryLength } from '../../trade/length.ts';
import type { SticksAsk } from '../family.ts';
import type { StickCut } from '../model.ts';
import type { Kind } from './kind.ts';

type Cuts = readonly StickCut[];

/** One text for every way to write the same plan: pieces and lengths in no order. */
const written = (cuts: Cuts) =>
  cuts
    .map(({ from, pieces }) => `${from}: ${[...pieces].sort((a, b) => a - b).join(' ')}`)
    .sort()
    .join('\n');
const same = (_: unknown, one: Cuts, other: Cuts) => written(one) === written(other);

export const sticks: Kind<SticksAsk, Cuts> = {
  read: (_, value, { sticks: given }) => {
    const todo = 'write a list of {"from": a length to cut from, "pieces": [inches or length texts]}';
    if (!Array.isArray(value)) return { message: 'this is no list of lengths', todo };
    const ids = given?.from.map(({ id }) => id) ?? [];
    const cuts: StickCut[] = [];
    for (const [i, row] of value.entries()) {
      const no = (message: string, what: string) => ({ message: `length ${i + 1}: ${message}`, todo: what });
      if (typeof row !== 'object' || row === null || Array.isArray(row)) return no('this is no length', todo);
      const { from, pieces, ...others } = row as Record<string, unknown>;
      const other = Object.keys(others)[0];
      if (other !== undefined) return no(`${other} is not asked for`, todo);
      if (typeof from !== 'string' || !ids.includes(from))
        return no(`from is ${JSON.stringify(from ?? null)}`, `name one of ${ids.join(', ')}`);
      if (!Array.isArray(pieces)) return no('pieces are missing', todo);
      const read: number[] = [];
      for (const piece of pieces) {
        const length = typeof piece === 'number' || typeof piece === 'string' ? tryLength(piece) : undefined;
        if (typeof length === 'number') read.push(inches(length));
        else if (length === undefined) return no(`${JSON.stringify(piece)} is no length`, todo);
        else {
          const { message, todo: how } = lengthRefusal(length);
          return no(message, how);
        }
      }
      if (read.length > 0) cuts.push({ from, pieces: read });
    }
    return { answer: cuts.length === 0 ? null : cuts };
  },
  same,
  near: () => false,
  apart: (ask, one, other) => !same(ask, one, other),
  faults: (_, answer, __, { sticks: given }) =>
    answer
      .filter(({ from }) => given?.from.every(({ id }) => id !== from) ?? true)
      .map(({ from }) => `there is no length ${from}`),
  explains: (ask, given, mistaken) => (same(ask, given, mistaken) ? 'whole' : null),
  show: (_, { asked }) => ({
    options: asked.sticks?.from.map(({ id, length }) => ({ id, text: formatLength(length) })) ?? [],
    items: asked.sticks?.pieces.map((length, i) => ({ id: `p${i + 1}`, text: formatLength(length) })) ?? [],
  }),
};
