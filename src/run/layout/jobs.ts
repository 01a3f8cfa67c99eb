/** The lines of a run as problems of their own. */
import { fromInches, TICKS_PER_INCH, type Ticks, ticks } from '../../trade/length.ts';
import type { Catalogue, Sleeve } from '../catalogue.ts';
import { endsAtTray, placeOf } from '../inspect/unsupported.ts';
import { halves, openingOf } from '../joints.ts';
import type { Line, ResolvedLeg, ResolvedRun } from '../resolved.ts';
import { stockOf } from '../stock.ts';
import type { RunTables } from '../tables.ts';
import type { LineProblem, SpliceRule } from './line.ts';

/** Supports stand at whole inches, splices at whole sixteenths. */
const SPLICE_GRAIN = fromInches(1 / 16);

export interface LineJob {
  readonly leg: ResolvedLeg;
  readonly line: Line;
  /** What a support must stand near, at either end. */
  readonly faces: readonly [Ticks, Ticks];
  readonly problem: LineProblem;
}

/**
 * The lines of a leg, whose only joints are those that part lines.
 *
 * @param maxSpan  of the leg
 */
export function jobsOf(
  leg: ResolvedLeg,
  maxSpan: Ticks,
  { resolved, catalogue, tables }: { resolved: ResolvedRun; catalogue: Catalogue; tables: RunTables },
): readonly LineJob[] {
  const within = tables.limits.supportWithin.value;
  const splice = spliceRule(leg, catalogue, tables);
  const given = (resolved.run.places ?? []).filter((places) => places.leg === leg.leg);
  return leg.lines.map((line, i) => {
    const piece = leg.pieces[i];
    if (piece === undefined) throw new Error(`leg ${leg.leg} has more lines than pieces`);
    const faces = [placeOf(line.from, ticks(0)), placeOf(line.to, leg.length)] as const;
    // A support carries channel that can be seen: not what has gone into a socket, nor the open of a splice.
    // In the very middle of a closed splice it would count to the line before.
    const from = Math.max(
      line.from.face,
      piece.from,
      line.from.joint === null ? line.from.face : line.from.joint.at + 1,
    );
    const to = Math.min(line.to.face, piece.to);
    return {
      leg,
      line,
      faces,
      problem: {
        places:
          given.length === 0
            ? wholeInches(from, to)
            : between(
                given.flatMap(({ at }) => at),
                from,
                to,
              ),
        firstBy: faces[0] + within,
        lastFrom: endsAtTray(leg, line.to) ? from : faces[1] - within,
        channel: [piece.from, piece.to],
        maxSpan,
        stock: stockOf(leg, resolved),
        splice,
      },
    };
  });
}

function spliceRule({ tray }: ResolvedLeg, catalogue: Catalogue, { limits }: RunTables): SpliceRule {
  const sleeve = catalogue.get(tray.own.socketed) as Sleeve | undefined;
  if (sleeve?.kind !== 'sleeve') throw new Error(`${tray.id} has no sleeve of its own`);
  const { length, insertion } = sleeve;
  const [before, behind] = halves(
    openingOf({ kind: 'socketed', length, insertions: [insertion, insertion] }),
  );
  return { length, before, behind, share: limits.spliceShare.value, grain: SPLICE_GRAIN };
}

function wholeInches(from: number, to: number): readonly number[] {
  const places: number[] = [];
  for (let x = Math.ceil(from / TICKS_PER_INCH) * TICKS_PER_INCH; x <= to; x += TICKS_PER_INCH) {
    places.push(x);
  }
  return places;
}

function between(places: readonly number[], from: number, to: number): readonly number[] {
  return [...new Set(places)].filter((x) => x >= from && x <= to).sort((a, b) => a - b);
}
