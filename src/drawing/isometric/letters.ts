/** Letters of the supports, names of the joints, and what stands at the ends. */
import type { Vec } from '../../run/vector.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { textWidth } from '../glyphs.ts';
import { boxOf, SIZES } from '../plan.ts';
import { jointNames } from '../runNames.ts';
import { freeBox, rimOf } from '../search.ts';
import type { Point } from '../shapes.ts';
import { station } from './fittings.ts';
import { openOf } from './route.ts';
import { middleOf, type Setting } from './setting.ts';
import { off } from './space.ts';

/**
 * A letter beside each strut, at its lower end if it can be.
 *
 * @param each  letter one strut of so many
 * @returns how many are lettered
 */
export function letterSupports({ scene, plan, room, place, sizes }: Setting, each: number): number {
  const step =
    each *
    Math.max(
      1,
      Math.ceil(
        (each === 0 ? 0 : sizes.apart.letter) / spacing(scene.supports.map((s) => [s.leg, place(s.ends[0])])),
      ),
    );
  if (each === 0) return 0;
  let lettered = 0;
  scene.supports.forEach(({ support: { name }, ends }, i) => {
    if (i % step !== 0) return;
    const [a, b] = ends.map(place) as [Point, Point];
    const both =
      a[1] >= b[1]
        ? ([
            [a, b],
            [b, a],
          ] as const)
        : ([
            [b, a],
            [a, b],
          ] as const);
    for (const [end, other] of both) {
      const long = Math.hypot(end[0] - other[0], end[1] - other[1]) || 1;
      const [dx, dy] = [(end[0] - other[0]) / long, (end[1] - other[1]) / long];
      const half = textWidth(name, SIZES.note) / 2;
      const found = [6, 10]
        .flatMap((away) =>
          [0, 0.5, -0.5, 1, -1].map((turn): Point => {
            const [x, y] = [dx - dy * turn, dy + dx * turn];
            const k = 1 / Math.hypot(x, y);
            return [end[0] + x * k * (half + away), end[1] + y * k * (away + 5) + 5];
          }),
        )
        .find((at) => {
          const box = boxOf({ at, text: name, size: SIZES.note, anchor: 'middle' });
          return room.free(box, 1.5) && room.inkIn(box) <= 1;
        });
      if (found === undefined) continue;
      const text = plan.text(found, name, { size: SIZES.note, part: `support ${name}` });
      room.keep(boxOf(text));
      lettered++;
      return;
    }
  });
  return lettered;
}

/** Px between neighbouring struts of one leg, the least of them. */
function spacing(places: readonly (readonly [leg: unknown, at: Point])[]): number {
  let least = Number.POSITIVE_INFINITY;
  places.forEach(([leg, at], i) => {
    const before = places[i - 1];
    if (before !== undefined && before[0] === leg)
      least = Math.min(least, Math.hypot(at[0] - before[1][0], at[1] - before[1][1]));
  });
  return Math.max(1, least);
}

/** Names of joints on leaders; where they stand close, one of several. */
export function nameJoints({ given, scene, plan, room, place, sizes, form }: Setting, each: number): number {
  if (each === 0) return 0;
  const names = jointNames(given.resolved);
  const near = spacing(scene.joints.map((j) => [j.drawn, place(j.at)]));
  const step = each * Math.max(1, Math.ceil((sizes.apart.letter * 1.3) / near));
  let named = 0;
  scene.joints.forEach(({ joint, drawn, at }, i) => {
    if (i % step !== 0) return;
    const name = names.get(joint) ?? joint.name;
    const here = station(drawn, drawn.along(joint.at));
    const to = place(off(at, here.frame.open, here.deep * 0.4));
    const size = { w: textWidth(name, SIZES.note), h: SIZES.note };
    const box = freeBox(room, to, size, {
      likes: 115,
      from: form === 'phone' ? 12 : 16,
      to: 56,
      leader: { x: 0, w: size.w },
      ink: 0,
    });
    if (box === undefined) return;
    const [cx] = middleOf(box);
    const rim = rimOf({ ...box, x: box.x - 2, w: box.w + 4, y: box.y - 2, h: box.h + 4 }, to);
    plan.line('dimension', rim, to, `leader ${name}`);
    plan.text([cx, box.y + SIZES.note * 0.78], name, { size: SIZES.note, part: `splice ${name}` });
    room.keep(box);
    room.ink(rim, to);
    named++;
  });
  return named;
}

