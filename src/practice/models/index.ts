/** Every model that a family may name, by its name. A new one is a file here, named for it, and a line below. */
import type { AnyModel } from '../model.ts';
import { cutWithInsertion } from './cutWithInsertion.ts';
import { fillCheck } from './fillCheck.ts';
import { orderOfCutting } from './orderOfCutting.ts';
import { readFeetInch } from './readFeetInch.ts';

export const models: ReadonlyMap<string, AnyModel> = new Map([
  ['cut-with-insertion', cutWithInsertion],
  ['fill-check', fillCheck],
  ['order-of-cutting', orderOfCutting],
  ['read-feet-inch', readFeetInch],
]);
