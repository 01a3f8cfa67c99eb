/** Every model that a family may name. A new one is a file here and a line below. */
import type { AnyModel } from '../model.ts';
import { cutWithInsertion } from './cut.ts';
import { fillCheck } from './fill.ts';
import { orderOfCutting } from './order.ts';
import { readFeetInch } from './reading.ts';

export const models: ReadonlyMap<string, AnyModel> = new Map([
  ['cut-with-insertion', cutWithInsertion],
  ['fill-check', fillCheck],
  ['order-of-cutting', orderOfCutting],
  ['read-feet-inch', readFeetInch],
]);
