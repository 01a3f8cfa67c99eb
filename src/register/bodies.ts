import type { Json } from './canonical.ts';
import type { Day } from './days.ts';
import * as shape from './shapes.ts';

export type Variant = { readonly [pair: string]: string };
export const outcomes = ['shown', 'not-yet'] as const;
export const manners = ['performed', 'simulated', 'observed', 'talked'] as const;
export const helps = ['alone', 'with-help'] as const;
export const hows = ['seen', 'asked', 'missed'] as const;
export type Outcome = (typeof outcomes)[number];
export type Manner = (typeof manners)[number];
export type Help = (typeof helps)[number];
/** A critical point as the witness took it: seen done, asked for, or missed. */
export type Point = { readonly point: string; readonly how: (typeof hows)[number] };
/** One thing measured, as texts: what, what was wanted, what was got, and the tool it was measured with. */
export type Measured = {
  readonly what: string;
  readonly wanted: string;
  readonly got: string;
  readonly tool: string | null;
};

/** The body of each kind, without its salt. Kinds that are not here have none, or are not known to this version. */
export interface Bodies {
  readonly begin: { readonly zone: string };
  readonly appoint: { readonly tasks: 'all' | readonly string[]; readonly on: Day };
  readonly check: {
    readonly task: string;
    readonly revision: number;
    readonly variant: Variant;
    readonly outcome: Outcome;
    readonly manner: Manner;
    readonly help: Help;
    readonly inSight: boolean;
    readonly stopped: boolean;
    readonly on: Day;
    readonly points: readonly Point[];
    readonly measured: readonly Measured[];
    readonly evidence: Json;
  };
  readonly second: { readonly saw: true };
  readonly withdraw: { readonly why: string };
  readonly correct: { readonly why: string; readonly evidence: Json };
  readonly retire: { readonly why: string };
  readonly settle: { readonly why: string };
  readonly 'take-over': { readonly why: string };
  readonly erase: { readonly why: string };
  readonly ticket: {
    readonly ticket: string;
    readonly issuer: string;
    readonly number: string;
    readonly until: Day;
  };
  readonly assigned: {
    readonly job: string;
    readonly from: string;
    readonly to: string;
    readonly override: string | null;
  };
}
export type BodyKind = keyof Bodies;

const measured = shape.record({
  what: shape.text,
  wanted: shape.text,
  got: shape.text,
  tool: shape.orNull(shape.text),
});
const why = { why: shape.text };

const fields: Readonly<Record<BodyKind, Readonly<Record<string, shape.Shape>>>> = {
  begin: { zone: shape.text },
  appoint: {
    tasks: shape.either(shape.oneOf('all'), shape.sorted(shape.taskId, String)),
    on: shape.day,
  },
  check: {
    task: shape.taskId,
    revision: shape.count(1),
    variant: shape.table(shape.text),
    outcome: shape.oneOf(...outcomes),
    manner: shape.oneOf(...manners),
    help: shape.oneOf(...helps),
    inSight: shape.truth,
    stopped: shape.truth,
    on: shape.day,
    points: shape.list(shape.record({ point: shape.text, how: shape.oneOf(...hows) })),
    measured: shape.list(measured),
    evidence: shape.anything,
  },
  second: { saw: shape.oneOf(true) },
  withdraw: why,
  correct: { ...why, evidence: shape.anything },
  retire: why,
  settle: why,
  'take-over': why,
  erase: why,
  ticket: { ticket: shape.ticketId, issuer: shape.text, number: shape.text, until: shape.day },
  assigned: { job: shape.text, from: shape.text, to: shape.text, override: shape.orNull(shape.text) },
};

const shapes = Object.fromEntries(
  Object.entries(fields).map(([kind, of]) => [kind, shape.record({ salt: shape.hex(16), ...of })]),
) as Readonly<Record<BodyKind, shape.Shape>>;

export const hasBody = (kind: string): kind is BodyKind => Object.hasOwn(fields, kind);

/** Kinds without a body that this version knows. */
const bare = ['seen', 'succeed'];
export const isKnownKind = (kind: string): boolean => hasBody(kind) || bare.includes(kind);

/** Bodies that an erase of the person drops; an appointment, a retirement and what concerns others stay. */
export const dropped: readonly string[] = ['check', 'second', 'ticket', 'assigned', 'correct', 'withdraw'];

/** Says what keeps a value from being the body of an entry of this kind; `undefined` when nothing does. */
export function bodyFault(kind: BodyKind, value: Json): string | undefined {
  const found = shapes[kind](value);
  if (found !== undefined || kind !== 'check') return found;
  const { stopped, outcome } = value as unknown as Bodies['check'];
  return stopped && outcome !== 'not-yet' ? 'stopped: only with not-yet' : undefined;
}
