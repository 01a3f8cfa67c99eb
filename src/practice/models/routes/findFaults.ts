/**
 * Faults of a drawn run (T14 and the tasks whose faults they are): put into a sound run, and found again with place and
 * rule. Right is what an inspection finds. What concerns a leg as a whole, its cables, is marked at its beginning.
 */
import { inspect, type RuleId } from '../../../run/inspect/inspect.ts';
import { inspectSays } from '../../../run/inspect/says.ts';
import type { ResolvedRun } from '../../../run/resolved.ts';
import { spanLimit } from '../../../run/spanLimit.ts';
import type { Step } from '../../../trade/answer.ts';
import { jumper } from '../../../trade/jumper.ts';
import { inches, type Ticks } from '../../../trade/length.ts';
import type { Ask, Family } from '../../family.ts';
import {
  type Answer,
  type Drawn,
  type Facts,
  type FaultAt,
  model,
  type Slip,
  type World,
} from '../../model.ts';
import { DAMAGE_KINDS, type Damaged, type DamageKind, damagedSome } from '../../runs/damage.ts';
import { isSplice, length, number, rows, runFacts, word } from '../../runs/facts.ts';
import { soundRun } from '../../runs/sound.ts';
import { CARRIES, PAINTED, ROUTE, SPANS, SPLICES, WARMTH } from '../../runs/wants.ts';
import { meantWithin, stripOf, strippedLegs } from '../parts/placing.ts';
import { read } from '../parts/reads.ts';

const wants = {
  ...ROUTE,
  ...CARRIES,
  ...SPANS,
  ...WARMTH,
  ...SPLICES,
  ...PAINTED,
  /** Damages in the order in which they are tried, one that may come twice as `-again`; the first so many that can be made are. */
  damages: 'some',
  faults: 'whole',
  pick: 'whole',
} as const;

interface Plan {
  readonly resolved: ResolvedRun;
  /** As the person names them. */
  readonly named: readonly FaultAt[];
  /** Rules that may be named. */
  readonly rules: readonly string[];
}

function plan(drawn: Drawn<typeof wants>, world: World, family: Family): Plan | null {
  const sound = soundRun(drawn, world);
  if (sound === null || sound.resolved.legs.length < 2) return null;
  const wanted = drawn.damages
    .map((one) => one.replace(/-again$/, ''))
    .filter((one): one is DamageKind => (DAMAGE_KINDS as readonly string[]).includes(one))
    .map((damage, i) => ({ damage, pick: Math.floor(drawn.pick / (i + 1)) }));
  const made = damagedSome(sound, wanted, drawn.faults, world);
  if (made === null) return null;
  const rules = family.asks.flatMap((ask) => (ask.kind === 'faults' ? ask.rules.map(({ id }) => id) : []));
  const named = made.planted.map(({ rule, leg, at }) => ({ rule, leg, at: at === null ? 0 : inches(at) }));
  // Of two faults at one place the second would be guessed.
  const alone = named.every((one, i) =>
    named.every((o, k) => k === i || o.leg !== one.leg || o.at !== one.at),
  );
  return alone && oneRuleEach(made, world) ? { resolved: made.resolved, named, rules } : null;
}

/** A splice in an end span that stands past the quarter too could be named by either rule. */
function oneRuleEach({ resolved, planted }: Damaged, { tables }: World): boolean {
  const ends = planted.filter(({ rule }) => rule === 'splice-in-end-span');
  const lines = resolved.legs.flatMap((leg) => leg.lines);
  return ends.every(({ leg, at }) =>
    lines.every((line) =>
      line.spans.every(({ from, to, length: long }) => {
        const inside = line.leg === leg && at !== null && from < at && at < to;
        return !inside || Math.min(at - from, to - at) <= tables.limits.spliceShare.value * long;
      }),
    ),
  );
}

type FaultSlip = Slip<Plan>;
/** Someone who finds nothing at all leaves the ask blank. */
const changed = (plan: Plan, named: readonly FaultAt[]): Plan | null =>
  named.length === 0 ? null : { ...plan, named };

