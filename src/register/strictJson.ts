import type { Json, JsonObject } from './canonical.ts';

/** What is wrong with a text, and where it stands (in UTF-16 code units from its beginning). */
export class JsonError extends Error {
  readonly at: number;
  constructor(message: string, at: number) {
    super(message);
    this.name = 'JsonError';
    this.at = at;
  }
}

const MAX_DEPTH = 64;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
/** Everything that may stand in a text unescaped, up to the next quote or backslash. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids exactly these
const PLAIN = /[^"\\\u0000-\u001f]*/y;
const SPACE = /[ \t\n\r]*/y;
const ESCAPES: Readonly<Record<string, string>> = {
  '"': '"',
  '\\': '\\',
  '/': '/',
  b: '\b',
  f: '\f',
  n: '\n',
  r: '\r',
  t: '\t',
};

/**
 * Reads JSON and refuses what two readers could take differently: a name that stands twice in an object, a lone
 * surrogate, an integer beyond ±(2^53 − 1), a number that is not finite, more than 64 levels.
 *
 * @throws {JsonError}
 * Source: RFC 8259; RFC 7493 §2 (I-JSON), asked for by RFC 8785 §3.1. Refusing large integers is this format's own rule.
 */
export function readJson(text: string): Json {
  const quick = readCanonical(text);
  if (quick !== undefined) return quick;
  const reader = new Reader(text);
  reader.space();
  const value = reader.value(0);
  reader.space();
  if (reader.at < text.length) reader.fail('text after the value');
  return value;
}

/**
 * The value of a text that is its canonical one, with the engine's own reader: what is written here is, and is read
 * many times as fast. `undefined` for any other text, and for one that `readJson` would refuse: then it says why.
 */
export function readCanonical(text: string): Json | undefined {
  let value: Json;
  try {
    value = JSON.parse(text) as Json;
  } catch {
    return undefined;
  }
  // A name that stood twice, white space, or a number not kept exactly would not be written again as it stood.
  return inOrder(value, 0) && JSON.stringify(value) === text ? value : undefined;
}

/** Whether names are sorted throughout and everything is within what `readJson` takes. */
function inOrder(value: Json, depth: number): boolean {
  if (depth > MAX_DEPTH) return false;
  if (typeof value === 'string') return value.isWellFormed();
  if (typeof value === 'number') return !Number.isInteger(value) || Number.isSafeInteger(value);
  if (typeof value !== 'object' || value === null) return true;
  if (Array.isArray(value)) return value.every((item) => inOrder(item, depth + 1));
  let last: string | undefined;
  for (const name of Object.keys(value)) {
    if ((last !== undefined && name <= last) || !name.isWellFormed()) return false;
    if (!inOrder((value as JsonObject)[name] as Json, depth + 1)) return false;
    last = name;
  }
  return true;
}

class Reader {
  readonly text: string;
  at = 0;

  constructor(text: string) {
    this.text = text;
  }

  fail(message: string): never {
    throw new JsonError(message, this.at);
  }

  private match(pattern: RegExp): string {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text)?.[0] ?? '';
    this.at += found.length;
    return found;
  }

  private take(word: string): boolean {
    if (!this.text.startsWith(word, this.at)) return false;
    this.at += word.length;
    return true;
  }

  space(): void {
    this.match(SPACE);
  }

  value(depth: number): Json {
    if (depth > MAX_DEPTH) this.fail(`more than ${MAX_DEPTH} levels`);
    if (this.take('{')) return this.object(depth);
    if (this.take('[')) return this.array(depth);
    if (this.take('"')) return this.string();
    if (this.take('true')) return true;
    if (this.take('false')) return false;
    if (this.take('null')) return null;
    return this.number();
  }

  private number(): number {
    const start = this.at;
    const text = this.match(NUMBER);
    const value = Number(text);
    const whole = /^-?\d+$/.test(text);
    if (text === '' || !Number.isFinite(value) || (whole && !Number.isSafeInteger(value))) {
      this.at = start;
      this.fail(text === '' ? 'no JSON value' : `a number that is not kept exactly: ${text}`);
    }
    return value;
  }

  private string(): string {
    const start = this.at;
    let value = '';
    for (;;) {
      value += this.match(PLAIN);
      if (this.take('"')) break;
      if (!this.take('\\')) this.fail('a text without its end, or with a control character');
      value += this.escape();
    }
    if (!value.isWellFormed()) {
      this.at = start;
      this.fail('a text with a lone surrogate');
    }
    return value;
  }

  private escape(): string {
    const sign = this.text[this.at] ?? '';
    this.at += 1;
    if (sign === 'u') {
      const hex = this.text.slice(this.at, this.at + 4);
      if (!/^[0-9a-fA-F]{4}$/.test(hex)) this.fail('no four hexadecimal digits after \\u');
      this.at += 4;
      return String.fromCharCode(Number.parseInt(hex, 16));
    }
    return ESCAPES[sign] ?? this.fail('no such escape');
  }

  private array(depth: number): Json {
    const items: Json[] = [];
    this.space();
    if (this.take(']')) return items;
    for (;;) {
      this.space();
      items.push(this.value(depth + 1));
      this.space();
      if (this.take(']')) return items;
      if (!this.take(',')) this.fail('a list without its comma or end');
    }
  }

  private object(depth: number): Json {
    const members = new Map<string, Json>();
    this.space();
    if (this.take('}')) return {};
    for (;;) {
      this.space();
      if (!this.take('"')) this.fail('a name in quotes belongs here');
      const name = this.string();
      if (members.has(name)) this.fail(`the name "${name}" stands twice`);
      this.space();
      if (!this.take(':')) this.fail('a colon belongs here');
      this.space();
      members.set(name, this.value(depth + 1));
      this.space();
      // fromEntries makes own members of every name, `__proto__` too.
      if (this.take('}')) return Object.fromEntries(members);
      if (!this.take(',')) this.fail('an object without its comma or end');
    }
  }
}
