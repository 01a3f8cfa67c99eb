/** A support in elevation: horizontal with its rods, or strut on steel with the channel before it. */
import { supportLoads } from '../../run/loads.ts';
import { cross, dot, UP } from '../../run/vector.ts';
import { inches } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { Target } from '../balloon.ts';
import { across } from '../dimension.ts';
import { MARGIN } from '../frame.ts';
import { Plan } from '../plan.ts';
import { spoken, together } from '../spoken.ts';
import type { Form, How } from '../types.ts';
import { type Callout, callouts } from './callouts.ts';
import { type Detail, type DetailGiven, pick } from './detail.ts';
import { endSheet } from './endSheet.ts';
import { drawFront, frontHigh } from './front.ts';
import { type Held, supportsOf } from './places.ts';
import { drawSeat, type Seat, STRUT, seatSize } from './seat.ts';

interface Layout {
  readonly width: number;
  /** Most px to the inch. */
  readonly scale: number;
  readonly rod: number;
}
const DESK: Layout = { width: 660, scale: 30, rod: 84 };
const LAYOUT: Readonly<Record<Form, Layout>> = {
  phone: { width: 328, scale: 22, rod: 72 },
  desk: DESK,
  paper: DESK,
};

/** Inches of strut past the channel on each side; where the rod stands. */
const PAST = 3.4;
const ROD = 2.55;

export const supportPlaces = ({ resolved }: Pick<DetailGiven, 'resolved'>): readonly string[] =>
  supportsOf(resolved).map(({ support }) => support.name);

export function laySupport(given: DetailGiven, how: How): Detail {
  const held = pick(supportsOf(given.resolved), ({ support }) => support.name, given.of);
  return held.leg.plumb ? layVertical(given, held, how) : layHorizontal(given, held, how);
}

/** Pounds to the first decimal. */
export const pounds = (lb: number): string => String(Math.round(lb * 10) / 10);

function loadOf({ resolved }: DetailGiven, { support }: Held): number | null {
  return supportLoads(resolved).find((l) => l.support === support)?.lb ?? null;
}

/** Which way a channel on edge looks, seen along the travel. */
function edgeOf({ frame }: Held['leg']): Seat['edge'] {
  if (Math.abs(dot(frame.open, UP)) > 0.3) return null;
  return dot(cross(frame.along, UP), frame.open) > 0 ? 'right' : 'left';
}

const scaleFor = (room: number, outside: number, most: number) =>
  Math.min(most, room / (outside + 2 * PAST + 1.2));

