/** Supports set too far apart or too far from a face, or forgotten. */

import type { RuleId } from '../../../run/inspect/inspect.ts';
import { placeOf, ruleOf } from '../../../run/inspect/unsupported.ts';
import type { Line, ResolvedLeg, ResolvedRun } from '../../../run/resolved.ts';
import { spanLimit } from '../../../run/spanLimit.ts';
import { fromInches, middle, type Ticks, ticks } from '../../../trade/length.ts';
import { type Damage, OUT, type Spoilt, wholeInch, withoutSupport, withSupport } from './damage.ts';

const overLines = (
  resolved: ResolvedRun,
  each: (line: Line, leg: ResolvedLeg) => readonly Spoilt[],
): readonly Spoilt[] => resolved.legs.flatMap((leg) => leg.lines.flatMap((line) => each(line, leg)));

/** A support inside a line is set too far from its neighbour. */
export const spanLong: Damage = (resolved) =>
  overLines(resolved, ({ supports }, leg) => {
    const { limit } = spanLimit(leg, resolved);
    if (limit === null) return [];
    return supports.flatMap((support, i) => {
      const [before, behind] = [supports[i - 1], supports[i + 1]];
      if (before === undefined || behind === undefined) return [];
      return OUT.flatMap((out): readonly Spoilt[] => {
        const far = wholeInch(before.at + limit + out);
        const near = wholeInch(behind.at - limit - out);
        const spoilt = (at: Ticks, from: Ticks, to: Ticks): Spoilt => ({
          run: withSupport(resolved.run, support, { at }),
          planted: { rule: 'span-too-long', leg: leg.leg, at: middle(from, to) },
        });
        return [
          ...(far < behind.at ? [spoilt(far, before.at, far)] : []),
          ...(near > before.at ? [spoilt(near, near, behind.at)] : []),
        ];
      });
    });
  });

/** A support inside a line was never set. */
export const supportLeftOut: Damage = (resolved) =>
  overLines(resolved, ({ supports }, leg) =>
    supports.flatMap((support, i): readonly Spoilt[] => {
      const [before, behind] = [supports[i - 1], supports[i + 1]];
      if (before === undefined || behind === undefined) return [];
      const at = middle(before.at, behind.at);
      return [
        { run: withoutSupport(resolved.run, support), planted: { rule: 'span-too-long', leg: leg.leg, at } },
      ];
    }),
  );

/** The support beside a face stands too far from it. */
const bare =
  (rule: RuleId): Damage =>
  (resolved, { tables }) =>
    overLines(resolved, (line, leg) => {
      const within = tables.limits.supportWithin.value;
      return ([line.from, line.to] as const).flatMap((end, side): readonly Spoilt[] => {
        const support = line.supports.at(side === 0 ? 0 : -1);
        if (ruleOf(end) !== rule || support === undefined) return [];
        const face = placeOf(end, side === 0 ? ticks(0) : leg.length);
        return OUT.map((out): Spoilt => {
          const off = within + out;
          const at = wholeInch(side === 0 ? face + off : face - off);
          return {
            run: withSupport(resolved.run, support, { at }),
            planted: { rule, leg: leg.leg, at: face },
          };
        }).filter(({ run: { supports = [] } }) => supports.every(({ at }) => at >= fromInches(0)));
      });
    });

export const fittingBare = bare('fitting-unsupported');
export const expansionBare = bare('expansion-unsupported');
export const endBare = bare('end-unsupported');
