/**
 * The anchor point of a section between expansion splices (T10): the one support that holds it, nearest its middle. Of two
 * equally near either holds. Slips hold it where it does not belong, or several times.
 */
import type { PlacedSupport, ResolvedRun, Section } from '../../../run/resolved.ts';
import { fromMiddle } from '../../../run/sections.ts';
import type { Step } from '../../../trade/answer.ts';
import { fromInches, inches } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Ask } from '../../family.ts';
import { type Answer, type Drawn, model, type PlacedAt, type Slip, type World } from '../../model.ts';
import { runFacts } from '../../runs/facts.ts';
import { soundRun } from '../../runs/sound.ts';
import { ROUTE, SPANS, WARMTH } from '../../runs/wants.ts';
import { mustResolve, placed, stripOf, strippedLegs, toleranceOf } from '../parts/placing.ts';

const wants = { ...ROUTE, ...SPANS, ...WARMTH } as const;

interface Plan {
  /** With every support a guide: nothing is held yet. */
  readonly resolved: ResolvedRun;
  readonly held: readonly PlacedSupport[];
}

const sliding = ({ sections }: ResolvedRun): readonly Section[] =>
  sections.filter(({ expansions }) => expansions > 0);

/** Of each section the supports nearest its middle: one, or two equally near. */
const nearest = (section: Section): readonly PlacedSupport[] => {
  const least = Math.min(...section.supports.map((one) => fromMiddle(section, one)));
  return section.supports.filter((one) => fromMiddle(section, one) === least);
};

const LEAST_SUPPORTS = 4;
/** The next best stands farther from the middle by more than a slip of the tape. */
const CLEAR = fromInches(3);
const isClear = (section: Section): boolean => {
  const offs = section.supports.map((one) => fromMiddle(section, one)).sort((a, b) => a - b);
  const [best = 0] = offs;
  return offs.every((off) => off === best || off - best > CLEAR);
};

function plan(drawn: Drawn<typeof wants>, world: World): Plan | null {
  if (drawn.legs.every(({ parted }) => parted === 'none')) return null;
  const sound = soundRun(drawn, world);
  if (sound === null) return null;
  const supports = (sound.run.supports ?? []).map((one) => ({ ...one, hold: 'guide' as const }));
  const resolved = mustResolve({ ...sound.run, supports }, world);
  const sections = sliding(resolved);
  const fit =
    sections.length > 0 &&
    sections.length === resolved.sections.length &&
    sections.every((one) => !one.branches && one.supports.length >= LEAST_SUPPORTS && isClear(one));
  return fit ? { resolved, held: sections.flatMap((one) => nearest(one).slice(0, 1)) } : null;
}

const marksOf = (held: readonly PlacedSupport[]): readonly PlacedAt[] =>
  held.map(({ leg, at }) => ({ leg, at: inches(at), what: 'anchor' }));

const standsAt = (ask: Ask) => (mark: PlacedAt, support: PlacedSupport) =>
  mark.leg === support.leg && Math.abs(mark.at - inches(support.at)) <= toleranceOf(ask);

/** One anchor a section, at a support nearest its middle, and nothing besides. */
function holds({ resolved }: Plan, _: World, answer: Answer, ask: Ask): boolean {
  const isAt = standsAt(ask);
  const given = placed(answer);
  const sections = sliding(resolved);
  return (
    given.length === sections.length &&
    sections.every((section) => nearest(section).some((one) => given.some((mark) => isAt(mark, one))))
  );
}

type AnchorSlip = Slip<Plan>;
const heldAt =
  (of: (section: Section) => readonly (PlacedSupport | undefined)[]): AnchorSlip =>
  (plan) => ({
    ...plan,
    held: sliding(plan.resolved).flatMap((section) => of(section).filter((one) => one !== undefined)),
  });

/** The support beside the best one on the far side of the middle, or behind it. */
const besideMiddle = heldAt((section) => {
  const [best] = nearest(section);
  const at = best === undefined ? -1 : section.supports.indexOf(best);
  const others = [section.supports[at - 1], section.supports[at + 1]].filter((one) => one !== undefined);
  const off = (one: PlacedSupport) => fromMiddle(section, one);
  return others.toSorted((a, b) => off(a) - off(b)).slice(0, 1);
});

const slips = {
  firstSupport: heldAt(({ supports }) => [supports[0]]),
  bothEnds: heldAt(({ supports }) => [supports[0], supports.at(-1)]),
  everySupport: heldAt(({ supports }) => supports),
  besideMiddle,
};

/** A section that is not held, or a mark off every support, shows no thought of which these are. */
function blames({ resolved }: Plan, _: World, answer: Answer, ask: Ask): readonly string[] {
  const isAt = standsAt(ask);
  const given = placed(answer);
  const counts = sliding(resolved).map(
    ({ supports }) => supports.filter((one) => given.some((mark) => isAt(mark, one))).length,
  );
  return [
    ...(counts.some((count) => count > 2) ? ['everySupport'] : []),
    ...(counts.some((count) => count > 1) ? ['bothEnds'] : []),
    ...(given.length === counts.length && counts.every((count) => count === 1) ? ['besideMiddle'] : []),
  ];
}

function steps({ resolved, held }: Plan): readonly Step[] {
  return sliding(resolved).flatMap((section, i): readonly Step[] => {
    const support = held[i];
    const { middle } = section;
    if (support === undefined || middle === null) return [];
    return [
      { say: 'route.sectionMiddle', values: { leg: middle.leg.leg, at: shortLength(middle.at) } },
      {
        say: 'route.anchorAt',
        values: { support: support.name, leg: support.leg, at: shortLength(support.at) },
      },
    ];
  });
}

export const placeAnchor = model<typeof wants, Plan>({
  wants,
  plan,
  laidOut: true,
  facts: ({ resolved }, world) => runFacts(resolved, world),
  asks: {
    anchors: {
      kind: 'place',
      answer: ({ held }) => marksOf(held),
      steps,
      on: ({ resolved }) => resolved,
      holds,
      blames,
    },
  },
  slips,
  figures: ({ resolved }, world, how) => stripOf(resolved, world, how),
  figured: ({ resolved }) => [strippedLegs(resolved)],
  says: ['route.sectionMiddle', 'route.anchorAt'],
});
