/**
 * Splices of a run whose supports stand (T02, T07). Any places hold in which an inspection finds no splice, no piece is longer than a
 * length as it comes, and there are no more than the fewest. Slips put them where length or habit says.
 */
import type { RuleId } from '../../../run/inspect/inspect.ts';
import { stockFaults } from '../../../run/resolve.ts';
import type { Line, ResolvedRun } from '../../../run/resolved.ts';
import type { Joint, Run } from '../../../run/types.ts';
import type { Step } from '../../../trade/answer.ts';
import { SOCKET } from '../../../trade/habits.ts';
import { fromInches, inches, type Ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import {
  type Answer,
  type Drawn,
  type Facts,
  model,
  type PlacedAt,
  type Slip,
  type World,
} from '../../model.ts';
import { isSplice, length, number, runFacts } from '../../runs/facts.ts';
import { resolvedOf, soundRun } from '../../runs/sound.ts';
import { ROUTE, SPANS } from '../../runs/wants.ts';
import { foundIn, LOOK_AT, lookAt, mustResolve, placed, stripOf, strippedLegs } from '../parts/placing.ts';
import { read } from '../parts/reads.ts';

const wants = { ...ROUTE, ...SPANS } as const;

const RULES: readonly RuleId[] = [
  'splice-past-quarter',
  'two-splices-in-span',
  'splice-in-end-span',
  'splice-on-support',
];

interface Plan {
  /** With the splices of the right answer. */
  readonly resolved: ResolvedRun;
  readonly bare: Run;
  readonly most: number;
  readonly given: readonly PlacedAt[];
}

const marksOf = ({ legs }: ResolvedRun): readonly PlacedAt[] =>
  legs.flatMap(({ leg, joints }) =>
    joints.filter(isSplice).map(({ at }) => ({ leg, at: inches(at), what: 'splice' })),
  );

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const sound = soundRun(drawn, world);
  if (sound === null) return null;
  const { resolved, run } = sound;
  const given = marksOf(resolved);
  if (given.length === 0 || (run.supports ?? []).length > MOST_SUPPORTS) return null;
  if (!roomForEach(resolved, world)) return null;
  return { resolved, bare: { ...run, joints: [] }, most: given.length, given };
}
const MOST_SUPPORTS = 14;

/** How far each splice may be moved, both ways together: more than a tape can be out, or the place would be a riddle. */
const LEAST_ROOM = fromInches(1);
function roomForEach({ legs, stock }: ResolvedRun, { tables }: World): boolean {
  return legs.every(({ lines, pieces }) =>
    lines.every(({ splices, spans }) =>
      splices.every((splice) => {
        const span = spans.find(({ from, to }) => from < splice.at && splice.at < to);
        if (span === undefined) return false;
        // From the nearer support: half the sleeve at least, the quarter point at most.
        const [near, ahead] =
          splice.at - span.from < span.to - splice.at
            ? [splice.at - span.from, false]
            : [span.to - splice.at, true];
        const inward = tables.limits.spliceShare.value * span.length - near;
        const outward = near - splice.length / 2;
        // The piece before grows as the splice moves on, the one behind as it moves back; neither past a length.
        const before = pieces.find(({ to }) => Math.abs(to - splice.at) <= splice.length);
        const behind = pieces.find(({ from }) => Math.abs(from - splice.at) <= splice.length);
        const slack = (piece: typeof before) => (piece === undefined ? 0 : stock - piece.cut);
        const on = Math.min(ahead ? outward : inward, slack(before));
        const back = Math.min(ahead ? inward : outward, slack(behind));
        return on + back >= LEAST_ROOM;
      }),
    ),
  );
}

function spliced(bare: Run, answer: Answer): Run {
  const joints = placed(answer).map(({ leg, at }): Joint => ({ leg, at: fromInches(at), kind: 'socketed' }));
  return { ...bare, joints };
}

function tooLong(run: Run, world: World): boolean {
  const resolved = resolvedOf(run, world);
  return resolved === null || stockFaults(resolved).length > 0;
}

function holds({ bare, most }: Plan, world: World, answer: Answer): boolean {
  const run = spliced(bare, answer);
  return placed(answer).length <= most && !tooLong(run, world) && foundIn(run, RULES, world)?.length === 0;
}

type SpliceSlip = Slip<Plan>;
const taken = (plan: Plan, given: readonly PlacedAt[]): Plan | null =>
  given.length === 0 ? null : { ...plan, given };

/** Every splice of the right answer moved, within its own line. */
const moved =
  (to: (at: number, line: Line) => number | null): SpliceSlip =>
  (plan) => {
    const lines = plan.resolved.legs.flatMap((leg) => leg.lines);
    const given = plan.given.map((mark) => {
      const line = lines.find(
        (one) => one.leg === mark.leg && one.splices.some(({ at }) => inches(at) === mark.at),
      );
      const at = line === undefined ? null : to(mark.at, line);
      return at === null ? mark : { ...mark, at };
    });
    return given.every((one, i) => one.at === plan.given[i]?.at) ? null : taken(plan, given);
  };

