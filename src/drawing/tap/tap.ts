/** The tapped run as a sheet: its legs one under another, on the desk in two columns; its words; its targets. */
import { frameOf, MARGIN } from '../frame.ts';
import { drawNotes } from '../notes.ts';
import { Plan } from '../plan.ts';
import { jointNames, legMarks } from '../runNames.ts';
import { render } from '../svg.ts';
import type { How } from '../types.ts';
import { type Block, blockOf } from './block.ts';
import type { TapDrawing, TapGiven, TapPlace, TapSheet, TapTarget } from './given.ts';
import { acrossOf } from './sizes.ts';
import { tapWords } from './words.ts';

/** Between two columns, and between two legs. */
const GUTTER = 24;
const BETWEEN = 12;

export function layTap(given: TapGiven, how: How): TapSheet {
  const { resolved } = given;
  const { form, speak } = how;
  const narrow = form === 'phone' && given.tiny === true;
  const across = acrossOf(narrow);
  const marks = legMarks(resolved);
  const names = jointNames(resolved);
  let rounded = false;
  const blocks = resolved.legs.map((leg) =>
    blockOf({
      on: {
        leg,
        mark: marks.get(leg) ?? leg.leg,
        resolved,
        names: leg.joints.map((joint) => names.get(joint) ?? joint.name),
        speak,
      },
      given,
      across,
      names,
      onRounded: () => {
        rounded = true;
      },
    }),
  );
  const columns = form === 'phone' ? [blocks] : inTwo(blocks);
  const margin = MARGIN[form];
  const width = 2 * margin + columns.length * across.width + (columns.length - 1) * GUTTER;
  const plan = new Plan();
  const targets: TapTarget[] = [];
  const feet = columns.map((column, c) => {
    const left = margin + c * (across.width + GUTTER);
    let top = margin + 6;
    for (const [i, block] of column.entries()) {
      if (i > 0)
        plan.line('dimension', [left + 6, top - BETWEEN / 2], [left + across.width - 6, top - BETWEEN / 2]);
      targets.push(...block.draw(plan, left, top));
      top += block.height + BETWEEN;
    }
    return top - BETWEEN;
  });
  const foot = Math.max(...feet) + 4;
  const note = (key: string) => speak({ say: `tap.${key}` });
  const notes = [note('toScale'), note('wider'), ...(rounded ? [note('rounded')] : [])];
  const height = Math.ceil(drawNotes(plan, notes, { form, width, margin, top: foot }) + margin);
  return {
    view: 'tap',
    width,
    height,
    frame: frameOf(form, width, height),
    plan,
    zones: {},
    words: tapWords(given, marks, how),
    targets,
  };
}

export function drawTap(given: TapGiven, how: How): TapDrawing {
  const sheet = layTap(given, how);
  return { ...render(sheet, how), targets: sheet.targets };
}

/** Legs in two columns, in their order, where the taller one is least; one column where two gain nothing. */
function inTwo(blocks: readonly Block[]): readonly (readonly Block[])[] {
  const height = (some: readonly Block[]) => some.reduce((sum, b) => sum + b.height + BETWEEN, 0);
  const splits = blocks.slice(1).map((_, i) => [blocks.slice(0, i + 1), blocks.slice(i + 1)] as const);
  const tallest = (columns: readonly (readonly Block[])[]) => Math.max(...columns.map(height));
  return splits.reduce<readonly (readonly Block[])[]>(
    (best, split) => (tallest(split) < tallest(best) ? split : best),
    [blocks],
  );
}

/** Where a fault of that rule stands on a part, inches; `null`: it is the whole leg's. */
export function faultAt({ at, elsewhere }: Pick<TapPlace, 'at' | 'elsewhere'>, rule: string): number | null {
  return elsewhere[rule] ?? at;
}
