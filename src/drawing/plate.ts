/** A plate splice seen from below: channel ends butted, the plate across them, two bolts through each floor. */
import { inches, type Ticks, ticks } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { drawBalloons, type Target } from './balloon.ts';
import { plateSection } from './channelSection.ts';
import { cuttingPlane } from './cuttingPlane.ts';
import { across, opening } from './dimension.ts';
import { frameOf, MARGIN } from './frame.ts';
import { Plan } from './plan.ts';
import type { PlateGiven } from './spliceGiven.ts';
import { spoken, together } from './spoken.ts';
import type { Sheet } from './svg.ts';
import type { Form, How } from './types.ts';

interface Layout {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  /** Greatest drawn width of the channel. */
  readonly across: number;
  readonly gap: number;
}

const LAYOUT: Readonly<Record<Form, Layout>> = {
  phone: { width: 328, height: 490, scale: 20, across: 92, gap: 6 },
  desk: { width: 660, height: 544, scale: 38, across: 140, gap: 8 },
  paper: { width: 660, height: 544, scale: 38, across: 140, gap: 8 },
};

/** Places along the view from below; across the channel it is drawn to the same scale where the sheet has room. */
export function plateScale({ joint, tray }: PlateGiven, form: Form) {
  const { width, scale, across: most, gap } = LAYOUT[form];
  const cx = width / 2;
  const drawn = joint.opening === 0 ? 0 : gap;
  const ends = [cx - drawn / 2, cx + drawn / 2] as const;
  const px = Math.min(scale, most / inches(tray.outsideWidth));
  const bolts = tray.plateHoles.flatMap((hole) => [
    ends[0] - inches(hole) * scale,
    ends[1] + inches(hole) * scale,
  ]);
  return { along: scale, px, cx, ends, bolts: bolts.sort((a, b) => a - b), toScale: px === scale };
}

