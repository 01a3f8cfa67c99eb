/** What is wrong with a drawn run, and where. */
import type { FaultsAsk } from '../family.ts';
import type { FaultAt } from '../model.ts';
import type { Kind } from './kind.ts';
import { explainsMarks, marksFaults, meet, meets, readMarks } from './marks.ts';

export const ruleOf = ({ rule }: FaultAt) => rule;
const idsOf = ({ rules }: FaultsAsk) => rules.map(({ id }) => id);

export const faults: Kind<FaultsAsk, readonly FaultAt[]> = {
  read: (ask, value, asked) => readMarks<FaultAt>(value, 'rule', idsOf(ask), asked),
  same: ({ tolerance }, given, wanted) => meets(meet(given, wanted, tolerance, ruleOf)),
  near: ({ tolerance }, given, wanted) => meets(meet(given, wanted, 2 * tolerance, ruleOf)),
  apart: ({ tolerance }, one, other) => !meets(meet(one, other, 2 * tolerance, ruleOf)),
  faults: (ask, answer, _, asked) => marksFaults(answer, ruleOf, idsOf(ask), asked),
  explains: ({ tolerance }, given, mistaken, right) =>
    explainsMarks(given, mistaken, right, tolerance, ruleOf),
  show: ({ rules, tolerance }, { textOf }) => ({
    tolerance,
    options: rules.map((rule) => ({ id: rule.id, text: textOf(rule) })),
  }),
};
