/** Jumpers of a whole run (T11): where one belongs and where none does. A slip leaves a reason out, or knows no reason. */
import { type JumperPlace, type JumperReason, jumperPlaces } from '../../../run/jumpers.ts';
import type { ResolvedRun } from '../../../run/resolved.ts';
import type { Run } from '../../../run/types.ts';
import type { Step } from '../../../trade/answer.ts';
import { inches } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Ask } from '../../family.ts';
import { type Answer, type Drawn, model, type PlacedAt, type Slip, type World } from '../../model.ts';
import { runFacts } from '../../runs/facts.ts';
import { soundRun } from '../../runs/sound.ts';
import { CARRIES, PAINTED, ROUTE, SPANS, SPLICES, WARMTH } from '../../runs/wants.ts';
import { meantWithin, mustResolve, placed, stripOf, strippedLegs } from '../parts/placing.ts';

const wants = { ...ROUTE, ...CARRIES, ...SPANS, ...WARMTH, ...SPLICES, ...PAINTED } as const;

interface Plan {
  /** Before any jumper is fitted. */
  readonly resolved: ResolvedRun;
  readonly places: readonly JumperPlace[];
  /** Where the person fits one. */
  readonly fitted: readonly JumperPlace[];
}

const unfitted = (run: Run): Run => ({
  ...run,
  start: { ...run.start, jumper: undefined },
  legs: run.legs.map((leg) => ({ ...leg, jumper: undefined })),
  ends: (run.ends ?? []).map((end) => ({ ...end, jumper: undefined })),
  joints: (run.joints ?? []).map((joint) => ({ ...joint, jumper: undefined })),
});

/** Fewer of either would be no exercise. */
const LEAST = { needed: 3, not: 2 };

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  const sound = soundRun(drawn, world);
  if (sound === null) return null;
  const resolved = mustResolve(unfitted(sound.run), world);
  const places = jumperPlaces(resolved, world.catalogue, world.tables);
  const fitted = places.filter(({ reason }) => reason !== null);
  const fit = fitted.length >= LEAST.needed && places.length - fitted.length >= LEAST.not;
  return fit ? { resolved, places, fitted } : null;
}

const marksOf = (places: readonly JumperPlace[]): readonly PlacedAt[] =>
  places.map(({ leg, at }) => ({ leg: leg.leg, at: inches(at), what: 'jumper' }));

type JumperSlip = Slip<Plan>;

const fittedAt = (plan: Plan, wanted: (place: JumperPlace) => boolean): Plan | null => {
  const fitted = plan.places.filter(wanted);
  const same = fitted.length === plan.fitted.length && fitted.every((one, i) => one === plan.fitted[i]);
  return same || fitted.length === 0 ? null : { ...plan, fitted };
};
const needed = ({ fitted }: Plan, place: JumperPlace) => fitted.includes(place);
const forgotten =
  (...reasons: readonly JumperReason[]): JumperSlip =>
  (plan) =>
    fittedAt(
      plan,
      (place) => needed(plan, place) && (place.reason === null || !reasons.includes(place.reason)),
    );

const slips = {
  hingeForgotten: forgotten('hinged'),
  paintForgotten: forgotten('not bare'),
  gapForgotten: forgotten('gap'),
  outsideForgotten: forgotten('start', 'end'),
  /** Where metal moves, and nowhere else. */
  onlyExpansion: (plan) => fittedAt(plan, ({ reason }) => reason === 'expansion'),
  everywhere: (plan) => fittedAt(plan, () => true),
} satisfies Readonly<Record<string, JumperSlip>>;

function blames({ places }: Plan, _: World, answer: Answer, ask: Ask): readonly string[] {
  const meant = meantWithin(ask);
  const given = placed(answer);
  const at = (place: JumperPlace) =>
    given.some(({ leg, at: mark }) => leg === place.leg.leg && Math.abs(mark - inches(place.at)) <= meant);
  const left = new Set(places.flatMap((one) => (one.reason === null || at(one) ? [] : [one.reason])));
  const has = (...reasons: readonly JumperReason[]) => reasons.some((one) => left.has(one));
  return [
    ...(has('hinged') ? ['hingeForgotten'] : []),
    ...(has('gap') ? ['gapForgotten'] : []),
    ...(has('not bare') ? ['paintForgotten'] : []),
    ...(has('start', 'end') ? ['outsideForgotten'] : []),
    ...(places.some((one) => one.reason === null && at(one)) ? ['everywhere'] : []),
  ];
}

const steps = ({ fitted }: Plan): readonly Step[] =>
  fitted.map(({ leg, at, reason }) => ({
    say: `route.jumper-${reason?.replace(' ', '-')}`,
    values: { leg: leg.leg, at: shortLength(at) },
  }));

export const placeJumpers = model<typeof wants, Plan>({
  wants,
  plan,
  laidOut: true,
  facts: ({ resolved }, world) => runFacts(resolved, world),
  asks: {
    jumpers: {
      kind: 'place',
      answer: ({ fitted }) => marksOf(fitted),
      steps,
      on: ({ resolved }) => resolved,
      blames,
    },
  },
  slips,
  figures: ({ resolved }, world, how) => stripOf(resolved, world, how),
  figured: ({ resolved }) => [strippedLegs(resolved)],
  says: ['start', 'end', 'hinged', 'expansion', 'gap', 'not-identified', 'not-bare'].map(
    (reason) => `route.jumper-${reason}`,
  ),
});
