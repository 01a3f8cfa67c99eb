/** Pieces into whole lengths (T01): how many, what is left of one, and which piece comes from which. */
import { model } from '../../model.ts';
import { packAsks, packing } from '../parts/packing.ts';

const { count, left, plan } = packAsks;
export const packLengths = model({ ...packing, asks: { count, left, plan } });
