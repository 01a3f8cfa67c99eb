/**
 * Supports of a run whose splices are drawn already (T02). Any set of supports holds in which an inspection finds nothing,
 * and that is no more than one above the fewest. Slips make the set anew by another thought; nothing is typed.
 */
import type { RuleId } from '../../../run/inspect/inspect.ts';
import { weightPerFt } from '../../../run/loads.ts';
import type { Line, ResolvedRun } from '../../../run/resolved.ts';
import { spanLimit } from '../../../run/spanLimit.ts';
import type { Run } from '../../../run/types.ts';
import type { Step } from '../../../trade/answer.ts';
import { fromInches, inches, middle, type Ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { spanByTable } from '../../../trade/span.ts';
import {
  type Answer,
  type Drawn,
  type Facts,
  model,
  type PlacedAt,
  type Slip,
  type World,
} from '../../model.ts';
import { length, number, rows, runFacts } from '../../runs/facts.ts';
import { soundRun } from '../../runs/sound.ts';
import { CARRIES, ROUTE } from '../../runs/wants.ts';
import {
  foundIn,
  LOOK_AT,
  lookAt,
  mustResolve,
  placed,
  stripOf,
  strippedLegs,
  supportsPlaced,
  withPlaced,
} from '../parts/placing.ts';
import { read } from '../parts/reads.ts';

const wants = { ...ROUTE, ...CARRIES } as const;

const RULES: readonly RuleId[] = [
  'span-too-long',
  'fitting-unsupported',
  'expansion-unsupported',
  'end-unsupported',
  'splice-past-quarter',
  'two-splices-in-span',
  'splice-in-end-span',
  'splice-on-support',
];
const SPLICE_RULES = RULES.slice(4);

interface Plan {
  /** With the supports of the right answer. */
  readonly resolved: ResolvedRun;
  readonly bare: Run;
  readonly most: number;
  /** As the person places them. */
  readonly given: readonly PlacedAt[];
}

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const sound = soundRun(drawn, world);
  if (sound === null) return null;
  const { resolved, run } = sound;
  const given = supportsPlaced(run);
  // A splice at least, or there is nothing to slide the pattern for.
  if (resolved.legs.every(({ lines }) => lines.every(({ splices }) => splices.length === 0))) return null;
  if (given.length > MOST_SUPPORTS || resolved.sections.some(({ expansions }) => expansions > 0)) return null;
  return { resolved, bare: { ...run, supports: [] }, most: given.length + 1, given };
}
const MOST_SUPPORTS = 9;

const limitOf = ({ resolved }: Plan): Ticks => {
  const { limit } = spanLimit(resolved.legs[0] as ResolvedRun['legs'][number], resolved);
  if (limit === null) throw new Error('a drawn run has no longest span');
  return limit;
};
const weights = ({ resolved }: Plan) =>
  weightPerFt(resolved.legs[0] as ResolvedRun['legs'][number], resolved);
const loadTable = ({ resolved }: Plan) => resolved.tray.loadTable;

/** The longest span by the table for this load; none: as long as the table goes. */
const spanFor = (plan: Plan, lb: number): Ticks => fromInches(12 * (spanByTable(loadTable(plan), lb) ?? 0));

/** From the first to the last support of each line in even spans no longer than this, whatever stands between. */
function even({ resolved }: Plan, span: Ticks): readonly PlacedAt[] {
  const inLine = ({ leg, supports }: Line): readonly PlacedAt[] => {
    const [first, last] = [supports[0]?.at ?? 0, supports.at(-1)?.at ?? 0];
    const spans = Math.max(1, Math.ceil((last - first) / span));
    const each = inches((last - first) as Ticks) / spans;
    const at = (k: number) => Math.round(inches(first as Ticks) + k * each);
    return Array.from({ length: supports.length === 1 ? 1 : spans + 1 }, (_, k) => ({
      leg,
      at: at(k),
      what: 'support',
    }));
  };
  return resolved.legs.flatMap(({ lines }) => lines.flatMap(inLine));
}

const same = (some: readonly PlacedAt[], others: readonly PlacedAt[]) =>
  some.length === others.length &&
  some.every(({ leg, at }, i) => leg === others[i]?.leg && at === others[i]?.at);
const taken = (plan: Plan, given: readonly PlacedAt[]): Plan | null =>
  same(plan.given, given) ? null : { ...plan, given };

type PlaceSlip = Slip<Plan>;

/** The table read at the weight of the cables alone. */
const cablesOnly: PlaceSlip = (plan) => {
  const longer = spanFor(plan, weights(plan).cablesLb);
  return longer > limitOf(plan) ? taken(plan, even(plan, longer)) : null;
};

