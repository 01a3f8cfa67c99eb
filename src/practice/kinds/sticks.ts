/** Which pieces are cut from which lengths. Which plans hold is for the model; here two are the same by their cuts. */
import { formatLength, inches, lengthRefusal, tryLength } from '../../trade/length.ts';
import type { SticksAsk } from '../family.ts';
import type { StickCut } from '../model.ts';
import { type Kind, type Unread, unread } from './kind.ts';

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
    if (!Array.isArray(value)) return unread(value, 'this is no list of lengths', todo);
    const ids = given?.from.map(({ id }) => id) ?? [];
    const faults: Unread[] = [];
    const cuts = value.flatMap((row: unknown, i): StickCut[] => {
      const read = readCut(row, `[${i}]`, ids, todo);
      faults.push(...read.unread);
      return read.pieces.length === 0 ? [] : [{ from: read.from, pieces: read.pieces }];
    });
    if (faults.length > 0) return { unread: faults };
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

/** A length and its pieces; every fault of it. */
function readCut(row: unknown, at: string, ids: readonly string[], todo: string) {
  const faults: Unread[] = [];
  const no = (field: string, value: unknown, message: string, what: string) =>
    faults.push({ at: `${at}${field}`, value, message, todo: what });
  const nothing = { from: '', pieces: [] as readonly number[], unread: faults };
  if (typeof row !== 'object' || row === null || Array.isArray(row)) {
    no('', row, 'this is no length', todo);
    return nothing;
  }
  const { from, pieces, ...others } = row as Record<string, unknown>;
  for (const [other, value] of Object.entries(others))
    no(`.${other}`, value, 'there is no such field here', todo);
  if (typeof from !== 'string' || !ids.includes(from))
    no('.from', from, 'there is no such length', `name one of ${ids.join(', ')}`);
  if (!Array.isArray(pieces)) {
    no('.pieces', pieces, 'this is no list of pieces', todo);
    return nothing;
  }
  const read = pieces.map((piece: unknown, k) => {
    const length = typeof piece === 'number' || typeof piece === 'string' ? tryLength(piece) : undefined;
    if (typeof length === 'number') return inches(length);
    const { message, todo: how } =
      length === undefined ? { message: 'this is no length', todo } : lengthRefusal(length);
    no(`.pieces[${k}]`, piece, message, how);
    return 0;
  });
  return { from: typeof from === 'string' ? from : '', pieces: read, unread: faults };
}
