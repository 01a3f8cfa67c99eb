/** Title and north arrow, in corners that the route leaves free. */
import { textWidth } from '../glyphs.ts';
import { SIZES } from '../plan.ts';
import type { Box, Point } from '../shapes.ts';
import type { Setting } from './setting.ts';

type Corner = 'top left' | 'top right' | 'bottom left' | 'bottom right';

/** The first corner in which a box covers nothing. */
function cornerFor(
  { room }: Setting,
  { w, h }: { w: number; h: number },
  order: readonly Corner[],
  band: boolean,
): Box | undefined {
  const { x, y, w: wide, h: high } = room.bounds;
  const at = (corner: Corner): Box => ({
    x: corner.endsWith('left') ? x + 8 : x + wide - w - 8,
    y: corner.startsWith('top') ? y + 6 : y + high - h - 6,
    w,
    h,
  });
  return order
    .map(at)
    .find(
      (box) =>
        room.free(box, 4) && (band || room.inkIn({ x: box.x - 6, y: box.y - 6, w: w + 12, h: h + 12 }) === 0),
    );
}

const TITLE_ORDER: readonly Corner[] = ['bottom left', 'bottom right', 'top left', 'top right'];
const NORTH_ORDER: readonly Corner[] = ['top right', 'top left', 'bottom right', 'bottom left'];

/**
 * Draws both.
 *
 * @param band  whether ground at the foot is kept for them, so that they stand there in any case
 * @returns whether they found room
 */
export function drawCorners(setting: Setting, band: boolean): boolean {
  const { plan, room, speak, scene, form } = setting;
  const title = speak({ say: 'rundrawing.isometric' });
  const { wider } = scene.route;
  const below =
    wider > 1.04
      ? speak({
          say: `rundrawing.wider-${form === 'phone' ? 'phone' : 'desk'}`,
          values: { times: timesOf(wider) },
        })
      : speak({ say: 'drawing.scale' });
  const w = Math.max(textWidth(title, SIZES.text) + 18, textWidth(below, SIZES.note) + 2);
  const size = { w, h: 42 };
  const titleAt = cornerFor(setting, size, band ? ['bottom left'] : TITLE_ORDER, band);
  if (titleAt === undefined) return false;
  plan.viewTitle([titleAt.x + w / 2, titleAt.y + 13], title, below);
  room.keep(titleAt);
  const northAt = cornerFor(setting, { w: 58, h: 44 }, band ? ['bottom right'] : NORTH_ORDER, band);
  if (northAt === undefined) return false;
  north(setting, northAt);
  room.keep(northAt);
  return true;
}

export const timesOf = (k: number): string =>
  k >= 3 ? String(Math.round(k)) : String(Math.round(k * 10) / 10);

/** North runs right and up the sheet, 30° above level. */
function north({ plan, speak }: Setting, { x, y, w, h }: Box): void {
  const [cx, cy] = [x + w - 22, y + h / 2 + 2];
  const turned = (dx: number, dy: number): Point => {
    const turn = Math.PI / 3;
    return [cx + dx * Math.cos(turn) - dy * Math.sin(turn), cy + dx * Math.sin(turn) + dy * Math.cos(turn)];
  };
  plan.circle([cx, cy], 13, { pen: 'thin', part: 'north' });
  plan.polygon([turned(0, -21), turned(6, 5), turned(-6, 5)], { fill: 'ink', part: 'north' });
  plan.text([x + 9, y + h / 2 - 2], speak({ say: 'rundrawing.north' }), { part: 'north' });
}
