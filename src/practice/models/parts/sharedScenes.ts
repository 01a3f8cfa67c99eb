/** Scenes that stand in more families than one, with the limits they are held against: edge, gas, sparks, watch. */
import { heldAgainst, type Scene } from './scenes.ts';

/** 29 CFR 1926.501(b)(1): in construction, an unprotected edge this high above a lower level, or higher. */
export const FALL_FT = 6;
/** 29 CFR 1910.252(a)(2)(vii) and NFPA 51B (from memory); 29 CFR 1926.352, for construction, names no distance. */
export const SPARK_FT = 35;

/** The site's own height where it is lower, else the law's. */
export const edge = <T extends { readonly height: number; readonly site: string }>(): Scene<T> =>
  heldAgainst({
    seen: (d) => d.height,
    limit: (d) => Math.min(Number(d.site), FALL_FT),
    beyond: 'above',
    atLimit: 'fails',
    right: 'stop',
    unit: 'ft',
    habits: { lawNotSite: () => FALL_FT, tenFeet: () => 10, keepsBalance: () => Infinity },
  });

/** Per cent of the lower flammable limit. The permit says where work ends; whoever waits for the horn goes on at any. */
export const gas = <T extends { readonly gas: number; readonly gasLimit: string }>(): Scene<T> =>
  heldAgainst({
    seen: (d) => d.gas,
    limit: (d) => Number(d.gasLimit),
    beyond: 'above',
    atLimit: 'fails',
    right: 'stop',
    unit: '%',
    habits: { tenAlways: () => 10, waitsForAlarm: () => Infinity },
  });

/** What burns and lies open. Distances near the limit are not drawn: nobody paces them out so well. */
export const barePlanks = <T extends { readonly bare: number }>(): Scene<T> =>
  heldAgainst({
    seen: (d) => d.bare,
    limit: () => SPARK_FT,
    beyond: 'below',
    atLimit: 'fails',
    right: 'stop',
    unit: 'ft',
    habits: { twentyIsEnough: () => 20, sparksLandNear: () => 0 },
  });

/** The watch stays as long as this job's permit says, whatever another permit said. */
export const watchLeaves = <T extends { readonly watch: string; readonly stood: number }>(): Scene<T> =>
  heldAgainst({
    seen: (d) => d.stood,
    limit: (d) => Number(d.watch),
    beyond: 'below',
    atLimit: 'holds',
    right: 'stop',
    unit: 'min',
    habits: { halfHourAlways: () => 30, nothingGlows: () => 0 },
  });
