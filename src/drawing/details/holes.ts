/** A piece on the length it is cut from: holes to their pitch, the cut, and what is near it. */
import { cutAtHole } from '../../run/clearPlaces.ts';
import { inches, type Ticks, ticks } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import type { Target } from '../balloon.ts';
import { across } from '../dimension.ts';
import { MARGIN } from '../frame.ts';
import { textWidth } from '../glyphs.ts';
import { Plan, SIZES } from '../plan.ts';
import { spoken, together } from '../spoken.ts';
import type { Form, How } from '../types.ts';
import { type Callout, callouts } from './callouts.ts';
import { type Detail, type DetailGiven, pick } from './detail.ts';
import { endSheet } from './endSheet.ts';
import { piecesOf } from './places.ts';

interface Layout {
  readonly width: number;
  /** Height of the whole length, and most height of the channel near the cut. */
  readonly bar: number;
  readonly wide: number;
  /** Pitches seen on each side of the cut. */
  readonly seen: number;
}
const DESK: Layout = { width: 752, bar: 26, wide: 120, seen: 2.2 };
const LAYOUT: Readonly<Record<Form, Layout>> = {
  phone: { width: 328, bar: 20, wide: 76, seen: 1.3 },
  desk: DESK,
  paper: { ...DESK, width: 718 },
};

export const holesPlaces = ({ resolved }: Pick<DetailGiven, 'resolved'>): readonly string[] =>
  piecesOf(resolved).map(({ piece }) => piece.id);

