/** The resolved run, put together from legs that are without fault. */
import type { Ticks } from '../trade/length.ts';
import type { Tray } from './catalogue.ts';
import type { Worked } from './legs.ts';
import { linesOf } from './lines.ts';
import type { PlacedSupport, ResolvedFitting, ResolvedLeg, ResolvedRun } from './resolved.ts';
import { sectionsOf } from './sections.ts';
import { supportName } from './supports.ts';
import type { Node } from './tree.ts';
import type { Run, RunCable } from './types.ts';
import { plus, times, type Vec } from './vector.ts';

/** What can be changed while the run is put together; from outside it is read alone. */
type Open<T> = { -readonly [K in keyof T]: T[K] };
type OpenFitting = Omit<Open<ResolvedFitting>, 'out'> & { readonly out: ResolvedFitting['out'][number][] };

interface Whole {
  readonly tray: Tray;
  readonly stock: Ticks;
  readonly kerf: Ticks;
}

/** @param worked  parents before children, in order of travel */
export function assemble(run: Run, worked: readonly Worked[], whole: Whole): ResolvedRun {
  const legs: ResolvedLeg[] = [];
  const byNode = new Map<Node, ResolvedLeg>();
  const childrenOf = new Map<ResolvedLeg, ResolvedLeg[]>();
  const fittings: ResolvedFitting[] = [];
  let held = 0;
  for (const one of worked) {
    const parent = one.node.parent === null ? null : (byNode.get(one.node.parent) ?? null);
    const children: ResolvedLeg[] = [];
    const supports = one.supports.map(({ given, field }) => ({ ...given, field, name: supportName(held++) }));
    const leg = legOf(one, { parent, children, index: legs.length, supports });
    legs.push(leg);
    byNode.set(one.node, leg);
    childrenOf.set(leg, children);
    if (parent === null) continue;
    childrenOf.get(parent)?.push(leg);
    leave(leg, parent, one, fittings);
  }
  return {
    run,
    ...whole,
    start: run.start,
    legs,
    byId: new Map(legs.map((leg) => [leg.leg, leg])),
    fittings,
    sections: sectionsOf(legs, run.start),
    cablesOver: cablesOf(run, legs),
  };
}

function legOf(
  { node, tray, placed, faces: [start, end], joints, pieces, end: listed }: Worked,
  rest: {
    readonly parent: ResolvedLeg | null;
    readonly children: readonly ResolvedLeg[];
    readonly index: number;
    readonly supports: readonly PlacedSupport[];
  },
): Open<ResolvedLeg> {
  const { given, field, way } = node;
  if (!tray || !placed || !start || !end || !joints || !pieces)
    throw new Error(`${field} has a fault untold`);
  const from: Vec = rest.parent?.at[1] ?? [0, 0, 0];
  const parts = { leg: given.id, length: given.length, start, end, joints, supports: rest.supports };
  const last = node.children.length === 0;
  return {
    ...rest,
    ...parts,
    pieces,
    given,
    field,
    tray,
    frame: placed.frame,
    at: [from, plus(from, times(given.length, placed.frame.along))],
    plumb: placed.plumb,
    fittingBefore: null,
    fittingAfter: null,
    turn: placed.turn,
    way,
    givenEnd: last ? (listed?.given ?? { leg: given.id, kind: 'free', joint: 'free' }) : null,
    endField: listed?.field ?? field,
    lines: linesOf(parts),
  };
}

/** A leg leaves its parent by a fitting: the parent's other legs share it. */
function leave(
  leg: Open<ResolvedLeg>,
  parent: Open<ResolvedLeg>,
  { node, placed }: Worked,
  fittings: ResolvedFitting[],
): void {
  if (node.item === null) throw new Error(`${node.field} has a fault untold`);
  let fitting = parent.fittingAfter as OpenFitting | null;
  if (fitting === null) {
    fitting = {
      index: fittings.length,
      item: node.item,
      into: parent,
      out: [],
      at: parent.at[1],
      turnDeg: placed?.turnDeg ?? 0,
    };
    fittings.push(fitting);
    parent.fittingAfter = fitting;
  }
  fitting.out.push({ leg, way: leg.way, turn: leg.turn });
  leg.fittingBefore = fitting;
}

/** Cables run from the start to the end of the leg they are given for; each list is in the order given. */
function cablesOf({ cables = [] }: Run, legs: readonly ResolvedLeg[]): ResolvedRun['cablesOver'] {
  const byId = new Map(legs.map((leg) => [leg.leg, leg]));
  const over = new Map<ResolvedLeg, RunCable[]>(legs.map((leg) => [leg, []]));
  for (const cable of cables) {
    let leg = byId.get(cable.to) ?? null;
    for (; leg !== null; leg = leg.parent) over.get(leg)?.push(cable);
  }
  return (leg) => over.get(leg) ?? [];
}
