/** Every model that a family may name, by its name; each folder lists its own. */
import type { AnyModel } from '../model.ts';
import { bonding } from './bonding/index.ts';
import { cutting } from './cutting/index.ts';
import { filling } from './filling/index.ts';
import { measuring } from './measuring/index.ts';
import { offsets } from './offsets/index.ts';
import { routes } from './routes/index.ts';
import { supporting } from './supporting/index.ts';
import { working } from './working/index.ts';

export const models: ReadonlyMap<string, AnyModel> = new Map(
  Object.entries<AnyModel>({
    ...measuring,
    ...cutting,
    ...filling,
    ...offsets,
    ...supporting,
    ...bonding,
    ...working,
    ...routes,
  }),
);
