/** The channel across, with its cables lying in it: for fill. */
import type { Tray } from '../run/catalogue.ts';
import { inches } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { channelWalls } from './channelSection.ts';
import { across, down } from './dimension.ts';
import { frameOf, LETTERS, MARGIN } from './frame.ts';
import { type Laid, layCables } from './packCables.ts';
import { Plan, SIZES } from './plan.ts';
import type { Box } from './shapes.ts';
import { spoken, together } from './spoken.ts';
import { render, type Sheet } from './svg.ts';
import type { Drawing, Form, How } from './types.ts';

export interface SectionGiven {
  readonly tray: Pick<Tray, 'width' | 'outsideWidth' | 'depth' | 'thickness' | 'bottom' | 'webHoles'>;
  /** Kinds of cable; outside diameter in inches, at most the inside width. */
  readonly cables: readonly { readonly odIn: number; readonly count: number }[];
}

const LAYOUT: Readonly<Record<Form, { width: number; most: number; tall: number }>> = {
  phone: { width: 328, most: 184, tall: 120 },
  desk: { width: 480, most: 330, tall: 170 },
  paper: { width: 480, most: 330, tall: 170 },
};

export function drawSection(given: SectionGiven, how: How): Drawing {
  return render(laySection(given, how), how);
}

/** Px to the inch, and the height of the pile over the floor. */
export function sectionScale({ tray, cables }: SectionGiven, form: Form) {
  const { most, tall } = LAYOUT[form];
  const laid = layCables(
    inches(tray.width),
    cables.map(({ odIn, count }) => ({ od: odIn, count })),
  );
  const pile = pileOf(laid);
  return { px: scaleOf(tray, pile, { most, tall }), laid, pile };
}

export function laySection(given: SectionGiven, how: How): Sheet {
  const { tray, cables } = given;
  const { form, speak } = how;
  const { width } = LAYOUT[form];
  const margin = MARGIN[form];
  const { px, laid, pile } = sectionScale(given, form);
  const plan = new Plan();
  const standing = stand(tray, pile, px, { width, margin });
  const { cx, bottom, over } = standing;
  const inside = cutChannel(plan, standing);
  cutCables(plan, laid, inside, px);
  measureChannel(plan, inside, standing, margin);
  plan.viewTitle(
    [cx, bottom + 36],
    speak({ say: 'drawing.section' }),
    speak({ say: `drawing.bottom-${tray.bottom}` }),
  );

  const size = SIZES.note;
  const legend = cables.map(({ odIn, count }, i) =>
    speak({ say: 'drawing.cableKind', values: { letter: LETTERS[i] ?? '', count, od: decimals(odIn) } }),
  );
  const lines = Plan.lines(legend, width - 2 * margin - 24, size);
  const top = bottom + 78;
  if (lines.length > 0) plan.line('dimension', [margin, top], [width - margin, top]);
  lines.forEach((text, i) => {
    plan.text([margin + 12, top + 22 + i * 20], text, { size, anchor: 'start', part: 'legend' });
  });
  const height = Math.ceil(top + (lines.length === 0 ? 0 : 14 + lines.length * 20) + margin);
  return {
    view: 'section',
    width,
    height,
    frame: frameOf(form, width, height),
    plan,
    zones: {},
    words: together([
      speak({
        say: 'drawing.sectionWords',
        values: { width: spoken(tray.width, speak), depth: spoken(tray.depth, speak) },
      }),
      speak({ say: `drawing.bottomWords-${tray.bottom}` }),
      ...cables.map(({ odIn, count }, i) =>
        speak({ say: 'drawing.cableWords', values: { letter: LETTERS[i] ?? '', count, od: decimals(odIn) } }),
      ),
      over > 0 ? speak({ say: 'drawing.overRim' }) : undefined,
    ]),
  };
}

/** Height of the cables over the floor, inches. */
export const pileOf = (laid: readonly Laid[]): number => Math.max(0, ...laid.map((c) => c.y + c.r));

