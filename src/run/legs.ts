/** One leg after the other: its faces, joints, pieces and supports, and what is wrong with them. */
import { formatLength, inches, type Ticks } from '../trade/length.ts';
import type { Catalogue, Tray } from './catalogue.ts';
import { FREE_FACE, fittingFace, outerFace } from './faces.ts';
import type { Placed } from './frames.ts';
import { byLeg, endsOf } from './named.ts';
import { piecesOf } from './pieces.ts';
import { resolveJoint } from './resolveJoint.ts';
import type { Face, Piece, ResolvedJoint } from './straight.ts';
import { supportFaults } from './supports.ts';
import type { Bad, Node } from './tree.ts';
import type { End, Joint, Run, Support } from './types.ts';

/** An entry of a list of the run, with its path, `joints[2]`. */
export interface Listed<T> {
  readonly given: T;
  readonly field: string;
}

/** A leg with all that stands on it; what is at fault is null, and the fault has been told. */
export interface Worked {
  readonly node: Node;
  readonly tray: Tray | null;
  readonly placed: Placed | null;
  readonly faces: readonly [Face | null, Face | null];
  readonly joints: readonly ResolvedJoint[] | null;
  readonly pieces: readonly Piece[] | null;
  /** In order along the leg. */
  readonly supports: readonly Listed<Support>[];
  readonly end: Listed<End> | null;
}

interface Known {
  readonly trays: ReadonlyMap<Node, Tray | null>;
  readonly placed: ReadonlyMap<Node, Placed>;
  readonly catalogue: Catalogue;
  readonly wanted: Ticks | null;
  /** Goes into the socket of what the run starts and ends at. */
  readonly socket: Ticks;
}

/** @returns what works one leg of the run; it does so in time that grows with what stands on the leg alone */
export function legWorker(run: Run, known: Known, bad: Bad): (node: Node) => Worked {
  const joints = byLeg('joints', run.joints);
  const supports = byLeg('supports', run.supports);
  const marks = byLeg('marks', run.marks);
  const places = byLeg('places', run.places);
  const ends = endsOf(run);

  return (node) => {
    const { id } = node.given;
    const end = ends.get(id) ?? null;
    const tray = known.trays.get(node) ?? null;
    const placed = known.placed.get(node) ?? null;
    const faces = [startFace(run, node, known, bad), endFace(node, end, known, bad)] as const;
    const listed = inOrder(joints.get(id));
    const resolved = jointsOf(listed, tray, known, bad);
    const pieces = resolved && piecesFor(node, faces, listed, resolved, bad);
    const held = inOrder(supports.get(id));
    const leg = { length: node.given.length, plumb: placed?.plumb ?? true, faces, joints: resolved ?? [] };
    for (const { given, field } of held) supportFaults(given, field, leg, bad);
    for (const { given, field } of marks.get(id) ?? []) onLeg(node, given.at, `${field}.at`, bad);
    for (const { given, field } of places.get(id) ?? []) {
      given.at.forEach((at, i) => {
        onLeg(node, at, `${field}.at[${i}]`, bad);
      });
    }
    return { node, tray, placed, faces, joints: resolved, pieces, supports: held, end };
  };
}

const inOrder = <T extends { readonly at: Ticks }>(all: readonly Listed<T>[] = []): readonly Listed<T>[] =>
  [...all].sort((a, b) => a.given.at - b.given.at);

function startFace({ start }: Run, { item, given }: Node, { wanted, socket }: Known, bad: Bad): Face | null {
  if (given.from !== 'start') return item && fittingFace(item);
  if (start.joint === 'expansion' && wanted === null) return expansionUnknown('start.joint', bad);
  return outerFace(start.kind, start.joint, { side: 0, gap: wanted, socket });
}

function endFace(
  { children }: Node,
  end: Listed<End> | null,
  { wanted, socket }: Known,
  bad: Bad,
): Face | null {
  if (children.length > 0) {
    const item = children.find((c) => c.item !== null)?.item ?? null;
    return item && fittingFace(item);
  }
  if (end === null) return FREE_FACE;
  const { kind, joint, open } = end.given;
  if (joint === 'expansion' && wanted === null) return expansionUnknown(`${end.field}.joint`, bad);
  return outerFace(kind, joint, { side: 1, gap: wanted, open, socket });
}

function expansionUnknown(field: string, bad: Bad): null {
  bad(
    field,
    'expansion',
    'no temperatures tell how wide this expansion splice stands open',
    'give temps with nowF between lowF and highF, or join it another way',
  );
  return null;
}

function jointsOf(
  listed: readonly Listed<Joint>[],
  tray: Tray | null,
  { catalogue, wanted }: Known,
  bad: Bad,
): readonly ResolvedJoint[] | null {
  const joints = listed.map(({ given, field }, i) =>
    resolveJoint(given, { name: `S${i + 1}`, field, tray, catalogue, wanted }, bad),
  );
  return joints.every((joint) => joint !== null) ? joints : null;
}

function piecesFor(
  { given, field }: Node,
  [start, end]: Worked['faces'],
  listed: readonly Listed<Joint>[],
  joints: readonly ResolvedJoint[],
  bad: Bad,
): readonly Piece[] | null {
  if (start === null || end === null) return null;
  const pieces = piecesOf(given.id, given.length, start, joints, end);
  pieces.forEach(({ cut }, i) => {
    if (cut > 0) return;
    // The joint behind the piece is to blame; the last piece has only the joint before it.
    const joint = listed[i] ?? listed[i - 1];
    const message = `piece ${i + 1} would be ${formatLength(cut)} long`;
    if (joint === undefined)
      bad(`${field}.length`, inches(given.length), message, 'give the leg more length');
    else {
      const todo = 'move the joint so that channel is left on both sides';
      bad(`${joint.field}.at`, inches(joint.given.at), message, todo);
    }
  });
  return pieces;
}

function onLeg({ given }: Node, at: Ticks, field: string, bad: Bad): void {
  if (at <= given.length) return;
  bad(field, inches(at), 'this place is beyond the leg', `place it up to ${formatLength(given.length)}`);
}
