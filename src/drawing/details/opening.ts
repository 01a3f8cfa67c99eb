/** Channel ends that stand apart: an expansion splice with its gap at the metal's temperature, or a gap with nothing across it. */
import { TRADE_USUAL, usualOf } from '../../run/usual.ts';
import { wantedGap } from '../../run/wantedGap.ts';
import { inches, type Ticks, ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { Target } from '../balloon.ts';
import { across, opening } from '../dimension.ts';
import { MARGIN } from '../frame.ts';
import { textWidth } from '../glyphs.ts';
import { Plan, SIZES } from '../plan.ts';
import type { Point } from '../shapes.ts';
import { spoken, together } from '../spoken.ts';
import type { Form, How } from '../types.ts';
import { callouts } from './callouts.ts';
import type { Detail, DetailGiven } from './detail.ts';
import { endSheet } from './endSheet.ts';
import type { PlacedJoint } from './places.ts';
import { zigzag } from './zigzag.ts';

interface Layout {
  readonly width: number;
  readonly scale: number;
  readonly stub: number;
}
const DESK: Layout = { width: 660, scale: 34, stub: 80 };
const LAYOUT: Readonly<Record<Form, Layout>> = {
  phone: { width: 328, scale: 20, stub: 34 },
  desk: DESK,
  paper: DESK,
};
/** A wide gap is broken out: its drawn width, px. */
const WIDEST = { phone: 110, desk: 220, paper: 220 } as const;

export function layOpening(given: DetailGiven, { joint, leg, name }: PlacedJoint, how: How): Detail {
  const { balloons = [], resolved, tables } = given;
  const { form, speak } = how;
  const { width, scale, stub } = LAYOUT[form];
  const margin = MARGIN[form];
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `detail.${key}`, values });
  const plan = new Plan();
  const expansion = joint.kind === 'expansion';
  const gapIn = inches(joint.opening);
  const room = width - 2 * margin - 36 - 2 * stub;
  const covered = expansion ? Math.max(inches(joint.length), gapIn + 1) : 0;
  const px = expansion ? Math.min(scale, room / covered) : scale * 0.8;
  const drawn = Math.min(gapIn * px, WIDEST[form]);
  const broken = drawn < gapIn * px - 0.01;
  const cx = width / 2;
  const high = Math.max(34, inches(leg.tray.depth) * Math.min(px, 26));
  const top = margin + (expansion ? 116 : 104);
  const bottom = top + high;
  const ends = [cx - drawn / 2, cx + drawn / 2] as const;
  const edges = expansion
    ? ([cx - (covered * px) / 2, cx + (covered * px) / 2] as const)
    : ([ends[0], ends[1]] as const);
  const [left, right] = [margin + 18, width - margin - 18];

  for (const [from, to, part] of [
    [left, edges[0], 'channel before'],
    [edges[1], right, 'channel behind'],
  ] as const) {
    plan.rect({ x: from, y: top, w: to - from, h: high }, { fill: 'galv', part });
    for (const y of [top, bottom]) plan.line('edge', [from, y], [to, y]);
  }
  plan.breakLine(left, top, bottom);
  plan.breakLine(right, top, bottom);
  plan.keep({ x: left, y: top - 8, w: right - left, h: high + 16 });
  if (expansion) {
    plan.rect(
      { x: edges[0], y: top - 6, w: edges[1] - edges[0], h: high + 12 },
      { fill: 'sheet', pen: 'edge', part: 'splice' },
    );
    for (const y of [top, bottom]) {
      plan.line('hidden', [edges[0], y], [ends[0], y]);
      plan.line('hidden', [ends[1], y], [edges[1], y]);
    }
    plan.line('hidden', [ends[0], top], [ends[0], bottom], 'channel end');
    if (drawn > 0) plan.line('hidden', [ends[1], top], [ends[1], bottom], 'channel end');
    slots(plan, edges, (top + bottom) / 2, px);
  } else {
    for (const x of new Set(ends)) plan.line('edge', [x, top], [x, bottom], 'channel end');
    if (broken) {
      zigzag(plan, [cx - 5, top], [cx - 5, bottom], [-1, 0]);
      zigzag(plan, [cx + 5, top], [cx + 5, bottom], [1, 0]);
    }
  }
  plan.line('centre', [cx, top - 22], [cx, bottom + 20]);

  // The jumper, with slack for the whole travel.
  const [from, to] = expansion ? [edges[0] - 16, edges[1] + 16] : [ends[0] - 20, ends[1] + 20];
  const sag = expansion ? 46 : 40;
  const curve = (off: number): Point[] =>
    Array.from({ length: 25 }, (_, i) => {
      const k = i / 24;
      return [from + (to - from) * k, bottom + 8 + off + sag * 4 * k * (1 - k)];
    });
  plan.polygon([...curve(-2.4), ...curve(2.4).reverse()], { fill: 'galv2', pen: 'thin', part: 'jumper' });
  for (const x of [from, to]) plan.circle([x, bottom + 5], 4.5, { fill: 'sheet', pen: 'thin', part: 'lug' });
  const low = bottom + 8 + sag;
  plan.keep({ x: from, y: bottom, w: to - from, h: sag + 12 });

  const row = top - 48;
  const gapText = speak({ say: 'drawing.gap', values: { gap: shortLength(joint.opening) } });
  if (expansion) {
    across(plan, edges[0], edges[1], row - 36, shortLength(joint.length), { from: top - 8, part: 'length' });
  }
  const beside = ends[1] + 32 + textWidth(gapText, SIZES.text) <= width - margin - 6;
  if (drawn === 0) {
    plan.text([cx + 10, row + 6], speak({ say: 'drawing.noGap' }), { anchor: 'start', part: 'opening' });
  } else if (drawn < 60 && beside) opening(plan, ends[0], ends[1], row, gapText, top - 8, 'opening');
  else gapOver(plan, ends, row, top - 2, gapText);

  const { temps } = resolved.run;
  const usual = tables === undefined ? TRADE_USUAL : usualOf(tables);
  const titleAt = low + 66;
  const targets: Record<string, Target> = {
    'first-channel': { at: [left + 14, (top + bottom) / 2], likes: -100 },
    'second-channel': { at: [right - 14, (top + bottom) / 2], likes: -80 },
    'channel-end': { at: [ends[0], bottom - 7], likes: 140 },
    opening: { at: [ends[0], row + 14], likes: 200 },
    jumper: { at: [cx, low], likes: 80 },
    lug: { at: [from, bottom + 5], likes: 150 },
    ...(expansion ? { splice: { at: [edges[0] + 8, top - 6] as const, likes: -120 } } : {}),
  };
  if (balloons.length === 0) {
    callouts(plan, { x: margin + 6, y: margin + 5, w: width - 2 * margin - 12, h: titleAt - margin - 24 }, [
      {
        at: [to - (to - from) * 0.12, bottom + 8 + sag * 0.42],
        text: say(expansion ? 'slackJumper' : 'list-jumper'),
        likes: 60,
      },
    ]);
  }
  const title = say(expansion ? 'expansionTitle' : 'gapTitle', { name });
  plan.viewTitle([cx, titleAt], title, broken ? say('gapBroken') : speak({ say: 'drawing.scale' }));
  let under = titleAt + 44;
  const range = temps !== undefined && expansion;
  if (range)
    under = thermometer(plan, {
      form,
      width,
      margin,
      top: under,
      temps,
      movement: usual.movement,
      now: joint.opening,
      say,
    });
  const now = temps === undefined ? null : wantedGap(temps, usual.movement);
  const notes = [
    ...(temps !== undefined && expansion
      ? [say('setAt', { gap: shortLength(joint.opening), now: temps.nowF })]
      : []),
    ...(expansion && now !== null && now !== joint.opening ? [say('wanted', { gap: shortLength(now) })] : []),
    say(expansion ? 'slides' : 'nothingAcross'),
  ];
  return endSheet(plan, {
    view: 'expansion',
    form,
    width,
    notes,
    top: under,
    balloons,
    targets,
    words: together([
      say(expansion ? 'expansionWords' : 'gapWords', {
        name,
        leg: leg.leg,
        at: spoken(joint.at, speak),
        gap: spoken(joint.opening, speak),
        length: spoken(joint.length, speak),
      }),
      temps !== undefined && expansion
        ? say('tempsWords', {
            low: temps.lowF,
            high: temps.highF,
            now: temps.nowF,
            movement: spoken(usual.movement, speak),
          })
        : undefined,
      expansion && now !== null && now !== joint.opening
        ? say('wantedWords', { gap: spoken(now, speak) })
        : undefined,
      say(expansion ? 'slackWords' : 'jumperAcrossWords'),
    ]),
  });
}

