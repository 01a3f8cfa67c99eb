/** One bar of the unfolded run: pieces, joints, fittings and ends, to scale but for what would be too small to see. */
import type { ResolvedLeg } from '../../run/resolved.ts';
import type { Face, ResolvedJoint } from '../../run/straight.ts';
import type { JointKind } from '../../run/types.ts';
import { inches } from '../../trade/length.ts';
import type { Plan } from '../plan.ts';
import type { Box } from '../shapes.ts';
import { drawFace } from '../stripFace.ts';
import type { Bar } from './flow.ts';

interface Drawn {
  readonly plan: Plan;
  readonly bar: Bar;
  /** Top and height of the bar. */
  readonly top: number;
  readonly high: number;
  readonly pxPerInch: number;
  readonly names: ReadonlyMap<ResolvedJoint, string>;
}

/** Least drawn length of a splice, an opening and a fitting's share of its leg. */
const LEAST = { splice: 9, opening: 5, fitting: 9 };

export function drawBar(drawn: Drawn): void {
  const { plan, bar, top, high } = drawn;
  const { leg, from, to } = bar;
  const part = `leg ${leg.leg}`;
  for (const piece of leg.pieces) {
    const [a, b] = [Math.max(from, inches(piece.from)), Math.min(to, inches(piece.to))];
    if (b <= a) continue;
    const [x1, x2] = [bar.x(a), bar.x(b)];
    plan.rect({ x: x1, y: top, w: x2 - x1, h: high }, { fill: 'galv', part: `piece ${piece.id}` });
    for (const y of [top, top + high]) plan.line('edge', [x1, y], [x2, y], part);
    if (inches(piece.from) >= from) plan.line('edge', [x1, top], [x1, top + high], part);
    if (inches(piece.to) <= to) plan.line('edge', [x2, top], [x2, top + high], part);
  }
  for (const joint of leg.joints) {
    const at = inches(joint.at);
    if (at >= from && at < to) drawJoint(drawn, joint);
  }
  if (bar.first) drawStart(drawn);
  else plan.breakLine(bar.x(from), top, top + high);
  if (bar.last) drawEnd(drawn);
  else plan.breakLine(bar.x(to), top, top + high);
}

function drawJoint({ plan, bar, top, high, pxPerInch, names }: Drawn, joint: ResolvedJoint): void {
  const x = bar.x(inches(joint.at));
  const part = `splice ${names.get(joint) ?? joint.name}`;
  const kind: JointKind = joint.kind;
  const wide = Math.max(LEAST.splice, inches(joint.length) * pxPerInch);
  const open = Math.max(LEAST.opening, inches(joint.opening) * pxPerInch);
  const sleeve: Box = { x: x - wide / 2, y: top - 5, w: wide, h: high + 10 };
  const ends = (half: number) => {
    for (const end of [x - half, x + half]) plan.line('edge', [end, top], [end, top + high], part);
  };
  const shows: Readonly<Record<JointKind, () => void>> = {
    socketed: () => plan.rect(sleeve, { pen: 'thin', fill: 'sheet', part }),
    butt: () => {
      plan.rect({ ...sleeve, y: top + high * 0.22, h: high * 0.56 }, { pen: 'thin', fill: 'sheet', part });
      plan.line('edge', [x, top], [x, top + high], part);
    },
    expansion: () => {
      plan.rect(sleeve, { pen: 'thin', fill: 'sheet', part });
      ends(Math.min(open, wide * 0.6) / 2);
    },
    hinged: () => {
      plan.rect(sleeve, { pen: 'thin', fill: 'sheet', part });
      plan.circle([x, top + high / 2], 3.5, { pen: 'thin', fill: 'sheet', part });
    },
    gap: () => {
      // A gap longer than a row goes on over the break.
      const from = Math.max(x - open / 2, bar.x(bar.from));
      const to = Math.min(x + open / 2, bar.x(bar.to));
      plan.rect({ x: from, y: top - 2, w: to - from, h: high + 4 }, { fill: 'sheet', part });
      for (const end of [from, to]) plan.line('edge', [end, top], [end, top + high], part);
    },
  };
  shows[kind]();
  plan.line('centre', [x, top - 9], [x, top + high + 9], part);
}

/** What a fitting takes of a leg: a box over its channel's end, its working point a centre line. */
function drawFitting(
  { plan, top, high, pxPerInch }: Drawn,
  leg: ResolvedLeg,
  face: Face,
  x: number,
  way: -1 | 1,
): void {
  const wide = Math.max(LEAST.fitting, inches(face.takeOut) * pxPerInch);
  const part = `fitting ${leg.leg}`;
  plan.rect(
    { x: way > 0 ? x : x - wide, y: top - 5, w: wide, h: high + 10 },
    { pen: 'thin', fill: 'sheet', part },
  );
  const inner = x + way * wide;
  plan.line('hidden', [inner, top + 5], [x + way * wide * 0.35, top + 5], part);
  plan.line('hidden', [inner, top + high - 5], [x + way * wide * 0.35, top + high - 5], part);
  plan.line('centre', [x, top - 12], [x, top + high + 12], part);
}

function drawStart(drawn: Drawn): void {
  const { plan, bar, top, high } = drawn;
  const x = bar.x(bar.from);
  if (bar.leg.fittingBefore !== null) drawFitting(drawn, bar.leg, bar.leg.start, x, 1);
  else drawFaceOf(plan, bar.leg.start, x, -1, top, high, drawn.pxPerInch);
}

function drawEnd(drawn: Drawn): void {
  const { plan, bar, top, high } = drawn;
  const x = bar.x(bar.to);
  if (bar.leg.fittingAfter !== null) drawFitting(drawn, bar.leg, bar.leg.end, x, -1);
  else drawFaceOf(plan, bar.leg.end, x, 1, top, high, drawn.pxPerInch);
}

/** Most px from a channel's end to its instrument. */
const OPEN = 14;

function drawFaceOf(
  plan: Plan,
  face: Face,
  x: number,
  way: -1 | 1,
  top: number,
  high: number,
  pxPerInch: number,
): void {
  const part = way < 0 ? 'start' : 'end';
  if (face.joint === 'expansion') {
    plan.rect(
      { x: way < 0 ? x - 14 : x, y: top - 5, w: 14, h: high + 10 },
      { pen: 'thin', fill: 'sheet', part },
    );
    for (const by of [3, 7]) plan.line('edge', [x + way * by, top], [x + way * by, top + high], part);
  } else drawFace(plan, { ...face, kind: 'free' }, x, way, top, high);
  if (face.kind !== 'instrument') return;
  const r = 11;
  const clear = face.joint === 'free' ? Math.min(OPEN, Math.max(2, inches(face.open) * pxPerInch)) : 19;
  const centre = x + way * (clear + r);
  plan.circle([centre, top + high / 2], r, { pen: 'thin', fill: 'sheet', part: 'instrument' });
  if (face.joint === 'free')
    plan.line('hidden', [x + way * 2, top + high / 2], [centre - way * r, top + high / 2], part);
}
