import { type Bodies, type BodyKind, bodyFault, dropped, hasBody } from './bodies.ts';
import type { Json } from './canonical.ts';
import type { DayIn } from './days.ts';
import type { Held } from './held.ts';
import type { Order, Placed } from './order.ts';
import { readJson } from './strictJson.ts';

/** The part of a register that is looked at, and what is known of it from outside. */
export interface View {
  readonly held: Held;
  readonly order: Order;
  /** What is counted: closed under past, in order. */
  readonly list: readonly Placed[];
  readonly begin: Placed;
  readonly zone: string;
  readonly dayIn: DayIn;
  /** People whose bodies are dropped, from everything held. */
  readonly erased: ReadonlySet<string>;
}

export type BodyState<K extends BodyKind = BodyKind> =
  | { readonly state: 'held'; readonly body: Bodies[K] }
  | { readonly state: 'missing' | 'altered' | 'erased' | 'none' }
  | { readonly state: 'unreadable'; readonly why: string };

/** Reads the body of an entry for its kind. */
export function bodyState(view: Pick<View, 'held' | 'order' | 'erased'>, entry: Placed): BodyState {
  const { kind, body, about } = entry.header;
  if (!hasBody(kind)) return { state: 'none' };
  if (body === null) return { state: 'unreadable', why: `${kind} wants a body` };
  if (about !== null && view.erased.has(about) && dropped.includes(kind)) return { state: 'erased' };
  const read = view.order.list[entry.rank] === entry ? readOf(view.order) : [];
  const known = read[entry.rank];
  if (known !== undefined) return known;
  const text = view.held.bodies.get(body);
  const found: BodyState =
    text === undefined
      ? { state: view.held.alteredBodies.has(body) ? 'altered' : 'missing' }
      : readBody(kind, text);
  read[entry.rank] = found;
  return found;
}

/** Bodies as read, by the rank of the entry that names them: each is asked for many times over. */
type Read = (BodyState | undefined)[];
const readBodies = new WeakMap<Order, Read>();

function readOf(order: Order): Read {
  const known = readBodies.get(order);
  if (known !== undefined) return known;
  const read: Read = new Array(order.list.length).fill(undefined);
  readBodies.set(order, read);
  return read;
}

function readBody(kind: BodyKind, text: string): BodyState {
  let value: Json;
  try {
    value = readJson(text);
  } catch (error) {
    return { state: 'unreadable', why: (error as Error).message };
  }
  const why = bodyFault(kind, value);
  return why === undefined
    ? { state: 'held', body: value as unknown as Bodies[BodyKind] }
    : { state: 'unreadable', why };
}
