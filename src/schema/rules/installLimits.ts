import { z } from 'zod';
import type { InstallLimits } from '../../run/tables.ts';
import type { Limit } from '../../trade/limit.ts';
import { share } from '../fields.ts';
import { lengthAbove0, lengthFrom0 } from '../length.ts';
import { type CitedOnce, citedOnceShape } from '../source.ts';
import { type Cite, ruled } from './kind.ts';

const limit = <T extends z.ZodType>(value: T) => z.strictObject({ value, source: citedOnceShape });

const shape = z.strictObject({
  ...ruled('install limits'),
  supportWithin: limit(lengthAbove0),
  spliceShare: limit(share),
  insertionOff: limit(lengthFrom0),
  buttGap: limit(lengthFrom0),
  expansionOff: limit(lengthFrom0),
  movement: limit(lengthAbove0),
});

/** Limits that no code states: they serve training until the site adopts its own. */
export const installLimits = {
  shape,
  read: (rule: z.infer<typeof shape>, cite: Cite): Omit<InstallLimits, 'openGap'> => {
    const training = <V>({ value, source }: { value: V; source: CitedOnce }): Limit<V> => ({
      value,
      source: cite.one(source),
      rests: 'training',
    });
    return {
      supportWithin: training(rule.supportWithin),
      spliceShare: training(rule.spliceShare),
      insertionOff: training(rule.insertionOff),
      buttGap: training(rule.buttGap),
      expansionOff: training(rule.expansionOff),
      movement: training(rule.movement),
    };
  },
};
