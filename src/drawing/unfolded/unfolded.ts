/** A whole run unfolded: its legs as bars to one scale, with pieces, joints, supports and what is wrong. */

import { inches, type Ticks } from '../../trade/length.ts';
import { drawBalloons, type Target } from '../balloon.ts';
import { frameOf, MARGIN, zoneOf } from '../frame.ts';
import { drawNotes } from '../notes.ts';
import { Plan } from '../plan.ts';
import { Room } from '../room.ts';
import type { RunGiven } from '../runGiven.ts';
import { jointNames, legMarks } from '../runNames.ts';
import { runNotes } from '../runNotes.ts';
import type { Point } from '../shapes.ts';
import type { Sheet } from '../svg.ts';
import { drawTriangle, TRIANGLE } from '../triangle.ts';
import type { How } from '../types.ts';
import { drawBar } from './bar.ts';
import { type Bar, type Flow, flowOf, SIZES_OF } from './flow.ts';
import { letterBar, nameBar, OVER } from './labels.ts';
import { unfoldedWords } from './words.ts';

/** Air around bars without a frame. */
const BARE = 4;
/** Least px between struts that are drawn. */
const STRUT = 11;
/** Room under a row: for letters of supports, for stems and names of joints. */
function under(bars: readonly Bar[]): number {
  const inBar = ({ from, to }: Bar, at: Ticks) => inches(at) >= from && inches(at) <= to;
  if (bars.some((b) => b.leg.joints.some(({ at }) => inBar(b, at)))) return 56;
  return bars.some((b) => b.leg.supports.some(({ at }) => inBar(b, at))) ? 36 : 20;
}

export function layUnfolded(given: RunGiven, how: How): Sheet {
  const { resolved, findings = [] } = given;
  const { form, speak } = how;
  const { width, high } = SIZES_OF[form];
  const margin = given.bare === true ? BARE : MARGIN[form];
  const flow = flowOf(resolved, form);
  const over = OVER.name + 24 + (findings.length > 0 ? TRIANGLE.h + 6 : 0);
  const tops: number[] = [];
  let foot: number = margin;
  for (let row = 0; row < flow.rows; row++) {
    tops.push(foot + over);
    foot += over + high + under(flow.bars.filter((b) => b.row === row));
  }
  const plan = new Plan();
  const room = new Room({ x: margin + 3, y: margin + 3, w: width - 2 * margin - 6, h: foot - margin });
  const names = jointNames(resolved);
  const marks = legMarks(resolved);
  const each = thinned(flow);
  const balloons = new Map<string, Point>();
  const targets: Record<string, Target> = {};
  const counted = { supports: 0, joints: 0 };
  const bounds = [margin + 6, width - margin - 6] as const;
  flow.bars.forEach((bar, i) => {
    const top = tops[bar.row] ?? 0;
    const lettered = {
      plan,
      room,
      form,
      speak,
      bar,
      top,
      high,
      mark: marks.get(bar.leg) ?? bar.leg.leg,
      names,
    };
    drawBar({ plan, bar, top, high, pxPerInch: flow.pxPerInch, names });
    link(plan, bar, flow.bars[i + 1], top + high / 2);
    plan.keep({ x: bar.x(bar.from), y: top - 6, w: bar.x(bar.to) - bar.x(bar.from), h: high + 18 });
    const stood = nameBar(lettered, given.balloons === undefined);
    if (stood !== undefined) balloons.set(lettered.mark, stood);
    const { supports, joints } = letterBar(lettered, bounds, each);
    counted.supports += supports;
    counted.joints += joints;
    targetsOf(targets, bar, top, high, names);
  });
  const triangles = markFindings(given, flow, { plan, room, tops, names });
  const words = unfoldedWords(given, how);
  if (given.bare === true) return { view: 'strip', width, height: Math.ceil(foot), plan, zones: {}, words };
  const title = foot + 20;
  plan.viewTitle(
    [width / 2, title],
    speak({ say: 'drawing.stripTitle' }),
    speak({ say: 'rundrawing.unfoldedScale' }),
  );
  const notes = notesOf(given, counted, each, how);
  const height = Math.ceil(drawNotes(plan, notes, { form, width, margin, top: title + 40 }) + margin);
  const frame = frameOf(form, width, height);
  const zones = (of: ReadonlyMap<string, Point>) =>
    Object.fromEntries([...of].map(([name, at]) => [name, zoneOf(frame, at)]));
  return {
    view: 'strip',
    width,
    height,
    frame,
    plan,
    zones:
      given.balloons === undefined
        ? zones(balloons)
        : drawBalloons(plan, frame, form, given.balloons, targets),
    noted: zones(triangles),
    words,
  };
}

