import { orderOfCutting } from './orderOfCutting.ts';

/** Cutting, finishing, what is left. */
export const cutting = {
  'order-of-cutting': orderOfCutting,
};
