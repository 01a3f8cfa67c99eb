/** Splices and a jumper apart along their fasteners. */
import type { Fastening, Plate, Sleeve, Tray } from '../../run/catalogue.ts';
import { inches } from '../../trade/length.ts';
import type { Plan } from '../plan.ts';
import type { Point } from '../shapes.ts';
import { bolt, nut, washer } from './hardwareParts.ts';
import type { Picture, Room } from './picture.ts';

interface Fastened<Item> {
  readonly tray: Tray;
  readonly item: Item;
  readonly fastening: Fastening;
}

const sizesOf = ({ bolt: b, washer: w }: Fastening) => ({
  bolt: { diameter: inches(b.diameter), length: inches(b.length), head: b.head },
  washer: inches(w.outside),
});

interface Piece {
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly bottom: number;
  /** Where it goes on beyond a break. */
  readonly broken: 'left' | 'right';
}

function channelEnd(plan: Plan, { from, to, top, bottom, broken }: Piece): void {
  plan.rect({ x: from, y: top, w: to - from, h: bottom - top }, { fill: 'galv', part: 'channel' });
  for (const y of [top, bottom]) plan.line('edge', [from, y], [to, y]);
  const [open, end] = broken === 'left' ? [from, to] : [to, from];
  plan.line('edge', [end, top], [end, bottom], 'channel end');
  plan.breakLine(open, top, bottom);
  plan.keep({ x: from, y: top, w: to - from, h: bottom - top });
}

/** From above: channel, sleeve, channel along the run; the fasteners of the far leg out of their holes, heads inside. */
export function sleeveApart(
  plan: Plan,
  { form, width, margin, top }: Room,
  { tray, item, fastening }: Fastened<Sleeve>,
): Picture {
  const cx = width / 2;
  const stub = form === 'phone' ? 40 : 96;
  const gap = form === 'phone' ? 16 : 34;
  const px = Math.min(
    form === 'phone' ? 17 : 28,
    (width - 2 * margin - 28 - 2 * stub - 2 * gap) / inches(item.length),
  );
  const { bolt: b, washer: w } = sizesOf(fastening);
  const half = (inches(tray.outsideWidth) * px) / 2;
  const nutAt = top;
  const nutHigh = Math.max(0.3, b.diameter * 0.85) * px;
  const washerAt = nutAt + nutHigh + 12;
  const sleeveTop = washerAt + 4 + 18;
  const middle = sleeveTop + half + 4;
  const long = (inches(item.length) * px) / 2;
  const sleeve = { x: cx - long, y: middle - half - 4, w: 2 * long, h: 2 * half + 8 };
  const holes = [
    cx - long + inches(item.fastenerFromEnd) * px,
    cx + long - inches(item.fastenerFromEnd) * px,
  ] as const;

  channelEnd(plan, {
    from: cx - long - gap - stub,
    to: cx - long - gap,
    top: middle - half,
    bottom: middle + half,
    broken: 'left',
  });
  channelEnd(plan, {
    from: cx + long + gap,
    to: cx + long + gap + stub,
    top: middle - half,
    bottom: middle + half,
    broken: 'right',
  });
  plan.rect(sleeve, { fill: 'sheet', pen: 'edge', part: 'sleeve' });
  // Edges turned in over the legs, where the channel slides.
  const turned = Math.max(5, 0.3 * px);
  for (const y of [sleeve.y + turned, sleeve.y + sleeve.h - turned])
    plan.line('thin', [sleeve.x, y], [sleeve.x + sleeve.w, y]);
  plan.keep(sleeve);
  plan.line('centre', [cx - long - gap - stub + 8, middle], [cx + long + gap + stub - 8, middle]);
  const boltAt = sleeve.y + turned + 7;
  for (const x of holes) {
    plan.line('centre', [x, nutAt - 9], [x, sleeve.y + sleeve.h - turned - 3]);
    nut({ plan, x, y: nutAt, px }, b.diameter, 'nut');
    washer({ plan, x, y: washerAt, px }, w, 'washer');
    // Head inside: turned over, so that its thread looks out through the leg.
    boltUp(plan, x, boltAt, px, {
      ...b,
      length: Math.min(b.length, (2 * half - 2 * turned - 20) / px - 0.4),
    });
  }
  const across = sleeve.y + sleeve.h;
  return {
    bottom: across,
    targets: {
      channel: { at: [cx - long - gap - stub / 2, middle + half * 0.5], likes: 120 },
      sleeve: { at: [cx + long * 0.3, across - turned / 2], likes: 70 },
      nut: { at: [holes[0] - 0.2 * px, nutAt + nutHigh / 2], likes: 200 },
      washer: { at: [holes[1] + 0.4 * px, washerAt + 2], likes: -10 },
      bolt: { at: [holes[1] + 2, boltAt + b.length * px * 0.4], likes: 20 },
      'second-channel': { at: [cx + long + gap + stub / 2, middle + half * 0.5], likes: 60 },
    },
  };
}