/** One strut drawn for every so many, so that they stand apart. */
function thinned({ bars, pxPerInch }: Flow): number {
  const legs = [...new Set(bars.map((b) => b.leg))];
  const [many, long] = legs.reduce(
    ([n, l], leg) => [
      n + leg.supports.length,
      l + (leg.supports.length > 0 ? inches(leg.length) * pxPerInch : 0),
    ],
    [0, 0],
  );
  return many < 2 ? 1 : Math.max(1, Math.ceil((many * STRUT) / Math.max(1, long)));
}

/** From one leg to the next that leaves it, where both stand in one row. */
function link(plan: Plan, bar: Bar, next: Bar | undefined, y: number): void {
  if (next === undefined || next.row !== bar.row || next.leg.parent !== bar.leg || !bar.last) return;
  const [from, to] = [bar.x(bar.to), next.x(next.from)];
  plan.line('centre', [from + 2, y], [to - 2, y], 'link');
}

function targetsOf(
  targets: Record<string, Target>,
  bar: Bar,
  top: number,
  high: number,
  names: ReturnType<typeof jointNames>,
): void {
  const { leg, from, to } = bar;
  const at = (inch: number, y: number): Point => [bar.x(inch), y];
  if (bar.first && leg.parent === null) targets['start'] = { at: at(from, top + high / 2), likes: 130 };
  if (bar.first) targets[`leg-${leg.leg}`] = { at: at((from + to) / 2, top + high / 2), likes: -90 };
  if (bar.first && leg.fittingBefore !== null)
    targets[`fitting-${leg.leg}`] = { at: at(from, top + 4), likes: -90 };
  if (bar.last && leg.fittingAfter === null)
    targets[`end-${leg.leg}`] = { at: at(to, top + high / 2), likes: 50 };
  const inBar = (inch: number) => inch >= from && inch <= to;
  for (const joint of leg.joints) {
    if (inBar(inches(joint.at)))
      targets[(names.get(joint) ?? joint.name).toLowerCase()] = {
        at: at(inches(joint.at), top + 4),
        likes: -60,
      };
  }
  for (const { name, at: place } of leg.supports) {
    if (inBar(inches(place)))
      targets[`support-${name}`] = { at: at(inches(place), top + high + 6), likes: 100 };
  }
}

interface Marks {
  readonly plan: Plan;
  readonly room: Room;
  readonly tops: readonly number[];
  readonly names: ReturnType<typeof jointNames>;
}

/** A triangle over the bar at each finding, aside where another stands; what finds no room is in the list alone. */
function markFindings(
  { findings = [] }: RunGiven,
  { bars }: Flow,
  { plan, room, tops }: Marks,
): ReadonlyMap<string, Point> {
  const stood = new Map<string, Point>();
  findings.forEach(({ leg, at }, i) => {
    const inch = at === null ? 0 : inches(at);
    const bar = bars.find((b) => b.leg.leg === leg && inch >= b.from && (inch < b.to || b.last));
    if (bar === undefined) return;
    const x = bar.x(Math.min(bar.to, Math.max(bar.from, at === null ? (bar.from + bar.to) / 2 : inch)));
    const top = tops[bar.row] ?? 0;
    const y = top - OVER.name - 16 - TRIANGLE.h;
    for (let by = 0; by <= 200; by += 5) {
      const box = [x + by, x - by]
        .map((cx) => ({ x: cx - TRIANGLE.w / 2, y, ...TRIANGLE }))
        .find((b) => room.free(b, 1));
      if (box === undefined) continue;
      room.keep(box);
      const tip: Point = [x, top - 2];
      plan.line('dimension', [box.x + TRIANGLE.w / 2, box.y + TRIANGLE.h], tip, `finding ${i + 1}`);
      stood.set(String(i + 1), drawTriangle(plan, box, String(i + 1)));
      return;
    }
  });
  return stood;
}

function notesOf(
  { resolved }: RunGiven,
  counted: { supports: number; joints: number },
  each: number,
  { speak, form }: How,
): readonly string[] {
  const count = (of: 'supports' | 'joints') => resolved.legs.reduce((sum, l) => sum + l[of].length, 0);
  const note = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `rundrawing.${key}`, values });
  const [supports, joints] = [count('supports'), count('joints')];
  return [
    ...runNotes(resolved, speak),
    ...(joints + supports > 0 ? [note(form === 'phone' ? 'measuredFromShort' : 'measuredFrom')] : []),
    ...(each > 1 ? [note('eachStrut', { each, count: supports })] : []),
    ...(counted.supports < supports
      ? [note('lettered', { lettered: counted.supports, count: supports })]
      : []),
    ...(counted.joints < joints ? [note('unnamed', { named: counted.joints, count: joints })] : []),
  ];
}