const supportsIn = ({ supports }: Line) => supports.map(({ at }) => inches(at));
const around = (at: number, line: Line) => {
  const all = supportsIn(line);
  const before = all.findLast((one) => one < at);
  const behind = all.find((one) => one > at);
  return before === undefined || behind === undefined ? null : ([before, behind] as const);
};

/** Half-way between two supports. */
const midSpan = moved((at, line) => {
  const span = around(at, line);
  return span === null ? null : (span[0] + span[1]) / 2;
});
/** Right over the nearer strut, "where it is held best". */
const overStrut = moved((at, line) => {
  const span = around(at, line);
  if (span === null) return null;
  return at - span[0] <= span[1] - at ? span[0] : span[1];
});
/** In the middle of the last span. */
const lastSpan: SpliceSlip = (plan, world) => {
  const last = plan.given.at(-1);
  const line = plan.resolved.legs.flatMap(({ lines }) => lines).find(({ leg }) => leg === last?.leg);
  const [a, b] = line === undefined ? [] : supportsIn(line).slice(-2);
  if (last === undefined || a === undefined || b === undefined) return null;
  const given = [...plan.given.slice(0, -1), { ...last, at: (a + b) / 2 }];
  return resolvedOf(spliced(plan.bare, given), world) === null ? null : taken(plan, given);
};
/** Whole lengths laid one behind the other, and a splice wherever one ends. */
const wholeLengths: SpliceSlip = (plan) => {
  const given = plan.resolved.legs.flatMap(({ leg, lines, pieces }) => {
    const [line] = lines;
    const [from, to] = [pieces[0]?.from, pieces.at(-1)?.to];
    if (line === undefined || line.splices.length === 0 || from === undefined || to === undefined) return [];
    const opening = inches(line.splices[0]?.opening ?? fromInches(0));
    return line.splices.map((_, k) => ({
      leg,
      at: inches(from) + (k + 1) * inches(plan.resolved.stock) + (k + 1 / 2) * opening,
      what: 'splice',
    }));
  });
  const onRun = ({ leg, at }: PlacedAt) => at < inches(plan.resolved.byId.get(leg)?.length ?? fromInches(0));
  const other = given.some((one, i) => one.at !== plan.given[i]?.at);
  return other && given.every(onRun) ? taken(plan, given) : null;
};
/** One splice too few: a piece is longer than a length. */
const oneTooFew: SpliceSlip = (plan) => taken(plan, plan.given.slice(0, -1));

function blames({ bare, most }: Plan, world: World, answer: Answer): readonly string[] {
  const run = spliced(bare, answer);
  const found = foundIn(run, RULES, world) ?? [];
  const has = (one: RuleId) => found.some(({ rule }) => rule === one);
  return [
    ...(has('splice-in-end-span') ? ['lastSpan'] : []),
    ...(has('splice-past-quarter') ? ['midSpan'] : []),
    ...(has('splice-on-support') ? ['overStrut'] : []),
    ...(placed(answer).length < most && tooLong(run, world) ? ['oneTooFew'] : []),
  ];
}

const steps = ({ resolved }: Plan): readonly Step[] =>
  resolved.legs.flatMap((leg) =>
    leg.lines.flatMap(({ splices, spans }) =>
      splices.flatMap(({ at }): readonly Step[] => {
        const span = spans.find(({ from, to }) => from < at && at < to);
        if (span === undefined) return [];
        const quarter = fromInches(inches(span.length as Ticks) / 4);
        return [
          {
            say: 'route.spliceAt',
            values: {
              leg: leg.leg,
              at: shortLength(at),
              span: shortLength(span.length as Ticks),
              quarter: shortLength(quarter),
            },
          },
        ];
      }),
    ),
  );

export const placeSplices = model<typeof wants, Plan>({
  wants,
  plan,
  laidOut: true,
  facts: (plan, world): Facts => ({
    ...runFacts(mustResolve(plan.bare, world), world),
    most: number(plan.most),
    stock: length(plan.resolved.stock),
    sleeve: length(read(world, plan.resolved.tray.own.socketed, 'sleeve').length),
    socket: length(SOCKET.length),
    goesIn: length(read(world, plan.resolved.tray.own.socketed, 'sleeve').insertion),
  }),
  asks: {
    splices: {
      kind: 'place',
      answer: ({ given }) => given,
      steps,
      on: ({ bare }, world) => mustResolve(bare, world),
      holds,
      blames,
      notes: (plan, world, answer) =>
        (foundIn(spliced(plan.bare, answer), RULES, world) ?? []).slice(0, 2).map(lookAt),
    },
  },
  slips: { midSpan, overStrut, lastSpan, wholeLengths, oneTooFew },
  figures: ({ bare }, world, how) => stripOf(mustResolve(bare, world), world, how),
  figured: ({ bare }, world) => [strippedLegs(mustResolve(bare, world))],
  says: ['route.spliceAt', LOOK_AT],
});
