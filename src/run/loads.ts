/**
 * What each support carries: half of each neighbouring span and what overhangs. It is the trade's sum; an inner support of
 * a run that goes on over several spans takes up to 1/4 more, which the take-off says.
 */
import { middle, TICKS_PER_FOOT } from '../trade/length.ts';
import type { Line, LineEnd, PlacedSupport, ResolvedLeg, ResolvedRun } from './resolved.ts';

/** Weights along a leg, a foot. */
export interface WeightPerFt {
  readonly trayLb: number;
  /** Everything that lies in it, air tubes too. */
  readonly cablesLb: number;
  readonly lb: number;
}

export interface SupportLoad {
  readonly leg: ResolvedLeg;
  readonly support: PlacedSupport;
  /** null: it stands on a plumb leg where no support is named to take the weight. */
  readonly lb: number | null;
}

/** Channel and all that runs over the leg, in pounds a foot. */
export function weightPerFt(leg: ResolvedLeg, { cablesOver }: Pick<ResolvedRun, 'cablesOver'>): WeightPerFt {
  const trayLb = leg.tray.weightLbPerFt;
  const cablesLb = cablesOver(leg).reduce((sum, { lbPerFt, count }) => sum + lbPerFt * count, 0);
  return { trayLb, cablesLb, lb: trayLb + cablesLb };
}

/** Weight of a leg from its first working point to its last. */
export function legLb(leg: ResolvedLeg, resolved: Pick<ResolvedRun, 'cablesOver'>): number {
  return weightPerFt(leg, resolved).lb * (leg.length / TICKS_PER_FOOT);
}

/**
 * How far along its leg the weight of a line reaches: to the working point at a start, fitting or end, the middle of an
 * expansion opening or hinge, the channel's end at a gap.
 */
export function weightReach(
  { from, to }: Line,
  { length }: Pick<ResolvedLeg, 'length'>,
): readonly [number, number] {
  const reach = ({ kind, joint, face }: LineEnd, end: number) =>
    joint === null ? end : kind === 'gap' ? face : joint.at;
  return [reach(from, 0), reach(to, length)];
}

/** Load of every support, by legs in order of travel, then along the leg. */
export function supportLoads(resolved: Pick<ResolvedRun, 'legs' | 'cablesOver'>): readonly SupportLoad[] {
  return resolved.legs.flatMap((leg) => (leg.plumb ? plumbLoads(leg, resolved) : levelLoads(leg, resolved)));
}

/** On a plumb leg the whole weight hangs on the supports that bear it; the others only guide. */
function plumbLoads(leg: ResolvedLeg, resolved: Pick<ResolvedRun, 'cablesOver'>): readonly SupportLoad[] {
  const supports = leg.lines.flatMap((line) => line.supports);
  const bearing = supports.filter(({ hold }) => hold === 'load').length;
  const share = bearing === 0 ? null : legLb(leg, resolved) / bearing;
  return supports.map((support) => ({
    leg,
    support,
    lb: share === null ? null : support.hold === 'load' ? share : 0,
  }));
}

function levelLoads(leg: ResolvedLeg, resolved: Pick<ResolvedRun, 'cablesOver'>): readonly SupportLoad[] {
  const { lb } = weightPerFt(leg, resolved);
  return leg.lines.flatMap((line) => {
    const [first, last] = weightReach(line, leg);
    return line.supports.map((support, i) => {
      const [before, behind] = [line.supports[i - 1], line.supports[i + 1]];
      const from = before === undefined ? first : middle(before.at, support.at);
      const to = behind === undefined ? last : middle(support.at, behind.at);
      return { leg, support, lb: (lb * (to - from)) / TICKS_PER_FOOT };
    });
  });
}

/** Weight of lines that no support stands under: it is in no support's load. A row a leg, where there is some. */
export function unborne(
  resolved: Pick<ResolvedRun, 'legs' | 'cablesOver'>,
): readonly { readonly leg: ResolvedLeg; readonly lb: number }[] {
  return resolved.legs.flatMap((leg) => {
    // The weight of a plumb leg is not shared out by lines: without any support at all it is borne by none.
    if (leg.plumb) return leg.supports.length > 0 ? [] : [{ leg, lb: legLb(leg, resolved) }];
    const { lb } = weightPerFt(leg, resolved);
    const long = leg.lines
      .filter(({ supports }) => supports.length === 0)
      .map((line) => weightReach(line, leg))
      .reduce((sum, [first, last]) => sum + last - first, 0);
    return long > 0 ? [{ leg, lb: (lb * long) / TICKS_PER_FOOT }] : [];
  });
}
