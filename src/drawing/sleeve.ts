/** A sleeve splice from the side, and its section through a fastener. */
import type { Fastening, Sleeve } from '../run/catalogue.ts';
import { inches } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { drawBalloons, type Target } from './balloon.ts';
import { sleeveSection } from './channelSection.ts';
import { cuttingPlane } from './cuttingPlane.ts';
import { across, opening } from './dimension.ts';
import { frameOf, MARGIN } from './frame.ts';
import { textWidth } from './glyphs.ts';
import { Plan, SIZES } from './plan.ts';
import type { SleeveGiven } from './spliceGiven.ts';
import { spoken, together } from './spoken.ts';
import type { Sheet } from './svg.ts';
import type { Form, How } from './types.ts';

interface Layout {
  readonly width: number;
  readonly height: number;
  /** Most px to the inch along the sleeve; where both insertions are too long for the sheet they are drawn smaller. */
  readonly scale: number;
  readonly middle: number;
  readonly gap: number;
  readonly lip: number;
  /** Most px to the inch of the section. */
  readonly section: number;
}

const LAYOUT: Readonly<Record<Form, Layout>> = {
  phone: {
    width: 328,
    height: 434,
    scale: 17,
    middle: 138,
    gap: 7,
    lip: 4.5,
    section: 24,
  },
  desk: {
    width: 660,
    height: 448,
    scale: 31,
    middle: 160,
    gap: 9,
    lip: 6,
    section: 34,
  },
  paper: {
    width: 660,
    height: 448,
    scale: 31,
    middle: 160,
    gap: 9,
    lip: 6,
    section: 34,
  },
};

/** Places along the side view; the opening alone is not to scale. */
export function sleeveScale(given: SleeveGiven, form: Form) {
  const { width, scale, gap } = LAYOUT[form];
  const [a, b] = given.joint.insertions;
  // Channel must be seen on both sides of the sleeve, so part of the sheet's width is kept for it.
  const room = width - 2 * MARGIN[form] - (form === 'phone' ? 100 : 240);
  const cx = width / 2;
  const drawn = given.joint.opening === 0 ? 0 : gap;
  const whole = Math.min(scale, room / inches((a + b) as typeof a));
  // An insertion too short for its text has it beside: that must stay inside too.
  const limits = [a, b].map((into) => {
    const wide = textWidth(shortLength(into), form === 'phone' ? SIZES.text : SIZES.big);
    const long = inches(into);
    if (long * whole >= wide + 30) return whole;
    return (cx - drawn / 2 - MARGIN[form] - wide - 18) / Math.max(long, 0.01);
  });
  const px = Math.min(whole, ...limits);
  const ends = [cx - drawn / 2, cx + drawn / 2] as const;
  return { px, cx, ends, edges: [ends[0] - inches(a) * px, ends[1] + inches(b) * px] as const };
}