export function layHoles(given: DetailGiven, how: How): Detail {
  const { resolved, balloons = [] } = given;
  const { leg, piece } = pick(piecesOf(resolved), ({ piece: p }) => p.id, given.of);
  const { form, speak } = how;
  const { width, bar, wide, seen } = LAYOUT[form];
  const margin = MARGIN[form];
  const { tray } = leg;
  const { webHoles: row } = tray;
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `detail.${key}`, values });
  const plan = new Plan();
  // A piece longer than its length is a fault of the run; it is drawn as long as it is asked.
  const stock = resolved.stock;
  const tooLong = piece.cut > stock;
  const long = ticks(Math.max(stock, piece.cut));
  const whole = piece.cut >= stock;
  const near = cutAtHole(piece.cut, row, stock);

  // The whole length, to scale along it.
  const [x1, x2] = [margin + 16, width - margin - 16];
  const k = (x2 - x1) / inches(long);
  const at = (t: Ticks | number) => x1 + (t / 8128) * k;
  const top = margin + 62;
  const cut = at(piece.cut);
  plan.rect({ x: x1, y: top, w: cut - x1, h: bar }, { fill: 'galv', pen: 'edge', part: 'piece' });
  if (!whole) {
    plan.rect({ x: cut, y: top, w: x2 - cut, h: bar }, { fill: 'sheet', part: 'left over' });
    for (const y of [top, top + bar]) plan.line('phantom', [cut, y], [x2, y]);
    plan.line('phantom', [x2, top], [x2, top + bar]);
    plan.line('mark', [cut, top - 9], [cut, top + bar + 9], 'cut');
  }
  plan.keep({ x: x1, y: top - 4, w: x2 - x1, h: bar + 8 });
  const y0 = top + bar / 2;
  const count = Math.max(0, Math.ceil((stock - row.first) / row.pitch));
  // Holes too close to tell apart are drawn one for several.
  const each = Math.max(1, Math.ceil(5 / ((row.pitch / 8128) * k)));
  for (let i = 0; i < count; i += each) {
    const x = at(row.first + i * row.pitch);
    if (x > x2 - 2.5) break;
    plan.circle([x, y0], 2, { fill: 'ink' });
  }
  const cutText = shortLength(piece.cut);
  const size = form === 'phone' ? SIZES.text : 18;
  const room = cut - x1;
  const besideEnd = room < textWidth(cutText, size) + 38;
  across(plan, x1, cut, top - 30, cutText, {
    from: top - 6,
    size,
    part: 'cut length',
    beside: besideEnd && cut + textWidth(cutText, size) + 20 > width - margin ? 'before' : 'behind',
  });
  const say1 = say('wholeLength', { length: shortLength(stock) });
  const title1 = top + bar + 40;
  plan.viewTitle([width / 2, title1], say('lengthTitle', { piece: piece.id }), say1);

  // Near the cut, larger.
  const window = inches(row.pitch) * seen;
  const end = whole ? stock : piece.cut;
  const scale = Math.min((width - 2 * margin - 64) / (2 * window), wide / inches(tray.outsideWidth));
  const half = (inches(tray.outsideWidth) * scale) / 2;
  const cx = whole ? width / 2 + window * scale * 0.42 : width / 2;
  const to = (t: Ticks | number) => cx + ((t - end) / 8128) * scale;
  const [left, right] = [margin + 22, whole ? cx : width - margin - 22];
  const dTop = title1 + 40 + 72;
  const mid = dTop + half;
  const dBottom = dTop + 2 * half;
  const begins = Math.max(left, to(0));
  const ends = whole ? cx : Math.min(right, to(stock));
  plan.rect({ x: begins, y: dTop, w: cx - begins, h: 2 * half }, { fill: 'galv', part: 'piece' });
  for (const y of [dTop, dBottom]) plan.line('edge', [begins, y], [cx, y]);
  if (begins > left) plan.line('edge', [begins, dTop], [begins, dBottom], 'first end');
  else plan.breakLine(left, dTop, dBottom);
  if (whole) plan.line('edge', [cx, dTop], [cx, dBottom], 'second end');
  else {
    for (const y of [dTop, dBottom]) plan.line('phantom', [cx, y], [ends, y]);
    if (ends < right) plan.line('phantom', [ends, dTop], [ends, dBottom], 'stock end');
    else plan.breakLine(right, dTop, dBottom);
  }
  plan.line('centre', [begins + 6, mid], [ends - 6, mid]);
  plan.keep({ x: begins, y: dTop - 6, w: ends - begins, h: 2 * half + 12 });
  const radius = Math.max(3.5, (inches(row.width) * scale) / 2);
  const holes: number[] = [];
  for (let i = 0; i < count; i++) {
    const t = row.first + i * row.pitch;
    const x = to(t);
    if (x < begins + radius + 8 || x > ends - radius - 8) continue;
    holes.push(t);
    plan.circle([x, mid], radius, { fill: 'sheet', pen: 'thin', part: 'hole' });
    plan.line('dimension', [x - radius - 4, mid], [x + radius + 4, mid]);
    plan.line('dimension', [x, mid - radius - 4], [x, mid + radius + 4]);
  }
  // Plate holes as they come from the works: at ends that are not cut.
  const plates: number[] = [
    ...(begins > left ? tray.plateHoles : []),
    ...(whole || ends < right ? tray.plateHoles.map((h) => stock - h) : []),
  ];
  for (const t of plates) {
    const x = to(t);
    if (x < begins + 3 || x > ends - 3) continue;
    plan.circle([x, mid], Math.max(2.5, radius * 0.7), { fill: 'galv2', pen: 'thin', part: 'plate hole' });
  }
  if (!whole) plan.line('mark', [cx, dTop - 12], [cx, dBottom + 12], 'cut');

  const before = holes.filter((t) => t <= end).at(-1);
  const behind = holes.find((t) => t > end);
  const pitchRow = dTop - 56;
  const pair = holes.findIndex((_, i) => i + 1 < holes.length);
  if (pair >= 0) {
    const [a, b] = [holes[pair] as number, holes[pair + 1] as number];
    across(plan, to(a), to(b), pitchRow, shortLength(row.pitch), { from: mid - radius - 6, part: 'pitch' });
  }
  const distRow = dBottom + 34;
  const nearest =
    before === undefined
      ? behind
      : behind === undefined
        ? before
        : end - before <= behind - end
          ? before
          : behind;
  if (nearest !== undefined && nearest !== end) {
    const [a, b] = nearest < end ? [to(nearest), cx] : [cx, to(nearest)];
    across(plan, a, b, distRow, shortLength(ticks(Math.abs(end - nearest))), {
      from: dBottom + 8,
      part: 'to hole',
      beside: nearest < end ? 'before' : 'behind',
    });
  }
  let below = distRow + 14;
  const named: Callout[] = [];
  if (near !== null) {
    // Where the saw may stand instead: thin marks outside the channel, so that nobody cuts to them by mistake.
    for (const [place, key, way] of [
      [near.shorter, 'shorter', -1],
      [near.longer, 'longer', 1],
    ] as const) {
      if (place === null) continue;
      const x = to(place);
      plan.line('phantom', [x, dTop - 6], [x, dBottom + 6], 'clear place');
      named.push({
        at: [x, dBottom + 4],
        text: say(key, { length: shortLength(place) }),
        likes: way < 0 ? 120 : 60,
      });
    }
    below += 46;
  }
  if (!whole) named.push({ at: [cx, dTop - 8], text: say('cutHere'), likes: -60 });
  const title2 = below + 38;
  const heads = near === null ? (whole ? 'secondEnd' : 'atCut') : near.falls === 'on' ? 'onHole' : 'nearHole';
  plan.viewTitle([width / 2, title2], say(heads), speak({ say: 'drawing.scale' }));
  const left0 = callouts(
    plan,
    { x: margin + 6, y: title1 + 34, w: width - 2 * margin - 12, h: title2 - title1 - 52 },
    balloons.length > 0 ? named.filter(({ text }) => text !== say('cutHere')) : named,
  );
  const notes = [
    say('holesNote', {
      width: shortLength(row.width),
      pitch: shortLength(row.pitch),
      first: shortLength(row.first),
    }),
    ...(each > 1 ? [say('oneOf', { each })] : []),
    say(tooLong ? 'tooLong' : whole ? 'bothFactory' : 'firstFactory'),
    ...(whole ? [] : [say('cutBare')]),
    ...left0.map(({ text }) => text),
  ];
  const targets: Record<string, Target> = {
    piece: { at: [x1 + room * 0.4, top + bar - 3], likes: 100 },
    'first-end': { at: [x1, top + bar - 5], likes: 100 },
    cut: { at: [cx, dBottom - 6], likes: 40 },
    ...(whole ? {} : { 'left-over': { at: [(cx + ends) / 2, dBottom - 8] as const, likes: 60 } }),
    ...(holes[0] === undefined
      ? {}
      : { hole: { at: [to(holes[0]) - radius * 0.7, mid + radius * 0.7] as const, likes: 130 } }),
  };
  const length = (t: Ticks) => spoken(t, speak);
  return endSheet(plan, {
    view: 'holes',
    form,
    width,
    notes,
    top: title2 + 42,
    balloons,
    targets,
    words: together([
      say('holesWords', { piece: piece.id, cut: length(piece.cut), stock: length(stock) }),
      say('rowWords', { width: length(row.width), pitch: length(row.pitch), first: length(row.first) }),
      nearest === undefined || whole
        ? undefined
        : say('nearestWords', { length: length(ticks(Math.abs(end - nearest))) }),
      near === null ? undefined : say(near.falls === 'on' ? 'onHoleWords' : 'nearHoleWords'),
      near?.shorter == null ? undefined : say('shorterWords', { length: length(near.shorter) }),
      near?.longer == null ? undefined : say('longerWords', { length: length(near.longer) }),
      say(tooLong ? 'tooLongWords' : whole ? 'bothFactoryWords' : 'firstFactoryWords'),
    ]).replaceAll('"', ' in'),
  });
}
