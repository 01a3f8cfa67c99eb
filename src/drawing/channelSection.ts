/** Cross-sections of the channel with its splice: what is cut is hatched, channel one way, splice the other. */
import type { Fastening, Plate, Tray } from '../run/catalogue.ts';
import { inches } from '../trade/length.ts';
import type { Speak } from '../trade/say.ts';
import { shortLength } from '../trade/shortLength.ts';
import type { Target } from './balloon.ts';
import { across } from './dimension.ts';
import type { Plan } from './plan.ts';
import type { Box, Point } from './shapes.ts';

interface Given {
  readonly tray: Tray;
  readonly fastening: Fastening;
  /** Middle of the title under the section; the section stands above it. */
  readonly title: Point;
  /** Px to the inch. */
  readonly scale: number;
  readonly speak: Speak;
}

/** A channel by the middle of its floor's underside. */
interface Standing {
  readonly tray: Pick<Tray, 'width' | 'depth' | 'thickness'>;
  readonly at: Point;
  readonly scale: number;
}

/** Metal is drawn no thinner than this, so that its hatching shows. */
const LEAST_METAL = 6;

/** The three walls of a channel standing open side up: left leg, floor, right leg. */
export function channelWalls({ tray, at, scale }: Standing): {
  readonly walls: readonly Box[];
  readonly outline: readonly Point[];
  readonly metal: number;
  readonly inside: Box;
} {
  const metal = Math.max(LEAST_METAL, inches(tray.thickness) * scale);
  // The inside is to scale; the metal grows outwards.
  const w = inches(tray.width) * scale;
  const h = (inches(tray.depth) - inches(tray.thickness)) * scale;
  const [x, y] = [at[0] - w / 2, at[1] - metal - h];
  const bottom = y + h;
  const outline: Point[] = [
    [x - metal, y],
    [x, y],
    [x, bottom],
    [x + w, bottom],
    [x + w, y],
    [x + w + metal, y],
    [x + w + metal, bottom + metal],
    [x - metal, bottom + metal],
  ];
  const walls = [
    { x: x - metal, y, w: metal, h: h + metal },
    { x, y: bottom, w, h: metal },
    { x: x + w, y, w: metal, h: h + metal },
  ];
  return { walls, outline, metal, inside: { x, y, w, h } };
}

function channel(plan: Plan, given: Standing): ReturnType<typeof channelWalls> {
  const made = channelWalls(given);
  plan.polygon(made.outline, { fill: 'sheet' });
  for (const wall of made.walls) plan.hatch(wall, 'up');
  plan.polygon(made.outline, { pen: 'edge', part: 'section channel' });
  return made;
}

/** The dimension over the section and the title under it; nothing may stand between. */
function finish(plan: Plan, { tray, title, speak }: Given, inside: Box, top: number): void {
  across(plan, inside.x, inside.x + inside.w, top, shortLength(tray.width), {
    from: inside.y - 2,
    part: 'inside width',
  });
  plan.viewTitle(title, speak({ say: 'drawing.sectionAA' }));
}

/** Room from a title's base line up to what stands above it. */
const OVER_TITLE = 32;

const metalOf = ({ tray, scale }: Given) => Math.max(LEAST_METAL, inches(tray.thickness) * scale);