function layHorizontal(given: DetailGiven, held: Held, how: How): Detail {
  const { form, speak } = how;
  const { width, scale, rod } = LAYOUT[form];
  const margin = MARGIN[form];
  const { leg, support } = held;
  const { tray } = leg;
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `detail.${key}`, values });
  const edge = edgeOf(leg);
  const plan = new Plan();
  const cx = width / 2;
  const wide = edge === null ? inches(tray.outsideWidth) : inches(tray.depth);
  const px = scaleFor(width - 2 * margin - 40, wide, scale);
  const { half, high } = seatSize(tray, edge, px);
  const reach = half + PAST * px;
  const steel = margin + 28;
  const top = steel + rod + high + 48;

  // Steel above, and the two rods down to the strut.
  plan.hatch({ x: cx - reach - 14, y: steel - 12, w: 2 * reach + 28, h: 12 }, 'up');
  plan.line('edge', [cx - reach - 14, steel], [cx + reach + 14, steel], 'structure');
  const under = top + STRUT * px;
  const rodHalf = 0.19 * px;
  const rods = [cx - half - ROD * px, cx + half + ROD * px] as const;
  for (const x of rods) {
    plan.rect(
      { x: x - rodHalf, y: steel, w: 2 * rodHalf, h: under + 0.75 * px - steel },
      { fill: 'sheet', part: 'rod' },
    );
    for (const k of [-rodHalf, rodHalf]) plan.line('thin', [x + k, steel], [x + k, under + 0.75 * px]);
    plan.line('thin', [x - rodHalf, under + 0.75 * px], [x + rodHalf, under + 0.75 * px]);
    // Its length is broken out.
    const y = steel + 26;
    plan.polygon(
      [
        [x - rodHalf - 3, y + 4],
        [x + rodHalf + 3, y - 2],
        [x + rodHalf + 3, y + 6],
        [x - rodHalf - 3, y + 12],
      ],
      { fill: 'sheet' },
    );
    for (const k of [0, 8])
      plan.line('dimension', [x - rodHalf - 3, y + 4 + k], [x + rodHalf + 3, y - 2 + k]);
    plan.line('centre', [x, steel - 16], [x, under + 0.75 * px + 8]);
    plan.keep({ x: x - rodHalf - 3, y: steel, w: 2 * rodHalf + 6, h: under + 0.75 * px + 8 - steel });
  }
  const seat = drawSeat(plan, {
    tray,
    hold: support.hold,
    edge,
    centreBolt: false,
    px,
    at: [cx, top],
    half: reach,
  });
  for (const x of rods) {
    // In front of the strut the rod is hidden; its nuts and washers stand above and below.
    for (const [y, way] of [
      [top, -1],
      [under, 1],
    ] as const) {
      const w = { w: 1.05 * px, h: 3 };
      plan.rect(
        { x: x - w.w / 2, y: way < 0 ? y - 3 : y, ...w },
        { fill: 'sheet', pen: 'thin', part: 'rod washer' },
      );
      const n = { w: 0.72 * px, h: 0.36 * px };
      plan.rect(
        { x: x - n.w / 2, y: way < 0 ? y - 3 - n.h : y + 3, ...n },
        { fill: 'sheet', pen: 'thin', part: 'rod nut' },
      );
    }
    for (const k of [-rodHalf, rodHalf]) plan.line('hidden', [x + k, top], [x + k, under]);
  }
  across(
    plan,
    seat.channel.x,
    seat.channel.x + seat.channel.w,
    seat.channel.y - 30,
    shortLength(edge === null ? tray.outsideWidth : tray.depth),
    {
      from: seat.channel.y - 8,
      part: 'outside width',
    },
  );

  const lb = loadOf(given, held);
  const foot = under + 0.75 * px + 12;
  if (lb !== null) {
    for (const x of rods) {
      plan.line('thin', [x, foot], [x, foot + 30], 'load');
      plan.keep({ x: x - 6, y: foot, w: 12, h: 36 });
      plan.arrow([x, foot + 34], 90, 14);
      plan.text([x, foot + 52], say('pounds', { lb: pounds(lb / 2) }), { part: 'load' });
    }
  }
  const rodAt = rods[1];
  const targets: Record<string, Target> = {
    ...seat.targets,
    rod: { at: [rodAt + rodHalf, steel + rod * 0.72], likes: 10 },
    'rod-nut': { at: [rods[0] - 0.34 * px, under + 3 + 0.2 * px], likes: 160 },
    structure: { at: [rods[0] - 20, steel], likes: 70 },
    ...(lb === null ? {} : { load: { at: [rods[0], foot + 20] as const, likes: 180 } }),
  };
  const holds = say(`hold-${support.hold}`);
  const named = (part: string, text: string): Callout => {
    const { at, likes } = targets[part] as Target;
    return { at, likes, text };
  };
  return finish(given, held, how, {
    plan,
    width,
    bottom: foot + 58,
    top: margin,
    targets,
    named: [
      named('second-clamp', say(support.hold === 'guide' ? 'guide' : 'clamp')),
      named('nut', say('nut')),
      named('rod', say('rod')),
      { ...named('strut', say('strut')), likes: 100 },
      { at: targets['bolt']?.at ?? [cx, top], likes: -50, text: say('boltWasher') },
    ],
    title: say('supportTitle', { name: support.name }),
    scale: say('rodsBroken'),
    notes: [
      holds,
      lb === null ? say('loadUnknown') : say('loadRods', { lb: pounds(lb) }),
      ...(edge === null ? [] : [say('onEdge')]),
    ],
    words: [
      say('horizontalWords', {
        name: support.name,
        leg: leg.leg,
        at: spoken(support.at, speak),
        width: spoken(tray.width, speak),
      }),
      edge === null ? undefined : say('onEdgeWords'),
      say('seatWords'),
      say(`holdWords-${support.hold}`),
      lb === null ? say('loadUnknownWords') : say('loadRodsWords', { lb: pounds(lb), each: pounds(lb / 2) }),
    ],
  });
}

