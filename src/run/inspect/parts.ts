/** Parts that do not belong: another metal, a reducer of the other hand; and channel that is stepped on. */
import { ticks } from '../../trade/length.ts';
import type { Reducer } from '../catalogue.ts';
import type { ResolvedFitting } from '../resolved.ts';
import { NO_STEP, ONE_METAL, RIGHT_HAND } from '../sources.ts';
import type { Found, Rule } from './finding.ts';

const NONE = ticks(0);

const metals: Rule = {
  id: 'metals-mixed',
  source: () => ONE_METAL,
  find: ({ resolved, catalogue }) =>
    resolved.legs.flatMap((leg): readonly Found[] => {
      const { metal, id: channel } = leg.tray;
      const { fittingBefore: fitting } = leg;
      // A tee or cross is one part, however many legs leave it.
      const own = fitting !== null && fitting.out[0]?.leg === leg ? [{ item: fitting.item, at: NONE }] : [];
      const joined = leg.joints.flatMap(({ item: id, at }) => {
        const item = id === null ? undefined : catalogue.get(id);
        return item !== undefined && 'metal' in item ? [{ item, at }] : [];
      });
      return [...own, ...joined]
        .filter(({ item }) => item.metal !== metal)
        .map(({ item, at }) => ({
          leg: leg.leg,
          at,
          values: { item: item.id, channel },
        }));
    }),
};

/** The wall that runs straight on, along the travel: seen from the wide end, so the other way about from the narrow one. */
function wallKept({ item, into }: ResolvedFitting & { readonly item: Reducer }): 'left' | 'centre' | 'right' {
  if (item.hand === 'straight') return 'centre';
  const fromWide = into.tray.width === item.width;
  return fromWide === (item.hand === 'left') ? 'left' : 'right';
}

const hand: Rule = {
  id: 'wrong-hand',
  source: () => RIGHT_HAND,
  find: ({ resolved }) =>
    resolved.legs.flatMap((leg): readonly Found[] => {
      const { fittingBefore: fitting, given } = leg;
      if (fitting?.item.kind !== 'reducer' || given.keeps === undefined) return [];
      const kept = wallKept({ ...fitting, item: fitting.item });
      if (kept === given.keeps) return [];
      return [
        {
          leg: leg.leg,
          at: NONE,
          variant: given.keeps,
          values: { item: fitting.item.id },
        },
      ];
    }),
};

const step: Rule = {
  id: 'used-as-step',
  source: () => NO_STEP,
  find: ({ resolved }) => {
    const steps = (resolved.run.marks ?? []).filter(({ kind }) => kind === 'step');
    return steps.filter(({ leg, at }, i) => steps.findIndex((s) => s.leg === leg && s.at === at) === i);
  },
};

export const partRules: readonly Rule[] = [step, metals, hand];