/** The dimension of a gap with its text over it, where there is no room in the line or beside it. */
function gapOver(plan: Plan, [a, b]: readonly [number, number], y: number, from: number, text: string): void {
  for (const x of [a, b]) plan.line('dimension', [x, from], [x, y - 6], 'opening');
  plan.line('dimension', [a, y], [b, y], 'opening');
  if (b - a < 30) for (const x of [a, b]) plan.line('thin', [x - 5, y + 5], [x + 5, y - 5]);
  else {
    plan.arrow([a, y], 180);
    plan.arrow([b, y], 0);
  }
  plan.keep({ x: a, y: y - 4, w: b - a, h: 8 });
  plan.text([(a + b) / 2, y - 10], text, { part: 'opening' });
}

/** Fasteners in slots, so that the splice slides: one a side is seen. */
function slots(plan: Plan, [a, b]: readonly [number, number], y: number, px: number): void {
  const r = Math.max(4.5, 0.28 * px);
  const long = Math.max(6, 0.5 * px);
  for (const x of [a + (b - a) * 0.2, b - (b - a) * 0.2]) {
    const end = (sign: number): Point[] =>
      Array.from({ length: 9 }, (_, i) => {
        const t = -Math.PI / 2 + (Math.PI * i) / 8 + (sign < 0 ? Math.PI : 0);
        return [x + sign * long + r * Math.cos(t), y + r * Math.sin(t)];
      });
    plan.polygon([...end(1), ...end(-1)], { fill: 'sheet', pen: 'thin', part: 'slot' });
    plan.circle([x, y], r * 0.8, { fill: 'galv', pen: 'thin', part: 'fastener' });
    plan.line('dimension', [x - long - r - 5, y], [x + long + r + 5, y]);
    plan.line('dimension', [x, y - r - 5], [x, y + r + 5]);
  }
}

