/** Sections between expansion splices that cannot slide, or are held nowhere, or in the wrong place. */
import type { RuleId } from '../../../run/inspect/inspect.ts';
import type { PlacedSupport, Section } from '../../../run/resolved.ts';
import { fromMiddle } from '../../../run/sections.ts';
import type { Run } from '../../../run/types.ts';
import { type Damage, type Spoilt, withSupport } from './damage.ts';

const inSliding =
  (
    rule: RuleId,
    ways: (section: Section, run: Run) => readonly { run: Run; support: PlacedSupport }[],
  ): Damage =>
  ({ run, sections }) =>
    sections
      .filter(({ expansions, branches }) => expansions > 0 && !branches)
      .flatMap((section) =>
        ways(section, run).map(
          ({ run: spoilt, support }): Spoilt => ({
            run: spoilt,
            planted: { rule, leg: support.leg, at: support.at },
          }),
        ),
      );

const clampOf = ({ supports }: Section): PlacedSupport | undefined =>
  supports.find(({ hold }) => hold === 'clamp');
const guidesOf = ({ supports }: Section): readonly PlacedSupport[] =>
  supports.filter(({ hold, way }) => hold === 'guide' && way === 'horizontal');

/** A clamp on a guide's place: the section is held twice. */
export const clampOnGuide = inSliding('anchor-many', (section, run) =>
  guidesOf(section).map((support) => ({ run: withSupport(run, support, { hold: 'clamp' }), support })),
);

/** Guides all along. The finding stands at the first of the supports nearest the middle. */
export const heldNowhere = inSliding('anchor-none', (section, run) => {
  const clamp = clampOf(section);
  if (clamp === undefined) return [];
  const least = Math.min(...section.supports.map((one) => fromMiddle(section, one)));
  const support = section.supports.find((one) => fromMiddle(section, one) === least);
  return support === undefined ? [] : [{ run: withSupport(run, clamp, { hold: 'guide' }), support }];
});

/** The clamp stands at another support than the one nearest the middle: at an end first of all. */
export const heldOffMiddle = inSliding('anchor-off-middle', (section, run) => {
  const clamp = clampOf(section);
  if (clamp === undefined) return [];
  const guides = guidesOf(section);
  return [...guides.slice(0, 1), ...guides.slice(-1), ...guides.slice(1, -1)].map((support) => ({
    run: withSupport(withSupport(run, clamp, { hold: 'guide' }), support, { hold: 'clamp' }),
    support,
  }));
});