export function laySleeve(given: SleeveGiven, how: How): Sheet {
  const { joint, tray, item, fastening, balloons = [] } = given;
  const { form, speak } = how;
  const { width, height, middle, lip, section } = LAYOUT[form];
  const margin = MARGIN[form];
  const { px, cx, ends, edges } = sleeveScale(given, form);
  const plan = new Plan();
  const half = (inches(tray.depth) * px) / 2;
  const [top, bottom] = [middle - half, middle + half];
  const [left, right] = [margin + 18, width - margin - 18];

  // Channel seen outside the sleeve, hidden inside it.
  for (const [from, to, part] of [
    [left, edges[0], 'channel before'],
    [edges[1], right, 'channel behind'],
  ] as const) {
    plan.rect({ x: from, y: top, w: to - from, h: 2 * half }, { fill: 'galv', part });
    for (const y of [top, bottom]) plan.line('edge', [from, y], [to, y]);
  }
  plan.breakLine(left, top, bottom);
  plan.breakLine(right, top, bottom);
  const sleeve = { x: edges[0], y: top - lip, w: edges[1] - edges[0], h: 2 * half + 2 * lip };
  plan.rect(sleeve, { fill: 'sheet', pen: 'edge', part: 'sleeve' });
  plan.keep({ x: left, y: sleeve.y, w: right - left, h: sleeve.h });
  for (const y of [top, bottom]) {
    plan.line('hidden', [edges[0], y], [ends[0], y]);
    plan.line('hidden', [ends[1], y], [edges[1], y]);
  }
  plan.line('hidden', [ends[0], top], [ends[0], bottom], 'channel end before');
  if (joint.opening > 0) plan.line('hidden', [ends[1], top], [ends[1], bottom], 'channel end behind');

  // One fastener a channel is seen; the other leg's stands behind it.
  const along = inches(item.fastenerFromEnd) * px;
  const r = Math.max(5, (inches(fastening.hole.width) * px) / 2);
  const holes = [edges[0] + along, edges[1] - along] as const;
  for (const x of holes) {
    plan.circle([x, middle], r, { fill: 'sheet', pen: 'thin', part: 'fastener' });
    plan.line('dimension', [x - r - 5, middle], [x + r + 5, middle]);
    plan.line('dimension', [x, middle - r - 5], [x, middle + r + 5]);
  }
  plan.line('centre', [cx, sleeve.y - 18], [cx, sleeve.y + sleeve.h + (joint.opening > 0 ? 52 : 20)]);
  plan.line('mark', [edges[0] - 3, top + 1], [edges[0] - 3, bottom - 1], 'paint mark');
  plan.line('mark', [edges[1] + 3, top + 1], [edges[1] + 3, bottom - 1], 'paint mark');

  const row = sleeve.y - (form === 'phone' ? 46 : 50);
  const size = form === 'phone' ? SIZES.text : SIZES.big;
  const into = joint.insertions.map((length) => shortLength(length));
  across(plan, edges[0], ends[0], row, into[0] ?? '', {
    from: sleeve.y,
    size,
    part: 'insertion before',
    beside: 'before',
  });
  across(plan, ends[1], edges[1], row, into[1] ?? '', { from: sleeve.y, size, part: 'insertion behind' });
  const gapRow = sleeve.y + sleeve.h + 36;
  const gapText = speak({ say: 'drawing.gap', values: { gap: shortLength(joint.opening) } });
  if (joint.opening > 0) opening(plan, ends[0], ends[1], gapRow, gapText, bottom + 2, 'opening');
  else plan.text([cx + 10, gapRow], speak({ say: 'drawing.noGap' }), { anchor: 'start', part: 'opening' });
  cuttingPlane(plan, holes[1], sleeve.y - 8, sleeve.y + sleeve.h + 8);

  const titles = height - margin - (form === 'phone' ? 42 : 54);
  const lines = speak({ say: form === 'phone' ? 'drawing.spliceScaleShort' : 'drawing.spliceScale' });
  plan.viewTitle([margin + (form === 'phone' ? 80 : 160), titles], speak({ say: 'drawing.sideView' }), lines);
  const cut = sleeveSection(plan, {
    tray,
    fastening,
    title: [width - margin - (form === 'phone' ? 76 : 150), titles],
    scale: Math.min(section, (form === 'phone' ? 76 : 130) / inches(tray.outsideWidth)),
    speak,
  });

  const frame = frameOf(form, width, height);
  const targets: Record<string, Target> = {
    'first-channel': { at: [left + 14, middle], likes: 100 },
    'second-channel': { at: [right - 14, middle], likes: 80 },
    'first-mark': { at: [edges[0] - 3, top + 8], likes: -125 },
    'second-mark': { at: [edges[1] + 3, top + 8], likes: -55 },
    'channel-end': { at: [ends[0], bottom - 7], likes: 115 },
    splice: { at: [edges[0] + along * 0.5, sleeve.y + sleeve.h], likes: 110 },
    fastener: { at: [holes[0], middle + r], likes: 100 },
    opening: { at: [cx, gapRow], likes: 70 },
    section: cut,
  };
  const zones = drawBalloons(plan, frame, form, balloons, targets);
  const length = (t: typeof joint.opening) => spoken(t, speak);
  const words = together([
    speak({
      say: 'drawing.sleeveWords',
      values: {
        width: length(tray.width),
        length: length(item.length),
        first: length(joint.insertions[0]),
        second: length(joint.insertions[1]),
      },
    }),
    joint.opening > 0
      ? speak({ say: 'drawing.sleeveGapWords', values: { gap: length(joint.opening) } })
      : speak({ say: 'drawing.sleeveNoGapWords' }),
    fastenerWords(item, fastening, how),
    speak({ say: 'drawing.paintWords' }),
  ]);
  return { view: 'splice', width, height, frame, plan, words, zones };
}

function fastenerWords(item: Sleeve, fastening: Fastening, { speak }: How): string {
  return speak({
    say: 'drawing.sleeveFastenerWords',
    values: {
      count: item.fastened.count,
      from: spoken(item.fastenerFromEnd, speak),
      hole: spoken(fastening.hole.width, speak),
    },
  });
}
