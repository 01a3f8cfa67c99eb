/** Where a rule's fault could be named: every place of the kind of thing that the rule speaks of, broken there or not. */
import type { RuleId } from '../../run/inspect/inspect.ts';
import { placeOf, ruleOf } from '../../run/inspect/unsupported.ts';
import { jumperPlaces } from '../../run/jumpers.ts';
import type { ResolvedLeg, ResolvedRun } from '../../run/resolved.ts';
import { type HalfTicks, middle, ticks } from '../../trade/length.ts';
import type { Bench } from './sound.ts';

type Places = (leg: ResolvedLeg, resolved: ResolvedRun, bench: Bench) => readonly HalfTicks[];

const spans: Places = ({ lines }) =>
  lines.flatMap((line) => line.spans.map(({ from, to }) => middle(from, to)));
const joints: Places = (leg) => leg.joints.map(({ at }) => at);
const supports: Places = (leg) => leg.supports.map(({ at }) => at);
const jumpers: Places = ({ leg }, resolved, { catalogue, tables }) =>
  jumperPlaces(resolved, catalogue, tables).flatMap((place) => (place.leg.leg === leg ? [place.at] : []));
/** The marks are all named: there is no other than those that were put in. */
const marks: Places = ({ leg }, { run }) =>
  (run.marks ?? []).flatMap((mark) => (mark.leg === leg ? [mark.at] : []));
/** What is named of a leg as a whole, or at its end alone. */
const one: Places = () => [];
const faces =
  (rule: RuleId): Places =>
  (leg) =>
    leg.lines.flatMap(({ from, to }) =>
      [[from, ticks(0)] as const, [to, leg.length] as const].flatMap(([end, own]) =>
        ruleOf(end) === rule ? [placeOf(end, own)] : [],
      ),
    );

const PLACES: Readonly<Record<RuleId, Places>> = {
  'span-too-long': spans,
  'fitting-unsupported': faces('fitting-unsupported'),
  // Its two faces are one joint to whoever names it.
  'expansion-unsupported': (leg) => leg.joints.flatMap(({ kind, at }) => (kind === 'expansion' ? [at] : [])),
  'end-unsupported': faces('end-unsupported'),
  'splice-past-quarter': joints,
  'two-splices-in-span': joints,
  'splice-in-end-span': joints,
  'splice-on-support': joints,
  'insertion-short': joints,
  'insertion-long': joints,
  'ends-butted': joints,
  'hole-wrong': joints,
  'gap-wrong': joints,
  'metals-mixed': joints,
  'cut-in-hole': joints,
  'jumper-missing': jumpers,
  'jumper-needless': jumpers,
  'jumper-small': jumpers,
  'anchor-none': supports,
  'anchor-many': supports,
  'anchor-off-middle': supports,
  'used-as-step': marks,
  'wrong-hand': one,
  'fill-over': one,
  'fill-no-row': one,
  'power-with-signal': one,
  'air-with-cables': one,
  'radius-small': one,
  'open-gap-long': one,
};

/** Every place on this leg where a fault of this rule could be named. */
export const nameable = (rule: RuleId, leg: ResolvedLeg, resolved: ResolvedRun, bench: Bench) =>
  PLACES[rule](leg, resolved, bench);
