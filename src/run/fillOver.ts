/** How full each leg is; behind a barrier, each side by itself. Air tubes are no cables. */
import type { Answered } from '../trade/answer.ts';
import { type FillResult, fill } from '../trade/fill.ts';
import { inches } from '../trade/length.ts';
import { editionOf } from './edition.ts';
import type { ResolvedLeg, ResolvedRun } from './resolved.ts';
import type { RunTables } from './tables.ts';
import type { RunCable } from './types.ts';

export type Side = 'left' | 'right';

export interface FillOver {
  readonly leg: ResolvedLeg;
  /** Only on a leg with a barrier. */
  readonly side?: Side;
  /** The width it is held against: half the channel's on a side of a barrier. */
  readonly widthIn: number;
  readonly cables: readonly RunCable[];
  /** null: no cable lies here. */
  readonly answer: Answered<FillResult> | null;
}

/** A row a leg, with a barrier a row a side, left first. */
export function fillOver(leg: ResolvedLeg, resolved: ResolvedRun, tables: RunTables): readonly FillOver[] {
  const cables = resolved.cablesOver(leg).filter(({ use }) => use !== 'air');
  const widthIn = inches(leg.tray.width);
  const row = (widthIn: number, cables: readonly RunCable[], side?: Side): FillOver => ({
    leg,
    ...(side === undefined ? {} : { side }),
    widthIn,
    cables,
    answer: cables.length === 0 ? null : answerOf(widthIn, cables),
  });
  const answerOf = (widthIn: number, cables: readonly RunCable[]) =>
    fill(
      {
        tray: { bottom: leg.tray.bottom, widthIn },
        cables: cables.map(({ make, odIn, count }) => ({ make, odIn, count })),
        edition: editionOf(resolved, tables),
      },
      tables.fill,
    );
  if (leg.given.barrier !== true) return [row(widthIn, cables)];
  return (['left', 'right'] as const).map((side) =>
    row(
      widthIn / 2,
      cables.filter((cable) => cable.side === side),
      side,
    ),
  );
}