/** Even spans from end to end, wherever the splices are. */
const evenPattern: PlaceSlip = (plan) => taken(plan, even(plan, limitOf(plan)));

const without = (plan: Plan, gone: PlacedAt | undefined): Plan | null =>
  gone === undefined
    ? null
    : taken(
        plan,
        plan.given.filter((one) => one !== gone),
      );
const on = ({ given }: Plan, leg: string | undefined) => given.filter((one) => one.leg === leg);

/** Supports on one side of the elbow only: the one behind it is not there. */
const oneSideOnly: PlaceSlip = (plan) => without(plan, on(plan, plan.resolved.legs[1]?.leg)[0]);

/** As many supports as spans: the last one is not there. */
const forgotOne: PlaceSlip = (plan) => {
  const last = plan.resolved.legs.at(-1);
  return last?.givenEnd?.kind === 'tray' ? null : without(plan, on(plan, last?.leg).at(-1));
};

/** Another support in the middle of every span: nothing is too long, and the splices have no place left. */
const twiceAsMany: PlaceSlip = (plan) => {
  const between = plan.resolved.legs.flatMap(({ leg, lines }) =>
    lines.flatMap(({ spans }) =>
      spans.map(({ from, to }) => ({ leg, at: Math.round(inches(middle(from, to))), what: 'support' })),
    ),
  );
  return taken(plan, [...plan.given, ...between]);
};

function holds({ bare, most }: Plan, world: World, answer: Answer): boolean {
  return placed(answer).length <= most && foundIn(withPlaced(bare, answer), RULES, world)?.length === 0;
}

/** What the findings of an answer show; gravest first. */
function blames(plan: Plan, world: World, answer: Answer): readonly string[] {
  const found = foundIn(withPlaced(plan.bare, answer), RULES, world) ?? [];
  const has = (...rules: readonly RuleId[]) => found.some(({ rule }) => rules.includes(rule));
  const spans = found.flatMap(({ rule, measured }) => (rule === 'span-too-long' ? [Number(measured)] : []));
  const byCables = inches(spanFor(plan, weights(plan).cablesLb));
  return [
    ...(spans.length > 0 && spans.every((span) => span <= byCables) ? ['cablesOnly'] : []),
    ...(has('fitting-unsupported') ? ['oneSideOnly'] : []),
    ...(has('end-unsupported') ? ['forgotOne'] : []),
    ...(placed(answer).length > plan.most ? ['twiceAsMany'] : []),
    ...(has(...SPLICE_RULES) ? ['evenPattern'] : []),
  ];
}

function steps(plan: Plan): readonly Step[] {
  const { trayLb, cablesLb, lb } = weights(plan);
  const text = (pounds: number) => pounds.toFixed(2);
  return [
    { say: 'route.loadPerFt', values: { tray: text(trayLb), cables: text(cablesLb), sum: text(lb) } },
    { say: 'route.spanByTable', values: { span: shortLength(limitOf(plan)) } },
    ...plan.given.map(({ leg, at }) => ({
      say: 'route.supportAt',
      values: { leg, at: shortLength(fromInches(at)) },
    })),
  ];
}

export const placeSupports = model<typeof wants, Plan>({
  wants,
  plan,
  laidOut: true,
  facts: (plan, world): Facts => ({
    ...runFacts(plan.resolved, world),
    most: number(plan.most),
    sleeve: length(read(world, plan.resolved.tray.own.socketed, 'sleeve').length),
    trayLb: number(weights(plan).trayLb, 2),
    table: rows(
      loadTable(plan).map(({ spanFt, lbPerFt }) => ({ span: number(spanFt), lb: number(lbPerFt) })),
    ),
  }),
  asks: {
    supports: {
      kind: 'place',
      answer: ({ given }) => given,
      steps,
      on: ({ bare }, world) => mustResolve(bare, world),
      holds,
      blames,
      notes: (plan, world, answer) =>
        (foundIn(withPlaced(plan.bare, answer), RULES, world) ?? []).slice(0, 2).map(lookAt),
    },
  },
  slips: { cablesOnly, evenPattern, oneSideOnly, forgotOne, twiceAsMany },
  figures: ({ bare }, world, how) => stripOf(mustResolve(bare, world), world, how),
  figured: ({ bare }, world) => [strippedLegs(mustResolve(bare, world))],
  says: ['route.loadPerFt', 'route.spanByTable', 'route.supportAt', LOOK_AT],
});
