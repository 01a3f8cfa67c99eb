/** Lines of a leg: channel joined by rigid splices, and the spans between its supports. */
import { type Ticks, ticks } from '../trade/length.ts';
import type { Bound, Line, LineEnd, PlacedSupport, Span } from './resolved.ts';
import type { Face, ResolvedJoint } from './straight.ts';

const PARTS: Readonly<Record<ResolvedJoint['kind'], Bound | null>> = {
  socketed: null,
  butt: null,
  hinged: 'hinged',
  expansion: 'expansion',
  gap: 'gap',
};

interface Of {
  readonly leg: string;
  readonly length: Ticks;
  readonly start: Face;
  readonly end: Face;
  /** In order along the leg. */
  readonly joints: readonly ResolvedJoint[];
  /** In order along the leg. */
  readonly supports: readonly PlacedSupport[];
}

/** In order along the leg; a support in the very middle of a parting joint is of the line before it. */
export function linesOf({ leg, length, start, end, joints, supports }: Of): readonly Line[] {
  const lines: Line[] = [];
  let from: LineEnd = {
    kind: start.kind === 'fitting' ? 'fitting' : 'start',
    face: start.takeOut,
    joint: null,
  };
  let splices: ResolvedJoint[] = [];
  let next = 0;
  const close = (to: LineEnd, until: number) => {
    const begun = next;
    while (next < supports.length && (supports[next]?.at ?? 0) <= until) next += 1;
    const own = supports.slice(begun, next);
    lines.push({ leg, from, to, splices, supports: own, spans: spansOf(own) });
    splices = [];
  };
  for (const joint of joints) {
    const kind = PARTS[joint.kind];
    if (kind === null) splices.push(joint);
    else {
      close({ kind, face: joint.edges[0], joint }, joint.at);
      from = { kind, face: joint.edges[1], joint };
    }
  }
  const last = ticks(length - end.takeOut);
  close(
    { kind: end.kind === 'fitting' ? 'fitting' : 'end', face: last, joint: null },
    Number.POSITIVE_INFINITY,
  );
  return lines;
}

function spansOf(supports: readonly PlacedSupport[]): readonly Span[] {
  const last = supports.length - 2;
  return supports.slice(1).map(({ at: to }, i) => {
    const from = (supports[i] as PlacedSupport).at;
    return { from, to, length: ticks(to - from), end: i === 0 || i === last };
  });
}