/** Instruments as bubbles at their openings, with their words. */
export function nameInstruments(setting: Setting): void {
  const { given, scene, plan, room, place, sizes, form, speak } = setting;
  const { tags = {} } = given;
  for (const drawn of scene.route.legs) {
    const { leg } = drawn;
    if (leg.end.kind !== 'instrument') continue;
    const here = station(drawn, drawn.length).at;
    const tip = off(here, leg.frame.along, openOf(leg, form, scene.route.pxPerInch));
    const [from, to] = [place(here), place(tip)];
    const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const [dx, dy] = far < 0.5 ? [0, 1] : [(to[0] - from[0]) / far, (to[1] - from[1]) / far];
    const r = sizes.bubble;
    const centre: Point = [to[0] + dx * r, to[1] + dy * r];
    plan.line('thin', from, to, `end ${leg.leg}`);
    plan.circle(centre, r, { fill: 'sheet', pen: 'edge', part: `instrument ${leg.leg}` });
    tagIn(setting, centre, tags.ends?.[leg.leg]);
    const bubble = { x: centre[0] - r, y: centre[1] - r, w: 2 * r, h: 2 * r };
    room.keep(bubble);
    const tag = tags.ends?.[leg.leg];
    const words = [
      ...(tag === undefined || !fitsIn(setting, tag) ? [tag ?? speak({ say: 'rundrawing.instrument' })] : []),
      ...(leg.end.open > 0
        ? [speak({ say: 'rundrawing.open', values: { length: shortLength(leg.end.open) } })]
        : []),
    ];
    beside(setting, centre, r, words, `end ${leg.leg}`);
  }
}

/** Words at the ladder or tray that the run leaves or meets. */
export function nameStubs(setting: Setting): void {
  const { given, scene, speak } = setting;
  const { tags = {} } = given;
  for (const { side, leg, label } of scene.stubs) {
    const kind = leg[side].kind;
    const tag = side === 'start' ? tags.start : tags.ends?.[leg.leg];
    const word = speak({ say: `rundrawing.${kind}` });
    atStub(
      setting,
      label,
      tag === undefined ? word : `${word} ${tag}`,
      side === 'start' ? 'start' : `end ${leg.leg}`,
    );
  }
}

const linesOf = (tag: string): readonly string[] => tag.split(/[-\s]+/);
const fitsIn = ({ sizes }: Setting, tag: string): boolean => {
  const lines = linesOf(tag);
  return (
    lines.length <= 2 && lines.every((l) => textWidth(l, SIZES.zone) <= chord(sizes.bubble, lines.length))
  );
};

/** Room across a bubble at the foot of its lines. */
const chord = (r: number, lines: number): number => 2 * Math.sqrt(r * r - (lines === 1 ? 5 : 11.5) ** 2) - 1;

/** A tag in the bubble, on two lines where it has two parts. */
function tagIn(setting: Setting, [x, y]: Point, tag: string | undefined): void {
  if (tag === undefined || !fitsIn(setting, tag)) return;
  const lines = linesOf(tag);
  lines.forEach((line, i) => {
    setting.plan.text([x, y + (lines.length === 1 ? 4.7 : i === 0 ? -1.5 : 11.5)], line, {
      size: SIZES.zone,
      part: 'tag',
    });
  });
}

/** Words to one side of a bubble, below each other; the last of them first to go. */
function beside({ plan, room }: Setting, at: Point, r: number, words: readonly string[], part: string): void {
  for (let lines = words; lines.length > 0; lines = lines.slice(1)) {
    const size = { w: Math.max(...lines.map((l) => textWidth(l, SIZES.note))), h: lines.length * 17 - 3 };
    const box = freeBox(room, at, size, { likes: 180, from: r + 4, to: r + 60, ink: 1, turn: 20 });
    if (box === undefined) continue;
    lines.forEach((line, i) => {
      plan.text([box.x + box.w / 2, box.y + 11 + i * 17], line, { size: SIZES.note, part });
    });
    room.keep(box);
    return;
  }
}

function atStub({ plan, room, place, sizes, form }: Setting, label: Vec, words: string, part: string): void {
  const at = place(label);
  const size = { w: textWidth(words, SIZES.note), h: SIZES.note };
  const box = freeBox(room, at, size, {
    likes: -60,
    from: 8,
    to: form === 'phone' ? 90 : 120,
    leader: { x: 0, w: size.w },
    ink: 0,
    turn: 40,
  });
  if (box === undefined) return;
  const rim = rimOf({ ...box, x: box.x - 3, w: box.w + 6, y: box.y - 3, h: box.h + 6 }, at);
  if (Math.hypot(rim[0] - at[0], rim[1] - at[1]) > sizes.stub.high + 12) {
    plan.line('dimension', rim, at, `leader ${part}`);
    room.ink(rim, at);
  }
  plan.text([box.x + box.w / 2, box.y + SIZES.note * 0.78], words, { size: SIZES.note, part });
  room.keep(box);
}
