/** A leg as its targets are named on it, and how a target is made. */
import type { ResolvedLeg, ResolvedRun } from '../../run/resolved.ts';
import { fromInches } from '../../trade/length.ts';
import { heard, spoken } from '../spoken.ts';
import type { How } from '../types.ts';
import type { TapPart, TapPlace } from './given.ts';

/** A leg, and all that its targets are named by. */
export interface On {
  readonly leg: ResolvedLeg;
  /** What the leg is called on the sheet. */
  readonly mark: string;
  readonly resolved: ResolvedRun;
  /** Names of its joints, in order along it. */
  readonly names: readonly string[];
  readonly speak: How['speak'];
}

/** A target with the side of the channel that its box stands on. */
export interface Laned extends TapPlace {
  readonly lane: 'left' | 'right';
}

/** One target. `words` are said as a person hears lengths. */
export function target(
  { leg }: On,
  part: TapPart,
  at: number | null,
  {
    elsewhere = {},
    ...more
  }: Pick<Laned, 'letters' | 'words' | 'lane'> & Partial<Pick<TapPlace, 'elsewhere'>>,
): Laned {
  return { key: `${leg.leg}:${part}:${at ?? ''}`, leg: leg.leg, at, part, elsewhere, ...more };
}

export function said(
  { speak }: Pick<On, 'speak'>,
  key: string,
  values: Readonly<Record<string, string | number>> = {},
): string {
  return heard(speak({ say: `tap.${key}`, values }));
}

/** A length in inches as a person hears it. */
export const saidLength = (at: number, { speak }: Pick<On, 'speak'>): string => spoken(fromInches(at), speak);
