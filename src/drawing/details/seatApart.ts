/** Strut, nuts, channel, clamps, washers and bolts of a support, apart along their bolts. */
import type { Tray } from '../../run/catalogue.ts';
import { inches } from '../../trade/length.ts';
import { channelWalls } from '../channelSection.ts';
import type { Plan } from '../plan.ts';
import { bolt, channelNut, clampAlone, washer } from './hardwareParts.ts';
import type { Picture, Room } from './picture.ts';
import { STRUT, seatSize } from './seat.ts';

interface Given {
  readonly tray: Tray;
  readonly held: 'clamp' | 'guide';
  /** A third bolt through the middle of the floor. */
  readonly centreBolt: boolean;
}

/** A bolt as is usual for strut: 3/8 by 1 in (common practice, no source). */
const BOLT = { diameter: 0.375, length: 1, head: 'hex' } as const;

export function seatApart(
  plan: Plan,
  { form, width, margin, top }: Room,
  { tray, held, centreBolt }: Given,
): Picture {
  const cx = width / 2;
  const most = form === 'phone' ? 21 : 27;
  const px = Math.min(
    most,
    (width - 2 * margin - (form === 'phone' ? 86 : 200)) / (inches(tray.outsideWidth) + 4.4),
  );
  const gap = Math.max(13, 0.55 * px);
  const { half, high } = seatSize(tray, null, px);
  const side = half + 0.95 * px + (held === 'guide' ? 5 : 0) + 4;
  const [left, right] = [cx - side, cx + side];
  const reach = half + 2.1 * px;
  const sides = [left, right] as const;

  const boltHigh = (0.25 + BOLT.length) * px;
  const washerAt = top + boltHigh + gap;
  const clampAt = washerAt + 4 + gap;
  const clampHigh = high + 0.4 * px;
  const channelTop = clampAt + clampHigh * 0.55 + gap;
  const nutAt = channelTop + high + gap * 1.6 + (centreBolt ? 6 : 0);
  const strutAt = nutAt + 0.42 * px + gap * 1.2;
  const bottom = strutAt + STRUT * px;

  // The axes are under what is drawn on them.
  for (const x of centreBolt ? [left, cx, right] : sides) plan.line('centre', [x, top - 10], [x, bottom + 8]);
  const strut = { x: cx - reach, y: strutAt, w: 2 * reach, h: STRUT * px };
  plan.rect(strut, { fill: 'galv', pen: 'edge', part: 'strut' });
  plan.line('hidden', [strut.x + 3, strutAt + 0.28 * px], [strut.x + strut.w - 3, strutAt + 0.28 * px]);
  plan.keep(strut);
  const nuts = (centreBolt ? [left, cx, right] : sides).map((x) =>
    channelNut({ plan, x, y: nutAt, px }, 'nut'),
  );

  const { outline, walls, metal } = channelWalls({ tray, at: [cx, channelTop + high], scale: px });
  plan.polygon(outline, { fill: 'sheet' });
  for (const wall of walls) plan.hatch(wall, 'up');
  plan.polygon(outline, { pen: 'edge', part: 'channel' });
  plan.keep({ x: cx - half, y: channelTop, w: 2 * half, h: high });
  if (centreBolt) {
    const hole = inches(tray.webHoles.width) * px;
    const y = channelTop + high - metal;
    plan.rect({ x: cx - hole / 2, y: y - 1.5, w: hole, h: metal + 3 }, { fill: 'sheet', part: 'hole' });
    for (const k of [-0.5, 0.5])
      plan.line('edge', [cx + k * hole, y - 1.2], [cx + k * hole, y + metal + 1.2]);
    plan.line('centre', [cx, y - 10], [cx, y + metal + 10]);
  }

  const t = Math.max(4, 0.2 * px);
  const air = held === 'guide' ? 5 : 0;
  for (const [x, way] of [
    [left, -1],
    [right, 1],
  ] as const) {
    const inner = cx + way * (half + air + 4);
    clampAlone(
      { plan, x: inner, y: clampAt, px },
      way,
      { high: clampHigh, reach: 1.7 * px, thick: t, hook: metal + 5 + air },
      held,
    );
    washer({ plan, x, y: washerAt, px }, 1, 'washer');
    bolt({ plan, x, y: top, px }, BOLT, 'bolt');
  }
  if (centreBolt) {
    washer({ plan, x: cx, y: Math.max(washerAt, top + boltHigh + gap), px }, 1, 'washer');
    bolt({ plan, x: cx, y: top, px }, BOLT, 'centre bolt');
  }
  const nutBox = nuts[0] ?? strut;
  return {
    bottom,
    targets: {
      bolt: { at: [right + 0.15 * px, top + boltHigh * 0.6], likes: -10 },
      washer: { at: [right + 0.42 * px, washerAt + 2], likes: 10 },
      [held]: { at: [cx + half + air + 4 + 1.4 * px, clampAt + clampHigh - t / 2], likes: 10 },
      channel: { at: [cx - half + metal / 2, channelTop + high * 0.6], likes: 180 },
      nut: { at: [nutBox.x + 4, nutBox.y + nutBox.h * 0.6], likes: 180 },
      strut: { at: [strut.x + 7, strut.y + strut.h * 0.6], likes: 150 },
      ...(centreBolt
        ? {
            'centre-bolt': { at: [cx - 0.15 * px, top + boltHigh * 0.6] as const, likes: 190 },
            hole: { at: [cx, channelTop + high - metal / 2] as const, likes: -60 },
          }
        : {}),
    },
  };
}