export function layPlate(given: PlateGiven, how: How): Sheet {
  const { joint, tray, item, fastening, balloons = [] } = given;
  const { form, speak } = how;
  const { width, height } = LAYOUT[form];
  const margin = MARGIN[form];
  const { along, px, cx, ends, bolts } = plateScale(given, form);
  const plan = new Plan();
  const half = (inches(tray.outsideWidth) * px) / 2;
  const middle = margin + (form === 'phone' ? 108 : 110) + half;
  const [top, bottom] = [middle - half, middle + half];
  const [left, right] = [margin + 18, width - margin - 18];

  for (const [from, to, part] of [
    [left, ends[0], 'channel before'],
    [ends[1], right, 'channel behind'],
  ] as const) {
    plan.rect({ x: from, y: top, w: to - from, h: 2 * half }, { fill: 'galv', part });
    for (const y of [top, bottom]) plan.line('edge', [from, y], [to, y]);
  }
  for (const x of new Set(ends)) plan.line('edge', [x, top], [x, bottom], 'channel end');
  plan.breakLine(left, top, bottom);
  plan.breakLine(right, top, bottom);
  plan.keep({ x: left, y: top, w: right - left, h: 2 * half });

  // The small holes of the floor, for they are not the plate's.
  for (const [end, way] of [
    [ends[0], -1],
    [ends[1], 1],
  ] as const) {
    const x = end + way * inches(tray.webHoles.first) * along;
    const hole = (inches(tray.webHoles.width) * along) / 2;
    if (x - hole < left + 12 || x + hole > right - 12) continue;
    plan.circle([x, middle], hole, { fill: 'sheet', pen: 'thin', part: 'floor hole' });
    plan.line('dimension', [x, middle - hole - 4], [x, middle + hole + 4]);
  }

  const reach = (inches(item.length) * along) / 2 + (ends[1] - ends[0]) / 2;
  const wide = inches(item.across) * px;
  const plate = { x: cx - reach, y: middle - wide / 2, w: 2 * reach, h: wide };
  plan.rect(plate, { fill: 'sheet', pen: 'edge', part: 'plate' });
  for (const x of new Set(ends)) plan.line('hidden', [x, plate.y], [x, plate.y + wide]);
  plan.line('centre', [left + 10, middle], [right - 10, middle]);
  const r = Math.max(5, (inches(fastening.hole.width) * along) / 2);
  for (const x of bolts) {
    plan.circle([x, middle], r, { fill: 'sheet', pen: 'thin', part: 'fastener' });
    plan.line('dimension', [x - r - 4, middle], [x + r + 4, middle]);
    plan.line('dimension', [x, middle - r - 4], [x, middle + r + 4]);
  }

  const rows = [top - 46, top - 74];
  const holes = [...tray.plateHoles].sort((a, b) => a - b);
  holes.forEach((hole, i) => {
    const y = rows[i] ?? top - 46 - 28 * i;
    const off = inches(hole) * along;
    across(plan, ends[0] - off, ends[0], y, shortLength(hole), {
      from: top,
      beside: 'before',
      part: 'bolt before',
    });
    across(plan, ends[1], ends[1] + off, y, shortLength(hole), { from: top, part: 'bolt behind' });
  });
  const plateRow = bottom + 30;
  across(plan, plate.x, plate.x + plate.w, plateRow, shortLength(item.length), {
    from: plate.y + wide,
    part: 'plate length',
  });
  const gapRow = bottom + 66;
  if (joint.opening > 0) {
    const text = speak({ say: 'drawing.gap', values: { gap: shortLength(joint.opening) } });
    opening(plan, ends[0], ends[1], gapRow, text, bottom + 2, 'opening');
  }
  const inner = bolts.find((x) => x > cx) ?? cx;
  const outer = bolts.at(-1) ?? inner;
  cuttingPlane(plan, outer, top - 8, bottom + 8);

  const note = form === 'phone' ? 'drawing.plateScaleShort' : 'drawing.plateScale';
  const titles = height - margin - (form === 'phone' ? 42 : 54);
  plan.viewTitle(
    [margin + (form === 'phone' ? 84 : 160), titles],
    speak({ say: 'drawing.fromBelow' }),
    speak({ say: joint.opening > 0 ? note : 'drawing.scale' }),
  );
  const cut = plateSection(plan, {
    tray,
    fastening,
    plate: item,
    title: [width - margin - (form === 'phone' ? 76 : 112), titles],
    scale: Math.min(form === 'phone' ? 20 : 32, (form === 'phone' ? 84 : 136) / inches(tray.outsideWidth)),
    speak,
  });

  const frame = frameOf(form, width, height);
  const targets: Record<string, Target> = {
    'first-channel': { at: [left + 16, bottom - 10], likes: 100 },
    'second-channel': { at: [right - 16, bottom - 10], likes: 80 },
    'channel-end': { at: [ends[0], top + 8], likes: 240 },
    splice: { at: [plate.x + 10, plate.y + wide - 6], likes: 120 },
    fastener: { at: [(bolts[0] ?? cx) - r * 0.7, middle + r * 0.7], likes: 120 },
    opening: { at: [cx, joint.opening > 0 ? gapRow : bottom - 4], likes: 100 },
    section: cut,
  };
  const zones = drawBalloons(plan, frame, form, balloons, targets);
  const length = (t: Ticks) => spoken(t, speak);
  const words = together([
    speak({
      say: 'drawing.plateWords',
      values: { width: length(tray.width), length: length(item.length), across: length(item.across) },
    }),
    joint.opening > 0
      ? speak({ say: 'drawing.plateGapWords', values: { gap: length(joint.opening) } })
      : speak({ say: 'drawing.plateMeetWords' }),
    speak({
      say: 'drawing.plateFastenerWords',
      values: { count: item.fastened.count, places: holes.map((h) => length(ticks(h))).join(', ') },
    }),
  ]);
  return { view: 'splice', width, height, frame, plan, words, zones };
}
