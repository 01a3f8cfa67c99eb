/** Where round cables come to lie when they are laid into a channel one by one, the thickest first. */

export interface Laid {
  /** Middle, in the unit of the width; x from the left wall, y up from the floor. */
  readonly x: number;
  readonly y: number;
  readonly r: number;
  /** Which of the given kinds it is. */
  readonly kind: number;
}

const TOUCH = 1e-9;

/**
 * Each cable goes to the lowest place where it touches floor, walls or cables and overlaps none; of equally low
 * places the leftmost. A picture of what fits, not a rule: fill is judged by area.
 *
 * @param width  between the walls
 * @param kinds  diameter and count of each kind of cable, diameter at most the width
 */
export function layCables(
  width: number,
  kinds: readonly { readonly od: number; readonly count: number }[],
): readonly Laid[] {
  const order = kinds
    .map(({ od, count }, kind) => ({ r: od / 2, count, kind }))
    .sort((a, b) => b.r - a.r || a.kind - b.kind);
  const laid: Laid[] = [];
  for (const { r, count, kind } of order) {
    for (let i = 0; i < count; i++) laid.push({ ...lowest(width, r, laid), r, kind });
  }
  return laid;
}

function lowest(width: number, r: number, laid: readonly Laid[]): { readonly x: number; readonly y: number } {
  const places = [
    { x: r, y: r },
    { x: width - r, y: r },
    ...laid.flatMap((c) => onFloor(c, r)),
    ...laid.flatMap((c) => onWall(c, r, width)),
    ...laid.flatMap((a, i) => laid.slice(i + 1).flatMap((b) => onBoth(a, b, r))),
  ];
  let best: { readonly x: number; readonly y: number } | undefined;
  for (const place of places) {
    const { x, y } = place;
    if (x < r - TOUCH || x > width - r + TOUCH || y < r - TOUCH) continue;
    if (laid.some((c) => Math.hypot(c.x - x, c.y - y) < c.r + r - 1e-6)) continue;
    if (best === undefined || y < best.y - TOUCH || (y < best.y + TOUCH && x < best.x)) best = place;
  }
  // A cable always has a place on top of all others.
  return best ?? { x: r, y: Math.max(...laid.map((c) => c.y + c.r), 0) + r };
}

/** Beside a cable, on the floor. */
function onFloor(c: Laid, r: number) {
  const off = Math.sqrt(Math.max(0, (c.r + r) ** 2 - (c.y - r) ** 2));
  return [
    { x: c.x - off, y: r },
    { x: c.x + off, y: r },
  ];
}

/** Against a wall, on a cable. */
function onWall(c: Laid, r: number, width: number) {
  return [r, width - r].flatMap((x) => {
    const up = (c.r + r) ** 2 - (c.x - x) ** 2;
    return up < 0 ? [] : [{ x, y: c.y + Math.sqrt(up) }];
  });
}

/** In the groove over two cables. */
function onBoth(a: Laid, b: Laid, r: number) {
  const [ra, rb] = [a.r + r, b.r + r];
  const d = Math.hypot(b.x - a.x, b.y - a.y);
  if (d === 0 || d > ra + rb) return [];
  const along = (ra * ra - rb * rb + d * d) / (2 * d);
  const off = Math.sqrt(Math.max(0, ra * ra - along * along));
  const [ux, uy] = [(b.x - a.x) / d, (b.y - a.y) / d];
  return [1, -1].map((side) => ({
    x: a.x + along * ux - side * off * uy,
    y: a.y + along * uy + side * off * ux,
  }));
}