/** Px to the inch: the channel within `most` across, channel or pile within `tall`. */
export function scaleOf(
  tray: SectionGiven['tray'],
  pile: number,
  { most, tall }: { readonly most: number; readonly tall: number },
): number {
  return Math.min(most / inches(tray.outsideWidth), tall / Math.max(inches(tray.depth), pile + 0.1));
}

interface Standing {
  readonly tray: SectionGiven['tray'];
  /** Middle of the channel, and the underside of its floor. */
  readonly cx: number;
  readonly bottom: number;
  readonly px: number;
  /** How far the cables stand over the rim, and the floor's thickness as drawn, px. */
  readonly over: number;
  readonly metal: number;
}

/** Where the channel stands on its sheet: under the room for its width, lower where cables stand over its rim. */
export function stand(
  tray: SectionGiven['tray'],
  pile: number,
  px: number,
  { width, margin }: { readonly width: number; readonly margin: number },
): Standing {
  const walls = inches(tray.depth) - inches(tray.thickness);
  const over = Math.max(0, pile - walls) * px;
  const metal = Math.max(6, inches(tray.thickness) * px);
  return { tray, px, over, metal, cx: width / 2 - 14, bottom: margin + 62 + over + walls * px + metal };
}

/** Its inside width above it, its depth beside it. */
export function measureChannel(
  plan: Plan,
  inside: Box,
  { tray, bottom, over, metal }: Standing,
  margin: number,
): void {
  across(plan, inside.x, inside.x + inside.w, margin + 34, shortLength(tray.width), {
    from: inside.y - over - 2,
    part: 'inside width',
  });
  down(plan, inside.y, bottom, inside.x + inside.w + metal + 34, shortLength(tray.depth), {
    from: inside.x + inside.w + metal,
    part: 'depth',
  });
}

/** The channel cut across. @returns its inside */
export function cutChannel(plan: Plan, { tray, cx, bottom, px, metal }: Standing): Box {
  const { walls, outline, inside } = channelWalls({ tray, at: [cx, bottom], scale: px });
  plan.polygon(outline, { fill: 'sheet' });
  for (const wall of walls) plan.hatch(wall, 'up');
  plan.polygon(outline, { pen: 'edge', part: 'channel' });
  if (tray.bottom === 'ventilated') {
    // A hole of the floor in the plane of the section: the metal is missing there.
    const w = Math.min(inside.w * 0.16, inches(tray.webHoles.width) * px);
    plan.rect({ x: cx - w / 2, y: inside.y + inside.h - 1.5, w, h: metal + 3 }, { fill: 'sheet' });
    for (const x of [cx - w / 2, cx + w / 2]) {
      plan.line('edge', [x, inside.y + inside.h - 1.2], [x, inside.y + inside.h + metal + 1.2], 'floor hole');
    }
  }
  return inside;
}

/** Cables as they lie in a channel, or in one side of it, with the letters of their kinds. */
export function cutCables(
  plan: Plan,
  laid: readonly Laid[],
  inside: Pick<Box, 'x' | 'y' | 'h'>,
  px: number,
): void {
  for (const { x, y, r, kind } of laid) {
    const at: [number, number] = [inside.x + x * px, inside.y + inside.h - y * px];
    plan.circle(at, r * px, { pen: 'thin', fill: 'galv', part: `cable ${kind}` });
    if (r * px >= 9) {
      plan.text([at[0], at[1] + 4.8], LETTERS[kind] ?? '', {
        size: r * px >= 14 ? SIZES.note : SIZES.zone,
        part: `cable ${kind}`,
      });
    }
  }
}

/** Diameters to at least two decimals, as cable lists write them. */
export function decimals(odIn: number): string {
  const two = odIn.toFixed(2);
  return Math.abs(Number(two) - odIn) < 1e-9 ? two : String(Math.round(odIn * 1000) / 1000);
}