/** Rules by what an inspector looks at; a round that leaves one of them out misses all of it. */
const LOOKS = {
  missedSpans: ['span-too-long'],
  missedSupports: ['fitting-unsupported', 'expansion-unsupported', 'end-unsupported'],
  missedSplices: ['splice-past-quarter', 'two-splices-in-span', 'splice-in-end-span', 'splice-on-support'],
  missedJoints: [
    'insertion-short',
    'insertion-long',
    'ends-butted',
    'hole-wrong',
    'gap-wrong',
    'metals-mixed',
  ],
  missedBonding: ['jumper-missing', 'jumper-small'],
  missedNeedless: ['jumper-needless'],
  missedAnchors: ['anchor-none', 'anchor-many', 'anchor-off-middle'],
  missedCables: ['fill-over', 'radius-small', 'power-with-signal', 'air-with-cables', 'open-gap-long'],
  missedStep: ['used-as-step'],
} as const satisfies Readonly<Record<string, readonly RuleId[]>>;
type Look = keyof typeof LOOKS;

const missed =
  (look: Look): FaultSlip =>
  (plan) => {
    const left = plan.named.filter(({ rule }) => !(LOOKS[look] as readonly string[]).includes(rule));
    return left.length === plan.named.length ? null : changed(plan, left);
  };

/** The rule that is named for another, at the right place. */
const TAKEN_FOR: Readonly<Record<string, RuleId>> = {
  'fitting-unsupported': 'end-unsupported',
  'end-unsupported': 'span-too-long',
  'splice-past-quarter': 'splice-in-end-span',
  'splice-in-end-span': 'splice-past-quarter',
  'splice-on-support': 'splice-past-quarter',
  'two-splices-in-span': 'splice-past-quarter',
  'insertion-short': 'gap-wrong',
  'jumper-small': 'jumper-missing',
  'jumper-missing': 'jumper-small',
  'anchor-many': 'anchor-off-middle',
  'anchor-off-middle': 'anchor-many',
  'air-with-cables': 'power-with-signal',
  'power-with-signal': 'air-with-cables',
  'fill-over': 'radius-small',
};

/** The first fault that can be taken for another is. */
const otherRule: FaultSlip = (plan) => {
  const at = plan.named.findIndex(({ rule }) => plan.rules.includes(TAKEN_FOR[rule] ?? ''));
  const taken = plan.named[at];
  const rule = taken === undefined ? undefined : TAKEN_FOR[taken.rule];
  if (taken === undefined || rule === undefined) return null;
  return changed(plan, plan.named.with(at, { ...taken, rule }));
};

const NEAR = 24;
const apartFrom = (named: readonly FaultAt[], { leg, at }: Pick<FaultAt, 'leg' | 'at'>) =>
  named.every((one) => one.leg !== leg || Math.abs(one.at - at) > NEAR);
const alarmed = (plan: Plan, alarms: readonly FaultAt[]): Plan | null => {
  const more = alarms.filter((one) => plan.rules.includes(one.rule) && apartFrom(plan.named, one));
  return more.length === 0 ? null : changed(plan, [...plan.named, ...more]);
};
const splicesOf = ({ resolved }: Plan) =>
  resolved.legs.flatMap(({ leg, joints }) =>
    joints.filter(isSplice).map((joint) => ({ leg, at: inches(joint.at), joint })),
  );

/** Every straight splice is held to need a jumper. */
const jumperAtEverySplice: FaultSlip = (plan) =>
  alarmed(
    plan,
    splicesOf(plan)
      .filter(({ joint }) => (joint.given?.jumper ?? null) === null)
      .map(({ leg, at }) => ({ leg, at, rule: 'jumper-missing' })),
  );

/** Every splice that stands away from its strut is named, though none is past the quarter point. */
const spliceAwayFromStrut: FaultSlip = (plan) =>
  alarmed(
    plan,
    splicesOf(plan).map(({ leg, at }) => ({ leg, at, rule: 'splice-past-quarter' })),
  );

