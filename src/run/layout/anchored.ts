/**
 * Lines of a section laid so that its one anchor can be a support of a certain leg: one of that leg's supports stands no
 * farther from the section's middle than any other of the section. Every distance is tried; the fewest supports win.
 */
import type { Section } from '../resolved.ts';
import { fromMiddle } from '../sections.ts';
import { layLine } from './layLine.ts';
import type { LineProblem } from './line.ts';
import type { LaidOut } from './write.ts';

/**
 * @param laid  all lines of the run
 * @returns     all lines, those of the section laid anew where they stood in the way; null where no choice will do
 */
export function anchored(laid: readonly LaidOut[], section: Section, leg: string): readonly LaidOut[] | null {
  const inside = laid.filter((line) => isIn(section, line));
  const off = (line: LaidOut, at: number) => fromMiddle(section, { leg: line.job.leg.leg, at: at as never });
  const own = inside.filter(({ job }) => job.leg.leg === leg);
  let best: { readonly lines: ReadonlyMap<LaidOut, LaidOut>; readonly supports: number } | null = null;
  for (const bearer of own) {
    const { places } = bearer.job.problem;
    for (const distance of new Set(places.map((x) => off(bearer, x)).sort((a, b) => a - b))) {
      const near = places.filter((x) => off(bearer, x) <= distance);
      const must = [near[0] as number, near.at(-1) as number] as const;
      const lines = new Map<LaidOut, LaidOut>();
      for (const line of inside) {
        const again =
          line === bearer
            ? musting(line, must)
            : line.job.leg.leg === leg
              ? line
              : keepingOff(line, off, distance);
        if (again !== null) lines.set(line, again);
      }
      // Those that stand in the way at this distance do so at every greater one.
      if (lines.size < inside.length) break;
      const supports = [...lines.values()].reduce((sum, { layout }) => sum + layout.supports.length, 0);
      if (best === null || supports < best.supports) best = { lines, supports };
    }
  }
  const found = best?.lines;
  return found === undefined ? null : laid.map((line) => found.get(line) ?? line);
}

function isIn({ stretches }: Section, { job: { leg, problem } }: LaidOut): boolean {
  const middle = (problem.channel[0] + problem.channel[1]) / 2;
  return stretches.some(
    (stretch) => stretch.leg.leg === leg.leg && stretch.from <= middle && middle <= stretch.to,
  );
}

/** With a support between two places. */
function musting(line: LaidOut, must: readonly [number, number]): LaidOut | null {
  const { problem } = line.job;
  return withProblem(line, {
    ...problem,
    must,
    firstBy: Math.min(problem.firstBy, must[1]),
    lastFrom: Math.max(problem.lastFrom, must[0]),
  });
}

/** With no support nearer to the middle. */
function keepingOff(
  line: LaidOut,
  off: (line: LaidOut, at: number) => number,
  distance: number,
): LaidOut | null {
  const places = line.job.problem.places.filter((x) => off(line, x) >= distance);
  if (places.length === line.job.problem.places.length) return line;
  return withProblem(line, { ...line.job.problem, places });
}

function withProblem({ job }: LaidOut, problem: LineProblem): LaidOut | null {
  const layout = problem.places.length === 0 ? null : layLine(problem);
  return layout === null ? null : { job: { ...job, problem }, layout };
}
