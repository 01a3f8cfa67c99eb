/** A leg with all that stands beside it: its name, the channel, boxes to tap on both sides, the column of measures. */
import type { ResolvedJoint } from '../../run/straight.ts';
import { inches } from '../../trade/length.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { directionWords, fittingWords } from '../direction.ts';
import { fitText, textWidth } from '../glyphs.ts';
import type { Plan } from '../plan.ts';
import type { Box } from '../shapes.ts';
import { drawTriangle, TRIANGLE } from '../triangle.ts';
import { columnOf, drawItem } from './column.ts';
import { samePlace, type TapChosen, type TapGiven, type TapTarget } from './given.ts';
import { channelShapes, drawCables, drawChosen, drawSupports, moved } from './leg.ts';
import type { Laned, On } from './on.ts';
import { type Across, BOX, MEASURE, PX_PER_INCH, TARGET } from './sizes.ts';
import { spread } from './spread.ts';
import { targetsOf } from './targets.ts';

const HEAD = 54;
/** Air over and under what stands along the leg. */
const AIR = 10;

export interface Block {
  readonly height: number;
  /** Draws it with its upper left corner there. @returns its targets, in order along the leg */
  readonly draw: (plan: Plan, left: number, top: number) => readonly TapTarget[];
}

interface Given {
  readonly on: On;
  readonly given: TapGiven;
  readonly across: Across;
  readonly names: ReadonlyMap<ResolvedJoint, string>;
  readonly onRounded: () => void;
}

export function blockOf({ on, given, across, names, onRounded }: Given): Block {
  const { leg } = on;
  const here = ({ leg: id }: { readonly leg: string }) => id === leg.leg;
  const chosen = given.chosen.filter(here);
  const { items, blamed, whole } = columnOf(leg, chosen, (given.found ?? []).filter(here));
  const targets = targetsOf(on, given.tap);
  const along = targets.filter((t) => t.at !== null);
  const px = (at: number) => at * PX_PER_INCH;
  const lane = (side: Laned['lane']) => {
    const own = along.filter((t) => t.lane === side);
    const tops = spread(
      own.map(({ at }) => px(at ?? 0)),
      TARGET,
    );
    return own.map((target, i) => ({ target, middle: tops[i] ?? 0 }));
  };
  const boxes = [...lane('left'), ...lane('right')];
  const heights = spread(
    items.map(({ at }) => px(at)),
    MEASURE,
  );
  const channel = channelShapes(leg, across.wide, names);
  const reach = [
    ...boxes.flatMap(({ middle }) => [middle - TARGET / 2, middle + TARGET / 2]),
    ...heights.flatMap((y) => [y - MEASURE / 2 - 2, y + MEASURE / 2 + 2]),
    ...chosen.flatMap(({ at }) => (at === null ? [] : [px(at) - 16, px(at) + 16])),
    ...ends(leg, px),
  ];
  const [least, most] = [Math.min(...reach), Math.max(...reach)];

  const draw = (plan: Plan, left: number, top: number): readonly TapTarget[] => {
    const zero = top + HEAD + AIR - least;
    const y = (at: number) => zero + px(at);
    const x = left + across.channel;
    const stands = { plan, across, x, y };
    // Leaders first, so that boxes and channel stand over them.
    for (const { target, middle } of boxes) leader(target, zero + middle, left, stands);
    for (const [i, item] of items.entries()) {
      drawItem(item, zero + (heights[i] ?? 0), {
        plan,
        across,
        left,
        y,
        ringed: given.ringed === true,
        onRounded,
      });
    }
    plan.shapes.push(...channel.map((shape) => moved(shape, x, zero)));
    drawCables(leg, on.resolved.cablesOver(leg).length, stands);
    drawSupports(leg, stands);
    drawChosen(chosen, stands);
    const drawn = boxes.map(({ target, middle }): TapTarget => {
      const { lane, ...place } = target;
      const box = { x: left + across[lane], y: zero + middle - TARGET / 2, w: TARGET, h: TARGET };
      return drawBox(plan, { ...place, box }, chosen, blamed);
    });
    const wholeTargets = targets
      .filter((t) => t.at === null)
      .map(({ lane, ...place }): TapTarget => {
        const box = { x: left + across[lane], y: top + 2, w: TARGET, h: TARGET };
        return drawBox(plan, { ...place, box }, chosen, blamed);
      });
    head(plan, { left, top, across, on, boxed: wholeTargets.length > 0, whole });
    return [...wholeTargets, ...drawn].sort((a, b) => (a.at ?? -1) - (b.at ?? -1));
  };
  return { height: HEAD + 2 * AIR + most - least, draw };
}