/** The longest span of the run is named, though it is not too long. */
const longestSpan: FaultSlip = (plan) => {
  const spans = plan.resolved.legs.flatMap(({ leg, lines }) =>
    lines.flatMap(({ spans }) => spans.map((span) => ({ leg, span }))),
  );
  const [first] = spans.toSorted((a, b) => b.span.length - a.span.length);
  if (first === undefined || plan.named.some(({ rule }) => rule === 'span-too-long')) return null;
  const at = inches(((first.span.from + first.span.to) / 2) as Ticks);
  return alarmed(plan, [{ leg: first.leg, at, rule: 'span-too-long' }]);
};

const marks = (answer: Answer) => answer as readonly FaultAt[];

/** What an answer shows: a rule taken for another, what was named without reason, then what was not looked at. */
function blames({ named }: Plan, _: World, answer: Answer, ask: Ask): readonly string[] {
  const seen = meantWithin(ask);
  const at = (one: FaultAt, other: FaultAt) => one.leg === other.leg && Math.abs(one.at - other.at) <= seen;
  const given = marks(answer);
  const missing = named.filter((one) => !given.some((g) => at(g, one) && g.rule === one.rule));
  const extra = given.filter((g) => !named.some((one) => at(g, one) && g.rule === one.rule));
  const missedAny = (look: Look) =>
    missing.some(({ rule }) => (LOOKS[look] as readonly string[]).includes(rule));
  return [
    ...(extra.some((g) => missing.some((one) => at(g, one))) ? ['otherRule'] : []),
    ...(extra.some(({ rule }) => rule === 'jumper-missing') ? ['jumperAtEverySplice'] : []),
    ...(extra.some(({ rule }) => rule === 'splice-past-quarter') ? ['spliceAwayFromStrut'] : []),
    ...(extra.some(({ rule }) => rule === 'span-too-long') ? ['longestSpan'] : []),
    ...(Object.keys(LOOKS) as Look[]).filter(missedAny),
  ];
}

/** An inspection's own sentences. */
function steps({ resolved }: Plan, { catalogue, tables }: World): readonly Step[] {
  return inspect(resolved, catalogue, tables).result.findings.map(({ say }) => say);
}

/** Devices whose jumper is told: those that practice cables have. */
const DEVICES = [20, 30, 60, 100];

function facts(plan: Plan, world: World): Facts {
  const { resolved } = plan;
  const { tray } = resolved;
  const [first] = resolved.legs;
  const limit = first === undefined ? null : spanLimit(first, resolved).limit;
  const table = world.fillTables.multiconductor[tray.bottom].rows;
  const row = table.find(({ widthIn }) => widthIn === inches(tray.width));
  return {
    ...runFacts(resolved, world),
    maxSpan: length(limit ?? (0 as Ticks)),
    faults: number(plan.named.length),
    several: number(row?.severalIn2 ?? 0, 1),
    sleeve: length(read(world, tray.own.socketed, 'sleeve').length),
    plate: length(read(world, tray.own.butt, 'plate').length),
    sizes: rows(
      DEVICES.map((device) => ({
        device: number(device),
        size: word(jumper({ devicesA: [device], metal: 'copper' }, world.tables.jumper).result.size ?? ''),
      })),
    ),
  };
}

export const findFaults = model<typeof wants, Plan>({
  wants,
  plan,
  laidOut: true,
  facts,
  asks: {
    faults: {
      kind: 'faults',
      answer: ({ named }) => named,
      steps,
      on: ({ resolved }) => resolved,
      blames,
    },
  },
  slips: {
    ...(Object.fromEntries((Object.keys(LOOKS) as Look[]).map((look) => [look, missed(look)])) as Record<
      Look,
      FaultSlip
    >),
    otherRule,
    jumperAtEverySplice,
    spliceAwayFromStrut,
    longestSpan,
  },
  figures: ({ resolved }, world, how) => stripOf(resolved, world, how),
  figured: ({ resolved }) => [strippedLegs(resolved)],
  says: inspectSays,
});
