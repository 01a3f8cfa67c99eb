/**
 * Lines as honest devices write them, read in one pass: the pattern is the canonical form and the shapes of header.ts in
 * one. Whatever it does not take is read slowly, which says why; what it takes, reading slowly takes too, and alike.
 */
import { type Citation, type Header, MOST_SEEN, MOST_TARGETS } from './header.ts';
import { isInstant } from './shapes.ts';

const HEX = '[0-9a-f]{64}';
const DEVICE = '[A-Za-z0-9-]{1,32}';
const NUMBER = '0|[1-9][0-9]{0,15}';
const orNull = (pattern: string): string => `(?:null|"(${pattern})")`;

const LINE = new RegExp(
  [
    '^\\{"header":',
    `(\\{"about":${orNull('[A-Za-z0-9._-]{1,64}')},"body":${orNull(HEX)},"device":"(${DEVICE})"`,
    `,"key":${orNull(HEX)},"kind":"([a-z][a-z-]{0,31})","prev":${orNull(HEX)},"register":${orNull(HEX)}`,
    `,"seen":\\[([^\\]]*)\\],"seq":(${NUMBER}),"signer":"(${HEX})","target":\\[([^\\]]*)\\]`,
    ',"time":"([^"\\\\]{24})","v":1\\})',
    ',"signature":"([0-9a-f]{128})"\\}$',
  ].join(''),
);
const CITED = new RegExp(
  `\\{"device":"(${DEVICE})","id":"(${HEX})","seq":(${NUMBER}),"signer":"(${HEX})"\\}`,
  'y',
);
const TARGET = new RegExp(`"(${HEX})"`, 'y');

export interface QuickLine {
  /** The header's own text, as it was signed. */
  readonly text: string;
  readonly header: Header;
  readonly signature: string;
}

/** @param one  hands back the same text for equal texts, so that a key that stands in every line is kept once */
export function readQuick(line: string, one: (text: string) => string): QuickLine | undefined {
  const found = LINE.exec(line) as readonly (string | undefined)[] | null;
  if (found === null) return undefined;
  const [
    ,
    text,
    about,
    body,
    device,
    key,
    kind,
    prev,
    register,
    cited,
    number,
    signer,
    targets,
    time,
    signature,
  ] = found;
  const seq = Number(number);
  const seen = cited === '' ? NO_SEEN : seenIn(cited as string, one);
  const target = targets === '' ? NO_TARGET : targetsIn(targets as string);
  if (seen === undefined || target === undefined) return undefined;
  if (!Number.isSafeInteger(seq) || !isInstant(time as string)) return undefined;
  if ((seq === 0) !== (prev === undefined)) return undefined;
  if ((kind === 'begin') !== (register === undefined)) return undefined;
  if (kind === 'begin' && (seq !== 0 || seen.length > 0)) return undefined;
  const header: Header = {
    about: about === undefined ? null : one(about),
    body: body ?? null,
    device: one(device as string),
    key: key ?? null,
    kind: one(kind as string),
    prev: prev ?? null,
    register: register === undefined ? null : one(register),
    seen,
    seq,
    signer: one(signer as string),
    target,
    time: time as string,
    v: 1,
  };
  return { text: text as string, header, signature: signature as string };
}

const NO_SEEN: readonly Citation[] = [];
const NO_TARGET: readonly string[] = [];

function seenIn(text: string, one: (text: string) => string): readonly Citation[] | undefined {
  const seen: Citation[] = [];
  let last = '';
  for (const [, device, id, number, signer] of itemsIn(text, CITED)) {
    const seq = Number(number);
    if ((id as string) <= last || !Number.isSafeInteger(seq)) return undefined;
    last = id as string;
    seen.push({ device: one(device as string), id: last, seq, signer: one(signer as string) });
  }
  return seen.length === 0 || seen.length > MOST_SEEN ? undefined : seen;
}

function targetsIn(text: string): readonly string[] | undefined {
  const ids: string[] = [];
  for (const [, id] of itemsIn(text, TARGET)) {
    if ((id as string) <= (ids.at(-1) ?? '')) return undefined;
    ids.push(id as string);
  }
  return ids.length === 0 || ids.length > MOST_TARGETS ? undefined : ids;
}

/** What stands in a list, one after the other with a comma between; nothing at all where anything else stands there. */
function itemsIn(text: string, item: RegExp): readonly RegExpExecArray[] {
  const items: RegExpExecArray[] = [];
  for (let at = 0; ; at += 1) {
    item.lastIndex = at;
    const found = item.exec(text);
    if (found === null) return [];
    items.push(found);
    at = item.lastIndex;
    if (at === text.length) return items;
    if (text[at] !== ',') return [];
  }
}