function layVertical(given: DetailGiven, held: Held, how: How): Detail {
  const { form, speak } = how;
  const { width, scale } = LAYOUT[form];
  const margin = MARGIN[form];
  const { leg, support } = held;
  const { tray } = leg;
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `detail.${key}`, values });
  const plan = new Plan();
  const centreBolt = support.way === 'vertical';
  const beside = form !== 'phone';
  const room = beside ? (width - 2 * margin) / 2 - 20 : width - 2 * margin - 16;
  const px = scaleFor(room, inches(tray.outsideWidth), scale);
  const { half, high } = seatSize(tray, null, px);
  const cx = beside ? margin + (width - 2 * margin) * 0.26 : width / 2;
  const top = margin + 34;
  const front = drawFront(plan, { tray, support, centreBolt, px, at: [cx, top], half: half + PAST * px });
  const frontTitle = top + frontHigh(px) + 64;
  plan.viewTitle([cx, frontTitle], say('frontTitle', { name: support.name }));

  const sx = beside ? margin + (width - 2 * margin) * 0.755 : width / 2;
  const seatTop = beside ? top + frontHigh(px) * 0.5 + 10 : frontTitle + 86 + high;
  const reach = half + PAST * px * 0.86;
  const steel = seatTop + STRUT * px;
  const seat = drawSeat(plan, {
    tray,
    hold: support.hold,
    edge: null,
    centreBolt,
    px: px,
    at: [sx, seatTop],
    half: reach,
  });
  // The steel behind, cut: at both ends of the strut.
  for (const side of [-1, 1]) {
    const post = { x: sx + side * (reach - 0.7 * px) - 0.7 * px, y: steel + 1, w: 1.4 * px, h: 12 };
    plan.hatch(post, 'down', 5);
    plan.rect(post, { pen: 'thin', part: 'steel' });
  }
  across(
    plan,
    seat.channel.x,
    seat.channel.x + seat.channel.w,
    seat.channel.y - 30,
    shortLength(tray.outsideWidth),
    {
      from: seat.channel.y - 8,
      part: 'outside width',
    },
  );
  const sectionTitle = beside ? frontTitle : steel + 78;
  plan.viewTitle([sx, sectionTitle], speak({ say: 'drawing.sectionAA' }));

  const lb = loadOf(given, held);
  const { clamp: _, strut: _s, channel: _c, ...ofSeat } = seat.targets;
  const targets: Record<string, Target> = { ...ofSeat, ...front.targets };
  const bears = support.hold === 'load';
  return finish(given, held, how, {
    plan,
    width,
    bottom: (beside ? frontTitle : sectionTitle) + 2,
    top: margin,
    targets,
    titled: true,
    named: [
      {
        at: targets['second-clamp']?.at ?? [sx, 0],
        likes: -50,
        text: say(support.hold === 'guide' ? 'guide' : 'clamp'),
      },
      { at: targets['nut']?.at ?? [sx, 0], likes: 110, text: say('nut') },
      { at: targets['steel']?.at ?? [cx, 0], likes: -90, text: say('steel') },
      ...(centreBolt
        ? [{ at: targets['centre-bolt']?.at ?? [cx, 0], likes: -90, text: say('centreBolt') } as const]
        : []),
      { at: targets['strut']?.at ?? [cx, 0], likes: 100, text: say('strut') },
    ],
    title: '',
    notes: [
      say(`hold-${support.hold}`),
      say('drop', { leg: leg.leg, length: shortLength(leg.length) }),
      lb === null ? say('loadUnknown') : bears ? say('takes', { lb: pounds(lb) }) : say('takesNone'),
    ],
    words: [
      say('verticalWords', {
        name: support.name,
        leg: leg.leg,
        at: spoken(support.at, speak),
        length: spoken(leg.length, speak),
      }),
      say('seatWords'),
      centreBolt ? say('centreBoltWords') : undefined,
      say(`holdWords-${support.hold}`),
      lb === null
        ? say('loadUnknownWords')
        : bears
          ? say('takesWords', { lb: pounds(lb) })
          : say('takesNoneWords'),
    ],
  });
}

interface Finish {
  readonly plan: Plan;
  readonly width: number;
  readonly top: number;
  /** Where the picture ends. */
  readonly bottom: number;
  readonly targets: Readonly<Record<string, Target>>;
  readonly named: readonly Callout[];
  readonly title: string;
  readonly titled?: boolean;
  readonly scale?: string;
  readonly notes: readonly string[];
  readonly words: readonly (string | undefined)[];
}

function finish({ balloons = [] }: DetailGiven, { leg, support }: Held, how: How, made: Finish): Detail {
  const { form, speak } = how;
  const { plan, width, targets, named, title, scale } = made;
  const margin = MARGIN[form];
  let bottom = made.bottom;
  if (made.titled !== true) {
    plan.viewTitle([width / 2, bottom + 24], title, scale);
    bottom += 50;
  }
  const bounds = { x: margin + 6, y: margin + 5, w: width - 2 * margin - 12, h: bottom - margin - 8 };
  const left = balloons.length > 0 ? [] : callouts(plan, bounds, named);
  const place = speak({
    say: 'detail.place',
    values: { name: support.name, leg: leg.leg, at: shortLength(support.at) },
  });
  const notes = [place, ...made.notes, ...left.map(({ text }) => text)];
  return endSheet(plan, {
    view: 'support',
    form,
    width,
    notes,
    top: bottom + 14,
    balloons,
    targets,
    words: together(made.words).replaceAll('"', ' in'),
  });
}