interface Range {
  readonly form: Form;
  readonly width: number;
  readonly margin: number;
  readonly top: number;
  readonly temps: { readonly lowF: number; readonly highF: number; readonly nowF: number };
  readonly movement: Ticks;
  readonly now: Ticks;
  readonly say: (key: string, values?: Record<string, string | number>) => string;
}

/** From cold to hot: the gap at both ends, and where the metal stands now. */
function thermometer(plan: Plan, { form, width, margin, top, temps, movement, now, say }: Range): number {
  const [x1, x2] = [margin + (form === 'phone' ? 34 : 130), width - margin - (form === 'phone' ? 34 : 130)];
  const y = top + 62;
  const k = Math.min(1, Math.max(0, (temps.nowF - temps.lowF) / Math.max(temps.highF - temps.lowF, 1e-9)));
  const x = x1 + (x2 - x1) * k;
  plan.line('edge', [x1, y], [x2, y], 'range');
  for (let i = 0; i <= 10; i++) {
    const t = x1 + ((x2 - x1) * i) / 10;
    plan.line('dimension', [t, y], [t, y - (i % 5 === 0 ? 10 : 6)]);
  }
  plan.polygon(
    [
      [x, y - 12],
      [x - 7, y - 25],
      [x + 7, y - 25],
    ],
    { fill: 'mark', part: 'now' },
  );
  const text = say('nowAt', { now: temps.nowF, gap: shortLength(now) });
  const half = text.length * 4.2 + 4;
  const at = Math.min(Math.max(x, margin + half + 6), width - margin - half - 6);
  plan.text([at, y - 32], text, { colour: 'mark', part: 'now' });
  for (const [end, f, gap, anchor] of [
    [x1, temps.lowF, movement, 'start'],
    [x2, temps.highF, ticks(0), 'end'],
  ] as const) {
    plan.text([end + (anchor === 'start' ? -16 : 16), y + 20], say('degrees', { f }), {
      anchor,
      size: SIZES.note,
      part: 'range',
    });
    plan.text([end + (anchor === 'start' ? -16 : 16), y + 38], say('gapThere', { gap: shortLength(gap) }), {
      anchor,
      size: SIZES.note,
      part: 'range',
    });
  }
  return y + 54;
}
