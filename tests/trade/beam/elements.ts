/**
 * Second way to a beam: cubic elements between nodes, all equations in one dense matrix. Such elements are exact at
 * their nodes, and within one under a uniform load the bubble qs²(L−s)²/24EI is what the cubic lacks.
 */
import type { BeamGiven } from '../../../src/trade/beam/beam.ts';

export interface Solution {
  readonly reactions: readonly number[];
  /** Sagging moment and downward deflection at a place, from the left tip. */
  readonly at: (x: number) => { readonly moment: number; readonly deflection: number };
  /** Places of the supports, from the left tip. */
  readonly supports: readonly number[];
  readonly ends: readonly [number, number];
}

interface Element {
  readonly from: number;
  readonly length: number;
  /** Down, lb/in. */
  readonly q: number;
}

export function byElements(given: BeamGiven): Solution {
  const { spansIn, overhangLeftIn: left = 0, overhangRightIn: right = 0, points = [] } = given;
  const n = spansIn.length;
  const ei = given.ePsi * given.iIn4;
  const supports = [left];
  for (const span of spansIn) supports.push((supports.at(-1) ?? 0) + span);
  const end = (supports.at(-1) ?? 0) + right;
  const placed = points.map(({ span, atIn, lb }) => ({
    x: span === -1 ? atIn : (supports[span] ?? 0) + atIn,
    lb,
  }));
  const xs = [...new Set([0, end, ...supports, ...placed.map((p) => p.x)])].sort((a, b) => a - b);
  // Two places that decimals put a hair apart are one node.
  const nodes = xs.filter((x, i) => i === 0 || x - (xs[i - 1] ?? 0) > 1e-7);
  const nodeAt = (x: number) =>
    nodes.reduce((best, node, i) => (Math.abs(node - x) < Math.abs((nodes[best] ?? 0) - x) ? i : best), 0);
  const uniform = (x: number) => {
    const span = Math.min(Math.max(supports.filter((s) => s <= x).length - 1, 0), n - 1);
    const own = (given.loads ?? []).filter((l) => l.span === span).reduce((sum, l) => sum + l.lbPerFt, 0);
    return ((given.loadLbPerFt ?? 0) + own) / 12;
  };
  const elements = nodes.slice(1).map((to, i): Element => {
    const from = nodes[i] ?? 0;
    return { from, length: to - from, q: uniform((from + to) / 2) };
  });

  const size = 2 * nodes.length;
  const k = Array.from({ length: size }, () => new Float64Array(size));
  const f = new Float64Array(size);
  elements.forEach((element, e) => {
    const [stiff, load] = [stiffness(element, ei), loadOf(element)];
    for (let i = 0; i < 4; i++) {
      f[2 * e + i] = (f[2 * e + i] ?? 0) + (load[i] ?? 0);
      const row = k[2 * e + i] as Float64Array;
      for (let j = 0; j < 4; j++) row[2 * e + j] = (row[2 * e + j] ?? 0) + (stiff[i]?.[j] ?? 0);
    }
  });
  for (const { x, lb } of placed) f[2 * nodeAt(x)] = (f[2 * nodeAt(x)] ?? 0) + lb;

  const held = new Set(supports.map((x) => 2 * nodeAt(x)));
  const free = Array.from({ length: size }, (_, i) => i).filter((i) => !held.has(i));
  const solved = dense(
    free.map((i) => free.map((j) => k[i]?.[j] ?? 0)),
    free.map((i) => f[i] ?? 0),
  );
  const u = new Float64Array(size);
  free.forEach((i, row) => {
    u[i] = solved[row] ?? 0;
  });
  const reactions = supports.map((x) => {
    const i = 2 * nodeAt(x);
    return (f[i] ?? 0) - (k[i] ?? new Float64Array()).reduce((sum, kij, j) => sum + kij * (u[j] ?? 0), 0);
  });

  const at = (x: number) => {
    const e = Math.min(Math.max(nodes.filter((node) => node <= x).length - 1, 0), elements.length - 1);
    const element = elements[e] as Element;
    const { length: l, q } = element;
    const own = [0, 1, 2, 3].map((i) => u[2 * e + i] ?? 0);
    const s = Math.min(Math.max(x - element.from, 0), l);
    const [r, load] = [s / l, loadOf(element)];
    const shape = [
      1 - 3 * r ** 2 + 2 * r ** 3,
      l * (r - 2 * r ** 2 + r ** 3),
      3 * r ** 2 - 2 * r ** 3,
      l * (r ** 3 - r ** 2),
    ];
    const bubble = (q * s ** 2 * (l - s) ** 2) / (24 * ei);
    const force = stiffness(element, ei).map(
      (row, i) => row.reduce((sum, kij, j) => sum + kij * (own[j] ?? 0), 0) - (load[i] ?? 0),
    );
    // End forces on the element, down positive: at its left end −shear there, and its sagging moment.
    const [down = 0, moment = 0] = force;
    return {
      moment: moment - down * s - (q * s ** 2) / 2,
      deflection: shape.reduce((sum, value, i) => sum + value * (own[i] ?? 0), bubble),
    };
  };
  return { reactions, at, supports, ends: [0, end] };
}

function stiffness({ length: l }: Element, ei: number): readonly (readonly number[])[] {
  const c = ei / l ** 3;
  return [
    [12, 6 * l, -12, 6 * l],
    [6 * l, 4 * l * l, -6 * l, 2 * l * l],
    [-12, -6 * l, 12, -6 * l],
    [6 * l, 2 * l * l, -6 * l, 4 * l * l],
  ].map((row) => row.map((value) => c * value));
}

function loadOf({ length: l, q }: Element): readonly number[] {
  return [(q * l) / 2, (q * l * l) / 12, (q * l) / 2, (-q * l * l) / 12];
}

/** Gauss with the greatest pivot of each column. */
function dense(a: number[][], b: number[]): readonly number[] {
  const n = b.length;
  const rows = a.map((row, i) => [...row, b[i] ?? 0]);
  for (let c = 0; c < n; c++) {
    const best = rows.reduce(
      (most, row, i) => (i >= c && Math.abs(row[c] ?? 0) > Math.abs(rows[most]?.[c] ?? 0) ? i : most),
      c,
    );
    [rows[c], rows[best]] = [rows[best] as number[], rows[c] as number[]];
    const pivot = rows[c] as number[];
    for (let i = c + 1; i < n; i++) {
      const row = rows[i] as number[];
      const times = (row[c] ?? 0) / (pivot[c] ?? 1);
      if (times !== 0) for (let j = c; j <= n; j++) row[j] = (row[j] ?? 0) - times * (pivot[j] ?? 0);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const row = rows[i] as number[];
    let sum = row[n] ?? 0;
    for (let j = i + 1; j < n; j++) sum -= (row[j] ?? 0) * (x[j] ?? 0);
    x[i] = sum / (row[i] ?? 1);
  }
  return x;
}