/** Where the channel's own lines reach to, with what stands at its ends. */
function ends(leg: On['leg'], px: (at: number) => number): readonly number[] {
  const [before, behind] = [leg.fittingBefore === null ? 24 : 14, leg.fittingAfter === null ? 46 : 14];
  return [-before, px(inches(leg.length)) + behind];
}

/** From a box to its place on the channel; over the channel where nothing was set down. */
function leader(
  { at, lane }: Laned,
  middle: number,
  left: number,
  { plan, across, x, y }: Parameters<typeof drawSupports>[1],
): void {
  if (at === null) return;
  const [from, side] = lane === 'left' ? [left + across.left + TARGET - 4, -1] : [left + across.right + 4, 1];
  plan.line('hidden', [from, middle], [x + side * (across.wide / 2 + 2), y(at)], 'leader');
}

/** The box of a target: dashed, filled where it was chosen; taped, in a ring where it holds and a cloud where not. */
function drawBox(
  plan: Plan,
  target: TapTarget,
  chosen: readonly TapChosen[],
  blamed: ReadonlySet<TapChosen>,
): TapTarget {
  const { box, letters } = target;
  const own = chosen.filter((one) => isOf(one, target));
  const inner: Box = {
    x: box.x + (TARGET - BOX) / 2,
    y: box.y + (TARGET - BOX) / 2,
    w: BOX,
    h: BOX,
  };
  const part = `target ${target.key}`;
  const blames = own.some((one) => blamed.has(one));
  const held = own.length > 0 && own.every((one) => one.held === true);
  if (blames) plan.cloud({ x: box.x + 6, y: box.y + 6, w: TARGET - 12, h: TARGET - 12 }, part);
  else if (held)
    plan.circle([box.x + TARGET / 2, box.y + TARGET / 2], BOX / 2, { pen: 'thin', fill: 'sheet', part });
  else if (own.length > 0) plan.rect(inner, { pen: 'edge', fill: 'ink', part });
  else {
    plan.rect(inner, { fill: 'sheet' });
    plan.rect(inner, { pen: 'hidden', part });
  }
  const room = BOX - 6;
  const size = [18, 16, 14, 13].find((s) => textWidth(letters, s) <= room) ?? 13;
  plan.text([box.x + TARGET / 2, box.y + TARGET / 2 + size * 0.35], fitText(letters, size, room), {
    size,
    weight: 700,
    colour: own.length > 0 && !blames && !held ? 'sheet' : 'ink',
    part,
  });
  return target;
}

/** Whether a chosen place is this target's: at it, or where a fault of its rule stands on it. */
export function isOf(
  one: TapChosen,
  { leg, at, elsewhere }: Pick<TapTarget, 'leg' | 'at' | 'elsewhere'>,
): boolean {
  return samePlace(one, { leg, at: elsewhere[one.what] ?? at });
}

interface Head {
  readonly left: number;
  readonly top: number;
  readonly across: Across;
  readonly on: On;
  /** A target stands where the leg's balloon would. */
  readonly boxed: boolean;
  readonly whole: readonly number[];
}

/** The leg's name, how it leaves what is before it, its way and length; notes on the whole of it. */
function head(plan: Plan, { left, top, across, on, boxed, whole }: Head): void {
  const { leg, mark, speak } = on;
  const middle = top + 2 + TARGET / 2;
  if (!boxed) {
    const at = [left + across.left + TARGET / 2, middle] as const;
    const size = [16, 14, 13].find((s) => textWidth(mark, s) <= 34) ?? 13;
    plan.circle(at, 17, { pen: 'thin', fill: 'sheet', part: `leg ${leg.leg}` });
    plan.text([at[0], at[1] + size * 0.35], fitText(mark, size, 32), { size, part: `leg ${leg.leg}` });
  }
  const x = left + across.left + TARGET + 8;
  const notes = whole.slice(0, 3);
  const room = across.width - (x - left) - 4 - notes.length * TRIANGLE.w;
  const by = fittingWords(leg, speak) ?? speak({ say: `tap.from-${on.resolved.start.kind}` });
  const lines = [`${shortLength(leg.length)}, ${directionWords(leg, speak)}`, by];
  lines.forEach((text, i) => {
    plan.text([x, middle - 4 + i * 19], fitText(text, i === 0 ? 16 : 14, room), {
      size: i === 0 ? 16 : 14,
      anchor: 'start',
      colour: i === 0 ? 'ink' : 'ink2',
      part: `leg ${leg.leg}`,
    });
  });
  notes.forEach((note, i) => {
    const right = left + across.width - 2 - (notes.length - i) * TRIANGLE.w;
    drawTriangle(plan, { x: right, y: middle - TRIANGLE.h / 2, ...TRIANGLE }, String(note));
  });
}