function boltUp(
  plan: Plan,
  x: number,
  y: number,
  px: number,
  { diameter, length, head }: { diameter: number; length: number; head: 'round' | 'hex' },
): void {
  const long = Math.max(length, 0.35) * px;
  const w = Math.max(diameter * 1.8, 0.5) * px;
  const h = Math.max(diameter * 0.65, 0.24) * px;
  plan.rect(
    { x: x - (diameter * px) / 2, y, w: diameter * px, h: long },
    { fill: 'sheet', pen: 'thin', part: 'bolt' },
  );
  for (let t = y + 3; t < y + long * 0.6; t += Math.max(3, 0.14 * px)) {
    plan.line('dimension', [x - (diameter * px) / 2, t], [x + (diameter * px) / 2, t - 1.5]);
  }
  if (head === 'hex')
    plan.rect({ x: x - w / 2, y: y + long, w, h }, { fill: 'sheet', pen: 'thin', part: 'bolt' });
  else {
    const points = Array.from({ length: 11 }, (_, i): Point => {
      const a = (Math.PI * i) / 10;
      return [x + (Math.cos(a) * w) / 2, y + long + Math.sin(a) * h];
    });
    plan.polygon(points, { fill: 'sheet', pen: 'thin', part: 'bolt' });
  }
}

/** From the side: bolts above the two channel ends, plate, washers and nuts below. */
export function plateApart(
  plan: Plan,
  { form, width, margin, top }: Room,
  { tray, item, fastening }: Fastened<Plate>,
): Picture {
  const cx = width / 2;
  const { bolt: b, washer: w } = sizesOf(fastening);
  const px = Math.min(
    form === 'phone' ? 22 : 34,
    (width - 2 * margin - (form === 'phone' ? 110 : 240)) / inches(item.length),
  );
  const reach = (width - 2 * margin) / 2 - (form === 'phone' ? 30 : 76);
  const boltHigh = (Math.max(b.diameter * 0.65, 0.24) + b.length) * px;
  const channelTop = top + boltHigh + 14;
  const bottom = channelTop + inches(tray.depth) * px;
  const plateAt = bottom + 22;
  const thick = Math.max(5, inches(item.thickness) * px);
  const washerAt = plateAt + thick + 16;
  const nutAt = washerAt + 4 + 12;
  const nutHigh = Math.max(0.3, b.diameter * 0.85) * px;
  const holes = [...tray.plateHoles].sort((p, q) => p - q).map((h) => inches(h) * px);
  const xs = [...holes.map((h) => cx - 2 - h), ...holes.map((h) => cx + 2 + h)].sort((p, q) => p - q);

  channelEnd(plan, { from: cx - reach, to: cx - 2, top: channelTop, bottom, broken: 'left' });
  channelEnd(plan, { from: cx + 2, to: cx + reach, top: channelTop, bottom, broken: 'right' });
  // The floor is hidden by the leg; its holes are where the axes go down.
  plan.line('hidden', [cx - reach + 8, bottom - 5], [cx - 5, bottom - 5]);
  plan.line('hidden', [cx + 5, bottom - 5], [cx + reach - 8, bottom - 5]);
  const long = (inches(item.length) * px) / 2;
  plan.rect(
    { x: cx - long, y: plateAt, w: 2 * long, h: thick },
    { fill: 'sheet', pen: 'edge', part: 'plate' },
  );
  plan.keep({ x: cx - long, y: plateAt, w: 2 * long, h: thick });
  for (const x of xs) {
    plan.line('centre', [x, top - 8], [x, nutAt + nutHigh + 10]);
    bolt({ plan, x, y: top, px }, b, 'bolt');
    washer({ plan, x, y: washerAt, px }, w, 'washer');
    nut({ plan, x, y: nutAt, px }, b.diameter, 'nut');
  }
  const [first = cx, last = cx] = [xs[0], xs.at(-1)];
  return {
    bottom: nutAt + nutHigh,
    targets: {
      bolt: { at: [first - 2, top + boltHigh * 0.5], likes: 190 },
      channel: { at: [cx - reach + 22, channelTop + (bottom - channelTop) * 0.5], likes: 240 },
      plate: { at: [cx - long + 6, plateAt + thick / 2], likes: 170 },
      washer: { at: [last + (w * px) / 2 - 2, washerAt + 2], likes: 0 },
      nut: { at: [last + 0.2 * px, nutAt + nutHigh / 2], likes: 20 },
      'second-channel': { at: [cx + reach - 22, channelTop + (bottom - channelTop) * 0.5], likes: -60 },
    },
  };
}

