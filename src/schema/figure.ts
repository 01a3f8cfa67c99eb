/**
 * A figure of a procedure: a run, a view, and the part of the run that the view shows. Numbers in the procedure's text
 * are places (`{insertion}`) filled from that same part, so that text and figure cannot disagree.
 */
import type { Catalogue, Tray } from '../run/catalogue.ts';
import { resolveRun } from '../run/resolve.ts';
import type { Piece, ResolvedJoint, StraightLeg } from '../run/straight.ts';
import type { Run } from '../run/types.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import { formatLength, type Ticks } from '../trade/length.ts';
import type { Figure } from './procedure.ts';

/** What a figure shows, ready to be drawn: the subject that its view takes, and the texts of its measures. */
export type Shown = { readonly tray: Tray; readonly facts: Readonly<Record<string, string>> } & (
  | { readonly view: 'strip'; readonly leg: StraightLeg; readonly stock: Ticks; readonly kerf: Ticks }
  | { readonly view: 'splice'; readonly joint: ResolvedJoint }
  | { readonly view: 'piece'; readonly leg: StraightLeg; readonly piece: Piece }
);

/** A length below a foot as a number of inches (`1/8`, `10 1/8`), for a text that says `in` after it. */
function inchText(length: Ticks): string {
  return formatLength(length).replace(/^0'-/, '').replace(/"$/, '');
}

/**
 * @throws {GivenError} faults of the run (fields `run.…`), or `of` when the run has no such part
 */
export function shownBy(figure: Pick<Figure, 'view' | 'of'>, run: Run, catalogue: Catalogue): Shown {
  const { legs, tray, stock, kerf } = resolveRun(run, catalogue);
  const joints = legs.flatMap((l) => l.joints.map((joint) => ({ leg: l, joint })));
  const pieces = legs.flatMap((l) => l.pieces.map((piece) => ({ leg: l, piece })));
  if (figure.view === 'strip') {
    const leg = pick(legs, (l) => l.leg, figure.of);
    return { view: 'strip', tray, leg, stock, kerf, facts: { run: formatLength(leg.length) } };
  }
  if (figure.view === 'splice') {
    const { joint } = pick(joints, (j) => j.joint.name, figure.of);
    const facts = {
      insertion: inchText(joint.insertions[0]),
      opening: inchText(joint.opening),
      splice: inchText(joint.length),
    };
    return { view: 'splice', tray, joint, facts };
  }
  const { leg, piece } = pick(pieces, (p) => p.piece.id, figure.of);
  const facts = {
    insertion: inchText(piece.ends[0].insertion),
    clear: formatLength(piece.clear),
    cut: formatLength(piece.cut),
  };
  return { view: 'piece', tray, leg, piece, facts };
}

function pick<T>(all: readonly T[], name: (one: T) => string, of: string | undefined): T {
  const found = of === undefined ? all[0] : all.find((one) => name(one) === of);
  if (found !== undefined) return found;
  const fault: Fault = {
    field: 'of',
    ...(of === undefined ? {} : { value: of }),
    message: 'the run has no such part',
    todo: `name one of ${all.map(name).join(', ')}`,
  };
  throw new GivenError([fault]);
}
