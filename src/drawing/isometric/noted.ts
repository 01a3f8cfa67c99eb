/** Findings on the sheet: what was measured, clouded, and a numbered triangle that points to the note. */
import type { RuleId } from '../../run/inspect/finding.ts';
import { fromInches } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { textWidth } from '../glyphs.ts';
import { SIZES } from '../plan.ts';
import type { RunGiven } from '../runGiven.ts';
import { anyBox, freeBox, rimOf } from '../search.ts';
import { type Box, BULGE, type Point } from '../shapes.ts';
import { drawTriangle, TRIANGLE } from '../triangle.ts';
import { onLeg } from './balloons.ts';
import { dimension } from './dimensions.ts';
import { station } from './fittings.ts';
import type { DrawnLeg } from './route.ts';
import type { Setting } from './setting.ts';
import { off } from './space.ts';

export type Noted = NonNullable<RunGiven['findings']>[number];

/** What a finding's length lies between. */
type Measured = 'span' | 'support';
const MEASURED: Partial<Readonly<Record<RuleId, Measured>>> = {
  'span-too-long': 'span',
  'splice-past-quarter': 'support',
  'splice-on-support': 'support',
  'fitting-unsupported': 'support',
  'expansion-unsupported': 'support',
  'end-unsupported': 'support',
};

const CLOUD = 28;

export interface Marked {
  /** Middle of each triangle by its number. */
  readonly triangles: ReadonlyMap<string, Point>;
  readonly all: boolean;
}

export function markFindings(setting: Setting): Marked {
  const { given, scene } = setting;
  const triangles = new Map<string, Point>();
  const findings = given.findings ?? [];
  let all = true;
  findings.forEach((finding, i) => {
    const drawn = scene.route.legs.find((d) => d.leg.leg === finding.leg);
    if (drawn === undefined) return;
    const at = markOne(setting, finding, String(i + 1), drawn, findings.length > 8);
    if (at === undefined) all = false;
    else triangles.set(String(i + 1), at);
  });
  return { triangles, all };
}

/** What was measured, as the cloud letters it; nothing for what has no measure. */
function lettered({ measured, unit }: Noted): string | undefined {
  if (typeof measured === 'string') return measured;
  return measured !== null && unit === 'in' ? shortLength(fromInches(measured), 16) : undefined;
}

/** The two places that the length lies between, ticks along the leg. */
function measuredBetween(
  { rule, at, measured }: Noted,
  { leg }: DrawnLeg,
): readonly [number, number] | undefined {
  const between = MEASURED[rule];
  if (between === undefined || at === null || typeof measured !== 'number') return undefined;
  const long = fromInches(measured);
  if (between === 'span') return [at - long / 2, at + long / 2];
  const nearest = [...leg.supports].sort(
    (a, b) => Math.abs(Math.abs(a.at - at) - long) - Math.abs(Math.abs(b.at - at) - long),
  )[0];
  return nearest === undefined || nearest.at === at
    ? undefined
    : [Math.min(nearest.at, at), Math.max(nearest.at, at)];
}

function markOne(
  setting: Setting,
  finding: Noted,
  number: string,
  drawn: DrawnLeg,
  many: boolean,
): Point | undefined {
  const { place, room, form } = setting;
  const { frame } = drawn.leg;
  const text = many ? undefined : lettered(finding);
  const between = many ? undefined : measuredBetween(finding, drawn);
  const along = (at: number) => off(drawn.from, frame.along, drawn.along(at));
  const on = finding.at === null ? undefined : station(drawn, drawn.along(finding.at));
  let to = on === undefined ? onLeg(setting, drawn, 0.3) : place(off(on.at, on.frame.open, on.deep * 0.4));
  let dimensioned = false;
  if (between !== undefined && text !== undefined) {
    const middle = dimension(setting, {
      from: along(between[0]),
      to: along(between[1]),
      along: frame.along,
      clear: drawn.half + 4,
      text,
      size: SIZES.note,
      part: `finding ${number}`,
      away: [drawn.half + 14, drawn.half + 22, drawn.half + 34],
      bare: true,
    });
    if (middle !== undefined) [to, dimensioned] = [middle, true];
  }
  const cloud = text === undefined ? 0 : textWidth(text, SIZES.text) + 26;
  const sizes = cloud === 0 ? [0] : [cloud, 0];
  for (const wide of sizes) {
    const size = { w: wide + (wide > 0 ? BULGE + 4 : 0) + TRIANGLE.w, h: CLOUD + (wide > 0 ? 2 * BULGE : 0) };
    const leader = { x: 0, w: wide > 0 ? wide + BULGE : TRIANGLE.w };
    const box =
      freeBox(room, to, size, {
        likes: -75,
        from: dimensioned ? 6 : 16,
        to: form === 'phone' ? 110 : 150,
        leader,
        ink: 1,
      }) ?? (wide === 0 ? anyBox(room, to, size) : undefined);
    if (box === undefined) continue;
    return draw(setting, { box, wide, to, number, text, dot: !dimensioned });
  }
  return undefined;
}

interface Standing {
  readonly box: Box;
  readonly wide: number;
  readonly to: Point;
  readonly number: string;
  readonly text: string | undefined;
  readonly dot: boolean;
}

function draw({ plan, room }: Setting, { box, wide, to, number, text, dot }: Standing): Point {
  const cloud = { x: box.x + BULGE, y: box.y + box.h / 2 - CLOUD / 2, w: wide - BULGE, h: CLOUD };
  const triangle = { x: box.x + box.w - TRIANGLE.w, y: box.y + box.h / 2 - TRIANGLE.h / 2 - 1, ...TRIANGLE };
  const part = `finding ${number}`;
  const rim = rimOf(wide > 0 ? cloud : { ...triangle, x: triangle.x + 6, w: triangle.w - 12 }, to);
  plan.line('dimension', rim, to, part);
  room.ink(rim, to);
  if (dot) plan.circle(to, 2.8, { fill: 'ink' });
  if (wide > 0 && text !== undefined) {
    plan.cloud(cloud, part);
    plan.text([cloud.x + cloud.w / 2, cloud.y + 19.5], text, { part });
  }
  room.keep(box);
  return drawTriangle(plan, triangle, number);
}
