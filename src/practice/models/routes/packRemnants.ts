/** Pieces into remnants first (T01, T06): whole lengths opened, what is left of one, ends drilled anew, and the plan. */
import { model } from '../../model.ts';
import { packAsks, packing } from '../parts/packing.ts';

const { count, left, drill, plan } = packAsks;
export const packRemnants = model({ ...packing, asks: { count, left, drill, plan } });
