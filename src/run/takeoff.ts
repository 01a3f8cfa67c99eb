/** The take-off: everything of a run that is bought, cut, set or checked. */
import type { Answered } from '../trade/answer.ts';
import { distinctSources } from '../trade/distinctSources.ts';
import { GivenError } from '../trade/given.ts';
import { inches, TICKS_PER_FOOT } from '../trade/length.ts';
import { sticks } from '../trade/sticks/sticks.ts';
import type { Budget, SticksResult } from '../trade/sticks/types.ts';
import { cableLengths } from './cableLengths.ts';
import type { Catalogue } from './catalogue.ts';
import { fillOver } from './fillOver.ts';
import { hardware } from './hardware.ts';
import { jumpersNeeded } from './jumpers.ts';
import { legLb, supportLoads, weightPerFt } from './loads.ts';
import { stockFaults } from './resolve.ts';
import type { ResolvedLeg, ResolvedRun } from './resolved.ts';
import { stockOf } from './stock.ts';
import type { PieceEnd } from './straight.ts';
import type { RunTables } from './tables.ts';
import { takeoffSteps } from './takeoffSteps.ts';
import type { Takeoff, TakeoffEnd, TakeoffPiece } from './takeoffTypes.ts';
import { wantedGap } from './wantedGap.ts';

/** A strut that hangs, hangs on one rod at each end. */
const RODS = 2;

/**
 * @param budget  how long the cutting plans are looked for
 * @throws {GivenError} a piece longer than the stock it is cut from, at its leg's length
 */
export function takeoff(
  resolved: ResolvedRun,
  catalogue: Catalogue,
  tables: RunTables,
  budget: Budget = {},
): Answered<Takeoff> {
  const faults = stockFaults(resolved);
  if (faults.length > 0) throw new GivenError(faults);
  const { legs } = resolved;
  const jumpers = jumpersNeeded(resolved, catalogue, tables);
  const loads = supportLoads(resolved);
  const fills = legs.flatMap((leg) => fillOver(leg, resolved, tables));
  const cables = cableLengths(resolved);
  const plans = sticksOf(resolved, budget);
  const result: Takeoff = {
    pieces: legs.flatMap(piecesOfLeg),
    sticks: plans.map(({ tray, plan }) => ({ tray, ...plan.result })),
    ...hardware(resolved, catalogue, jumpers.length),
    jumpers: jumpers.map(({ leg, at, reason, size, holds }) => ({
      leg: leg.leg,
      atIn: inches(at),
      reason,
      size,
      holds,
    })),
    fill: fills.map(({ leg, side, answer }) => ({
      leg: leg.leg,
      ...(side === undefined ? {} : { side }),
      areaIn2: answer?.result.areaIn2 ?? 0,
      allowedIn2: answer?.result.allowedIn2 ?? null,
      within: answer === null ? true : answer.result.within,
      refer: answer?.result.refer ?? false,
    })),
    gaps: gapsOf(resolved, tables),
    supportLoads: loads.map(({ leg, support, lb }) => ({ leg: leg.leg, atIn: inches(support.at), lb })),
    rodLoads: loads
      .filter(({ support }) => support.way === 'horizontal')
      .map(({ leg, support, lb }) => ({
        leg: leg.leg,
        atIn: inches(support.at),
        lb: lb === null ? null : lb / RODS,
      })),
    weights: legs.map((leg) => {
      const { trayLb, cablesLb } = weightPerFt(leg, resolved);
      const ft = leg.length / TICKS_PER_FOOT;
      return { leg: leg.leg, trayLb: trayLb * ft, cablesLb: cablesLb * ft, lb: legLb(leg, resolved) };
    }),
    cableLengthsIn: Object.fromEntries(cables.map(({ id, all }) => [id, inches(all)])),
  };
  const { steps, sources } = takeoffSteps({ resolved, tables, result, jumpers, fills, cables, plans });
  return { result, steps, sources: distinctSources(sources) };
}

export type { Takeoff, TakeoffEnd, TakeoffPiece } from './takeoffTypes.ts';

export interface TrayPlan {
  readonly tray: string;
  readonly plan: Answered<SticksResult>;
}

function piecesOfLeg({ leg, pieces, fittingBefore, fittingAfter }: ResolvedLeg): readonly TakeoffPiece[] {
  const hinged = [fittingBefore?.item.kind === 'hinge', fittingAfter?.item.kind === 'hinge'];
  const end = ({ kind, takeOut, insertion, share }: PieceEnd, side: 0 | 1): TakeoffEnd => ({
    joint: kind !== 'fitting' ? kind : hinged[side] === true ? 'hinged' : 'socketed',
    takeOutIn: inches(takeOut),
    insertionIn: inches(insertion),
    shareIn: inches(share),
  });
  return pieces.map(({ id, cut, ends: [a, b] }) => ({
    id,
    leg,
    cutIn: inches(cut),
    ends: [end(a, 0), end(b, 1)],
  }));
}

/** Cutting plans, one a channel, in the order in which the channels come. */
function sticksOf(resolved: ResolvedRun, budget: Budget): readonly TrayPlan[] {
  const byTray = Map.groupBy(resolved.legs, ({ tray }) => tray.id);
  return [...byTray].map(([tray, legs]) => {
    const [first] = legs;
    const length = first === undefined ? resolved.stock : stockOf(first, resolved);
    const pieces = legs.flatMap((leg) =>
      leg.pieces.map(({ id, cut }) => ({ length: cut, count: 1, mark: id })),
    );
    return { tray, plan: sticks({ stock: [{ length }], pieces, kerf: resolved.kerf }, budget) };
  });
}

/** Along the run, those at its start and ends among them. */
function gapsOf({ legs, run, start }: ResolvedRun, { limits }: RunTables): Takeoff['gaps'] {
  const wanted = run.temps === undefined ? null : wantedGap(run.temps, limits.movement.value);
  const gapIn = wanted === null ? null : inches(wanted);
  return legs.flatMap(({ leg, parent, length, joints, givenEnd }) =>
    [
      ...(parent === null && start.joint === 'expansion' ? [0] : []),
      ...joints.flatMap(({ kind, at }) => (kind === 'expansion' ? [inches(at)] : [])),
      ...(givenEnd?.joint === 'expansion' ? [inches(length)] : []),
    ].map((atIn) => ({ leg, atIn, gapIn })),
  );
}
