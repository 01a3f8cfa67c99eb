/** Dimensions of the legs along the axes of the isometric: extension lines, arrowheads, a line that breaks for its text. */
import { dot, type Vec } from '../../run/vector.ts';
import { textWidth } from '../glyphs.ts';
import type { Box, Point } from '../shapes.ts';
import type { Setting } from './setting.ts';
import { off, WAYS } from './space.ts';

/** From the working points to the dimension line, px. */
const AWAY = [30, 40, 52, 66, 82, 100];
const HEAD = 11;

interface Line {
  readonly ends: readonly [Point, Point];
  readonly extensions: readonly (readonly [Point, Point])[];
  readonly text: Box;
  readonly cost: number;
}

export interface Wanted {
  readonly from: Vec;
  readonly to: Vec;
  readonly along: Vec;
  /** Extension lines begin this far from the two ends. */
  readonly clear: number;
  readonly text: string;
  readonly size: number;
  readonly part: string;
  /** Px to the line; left out, those of a leg. */
  readonly away?: readonly number[] | undefined;
  /** No text: the middle is where a leader starts. */
  readonly bare?: boolean | undefined;
}

/** Draws the dimension at its best place; `undefined` where there is none, else the middle of its line. */
export function dimension(setting: Setting, wanted: Wanted): Point | undefined {
  const { plan, room } = setting;
  const best = bestLine(setting, wanted);
  if (best === undefined) return undefined;
  const { ends, extensions, text } = best;
  const { size, part } = wanted;
  for (const [a, b] of [...extensions, ends]) {
    plan.line('dimension', a, b, part);
    room.ink(a, b);
  }
  const turn = (Math.atan2(ends[1][1] - ends[0][1], ends[1][0] - ends[0][0]) * 180) / Math.PI;
  if (length(ends) < 30) {
    for (const [x, y] of ends) plan.line('thin', [x - 4, y + 5], [x + 4, y - 5], part);
  } else {
    plan.arrow(ends[0], turn + 180, HEAD);
    plan.arrow(ends[1], turn, HEAD);
  }
  if (wanted.bare !== true) {
    plan.text([text.x + text.w / 2, text.y + size * 0.78], wanted.text, {
      size,
      weight: size > 16 ? 700 : 650,
      ground: 'sheet',
      part,
    });
    room.keep(text);
  }
  return [(ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2];
}

const length = ([a, b]: readonly [Point, Point]) => Math.hypot(b[0] - a[0], b[1] - a[1]);

function bestLine(setting: Setting, wanted: Wanted): Line | undefined {
  const { scene, place } = setting;
  const { box } = scene.route;
  const middle: Point = place([0, 0, 0]);
  // Middle of the whole scene on the sheet: a dimension would rather stand outside.
  const centre: Point = [middle[0] + box.x + box.w / 2, middle[1] + box.y + box.h / 2];
  let best: Line | undefined;
  for (const way of WAYS) {
    if (Math.abs(dot(way, wanted.along)) > 0.5) continue;
    for (const away of wanted.away ?? AWAY) {
      for (const line of linesAt(setting, wanted, way, away)) {
        const [x, y] = [(line.ends[0][0] + line.ends[1][0]) / 2, (line.ends[0][1] + line.ends[1][1]) / 2];
        const [mx, my] = place(off(wanted.from, off(wanted.to, wanted.from, -1), 0.5));
        const outwards = (x - mx) * (mx - centre[0]) + (y - my) * (my - centre[1]);
        const cost = line.cost + away * 0.35 - Math.sign(outwards) * 4 + (y < my ? 3 : 0);
        if (best === undefined || cost < best.cost) best = { ...line, cost };
      }
    }
  }
  return best;
}

/** Most ink that the lines may cross before the length is better said in words. */
const MOST = 40;

function linesAt({ room, place }: Setting, wanted: Wanted, way: Vec, away: number): readonly Line[] {
  const { from, to, clear, text, size, bare } = wanted;
  if (away < clear + 8) return [];
  const ends: readonly [Point, Point] = [place(off(from, way, away)), place(off(to, way, away))];
  const extensions = [from, to].map(
    (p) => [place(off(p, way, clear)), place(off(p, way, away + 6))] as const,
  );
  if (!room.open(...ends) || extensions.some((e) => !room.open(...e))) return [];
  const crossed = room.inkAlong(...ends) + extensions.reduce((sum, e) => sum + room.inkAlong(...e), 0);
  if (crossed > MOST) return [];
  if (bare === true) return [{ ends, extensions, text: { x: 0, y: 0, w: 0, h: 0 }, cost: crossed * 2 }];
  const long = length(ends);
  const [dx, dy] = [(ends[1][0] - ends[0][0]) / (long || 1), (ends[1][1] - ends[0][1]) / (long || 1)];
  const [w, h] = [textWidth(text, size) + 8, size * 0.94 + 4];
  const [cx, cy] = [(ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2];
  const covered = Math.min(
    Math.abs(dx) < 1e-6 ? 1e9 : w / Math.abs(dx),
    Math.abs(dy) < 1e-6 ? 1e9 : h / Math.abs(dy),
  );
  const at = (x: number, y: number): Box => ({ x: x - w / 2, y: y - h / 2, w, h });
  const boxes: { readonly box: Box; readonly cost: number }[] = [];
  if (long >= covered + 2 * HEAD + 10) boxes.push({ box: at(cx, cy), cost: 0 });
  else {
    // Beside the line, on the side away from the leg.
    const [ox, oy] = [
      place(off(from, way, away + 1))[0] - ends[0][0],
      place(off(from, way, away + 1))[1] - ends[0][1],
    ];
    const reach = Math.abs(ox) * (w / 2) + Math.abs(oy) * (h / 2) + 6;
    boxes.push({ box: at(cx + ox * reach, cy + oy * reach), cost: 6 });
  }
  return boxes.flatMap(({ box, cost }) => {
    if (!room.free(box, 3)) return [];
    const ink = room.inkIn(box);
    return ink > 2 ? [] : [{ ends, extensions, text: box, cost: cost + crossed * 2 + ink * 6 }];
  });
}
