/** Answers that are a set of marks on a run: what meets what, what is missing, what is not wanted. */
import { inches, lengthRefusal, type Ticks, tryLength } from '../../trade/length.ts';
import { type Asked, type Read, SLACK, type Unread, unread } from './kind.ts';

/** A mark without what it is: inches along a leg. */
export interface Mark {
  readonly leg: string;
  readonly at: number;
}

/** `name` gives what two marks must share beside their place. */
export interface Met<M extends Mark> {
  /** Wanted and not given. */
  readonly missing: readonly M[];
  /** Given and not wanted. */
  readonly extra: readonly M[];
}

/**
 * Pairs what was given with what is wanted: same leg, same name, no farther than `within` inches. Marks of one leg and
 * name are taken in order along it, so that as many as can be are paired.
 */
export function meet<M extends Mark>(
  given: readonly M[],
  wanted: readonly M[],
  within: number,
  name: (mark: M) => string,
): Met<M> {
  const key = (mark: M) => `${mark.leg}\n${name(mark)}`;
  const along = (marks: readonly M[]) => [...marks].sort((a, b) => a.at - b.at);
  const missing: M[] = [];
  const left = new Map<string, M[]>();
  for (const mark of along(given)) left.set(key(mark), [...(left.get(key(mark)) ?? []), mark]);
  for (const mark of along(wanted)) {
    const here = left.get(key(mark)) ?? [];
    // The first that is not too far behind: earlier ones can meet nothing that comes later.
    const i = here.findIndex((one) => Math.abs(one.at - mark.at) <= within + SLACK);
    if (i === -1) missing.push(mark);
    else here.splice(i, 1);
  }
  return { missing, extra: [...left.values()].flat() };
}

export const meets = <M extends Mark>({ missing, extra }: Met<M>) =>
  missing.length === 0 && extra.length === 0;

/** Reads `[{leg, at, [name]}]`. A mark that stands twice counts once. */
export function readMarks<M extends Mark>(
  value: unknown,
  name: string,
  names: readonly string[],
  asked: Asked,
): Read<readonly M[]> {
  const todo = `write a list of {"leg": …, "at": inches or a length text, "${name}": …}`;
  if (!Array.isArray(value)) return unread(value, 'this is no list of places', todo);
  const faults: Unread[] = [];
  const marks = value.flatMap((row: unknown, i): M[] => {
    const read = readMark(row, `[${i}]`, name, names, asked, todo);
    if ('unread' in read) faults.push(...read.unread);
    return 'unread' in read ? [] : [read.mark as unknown as M];
  });
  if (faults.length > 0) return { unread: faults };
  const one = marks.filter((m, i) => marks.findIndex((o) => JSON.stringify(o) === JSON.stringify(m)) === i);
  return { answer: one.length === 0 ? null : one };
}

function readMark(
  row: unknown,
  at: string,
  name: string,
  names: readonly string[],
  { legs }: Asked,
  todo: string,
): { readonly mark: Mark & Readonly<Record<string, unknown>> } | { readonly unread: readonly Unread[] } {
  if (typeof row !== 'object' || row === null || Array.isArray(row))
    return { unread: [{ at, value: row, message: 'this is no place', todo }] };
  const { leg, at: along, [name]: named, ...others } = row as Record<string, unknown>;
  const faults: Unread[] = [];
  const no = (field: string, given: unknown, message: string, what: string) =>
    faults.push({ at: `${at}.${field}`, value: given, message, todo: what });
  for (const [other, given] of Object.entries(others)) no(other, given, 'there is no such field here', todo);
  const long = typeof leg === 'string' ? legs.get(leg) : undefined;
  if (long === undefined)
    no('leg', leg, 'there is no such leg', `name one of ${[...legs.keys()].join(', ')}`);
  if (typeof named !== 'string' || !names.includes(named))
    no(name, named, 'this may not be named here', `name one of ${names.join(', ')}`);
  const length =
    typeof along === 'number' || typeof along === 'string' ? tryLength(along, { signed: true }) : undefined;
  if (length === undefined)
    no('at', along, 'this is no length', 'write inches as a number, or a text as 7\'-3 5/8"');
  else if (typeof length !== 'number') {
    const { message, todo: how } = lengthRefusal(length);
    no('at', along, message, how);
  } else if (long !== undefined && (length < 0 || inches(length) > long + SLACK))
    no(
      'at',
      along,
      `this is off the leg, which is ${long} in long`,
      'count from the leg’s first working point',
    );
  if (faults.length > 0) return { unread: faults };
  return { mark: { leg: leg as string, at: inches(length as Ticks), [name]: named } };
}

/** Whether a mistaken set accounts for what is wrong in a given one: all of it, or a part. */
export function explainsMarks<M extends Mark>(
  given: readonly M[],
  mistaken: readonly M[],
  right: readonly M[],
  within: number,
  name: (mark: M) => string,
): 'whole' | 'part' | null {
  if (meets(meet(given, mistaken, within, name))) return 'whole';
  const wrong = meet(given, right, within, name);
  const of = meet(mistaken, right, within, name);
  const inside = (few: readonly M[], many: readonly M[]) =>
    meet(many, few, within, name).missing.length === 0;
  return !meets(of) && inside(of.missing, wrong.missing) && inside(of.extra, wrong.extra) ? 'part' : null;
}

/** What is unfit in marks that a model gives. */
export function marksFaults<M extends Mark>(
  marks: readonly M[],
  name: (mark: M) => string,
  names: readonly string[],
  { legs }: Asked,
): readonly string[] {
  return marks.flatMap((mark) => {
    const long = legs.get(mark.leg);
    return [
      ...(names.includes(name(mark)) ? [] : [`${name(mark)} is not among what may be named`]),
      ...(long !== undefined && mark.at >= 0 && mark.at <= long + SLACK
        ? []
        : [`${mark.at} on ${mark.leg} is off the run`]),
    ];
  });
}
