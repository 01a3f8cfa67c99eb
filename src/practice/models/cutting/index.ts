import { acceptRecutScrap } from './acceptRecutScrap.ts';
import { holesFromEnd } from './holesFromEnd.ts';
import { lengthsToOrder } from './lengthsToOrder.ts';
import { orderOfCutting } from './orderOfCutting.ts';
import { piecesFromLengths } from './piecesFromLengths.ts';
import { shortPiece } from './shortPiece.ts';
import { wasteSide } from './wasteSide.ts';
import { whatIsLeft } from './whatIsLeft.ts';

/** Cutting, finishing, what is left. */
export const cutting = {
  'accept-recut-scrap': acceptRecutScrap,
  'holes-from-end': holesFromEnd,
  'lengths-to-order': lengthsToOrder,
  'order-of-cutting': orderOfCutting,
  'pieces-from-lengths': piecesFromLengths,
  'short-piece': shortPiece,
  'waste-side': wasteSide,
  'what-is-left': whatIsLeft,
};