/** From the side: bolts and washers above the two floors, lugs with the jumper beneath, flange nuts. */
export function jumperApart(
  plan: Plan,
  { form, width, margin, top }: Room,
  { tray, fastening }: { readonly tray: Tray; readonly fastening: Fastening | undefined },
): Picture {
  const cx = width / 2;
  const px = form === 'phone' ? 26 : 34;
  const b =
    fastening === undefined
      ? { diameter: 0.25, length: 0.75, head: 'round' as const }
      : sizesOf(fastening).bolt;
  const w = fastening === undefined ? 0.75 : sizesOf(fastening).washer;
  const apart = form === 'phone' ? 66 : 110;
  const reach = (width - 2 * margin) / 2 - (form === 'phone' ? 24 : 96);
  const boltHigh = (0.24 + b.length) * px;
  const washerAt = top + boltHigh + 12;
  const floorAt = washerAt + 4 + 16;
  const metal = Math.max(6, inches(tray.thickness) * px);
  const rise = 0.7 * px;
  const lugAt = floorAt + metal + 22;
  const lugHigh = 5;
  const nutAt = lugAt + lugHigh + 22;
  const ends = [cx - apart, cx + apart] as const;
  const gap = apart * 0.42;
  const nutHigh = 0.3 * px;

  for (const [side, from, to] of [
    [-1, cx - reach, cx - gap],
    [1, cx + gap, cx + reach],
  ] as const) {
    // The floor is cut along its middle; the far leg is seen behind it.
    plan.rect({ x: from, y: floorAt - rise, w: to - from, h: rise }, { fill: 'galv', part: 'channel' });
    plan.line('thin', [from, floorAt - rise], [to, floorAt - rise]);
    plan.line('thin', [side < 0 ? to : from, floorAt - rise], [side < 0 ? to : from, floorAt]);
    const floor = { x: from, y: floorAt, w: to - from, h: metal };
    plan.rect(floor, { fill: 'sheet' });
    plan.hatch(floor, 'up');
    plan.rect(floor, { pen: 'edge', part: 'channel' });
    const slot = Math.max(b.diameter + 0.1, 0.32) * px;
    const x = ends[side < 0 ? 0 : 1];
    plan.rect({ x: x - slot / 2, y: floorAt - 1.5, w: slot, h: metal + 3 }, { fill: 'sheet', part: 'slot' });
    for (const k of [-0.5, 0.5])
      plan.line('edge', [x + k * slot, floorAt - 1], [x + k * slot, floorAt + metal + 1]);
    plan.keep({ x: from, y: floorAt - rise, w: to - from, h: rise + metal });
  }
  // The jumper hangs slack between its lugs.
  const sag = 30;
  const curve = (off: number): Point[] =>
    Array.from({ length: 25 }, (_, i) => {
      const k = i / 24;
      const x = ends[0] + 0.55 * px + (2 * apart - 1.1 * px) * k;
      return [x, lugAt + lugHigh / 2 + off + sag * 4 * k * (1 - k)];
    });
  const [upper, lower] = [curve(-2.6), curve(2.6)];
  plan.polygon([...upper, ...[...lower].reverse()], { fill: 'galv2', pen: 'thin', part: 'jumper' });
  plan.keep({ x: ends[0] + px, y: lugAt + 8, w: 2 * apart - 2 * px, h: sag - 2 });
  for (const [i, x] of ends.entries()) {
    const way = i === 0 ? 1 : -1;
    plan.line('centre', [x, top - 9], [x, nutAt + nutHigh + 9]);
    const lug = { x: Math.min(x - way * 0.42 * px, x + way * 0.75 * px), y: lugAt, w: 1.17 * px, h: lugHigh };
    plan.rect(lug, { fill: 'sheet', pen: 'thin', part: 'lug' });
    plan.keep(lug);
    bolt({ plan, x, y: top, px }, { ...b, head: 'round' }, 'bolt');
    washer({ plan, x, y: washerAt, px }, w, 'washer');
    nut({ plan, x, y: nutAt, px }, b.diameter, 'nut', 'above');
  }
  return {
    bottom: Math.max(nutAt + nutHigh, lugAt + sag + 12),
    targets: {
      bolt: { at: [ends[0] - 2, top + boltHigh * 0.55], likes: 190 },
      washer: { at: [ends[1] + (w * px) / 2 - 2, washerAt + 2], likes: -10 },
      channel: { at: [cx + reach - 14, floorAt + metal / 2], likes: 50 },
      lug: { at: [ends[0] - 0.36 * px, lugAt + lugHigh / 2], likes: 170 },
      jumper: { at: [cx, lugAt + lugHigh / 2 + sag], likes: 90 },
      nut: { at: [ends[1] + 0.2 * px, nutAt + nutHigh / 2], likes: 20 },
      slot: { at: [ends[0], floorAt + metal / 2], likes: 230 },
    },
  };
}
