/** Every lay-out of a tiny line, one after another: the slow way, by the rules and nothing else. */
import type { LineLayout, LineProblem } from '../../../src/run/layout/line.ts';

export function* everyLayout(problem: LineProblem): Generator<LineLayout> {
  const { places, firstBy, lastFrom, maxSpan } = problem;
  for (let chosen = 1; chosen < 1 << places.length; chosen++) {
    const supports = places.filter((_, i) => (chosen >> i) & 1);
    const last = supports.at(-1) as number;
    if ((supports[0] as number) > firstBy || last < lastFrom) continue;
    const spans = supports.slice(1).map((x, i) => [supports[i] as number, x] as const);
    if (spans.some(([a, b]) => b - a > maxSpan)) continue;
    for (const splices of everySplicing(problem, spans.slice(1, -1))) {
      const cuts = pieces(problem, splices);
      if (cuts.every((cut) => cut > 0 && cut <= problem.stock)) yield { supports, splices, cuts };
    }
  }
}

function* everySplicing(
  problem: LineProblem,
  spans: readonly (readonly [number, number])[],
): Generator<readonly number[]> {
  const [span, ...rest] = spans;
  if (span === undefined) {
    yield [];
    return;
  }
  for (const behind of everySplicing(problem, rest)) {
    yield behind;
    for (const s of splicesIn(problem, span)) yield [s, ...behind];
  }
}

function splicesIn({ splice }: LineProblem, [a, b]: readonly [number, number]): readonly number[] {
  const found: number[] = [];
  for (let s = Math.ceil(a / splice.grain) * splice.grain; s < b; s += splice.grain) {
    const near = Math.min(s - a, b - s);
    if (near * 2 >= splice.length && near <= (b - a) * splice.share) found.push(s);
  }
  return found;
}

function pieces({ channel, splice }: LineProblem, splices: readonly number[]): readonly number[] {
  let begin = channel[0];
  const cuts = splices.map((s) => {
    const cut = s - splice.before - begin;
    begin = s + splice.behind;
    return cut;
  });
  return [...cuts, channel[1] - begin];
}