/** The sleeve round the channel, its edges turned in over the legs; a fastener through each leg, head inside. */
export function sleeveSection(plan: Plan, given: Given): Target {
  const { fastening, scale, tray, title } = given;
  const at: Point = [title[0], title[1] - OVER_TITLE - metalOf(given)];
  const standing = { tray, scale, at };
  const { inside: room, metal } = channelWalls(standing);
  const turned = Math.min(14, room.h * 0.3);
  const air = 1.5;
  const s = metal;
  const [xl, xr] = [room.x - metal - air, room.x + room.w + metal + air];
  const [yt, yb] = [room.y - air, room.y + room.h + metal + air];
  const lips = [
    { x: xl - s, y: yt - s, w: metal + 2 * air + 2 * s, h: s },
    { x: xr - metal - 2 * air - s, y: yt - s, w: metal + 2 * air + 2 * s, h: s },
    { x: xl - s, y: yt, w: s, h: yb - yt },
    { x: xr, y: yt, w: s, h: yb - yt },
    { x: xl - s, y: yb, w: xr - xl + 2 * s, h: s },
    { x: room.x + air, y: yt, w: s * 0.8, h: turned },
    { x: room.x + room.w - air - s * 0.8, y: yt, w: s * 0.8, h: turned },
  ];
  for (const lip of lips) plan.hatch(lip, 'down', 5);
  const t = s * 0.8;
  const skin: Point[] = [
    [xl - s, yt - s],
    [room.x + air + t, yt - s],
    [room.x + air + t, yt + turned],
    [room.x + air, yt + turned],
    [room.x + air, yt],
    [xl, yt],
    [xl, yb],
    [xr, yb],
    [xr, yt],
    [room.x + room.w - air, yt],
    [room.x + room.w - air, yt + turned],
    [room.x + room.w - air - t, yt + turned],
    [room.x + room.w - air - t, yt - s],
    [xr + s, yt - s],
    [xr + s, yb + s],
    [xl - s, yb + s],
  ];
  channel(plan, standing);
  plan.polygon(skin, { pen: 'thin', part: 'section sleeve' });
  const y = room.y + room.h * 0.58;
  const bolt = inches(fastening.bolt.diameter) * scale;
  const nut = Math.max(7, bolt * 0.9);
  for (const way of [-1, 1] as const) {
    const inner = way < 0 ? room.x : room.x + room.w;
    const outer = way < 0 ? xl - s : xr + s;
    const box = (from: number, to: number, h: number) => ({
      x: Math.min(from, to),
      y: y - h / 2,
      w: Math.abs(to - from),
      h,
    });
    plan.rect(box(inner, outer, bolt), { fill: 'sheet', pen: 'thin' });
    plan.rect(box(inner, inner - way * 4, bolt * 1.7), { fill: 'sheet', pen: 'thin' });
    plan.rect(box(outer, outer + way * 3, bolt * 2.1), { fill: 'sheet', pen: 'thin' });
    plan.rect(box(outer + way * 3, outer + way * (3 + nut), bolt * 1.6), {
      fill: 'sheet',
      pen: 'thin',
      part: 'nut',
    });
    plan.line('centre', [inner - way * 14, y], [outer + way * (nut + 14), y]);
  }
  finish(plan, given, room, yt - s - 20);
  plan.keep({ x: xl - s - 14, y: yt - s - 30, w: xr - xl + 2 * s + 28, h: yb - yt + 2 * s + 30 });
  return { at: [xr + s, yb - 4], likes: 20 };
}

/** The plate under the floor; a fastener through both, head inside. */
export function plateSection(plan: Plan, given: Given & { readonly plate: Plate }): Target {
  const { fastening, plate, scale, title, tray } = given;
  const bolt = inches(fastening.bolt.diameter) * scale;
  const nut = Math.max(7, bolt * 0.9);
  const thick = Math.max(LEAST_METAL, inches(plate.thickness) * scale);
  const at: Point = [title[0], title[1] - OVER_TITLE - 4 - nut - thick];
  const { inside: room, metal } = channel(plan, { tray, scale, at });
  const under = at[1] + 1;
  const wide = inches(plate.across) * scale;
  const box = { x: at[0] - wide / 2, y: under, w: wide, h: thick };
  plan.rect(box, { fill: 'sheet' });
  plan.hatch(box, 'down', 5);
  plan.rect(box, { pen: 'thin', part: 'section plate' });
  const floor = room.y + room.h;
  const bottom = under + thick;
  const stack: readonly (readonly [number, number, number])[] = [
    [floor, bottom, bolt],
    [floor - 4, floor, bolt * 1.8],
    [bottom, bottom + 3, bolt * 2.3],
    [bottom + 3, bottom + 3 + nut, bolt * 1.7],
  ];
  for (const [from, to, w] of stack) {
    plan.rect({ x: at[0] - w / 2, y: from, w, h: to - from }, { fill: 'sheet', pen: 'thin' });
  }
  plan.line('centre', [at[0], floor - 16], [at[0], bottom + nut + 14]);
  finish(plan, given, room, room.y - 22);
  plan.keep({
    x: room.x - metal - 6,
    y: room.y - 30,
    w: room.w + 2 * metal + 12,
    h: bottom + nut + 14 - room.y + 30,
  });
  return { at: [box.x + wide, under + thick / 2], likes: 20 };
}
