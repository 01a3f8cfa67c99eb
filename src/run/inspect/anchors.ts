/** Between expansion splices a section is held at one support, the one nearest its middle, and slides at the others. */
import type { PlacedSupport, Section } from '../resolved.ts';
import { fromMiddle } from '../sections.ts';
import { ANCHORS } from '../sources.ts';
import { type Found, lengths, type Rule, type RuleId, type Scope, text } from './finding.ts';

interface Held {
  readonly support: PlacedSupport;
  /** From the section's middle, measured along working points; null where it branches and has none. */
  readonly off: number | null;
}

const holds = ({ support }: Held) => support.hold !== 'guide';

/** Supports of a section in order of travel, each with its distance from the middle. */
function heldBy(section: Section): readonly Held[] {
  const { supports, branches } = section;
  if (branches) return supports.map((support) => ({ support, off: null }));
  return supports.map((support) => ({ support, off: fromMiddle(section, support) }));
}

/** The first of those nearest to the middle; without a middle, the first. */
function nearestOf(supports: readonly Held[]): Held | undefined {
  return supports.reduce<Held | undefined>(
    (best, one) => (best === undefined || (one.off ?? 0) < (best.off ?? 0) ? one : best),
    undefined,
  );
}

interface Judged {
  readonly section: Section;
  readonly supports: readonly Held[];
  readonly clamps: readonly Held[];
}

function rule(id: RuleId, find: (judged: Judged) => readonly Found[]): Rule {
  return {
    id,
    source: () => ANCHORS,
    find: ({ resolved }: Scope) =>
      resolved.sections
        .filter(({ expansions }) => expansions > 0)
        .flatMap((section) => {
          const supports = heldBy(section);
          return find({ section, supports, clamps: supports.filter(holds) });
        }),
  };
}

const none = rule('anchor-none', ({ section, supports, clamps }) => {
  if (clamps.length > 0) return [];
  const nearest = nearestOf(supports)?.support;
  const [first] = section.stretches;
  const leg = nearest?.leg ?? section.middle?.leg.leg ?? first?.leg.leg ?? '';
  const values = nearest === undefined ? {} : { support: nearest.name };
  return [
    {
      leg,
      at: nearest?.at ?? section.middle?.at ?? null,
      measured: 0,
      limit: 1,
      ...(nearest === undefined ? { variant: 'bare', todo: 'bare' } : {}),
      values,
    },
  ];
});

const many = rule('anchor-many', ({ clamps }) => {
  if (clamps.length < 2) return [];
  const kept = nearestOf(clamps);
  return clamps
    .filter((clamp) => clamp !== kept)
    .map(({ support }) => ({
      leg: support.leg,
      at: support.at,
      measured: clamps.length,
      limit: 1,
      values: { support: support.name, kept: kept?.support.name ?? '', count: clamps.length },
    }));
});

const offMiddle = rule('anchor-off-middle', ({ supports, clamps }) => {
  const [clamp] = clamps;
  const nearest = nearestOf(supports);
  if (clamp === undefined || nearest === undefined || clamps.length > 1) return [];
  if (clamp.off === null || nearest.off === null || clamp.off <= nearest.off) return [];
  return [
    {
      leg: clamp.support.leg,
      at: clamp.support.at,
      ...lengths(clamp.off, nearest.off),
      values: {
        support: clamp.support.name,
        nearest: nearest.support.name,
        distance: text(clamp.off),
        least: text(nearest.off),
      },
    },
  ];
});

export const anchorRules: readonly Rule[] = [none, many, offMiddle];
